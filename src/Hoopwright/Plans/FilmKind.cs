namespace Hoopwright.Plans;

/// <summary>How much warmth film lets through at night.</summary>
public enum FilmKind
{
    /// <summary>Plain polyethylene: over half of the warmth that ground and crop send out passes through it.</summary>
    Plain,

    /// <summary>Film made to hold warmth back.</summary>
    Infrared,
}
