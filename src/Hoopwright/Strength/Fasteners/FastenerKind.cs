namespace Hoopwright.Strength.Fasteners;

/// <summary>Fasteners in wood.</summary>
internal enum FastenerKind
{
    /// <summary>Nail with a plain shank.</summary>
    Nail,

    /// <summary>Wood screw.</summary>
    WoodScrew,

    /// <summary>Lag screw.</summary>
    LagScrew,
}
