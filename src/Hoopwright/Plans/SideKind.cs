namespace Hoopwright.Plans;

/// <summary>How a long side is closed.</summary>
public enum SideKind
{
    /// <summary>The roof film runs down to the baseboard.</summary>
    Fixed,

    /// <summary>A curtain rolled up on a tube by a crank.</summary>
    RollUp,

    /// <summary>A curtain let down from the hip board.</summary>
    Drop,
}
