using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Dxf;

/// <summary>A family of equal broken lines of a hatch, in millimetres of paper.</summary>
/// <param name="AngleDeg">Direction of the lines.</param>
/// <param name="XMm">A point of one of them.</param>
/// <param name="YMm">A point of one of them.</param>
/// <param name="ShiftMm">How far the next line is shifted along.</param>
/// <param name="ApartMm">How far the next line lies to the left.</param>
/// <param name="DashesMm">Dash and gap in turn, gaps negative, 0 a dot; none for an unbroken line.</param>
internal sealed record DxfPatternLine(double AngleDeg, double XMm, double YMm, double ShiftMm, double ApartMm, params double[] DashesMm);

/// <summary>The textures of materials as hatches, alike in look to those on paper.</summary>
internal static class DxfPattern
{
    private static readonly DxfPatternLine[] Concrete =
    [
        new(0, 0, 0, 0.9, 1.7, 0, -1.9), new(37, 0.4, 0.7, 1.3, 2.6, 0, -2.3),
        new(15, 0, 0, 2.1, 3.4, 0.8, -5.6), new(75, 0, 0, 2.1, 3.4, 0.8, -5.6), new(135, 0.8, 0.2, 2.1, 3.4, 0.8, -5.6),
    ];

    private static readonly DxfPatternLine[] Earth =
    [
        new(58, 0.7, 0, 2.9, 4.6, 2.7, -3.1), new(58, 1.6, 0, 2.9, 4.6, 2.7, -3.1), new(58, 2.5, 0, 2.9, 4.6, 2.7, -3.1),
    ];

    /// <summary>Name and lines of a texture.</summary>
    /// <param name="kind">The texture; film is none, since it is a tint and two strokes.</param>
    /// <param name="isWide">True where the longer side lies level, for wood.</param>
    public static (string Name, DxfPatternLine[] Lines) Of(Hatch kind, bool isWide) => kind switch
    {
        Hatch.Concrete => ("CONCRETE", Concrete),
        Hatch.Earth => ("EARTH", Earth),
        Hatch.Wood => ("WOOD", [new(isWide ? 0 : 90, 0, 0.4, 0, 1.1)]),
        Hatch.Film => throw new ArgumentOutOfRangeException(nameof(kind), "Film is a tint and two strokes."),
    };
}
