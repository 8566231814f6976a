namespace Hoopwright.Plans;

/// <summary>Which film goes on first.</summary>
public enum CoverOrder
{
    /// <summary>The ends, then the roof over them.</summary>
    EndsFirst,

    /// <summary>The roof, then the ends.</summary>
    RoofFirst,
}
