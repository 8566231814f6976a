using Hoopwright.Scheduling;
using Hoopwright.Testing;

namespace Hoopwright.Reference.Tests.Scheduling;

/// <summary>
/// Crew schedules with known optima: PSPLIB (Kolisch, Sprecher, EJOR 96 (1997) 205-216), optima of Demeulemeester, Herroelen (1995) and of
/// the Ghent update of the library; instances with working days and calm days, made from them, optima proven with OR-Tools CP-SAT 9.15.
/// </summary>
public sealed class PublishedScheduleTests(ITestOutputHelper output)
{
    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void All_of_thirty_activities_reach_the_published_optimum_and_are_proven() => Assert.Empty(Open(ScheduleData.Psplib("j30")));

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void All_with_working_days_and_calm_days_reach_the_optimum_and_are_proven() => Assert.Empty(Open(ScheduleData.Calendar()));

    private List<string> Open(IEnumerable<(string Name, ScheduleJob Job, int Optimum)> instances)
    {
        List<string> open = [];
        foreach ((string name, ScheduleJob job, int optimum) in instances)
        {
            long start = System.Diagnostics.Stopwatch.GetTimestamp();
            SchedulePlan plan = Scheduler.Solve(job);
            output.WriteLine($"{name} {plan.Makespan} of {optimum}, bound {plan.LowerBound}, {plan.DeadEnds} dead ends, {System.Diagnostics.Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} ms");
            Assert.Empty(plan.Diagnostics);
            Assert.Empty(ScheduleRules.Broken(job, plan));
            Assert.Equal(optimum, plan.Makespan);
            Assert.True(plan.LowerBound <= optimum, $"{name}: the bound {plan.LowerBound} is above {optimum}");
            if (!plan.IsProven) open.Add(name);
        }
        return open;
    }
}
