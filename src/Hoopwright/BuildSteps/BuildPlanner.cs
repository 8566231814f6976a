using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Days;
using Hoopwright.Layout;
using Hoopwright.Plans;

namespace Hoopwright.BuildSteps;

/// <summary>Makes the steps of a job from a tunnel.</summary>
public static class BuildPlanner
{
    /// <summary>Makes them. Never throws for a tunnel.</summary>
    /// <param name="tunnel">The tunnel as laid out.</param>
    /// <param name="cover">Its cover.</param>
    /// <param name="fastening">How its film is put on.</param>
    /// <param name="job">Which job.</param>
    public static BuildPlan Plan(Tunnel tunnel, CoverPlan cover, FasteningPlan fastening, BuildJob job = BuildJob.Build)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(fastening);
        CrewSkill skill = tunnel.Plan.Crew.Skill ?? DayDefaults.Skill.Value;
        var writer = new BuildWriter(tunnel, cover, fastening, skill, new StepShares(tunnel));
        return new BuildPlan(job, skill, job switch
        {
            BuildJob.Build => writer.Build(),
            BuildJob.Recover => writer.Recover(),
        });
    }
}
