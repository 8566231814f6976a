namespace Hoopwright.Sheets.Drawings;

/// <summary>What a line says, and so how heavy it is drawn.</summary>
public enum LineRole
{
    /// <summary>The edge of what the view cuts through, and the sheet's frame: 0.50 mm.</summary>
    Cut,

    /// <summary>A visible edge: 0.35 mm.</summary>
    Outline,

    /// <summary>A hidden edge: 0.18 mm, dashed.</summary>
    Hidden,

    /// <summary>Dimension and extension lines, leaders and other thin lines: 0.18 mm.</summary>
    Dimension,

    /// <summary>A centre or string line: 0.13 mm, chain.</summary>
    Centre,

    /// <summary>The texture of a material: 0.13 mm.</summary>
    Texture,
}
