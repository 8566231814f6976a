using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>Who builds it.</summary>
public sealed record Crew : PlanSection
{
    /// <summary>How many people work at once.</summary>
    [Description("How many people work at once.")]
    public int? People { get; init; }

    /// <summary>beginner or practised.</summary>
    [Description("beginner or practised.")]
    public CrewSkill? Skill { get; init; }
}
