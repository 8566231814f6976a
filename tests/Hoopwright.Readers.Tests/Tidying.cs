using Hoopwright.Readers.Tests;

[assembly: AssemblyFixture(typeof(Tidying))]

namespace Hoopwright.Readers.Tests;

/// <summary>Takes away what was written once all tests are through. The runner waits for it; at the end of the process it would be taken for a thread that hangs.</summary>
public sealed class Tidying : IDisposable
{
    /// <inheritdoc/>
    public void Dispose() => Written.TakeAway();
}
