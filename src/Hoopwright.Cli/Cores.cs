namespace Hoopwright.Cli;

/// <summary>Runs pieces of work on the cores that this machine has.</summary>
internal static class Cores
{
    /// <summary>All pieces at once, as far as there are cores; back when all are done.</summary>
    /// <param name="work">The pieces.</param>
    public static void Run(params Action[] work) => Parallel.Invoke(work);
}
