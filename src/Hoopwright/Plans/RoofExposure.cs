namespace Hoopwright.Plans;

/// <summary>How much wind the roof gets to blow snow off.</summary>
public enum RoofExposure
{
    /// <summary>Wind on all sides, no shelter by land, trees or buildings.</summary>
    Exposed,

    /// <summary>Neither of the other two.</summary>
    Partly,

    /// <summary>Tight in among conifers or higher buildings.</summary>
    Sheltered,
}
