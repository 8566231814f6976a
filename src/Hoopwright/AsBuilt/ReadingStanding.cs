namespace Hoopwright.AsBuilt;

/// <summary>Whether a reading counts.</summary>
public enum ReadingStanding
{
    /// <summary>It is the one that is used: the latest that counts.</summary>
    Used,

    /// <summary>It counted until a later one did.</summary>
    Earlier,

    /// <summary>It is so far from the plan that it waits for a second reading that agrees with it.</summary>
    Waiting,

    /// <summary>It was taken back.</summary>
    TakenBack,

    /// <summary>It cannot be read as a length.</summary>
    Unreadable,
}
