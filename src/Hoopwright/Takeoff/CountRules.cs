using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>How many, from a length and a spacing.</summary>
internal static class CountRules
{
    // Spacings divide most lengths evenly in feet but seldom in doubles.
    private const double WholeNumber = 1e-9;

    /// <summary>
    /// Fasteners along a run: one at each end and no gap wider than the spacing. None for a run without length.
    /// </summary>
    /// <param name="run">Length of the run.</param>
    /// <param name="spacing">The widest gap; above 0.</param>
    public static int EndsIncluded(Length run, Length spacing) => run <= Length.Zero ? 0 : Gaps(run, spacing) + 1;

    /// <summary>Fasteners round a closed line, no gap wider than the spacing.</summary>
    /// <param name="round">Length once round.</param>
    /// <param name="spacing">The widest gap; above 0.</param>
    public static int Around(Length round, Length spacing) => round <= Length.Zero ? 0 : Gaps(round, spacing);

    /// <summary>Whole ones of a size that cover an extent.</summary>
    public static int Covering(Length extent, Length each) => Gaps(extent, each);

    /// <summary>
    /// Sheets that cover a rectangle, all turned one way, whichever way takes fewer. Strips cut off are not counted on for
    /// the next rectangle: a joint wants a rail behind it.
    /// </summary>
    public static int Sheets(Length width, Length height, Length sheetWidth, Length sheetLength) => Math.Min(
        Covering(width, sheetWidth) * Covering(height, sheetLength),
        Covering(width, sheetLength) * Covering(height, sheetWidth));

    /// <summary>A bolt or screw as long as what it goes through, up to the next half inch or 10 mm, as they are sold. Metric diameters from memory.</summary>
    public static string ScrewSize(ScrewKind kind, Length least, UnitSystem units)
    {
        if (units == UnitSystem.Metric)
        {
            string metric = kind switch { ScrewKind.Bolt => "M10", ScrewKind.Lag => "10", ScrewKind.BoardToTube => "6.3" };
            return FormattableString.Invariant($"{metric} x {10 * Gaps(least, Length.FromMillimetres(10))} mm");
        }
        string diameter = kind switch { ScrewKind.Bolt or ScrewKind.Lag => "3/8", ScrewKind.BoardToTube => "1/4" };
        int halves = Gaps(least, Length.FromInches(0.5));
        string whole = FormattableString.Invariant($"{halves / 2}");
        return FormattableString.Invariant($"{diameter} x {(halves % 2 == 0 ? whole : halves == 1 ? "1/2" : whole + "-1/2")} in");
    }

    /// <summary>A size that is sold by one name in inches and by another in millimetres.</summary>
    public static string Size(string inches, string millimetres, UnitSystem units) => units switch { UnitSystem.UsCustomary => inches, UnitSystem.Metric => millimetres };

    private static int Gaps(Length run, Length spacing)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(spacing.Metres, 0, nameof(spacing));
        return Math.Max(1, (int)Math.Ceiling((run / spacing) - WholeNumber));
    }
}
