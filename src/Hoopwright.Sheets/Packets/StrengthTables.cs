using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Tables;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Sheets.Packets;

/// <summary>The tables about strength; none of results where the frame is not checked.</summary>
internal sealed class StrengthTables
{
    private const int MostCombinations = 12;

    private static readonly ImmutableArray<(string Sign, string Name)> Greek =
    [
        ("α", "alpha"), ("β", "beta"), ("γ", "gamma"), ("δ", "delta"), ("η", "eta"), ("θ", "theta"), ("λ", "lambda"), ("μ", "µ"), ("ρ", "rho"), ("σ", "sigma"), ("φ", "phi"), ("ψ", "psi"), ("ω", "omega"),
    ];

    private readonly StrengthReport report;
    private readonly UnitSystem units;

    /// <summary>Makes them all.</summary>
    /// <param name="report">What the tunnel stands.</param>
    /// <param name="units">Units of the packet.</param>
    /// <param name="shown">Where its parts are drawn.</param>
    public StrengthTables(StrengthReport report, UnitSystem units, ShownOn shown)
    {
        (this.report, this.units) = (report, units);
        Limits = report.Limits.IsEmpty ? null : MakeLimits();
        Combinations = report.Combinations.IsEmpty ? null : MakeCombinations();
        Parts = report.Parts.IsEmpty ? null : MakeParts(shown);
        Posts = report.FootLoads.IsEmpty ? null : MakePosts(shown);
        Row = report.Row is { Parts.IsEmpty: false } row ? MakeRow(row, shown) : null;
        Assumptions = MakeAssumptions();
        Coefficients = MakeCoefficients();
    }

    /// <summary>Snow and wind at the limit; null when there are none.</summary>
    public Table? Limits { get; }

    /// <summary>The worst combinations at the site; null when there are none.</summary>
    public Table? Combinations { get; }

    /// <summary>Posts, end walls and film under the worst that comes on them; null where nothing does.</summary>
    public Table? Parts { get; }

    /// <summary>What the feet of the bows put on their posts; null where no combination of the site does.</summary>
    public Table? Posts { get; }

    /// <summary>The worst members of the whole row; null when it was not looked at.</summary>
    public Table? Row { get; }

    /// <summary>What was taken.</summary>
    public Table Assumptions { get; }

    /// <summary>Values that the loads were worked out with.</summary>
    public Table Coefficients { get; }

    /// <summary>Every table there is.</summary>
    public ImmutableArray<Table> All => [.. new[] { Limits, Combinations, Row, Parts, Posts, Assumptions, Coefficients }.OfType<Table>()];

    private Table MakeLimits() => new("strength-limits", "Snow and wind at which the first bow reaches its limit",
        [new("Held against", 1.9), new("Least – taken – most", 2.6), new("Snow so heavy lies on the roof", 2.6), new("Load case", 2.6), new("Bow and place", 2.4), new("What governs", 3)],
        [
            .. report.Limits.Select(limit => TableRow.Of(
                limit.Level switch { StrengthLevel.Code => "code: factored load", StrengthLevel.Storm => "a storm: load once" },
                limit switch
                {
                    { GroundSnow.Taken.Pascals: < 1 } => "no snow at all: what hangs and weighs on it passes the limit already",
                    { Wind.Taken.MetresPerSecond: < 0.5 } => "no wind at all: what hangs and weighs on it passes the limit already",
                    { GroundSnow: { } snow } => $"ground snow {Range(snow, each => TapeText.Of(each, units))}",
                    { Wind: { } wind } => $"{report.WindNoun} {TapeText.Of(wind.Least, units)} – {TapeText.Of(wind.Taken, units)} – {TapeText.Of(wind.Most, units)}",
                    _ => "",
                },
                limit.RoofSnow is { Pascals: >= 1 } roof ? $"{TapeText.Of(roof, units)}: {string.Join(", ", limit.Depths.Select(depth => $"{Rounded(depth.Depth)} {depth.Words}"))}" : "",
                limit.CaseWords, Place(limit.Bow, limit.Across, limit.Up), limit.Governs)),
        ])
    { Drawing = "strength-loads" };

    private Table MakeCombinations() => new("strength-combinations", string.Create(CultureInfo.InvariantCulture, $"The worst {Math.Min(MostCombinations, report.Combinations.Length)} of {report.Combinations.Length} combinations at the site: part of the strength used, multiple of the loads at which it buckles"),
        [new("Combination", 4.6), new("Used", 1, TextAlign.End), new("Buckles at ×", 1.2, TextAlign.End), new("Bow and place", 2.6), new("What governs", 3)],
        [
            // A bow that buckles does so as a whole, at some part of the loads.
            .. report.Combinations.Take(MostCombinations).Select(each => each.Utilisation is { } used
                ? TableRow.Of(each.Words, Decimals(used), each.BucklingFactor is { } factor ? Decimals(factor) : "", Place(each.Bow, each.Across, each.Up), each.Governs)
                : TableRow.Of(each.Words, "buckles", "under 1", string.Create(CultureInfo.InvariantCulture, $"bow {each.Bow}"), each.Governs)),
        ])
    { Drawing = "strength-bow" };

    private static Table MakeRow(RowStrength row, ShownOn shown) => new("strength-row", string.Create(CultureInfo.InvariantCulture, $"The whole row in space, {row.Looked} combinations: part of the strength used by the worst member of each kind"),
        [new("Kind", 1), new("Member", 1.6), new("Where", 2.2), new("Used", 1, TextAlign.End), new("What governs", 2.6), new("Combination", 4)],
        [
            .. row.Parts.Select(part => TableRow.Of(part.Kind, part.MemberId, part.Place, part.Utilisation is { } used ? Decimals(used) : "cannot be counted on", part.Governs, part.Words) with { LeadsTo = shown.Part(part.MemberId) }),
        ]);

    private Table MakeParts(ShownOn shown) => new("strength-parts", "Besides the bows: part of what is allowed that is used, from the stronger to the weaker end of what is not known well",
        [new("What", 3.4), new("Used", 1.4), new("Verdict", 1.4), new("What governs", 2), new("Where", 2.4), new("Combination", 4)],
        [
            .. report.Parts.Select(part => TableRow.Of(part.Words, UsedWords.Of(part), VerdictWords.Of(part.Verdict), part.Governs, part.Where, part.LoadWords) with { LeadsTo = shown.Strength(part.Kind) }),
        ]);

    private Table MakePosts(ShownOn shown) => new("strength-posts", "What the foot of a bow puts on its post at most, by allowable combinations where the standard has them",
        [new("Bows", 1.6), new("Load", 2), new("At most", 1.4, TextAlign.End), new("At", 2), new("Combination", 5)],
        [
            .. report.FootLoads.SelectMany(feet => new[]
            {
                Of(feet, "pull upwards", feet.Pull),
                Of(feet, "push downwards", feet.Press),
                Of(feet, "push across", feet.Across),
                feet.Turning is { } turning ? TableRow.Of(BowsOf(feet), "moment at the ground", TapeText.Of(turning.Size, units), Foot(turning.Bow, turning.IsRight), turning.LoadWords) : null,
            }.OfType<TableRow>().Concat(feet.Buckles.Take(1).Select(words => TableRow.Of(BowsOf(feet), "buckles", "", "", string.Create(CultureInfo.InvariantCulture, $"{feet.Buckles.Length} combinations, such as {words}"))))),
        ])
    { Drawing = shown.Ground };

    private TableRow? Of(FootLoads feet, string load, FootForce? peak) =>
        peak is null ? null : TableRow.Of(BowsOf(feet), load, TapeText.Of(peak.Size, units), Foot(peak.Bow, peak.IsRight), peak.LoadWords);

    private static string BowsOf(FootLoads feet) => feet.OnEnds ? "at the ends" : "between the ends";

    private static string Foot(int bow, bool isRight) => string.Create(CultureInfo.InvariantCulture, $"bow {bow}, {(isRight ? "right" : "left")} foot");

    private Table MakeAssumptions()
    {
        List<TableRow> rows = [];
        if (report.Yield is { } yield)
        {
            rows.Add(TableRow.Of("Steel", report.Steel));
            rows.Add(TableRow.Of("Yield stress, least – taken – most", Range(yield, each => TapeText.OfStress(each, units))));
        }
        rows.Add(TableRow.Of("Feet", report.Feet));
        if (report.Row?.SnowBucklingFactor is { } factor) rows.Add(TableRow.Of("The row buckles in space at, times its worst snow", Decimals(factor)));
        rows.Add(TableRow.Of("Ground snow", report.Loads.GroundSnow is { } snow ? TapeText.Of(snow, units) : "none given"));
        rows.Add(TableRow.Of("Wind", report.Loads.Wind is { } wind ? TapeText.Of(wind, units) : "none given"));
        rows.Add(TableRow.Of("Depths of snow", string.Join(", ", SnowDepth.Of(Pressure.FromKilopascals(1)).Select(each => $"{each.Words} snow {TapeText.Of(each.Density, units)}")) + $"; {SnowDepth.Source}, from memory: confirm with the current standard"));
        return new Table("strength-assumptions", "What strength was worked out with", [new("What", 2), new("Taken", 5)], [.. rows]);
    }

    private Table MakeCoefficients()
    {
        string[] governing = [.. report.Limits.Select(limit => limit.CaseCode).Distinct()];
        IEnumerable<Coefficient> used = report.Loads.Coefficients.Concat(report.Loads.Cases.Where(load => governing.Contains(load.Code)).SelectMany(load => load.Coefficients));
        return new Table("strength-coefficients", "Values that the loads were worked out with",
            [new("Symbol", 1.1), new("Value", 1.5, TextAlign.End), new("What it is for", 3), new("By", 3.4), new("From", 3.2), new("Mark", 2)],
            [
                .. used.Select(each => (each.Formula.Symbol, Value(each), each.Words, each.Formula.Text, each.Formula.Source.ToString(), each.NeedsConfirming ? "confirm with the current standard" : "")).Distinct()
                    .Select(each => TableRow.Of(Plain(each.Symbol), each.Item2, Plain(each.Words), Plain(each.Text), each.Item5, each.Item6)),
            ])
        { Drawing = "strength-loads" };
    }

    /// <summary>Greek letters by their names: the lettering has none but µ.</summary>
    private static string Plain(string text) => Greek.Aggregate(text, (plain, letter) => plain.Replace(letter.Sign, letter.Name, StringComparison.Ordinal));

    private string Value(Coefficient coefficient) => (coefficient.Formula.Unit, units) switch
    {
        ("Pa", _) => TapeText.Of(Pressure.FromPascals(coefficient.Value.Value), units),
        ("m", UnitSystem.UsCustomary) => TapeText.Of(Length.FromMetres(coefficient.Value.Value), units),
        ("m/s", UnitSystem.UsCustomary) => TapeText.Of(Speed.FromMetresPerSecond(coefficient.Value.Value), units),
        var (unit, _) => $"{coefficient.Value.Value.ToString("0.####", CultureInfo.InvariantCulture)} {unit}".Trim(),
    };

    private static string Range(PressureRange range, Func<Pressure, string> write) => $"{write(range.Least)} – {write(range.Taken)} – {write(range.Most)}";

    private static string Decimals(Ratio ratio) => ratio.Value.ToString("0.00", CultureInfo.InvariantCulture);

    private string Place(int bow, Length across, Length up) => string.Create(CultureInfo.InvariantCulture, $"bow {bow}, {Rounded(across)} across, {Rounded(up)} up");

    private string Rounded(Length length) => TapeText.Rough(length, units);
}
