using System.Reflection;
using Xunit.Sdk;
using Xunit.v3;

namespace Hoopwright.Server.Tests;

/// <summary>Runs a theory once on SQLite and once on PostgreSQL.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OnBothAttribute : DataAttribute
{
    public override ValueTask<IReadOnlyCollection<ITheoryDataRow>> GetData(MethodInfo testMethod, DisposalTracker disposalTracker) =>
        ValueTask.FromResult<IReadOnlyCollection<ITheoryDataRow>>([new TheoryDataRow(StoredIn.Sqlite), new TheoryDataRow(StoredIn.Postgres)]);

    public override bool SupportsDiscoveryEnumeration() => true;
}
