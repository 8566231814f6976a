using System.Collections.Immutable;
using System.CommandLine;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;

namespace Hoopwright.Cli.Verbs;

/// <summary>What the verbs that work on a plan have in common: its file, a price book, JSON output.</summary>
internal sealed class PlanInput(string name = "PLAN")
{
    public Argument<string> File { get; } = new(name) { Description = "The plan file; - reads standard input." };

    public Option<string?> Prices { get; } = new("--prices") { HelpName = "FILE", Description = "A price book file whose prices come after those of the plan." };

    public Option<bool> Json { get; } = new("--json") { Description = "For machines: one JSON document on standard output." };

    /// <summary>Reads and works out the plan; the whole plan, or as much as its errors leave.</summary>
    public (PlanReading Reading, PlannedTunnel Planned) Work(ParseResult parsed, Terminal terminal) => Work(parsed, parsed.GetRequiredValue(File), terminal);

    /// <summary>The same for another plan file with the same price book.</summary>
    public (PlanReading Reading, PlannedTunnel Planned) Work(ParseResult parsed, string file, Terminal terminal)
    {
        PlanReading reading = PlanReader.Read(Files.Read(file, terminal));
        (Prices? book, var found) = BookOf(parsed.GetValue(Prices), terminal);
        if (!found.IsEmpty) reading = reading with { Diagnostics = [.. reading.Diagnostics, .. found.Select(each => each with { Path = "prices file: " + each.Path })] };
        return (reading, TunnelWorks.Plan(reading, book, sideBySide: Cores.Run));
    }

    /// <summary>A price book file as read, and what is wrong with it; nothing where none is given.</summary>
    public static (Prices? Book, ImmutableArray<Diagnostic> Diagnostics) BookOf(string? file, Terminal terminal) =>
        file is null ? (null, []) : PlanReader.ReadPrices(Files.Read(file, terminal));

    /// <summary>Prints the errors and says that there is nothing to show; the exit code.</summary>
    public static int Refuse(Terminal terminal, PlanReading reading, PlannedTunnel planned)
    {
        DiagnosticPrinter.Print(terminal.Messages, terminal, planned.Diagnostics.Where(each => each.Severity == Severity.Error), reading);
        terminal.Messages.WriteLine("Put these right first; 'hoopwright check' shows everything that was found.");
        return ExitCode.InputErrors;
    }
}
