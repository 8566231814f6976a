namespace Hoopwright.Strength;

/// <summary>What a limit is measured with.</summary>
public enum StrengthLevel
{
    /// <summary>As codes ask for a building: factors on the loads, reduced strength.</summary>
    Code,

    /// <summary>As a storm brings it: the load once, reduced strength. What lies above it is the frame's own reserve, which nobody can count on.</summary>
    Storm,
}
