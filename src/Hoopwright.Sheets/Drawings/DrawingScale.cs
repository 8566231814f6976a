using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A scale that a scale rule has: one on paper to so many in the world.</summary>
/// <param name="Denominator">How many times larger the thing is than its picture; above 0.</param>
/// <param name="Name">As it is written on the sheet.</param>
public sealed record DrawingScale(int Denominator, string Name)
{
    /// <summary>Scales in feet and inches, from large to small.</summary>
    public static ImmutableArray<DrawingScale> UsCustomary { get; } =
    [
        new(1, "full size"), new(2, "6\" = 1'-0\""), new(4, "3\" = 1'-0\""), new(8, "1-1/2\" = 1'-0\""), new(12, "1\" = 1'-0\""),
        new(16, "3/4\" = 1'-0\""), new(24, "1/2\" = 1'-0\""), new(32, "3/8\" = 1'-0\""), new(48, "1/4\" = 1'-0\""),
        new(64, "3/16\" = 1'-0\""), new(96, "1/8\" = 1'-0\""), new(128, "3/32\" = 1'-0\""), new(192, "1/16\" = 1'-0\""),
        new(240, "1\" = 20'"), new(360, "1\" = 30'"), new(480, "1\" = 40'"), new(600, "1\" = 50'"), new(720, "1\" = 60'"), new(1200, "1\" = 100'"),
        new(2400, "1\" = 200'"), new(6000, "1\" = 500'"),
    ];

    /// <summary>Metric scales, from large to small: those of ISO 5455 and, between them, 1:25, 1:40, 1:75, 1:125 and 1:250, which scale rules carry too.</summary>
    public static ImmutableArray<DrawingScale> Metric { get; } =
    [
        .. new[] { 1, 2, 5, 10, 20, 25, 40, 50, 75, 100, 125, 200, 250, 500, 1000, 2000, 5000 }
            .Select(denominator => new DrawingScale(denominator, string.Create(CultureInfo.InvariantCulture, $"1:{denominator}"))),
    ];

    /// <summary>The scales of a unit system.</summary>
    public static ImmutableArray<DrawingScale> Of(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => UsCustomary,
        UnitSystem.Metric => Metric,
    };

    /// <summary>
    /// The largest scale at which a thing fits its room on paper. Where even the smallest scale is too large the
    /// smallest is given, and the drawing then leaves its frame, which the check for collisions reports.
    /// </summary>
    public static DrawingScale ToFit(Length wide, Length high, double roomWideMm, double roomHighMm, UnitSystem units)
    {
        ImmutableArray<DrawingScale> scales = Of(units);
        foreach (DrawingScale scale in scales)
        {
            if (scale.PaperMm(wide) <= roomWideMm && scale.PaperMm(high) <= roomHighMm)
                return scale;
        }

        return scales[^1];
    }

    /// <summary>How long a length is on paper, mm.</summary>
    public double PaperMm(Length length) => length.Millimetres / Denominator;
}
