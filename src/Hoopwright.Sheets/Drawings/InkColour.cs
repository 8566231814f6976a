namespace Hoopwright.Sheets.Drawings;

/// <summary>The red, green and blue of an ink.</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
public readonly record struct InkColour(byte Red, byte Green, byte Blue)
{
    /// <summary>The colour of an ink.</summary>
    public static InkColour Of(Ink ink) => ink switch
    {
        Ink.Black => new(0x1d, 0x23, 0x21),
        Ink.Paper => new(0xff, 0xff, 0xff),
        Ink.Zinc => new(0x6b, 0x77, 0x75),
        Ink.Lumber => new(0x8a, 0x5a, 0x2b),
        Ink.Film => new(0x2f, 0x6f, 0x8f),
        Ink.Earth => new(0x5d, 0x4a, 0x3a),
        Ink.Leaf => new(0x2f, 0x6b, 0x3f),
        Ink.Amber => new(0x8f, 0x5a, 0x00),
        Ink.Brick => new(0xa3, 0x30, 0x1f),
        Ink.FilmTint => new(0xe4, 0xee, 0xf3),
        Ink.LumberTint => new(0xf3, 0xea, 0xde),
        Ink.EarthTint => new(0xec, 0xe7, 0xe1),
        Ink.ZincTint => new(0xec, 0xee, 0xed),
    };

    /// <summary>As #rrggbb.</summary>
    public string Hex => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"#{Red:x2}{Green:x2}{Blue:x2}");
}
