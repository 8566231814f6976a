namespace Hoopwright.Plans;

/// <summary>What a door leaf is covered with.</summary>
public enum LeafCover
{
    /// <summary>Film.</summary>
    Film,

    /// <summary>Rigid sheet.</summary>
    Sheet,

    /// <summary>Nothing to cover: the door is bought whole.</summary>
    None,
}
