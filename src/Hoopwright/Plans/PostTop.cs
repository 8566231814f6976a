namespace Hoopwright.Plans;

/// <summary>How the top of an end-wall post meets the bow.</summary>
public enum PostTop
{
    /// <summary>Cut to the slope of the bow's underside.</summary>
    Bow,

    /// <summary>Cut square, held by a bracket.</summary>
    Bracket,
}
