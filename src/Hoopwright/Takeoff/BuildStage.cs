namespace Hoopwright.Takeoff;

/// <summary>A stage of the build, for cost by stage.</summary>
public enum BuildStage
{
    /// <summary>Setting out.</summary>
    Site,

    /// <summary>Ground posts, concrete, baseboards.</summary>
    Ground,

    /// <summary>Bows, purlins, ties and braces.</summary>
    Frame,

    /// <summary>End walls and doors.</summary>
    Ends,

    /// <summary>Film, channel, battens, sides.</summary>
    Cover,
}
