namespace Hoopwright.Plans;

/// <summary>How open the land around is to wind, as EN 1991-1-4 classes it.</summary>
public enum TerrainCategory
{
    /// <summary>Open sea or its coast.</summary>
    Zero,

    /// <summary>Lakes, or flat land without obstacles.</summary>
    I,

    /// <summary>Low vegetation and scattered obstacles at least twenty heights apart.</summary>
    II,

    /// <summary>Regular cover of vegetation or buildings: villages, suburbs, woods.</summary>
    III,

    /// <summary>At least 15 % built over, with buildings of over 15 m.</summary>
    IV,
}
