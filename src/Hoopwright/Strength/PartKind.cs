namespace Hoopwright.Strength;

/// <summary>What a part of the tunnel besides its bows is.</summary>
public enum PartKind
{
    /// <summary>The posts in the ground that hold the bows.</summary>
    GroundPost,

    /// <summary>The wood posts of an end wall.</summary>
    EndPost,

    /// <summary>Girts, headers and vent rails of an end wall.</summary>
    EndBoard,

    /// <summary>The film.</summary>
    Film,

    /// <summary>Screws and nails that hold the edges of the film.</summary>
    Fastener,
}
