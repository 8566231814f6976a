using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using Hoopwright.Comparisons;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Strength;

namespace Hoopwright.Cli.Verbs;

/// <summary>Holds two plans against each other: what differs, and what that changes.</summary>
internal static class CompareVerb
{
    public static Command Command(Terminal terminal)
    {
        var before = new PlanInput("BEFORE");
        var second = new Argument<string>("AFTER") { Description = "The plan file that it is held against." };
        var folder = new Option<string?>("--out") { HelpName = "FOLDER", Description = "A folder for a drawing of both bows with their limits; none when left out." };
        var date = new DayOption();
        var command = new Command("compare", """
            Shows what differs between two plans, field by field, and what it changes: what they stand, cost by stage, counts,
            the order, and what there is to look at again. For planning and comparison; local codes and a licensed engineer decide.

            Examples:
              hoopwright compare as-sold.json closer-bows.json
              hoopwright compare as-sold.json closer-bows.json --out drawings
              hoopwright compare as-sold.json closer-bows.json --json
            """) { before.File, second, folder, date.Option, before.Prices, before.Json };
        command.SetAction(parsed =>
        {
            if (parsed.GetRequiredValue(before.File) == "-" && parsed.GetRequiredValue(second) == "-")
            {
                terminal.Messages.WriteLine("Only one of the two plans can come from standard input; see 'hoopwright compare --help'.");
                return ExitCode.WrongUsage;
            }
            (PlanReading firstReading, PlannedTunnel first) = before.Work(parsed, terminal);
            (PlanReading secondReading, PlannedTunnel now) = before.Work(parsed, parsed.GetRequiredValue(second), terminal);
            if (first.Tunnel is null) return Refuse(terminal, parsed.GetRequiredValue(before.File), firstReading, first);
            if (now.Tunnel is null) return Refuse(terminal, parsed.GetRequiredValue(second), secondReading, now);
            var comparison = Comparison.Of(first, now);
            if (parsed.GetValue(before.Json)) terminal.Out.Write(Encoding.UTF8.GetString(ComparisonJson.Write(comparison)));
            else Print(terminal, comparison);
            if (parsed.GetValue(folder) is { } to) BeforeAfterFile.Write(terminal, Path.Combine(to, "before-and-after.svg"), first, now, Change(comparison), date.Of(parsed));
            return ExitCode.Done;
        });
        return command;
    }

    private static int Refuse(Terminal terminal, string file, PlanReading reading, PlannedTunnel planned)
    {
        terminal.Messages.WriteLine($"{file}:");
        return PlanInput.Refuse(terminal, reading, planned);
    }

    private static string Change(Comparison comparison) => comparison.Fields.IsEmpty
        ? "nothing changed"
        : string.Join("; ", comparison.Fields.Where(field => !field.IsDefault).Select(field => $"{field.Path} {field.BeforeText} > {field.AfterText}"));

    private static void Print(Terminal terminal, Comparison comparison)
    {
        if (comparison.Fields.IsEmpty) terminal.Out.WriteLine("The two plans give the same.");
        else Table(terminal, "What differs", ["field", "before", "after"], [.. comparison.Fields.Select(field => (ImmutableArray<string>)[field.Path, field.BeforeText, field.AfterText])]);
        Head(terminal, "What it stands");
        foreach (ComparedText row in ComparisonTexts.Strength(comparison)) Block(terminal, row);
        Table(terminal, "What it costs", ["stage", "before", "after", "change"], [.. ComparisonTexts.Costs(comparison).Select(row => (ImmutableArray<string>)[row.What, row.Before, row.After, row.Change])]);
        Table(terminal, "Counts and measures that change", ["", "before", "after"], [.. ComparisonTexts.Measures(comparison).Where(row => row.Differs).Select(row => (ImmutableArray<string>)[row.What, row.Before, row.After])]);
        Table(terminal, "Order lines that change", ["item", "before", "after", "change"], [.. ComparisonTexts.Orders(comparison).Select(row => (ImmutableArray<string>)[row.What, row.Before, row.After, row.Change])]);
        foreach ((string head, bool appears) in ((string, bool)[])[("No longer told", false), ("Told now", true)])
        {
            ImmutableArray<ComparedDiagnostic> told = [.. comparison.Diagnostics.Where(each => (appears ? each.After : each.Before) is not null)];
            if (told.IsEmpty) continue;
            Head(terminal, head);
            DiagnosticPrinter.Print(terminal.Out, terminal, told.Select(each => (appears ? each.After : each.Before)!), reading: null);
        }
        terminal.Out.WriteLine();
        terminal.Out.WriteLine(StrengthCaution.Text);
    }

    /// <summary>A row whose texts are too long for a column.</summary>
    private static void Block(Terminal terminal, ComparedText row)
    {
        if (!row.Differs)
        {
            terminal.Out.WriteLine($"{row.What}: {row.Before}, both");
            return;
        }
        terminal.Out.WriteLine(row.What);
        terminal.Out.WriteLine($"    before: {row.Before}");
        terminal.Out.WriteLine($"    after:  {row.After}");
    }

    private static void Table(Terminal terminal, string head, ImmutableArray<string> heads, ImmutableArray<ImmutableArray<string>> rows)
    {
        if (rows.IsEmpty) return;
        Head(terminal, head);
        TextTable.Print(terminal.Out, heads, rows);
    }

    private static void Head(Terminal terminal, string head)
    {
        terminal.Out.WriteLine();
        terminal.Out.WriteLine(head);
    }
}
