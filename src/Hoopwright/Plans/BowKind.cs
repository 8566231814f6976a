namespace Hoopwright.Plans;

/// <summary>The shape of a bow.</summary>
public enum BowKind
{
    /// <summary>Legs and one circular arc.</summary>
    Round,

    /// <summary>Legs, shoulder bends and two long arcs that meet at the ridge.</summary>
    Gothic,

    /// <summary>Legs, shoulder bends and straight rafters.</summary>
    Peaked,

    /// <summary>A measured table of heights, joined by a smooth curve.</summary>
    Offsets,
}
