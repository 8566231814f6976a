namespace Hoopwright.Inside;

/// <summary>How the tunnel is kept over the year that is worked out.</summary>
public enum InsideWay
{
    /// <summary>The air outside, for comparison.</summary>
    Outside,

    /// <summary>Shut all year.</summary>
    Shut,

    /// <summary>Half open all year.</summary>
    Half,

    /// <summary>Wide open all year.</summary>
    Full,

    /// <summary>Opened and shut by someone by the warmth inside; with row cover and heater where the plan has them.</summary>
    ByHand,

    /// <summary>The same with a row cover over the crop at night: air at the crop.</summary>
    RowCover,
}
