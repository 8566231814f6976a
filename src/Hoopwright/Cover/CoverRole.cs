namespace Hoopwright.Cover;

/// <summary>What a piece of film covers.</summary>
public enum CoverRole
{
    /// <summary>The roof, and fixed sides with it.</summary>
    Roof,

    /// <summary>An end wall.</summary>
    End,

    /// <summary>A side below the hip board.</summary>
    SideCurtain,

    /// <summary>A door leaf.</summary>
    DoorLeaf,
}
