namespace Hoopwright.Cli;

/// <summary>What the program ends with.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>The input has errors, listed as diagnostics.</summary>
    public const int InputErrors = 1;

    public const int WrongUsage = 2;

    /// <summary>A fault of the program.</summary>
    public const int Fault = 3;
}
