namespace Hoopwright.Sheets.Drawings;

/// <summary>The texture that tells what a cut face is made of.</summary>
public enum Hatch
{
    /// <summary>Dots and small triangles.</summary>
    Concrete,

    /// <summary>Groups of slanting strokes.</summary>
    Earth,

    /// <summary>Grain lines along the longer side.</summary>
    Wood,

    /// <summary>A light tint with a sheen line.</summary>
    Film,
}
