namespace Hoopwright.Sheets.Drawings;

/// <summary>The few colours, taken from the materials. Never the only carrier of meaning.</summary>
public enum Ink
{
    /// <summary>Text and lines.</summary>
    Black,

    /// <summary>White, the ground of all that is printed.</summary>
    Paper,

    /// <summary>Steel, rules and quiet marks; not for text.</summary>
    Zinc,

    /// <summary>Wood.</summary>
    Lumber,

    /// <summary>Greenhouse film.</summary>
    Film,

    /// <summary>Soil.</summary>
    Earth,

    /// <summary>Done.</summary>
    Leaf,

    /// <summary>Attention.</summary>
    Amber,

    /// <summary>Stop.</summary>
    Brick,

    /// <summary>A light tint of film.</summary>
    FilmTint,

    /// <summary>A light tint of wood.</summary>
    LumberTint,

    /// <summary>A light tint of soil.</summary>
    EarthTint,

    /// <summary>A light grey, for concrete and for the heads of tables.</summary>
    ZincTint,
}
