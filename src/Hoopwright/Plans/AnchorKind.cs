namespace Hoopwright.Plans;

/// <summary>What holds the legs of the bows.</summary>
public enum AnchorKind
{
    /// <summary>Ground posts; the leg of the bow slides into or over the post.</summary>
    Posts,

    /// <summary>Boards on the ground; hangers hold the leg to the board.</summary>
    Boards,
}
