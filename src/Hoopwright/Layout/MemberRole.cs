namespace Hoopwright.Layout;

/// <summary>What a member does.</summary>
public enum MemberRole
{
    /// <summary>A piece of a bow.</summary>
    Bow,

    /// <summary>A straight crosswise tie in a bow.</summary>
    Tie,

    /// <summary>The lengthwise tube under the ridge.</summary>
    RidgePurlin,

    /// <summary>Another lengthwise tube.</summary>
    Purlin,

    /// <summary>A diagonal in a corner.</summary>
    CornerBrace,

    /// <summary>A tube in the ground that takes the leg of a bow.</summary>
    GroundPost,

    /// <summary>The board along the foot of a side.</summary>
    Baseboard,

    /// <summary>The board along a side at which the roof film ends.</summary>
    HipBoard,

    /// <summary>The tube that a curtain rolls on.</summary>
    RollTube,

    /// <summary>An upright of an end wall, from the ground to the bow.</summary>
    EndPost,

    /// <summary>A short upright over a door.</summary>
    Cripple,

    /// <summary>A level board between end-wall posts.</summary>
    Girt,

    /// <summary>The board along the foot of an end.</summary>
    EndBaseboard,

    /// <summary>One of the two boards over a door.</summary>
    Header,

    /// <summary>A board that lines the side of a door opening.</summary>
    Jamb,

    /// <summary>The board over a vent.</summary>
    VentRail,

    /// <summary>An upright of a door leaf.</summary>
    LeafStile,

    /// <summary>A level board of a door leaf.</summary>
    LeafRail,

    /// <summary>The diagonal of a door leaf.</summary>
    LeafBrace,
}
