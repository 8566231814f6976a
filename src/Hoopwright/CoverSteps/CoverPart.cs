namespace Hoopwright.CoverSteps;

/// <summary>Which part of covering a step belongs to.</summary>
public enum CoverPart
{
    /// <summary>Before any film is unrolled.</summary>
    Before,

    /// <summary>Film of the ends.</summary>
    Ends,

    /// <summary>Film of the roof.</summary>
    Roof,

    /// <summary>Curtains of the sides.</summary>
    Sides,

    /// <summary>Air between two layers.</summary>
    Air,

    /// <summary>Cutting free and trimming.</summary>
    After,
}
