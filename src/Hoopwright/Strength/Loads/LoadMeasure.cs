namespace Hoopwright.Strength.Loads;

/// <summary>What a load along a member is measured over.</summary>
public enum LoadMeasure
{
    /// <summary>The length of the member.</summary>
    Length,

    /// <summary>What of the member is seen in the direction of the load: the upright part for a level load, the level part for a load from above.</summary>
    Projection,
}
