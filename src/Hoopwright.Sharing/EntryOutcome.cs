namespace Hoopwright.Sharing;

/// <summary>What the server did with a pushed entry.</summary>
public enum EntryOutcome
{
    /// <summary>It is new and was added.</summary>
    Added,

    /// <summary>The very same entry was there before.</summary>
    AlreadyHere,

    /// <summary>Another entry with the same id but other content is there; both are kept, for a person to look at.</summary>
    KeptBoth,

    /// <summary>It cannot be kept; the receipt says why. Sending it again will not help.</summary>
    Refused,
}
