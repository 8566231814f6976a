using System.Text.Json.Serialization;

namespace Hoopwright.Sharing;

/// <summary>What the server did with a pushed entry.</summary>
public enum EntryOutcome
{
    /// <summary>It is new and was added.</summary>
    [JsonStringEnumMemberName("added")]
    Added,

    /// <summary>The very same entry was there before.</summary>
    [JsonStringEnumMemberName("alreadyHere")]
    AlreadyHere,

    /// <summary>Another entry with the same id but other content is there; both are kept, for a person to look at.</summary>
    [JsonStringEnumMemberName("keptBoth")]
    KeptBoth,

    /// <summary>It cannot be kept; the receipt says why. Sending it again will not help.</summary>
    [JsonStringEnumMemberName("refused")]
    Refused,
}
