namespace Hoopwright.CoverSteps;

/// <summary>How the roof is covered.</summary>
public enum FilmVariant
{
    /// <summary>One layer.</summary>
    Single,

    /// <summary>Two layers that lie together.</summary>
    Double,

    /// <summary>Two layers held apart by a blower.</summary>
    Inflated,
}
