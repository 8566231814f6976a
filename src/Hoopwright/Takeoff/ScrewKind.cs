namespace Hoopwright.Takeoff;

/// <summary>What a bolt or screw of a computed length is for.</summary>
internal enum ScrewKind
{
    /// <summary>Carriage bolt through board and post.</summary>
    Bolt,

    /// <summary>Lag screw into the top of a post.</summary>
    Lag,

    /// <summary>Screw through a board into tube.</summary>
    BoardToTube,
}
