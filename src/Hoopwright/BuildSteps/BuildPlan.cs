using System.Collections.Immutable;
using Hoopwright.Plans;

namespace Hoopwright.BuildSteps;

/// <summary>The whole job as steps.</summary>
/// <param name="Job">Which job.</param>
/// <param name="Skill">The skill of the crew for which the work is given.</param>
/// <param name="Steps">The steps, none before one that it waits for.</param>
public sealed record BuildPlan(BuildJob Job, CrewSkill Skill, ImmutableArray<BuildStep> Steps)
{
    /// <summary>The work of all steps.</summary>
    public WorkSpan Work => WorkSpan.Sum(Steps.Select(step => step.Work));
}
