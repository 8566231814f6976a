using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.Comparisons;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Packets;

/// <summary>Tables of the checks before each cut and of what was measured.</summary>
internal sealed class SiteBookTables
{
    private readonly UnitSystem units;

    /// <summary>Makes them all.</summary>
    /// <param name="planned">The tunnel, worked out to its end.</param>
    public SiteBookTables(PlannedTunnel planned)
    {
        CutChecks checks = planned.Checks ?? throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
        AsBuiltTunnel? built = planned.AsBuilt;
        units = planned.Units;
        ShownOn shown = new(PacketWriter.Built(planned));
        Checks = new Table("before-you-cut", "Go, measure first, or stop", [new("What", 1.2), new("Verdict", 1.5), new("Why", 6)],
            [.. checks.All.Select(check => TableRow.Of(NameOf(check.Kind), NameOf(check.Verdict), check.SaysText) with { LeadsTo = shown.Cut(check.Kind) })]);
        Needs = new Table("to-measure", "To measure, and what it is needed for", [new("Name in the site book", 3), new("What", 4), new("Planned", 1.6, TextAlign.End), new("Measured", 1.8, TextAlign.End), new("Needed for", 2)],
        [
            .. checks.All.SelectMany(check => check.Needs).DistinctBy(need => need.Of.Name).Select(need => TableRow.Of(
                need.Of.Name, need.Of.What, Tape(need.Of.Planned), need.Taken?.Value is { } value ? Tape(value) + (need.IsMissing ? ", again" : "") : "________",
                string.Join(", ", checks.All.Where(check => check.Needs.Any(each => each.Of.Name == need.Of.Name)).Select(check => NameOf(check.Kind).ToLowerInvariant()))) with
            { LeadsTo = shown.Measured(need.Of) }),
        ]);
        if (built is null) return;
        Measured = new Table("as-built", "Planned against measured", [new("What", 3.6), new("Planned", 1.5, TextAlign.End), new("Measured", 1.5, TextAlign.End), new("Off", 1.1, TextAlign.End), new("Allowed", 1.1, TextAlign.End), new("Readings", 2.6)],
        [
            .. built.Measurements.Measured.Select(each => TableRow.Of(each.Of.What, Tape(each.Of.Planned), each.Value is { } value ? Tape(value) : "",
                each.Off is { } off ? (off > Length.Zero ? "+" : "") + Tape(off) : "", (each.IsOut ? "out of " : "") + Tape(each.Of.Tolerance), ReadingsOf(each)) with
            { LeadsTo = shown.Measured(each.Of) }),
        ]);
        Changed = new Table("as-built-changes", "What it changed", [new("Cut", 1.2), new("What", 4), new("By the plan", 1.6, TextAlign.End), new("Now", 1.6, TextAlign.End), new("Short by", 1.3, TextAlign.End)],
        [
            .. checks.All.SelectMany(check => check.Changed.Select(piece => TableRow.Of(
                NameOf(check.Kind), $"{piece.Place} ({piece.Id})", Tape(piece.Planned), Tape(piece.Now), piece.ShortBy > Length.Zero ? Tape(piece.ShortBy) : "") with
            { LeadsTo = shown.Part(piece.Id) ?? shown.Cut(check.Kind) })),
        ]);
        if (planned.ByPlan is { } byPlan)
        {
            var comparison = Comparison.Of(byPlan with { Strength = planned.StrengthByPlan }, planned);
            Worth = new Table("as-built-worth", "What that changes in money and strength", [new("What", 4), new("By the plan", 3, TextAlign.End), new("Now", 3, TextAlign.End), new("Change", 1.6, TextAlign.End)],
                [.. ComparisonTexts.Paid(comparison).Concat(Stands(comparison)).Select(row => TableRow.Of(row.What, row.Before, row.After, row.Change))]);
        }
        if (built.Squaring is not { } squaring) return;
        Corners = new Table("as-built-corners", "Corners of the strings, from four sides and two diagonals", [new("Corner", 2), new("Across", 2, TextAlign.End), new("Along", 2, TextAlign.End), new("Move to the right", 2, TextAlign.End), new("Move to the back", 2, TextAlign.End)],
            [.. squaring.Corners.Select(corner => TableRow.Of(corner.Name, Tape(corner.X), Tape(corner.Y), Tape(corner.MoveRight), Tape(corner.MoveBack)))])
        { Drawing = "set-out" };
        Residuals = new Table("as-built-residuals", "What the corners leave of each length", [new("Length", 4), new("Measured", 2, TextAlign.End), new("Left over", 2, TextAlign.End)],
            [.. squaring.Residuals.Select(left => TableRow.Of(left.Name, Tape(built.Measurements.Of(left.Name)!.Value!.Value), Tape(left.Left)))])
        { Drawing = "set-out" };
    }

    /// <summary>The checks and their verdicts.</summary>
    public Table Checks { get; }

    /// <summary>What they depend on, each once, with room to write.</summary>
    public Table Needs { get; }

    /// <summary>Planned against measured; null while nothing was measured.</summary>
    public Table? Measured { get; }

    /// <summary>Pieces that changed; null while nothing was measured.</summary>
    public Table? Changed { get; }

    /// <summary>Order lines, cost and strength that changed; null while nothing was measured.</summary>
    public Table? Worth { get; }

    /// <summary>Where the corners stand; null until they can be known.</summary>
    public Table? Corners { get; }

    /// <summary>What the fit leaves; null until the corners can be known.</summary>
    public Table? Residuals { get; }

    /// <summary>All of them that have rows.</summary>
    public ImmutableArray<Table> All => [.. new[] { Checks, Needs, Measured, Changed, Worth, Corners, Residuals }.OfType<Table>().Where(table => !table.Rows.IsEmpty)];

    internal static string NameOf(CutCheckKind kind) => kind switch
    {
        CutCheckKind.Film => "Film",
        CutCheckKind.Posts => "End posts",
        CutCheckKind.Channel => "Lock channel",
        CutCheckKind.Boards => "Boards",
        CutCheckKind.Concrete => "Concrete",
    };

    private static string NameOf(CutVerdict verdict) => verdict switch
    {
        CutVerdict.Go => "Go",
        CutVerdict.MeasureFirst => "Measure first",
        CutVerdict.Stop => "STOP",
    };

    private static IEnumerable<ComparedText> Stands(Comparison comparison)
    {
        if (comparison is not { FactsBefore.Strength: { } before, FactsAfter.Strength: { } after }) return [];
        HashSet<string> turned = [.. after.Parts.Where(part => before.Parts.Any(each => each.Words == part.Words && each.Verdict != part.Verdict)).Select(part => part.Words)];
        HashSet<string> parts = [.. after.Parts.Concat(before.Parts).Select(part => part.Words)];
        return ComparisonTexts.Strength(comparison).Where(row => row.Differs && (turned.Contains(row.What) || (!parts.Contains(row.What) && !row.What.Contains("gives way", StringComparison.Ordinal))));
    }

    private string Tape(Length length) => TapeText.Of(length, units);

    private string ReadingsOf(Measurement measurement)
    {
        string last = measurement.Readings[^1].Standing switch
        {
            ReadingStanding.Used or ReadingStanding.Earlier => "",
            ReadingStanding.Waiting => $"{measurement.Readings[^1].Text} waits for a second",
            ReadingStanding.TakenBack => "the last taken back",
            ReadingStanding.Unreadable => "the last cannot be read",
        };
        int counted = measurement.Counted.Length, corrected = measurement.Readings.Sum(reading => reading.Corrections.Length);
        string[] parts =
        [
            FormattableString.Invariant($"{counted}"),
            .. counted > 1 ? (string[])[$"{Tape(measurement.Spread)} between them"] : [],
            .. corrected > 0 ? (string[])[FormattableString.Invariant($"corrected {(corrected == 1 ? "once" : $"{corrected} times")}")] : [],
            .. last.Length > 0 ? (string[])[last] : [],
        ];
        return string.Join(", ", parts);
    }
}
