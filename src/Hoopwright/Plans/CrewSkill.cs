namespace Hoopwright.Plans;

/// <summary>How practised the crew is.</summary>
public enum CrewSkill
{
    /// <summary>First tunnel.</summary>
    Beginner,

    /// <summary>Has built before.</summary>
    Practised,
}
