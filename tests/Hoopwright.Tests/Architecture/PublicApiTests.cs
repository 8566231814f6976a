using System.Reflection;
using Hoopwright.Layout;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Testing;
using PublicApiGenerator;

namespace Hoopwright.Tests.Architecture;

/// <summary>
/// What is public is a promise. The kept files list it, so that a change to it shows in the review; set HOOPWRIGHT_ACCEPT=1
/// to write them anew.
/// </summary>
public sealed class PublicApiTests
{
    private static readonly ApiGeneratorOptions Options = new() { IncludeAssemblyAttributes = false };

    [Fact]
    public void The_public_members_of_the_domain_are_the_kept_ones() => Match(typeof(Tunnel).Assembly);

    [Fact]
    public void The_public_members_of_the_sheets_are_the_kept_ones() => Match(typeof(Drawing).Assembly);

    private static void Match(Assembly assembly) => Golden.Match(
        assembly.GeneratePublicApi(Options).ReplaceLineEndings("\n"), $"Hoopwright.Tests/Golden/{assembly.GetName().Name}.api.txt");
}
