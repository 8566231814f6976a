using System.Text.Json;
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

    [Fact]
    public void Jobs_over_days_end_as_early_as_an_outside_solver_proves_or_are_seen_not_to_be_possible()
    {
        int compared = 0, possible = 0;
        RandomSchedules.CalendarJobs.Sample(
            job =>
            {
                (int? least, bool isProven) = OutsideScheduleModel.LeastEndOverDays(job, mostWork: 0.5);
                if (!isProven) return;
                SchedulePlan plan = Scheduler.Solve(job, new ScheduleEffort(20_000));
                Assert.True(plan.Makespan == least && (least is null ? plan.Diagnostics[0].Code == "schedule.no-plan" : plan.IsProven), $"{plan.Makespan}, bound {plan.LowerBound}, against {least}: {JsonSerializer.Serialize(job)}");
                if (least is not null) Assert.Empty(ScheduleRules.Broken(job, plan));
                compared++;
                possible += least is null ? 0 : 1;
            },
            iter: 400,
            threads: 1);
        Assert.True(compared >= 350 && possible >= 200 && possible < compared, $"{compared} jobs were compared, {possible} of them possible.");
    }
}
