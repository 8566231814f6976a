using System.CommandLine;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;

namespace Hoopwright.Cli.Verbs;

/// <summary>What the verbs that work on a plan have in common: its file, a price book, JSON output.</summary>
internal sealed class PlanInput
{
    public Argument<string> File { get; } = new("PLAN") { Description = "The plan file; - reads standard input." };

    public Option<string?> Prices { get; } = new("--prices") { Description = "A price book file whose prices come after those of the plan." };

    public Option<bool> Json { get; } = new("--json") { Description = "For machines: one JSON document on standard output." };

    /// <summary>Reads and works out the plan; the whole plan, or as much as its errors leave.</summary>
    public (PlanReading Reading, PlannedTunnel Planned) Work(ParseResult parsed, Terminal terminal)
    {
        PlanReading reading = PlanReader.Read(Files.Read(parsed.GetRequiredValue(File), terminal));
        Prices? book = null;
        if (parsed.GetValue(Prices) is { } prices)
        {
            (book, var found) = PlanReader.ReadPrices(Files.Read(prices, terminal));
            reading = reading with { Diagnostics = [.. reading.Diagnostics, .. found.Select(each => each with { Path = "prices file: " + each.Path })] };
        }
        return (reading, TunnelWorks.Plan(reading, book));
    }

    /// <summary>Prints the errors and says that there is nothing to show; the exit code.</summary>
    public static int Refuse(Terminal terminal, PlanReading reading, PlannedTunnel planned)
    {
        DiagnosticPrinter.Print(terminal.Messages, terminal, planned.Diagnostics.Where(each => each.Severity == Severity.Error), reading);
        terminal.Messages.WriteLine("Put these right first; 'hoopwright check' shows everything that was found.");
        return ExitCode.InputErrors;
    }
}
