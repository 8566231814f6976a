using System.Text.Json;
using CsCheck;
using Hoopwright.Scheduling;
using Hoopwright.Testing;

namespace Hoopwright.Reference.Tests.Scheduling;

/// <summary>Random jobs against Google OR-Tools 9.15 (CP-SAT).</summary>
public sealed class OutsideScheduleTests
{
    [Fact]
    public void Random_jobs_end_as_early_as_an_outside_solver_proves()
    {
        int compared = 0, proven = 0;
        RandomSchedules.Jobs.Sample(
            job =>
            {
                if (OutsideScheduleModel.LeastEnd(job, mostSeconds: 0.2, byWork: true) is not (int least, true)) return;
                SchedulePlan plan = Scheduler.Solve(job, new ScheduleEffort(5_000));
                Assert.True(plan.Makespan == least && plan.LowerBound <= least, $"{plan.Makespan}, bound {plan.LowerBound}, against {least}: {JsonSerializer.Serialize(job)}");
                compared++;
                proven += plan.IsProven ? 1 : 0;
            },
            iter: 120,
            threads: 1);
        Assert.True(compared >= 90, $"Only {compared} jobs were compared.");
        Assert.True(proven >= 0.95 * compared, $"Only {proven} of {compared} were proven.");
    }
}
