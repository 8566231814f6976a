namespace Hoopwright.Plans;

/// <summary>Visual grade, as stamped on the wood.</summary>
public enum WoodGrade
{
    /// <summary>Select Structural.</summary>
    SelectStructural,

    /// <summary>No. 1.</summary>
    No1,

    /// <summary>No. 2.</summary>
    No2,

    /// <summary>No. 3.</summary>
    No3,
}
