namespace Hoopwright.Strength.Steel;

/// <summary>How slender a wall is for the action looked at.</summary>
internal enum WallClass
{
    /// <summary>Reaches the plastic moment, or full yield in compression.</summary>
    Compact,

    /// <summary>Reaches first yield, not the plastic moment.</summary>
    Noncompact,

    /// <summary>Wrinkles before first yield.</summary>
    Slender,

    /// <summary>Beyond the range of the standard.</summary>
    OutsideStandard,
}
