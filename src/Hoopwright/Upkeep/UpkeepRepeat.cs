namespace Hoopwright.Upkeep;

/// <summary>How often a date of the upkeep comes back.</summary>
public enum UpkeepRepeat
{
    /// <summary>Not at all.</summary>
    Once,

    /// <summary>Every week until the end of the season.</summary>
    Weekly,

    /// <summary>Every year.</summary>
    Yearly,
}
