namespace Hoopwright.Strength.Wood;

/// <summary>How a wood beam is loaded, for the length over which it may turn sideways.</summary>
internal enum BeamLoad
{
    /// <summary>Any load; never the favourable choice of two.</summary>
    Any,

    /// <summary>Two supports, load spread evenly.</summary>
    Uniform,

    /// <summary>Two supports, one load at the middle, not held there.</summary>
    Middle,

    /// <summary>Equal moments at both ends.</summary>
    EndMoments,

    /// <summary>Cantilever, load spread evenly.</summary>
    CantileverUniform,

    /// <summary>Cantilever, load at its end.</summary>
    CantileverEnd,
}
