namespace Hoopwright.Plans;

/// <summary>The way a hinged door swings.</summary>
public enum DoorSwing
{
    /// <summary>Outwards, over the baseboard.</summary>
    Out,

    /// <summary>Inwards.</summary>
    In,
}
