using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Scheduling;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Scheduling;

public sealed class SchedulerTests
{
    private static readonly ScheduleEffort Enough = new(5_000);

    [Fact]
    public void A_plan_keeps_to_every_rule_and_ends_no_earlier_than_its_bound() => RandomSchedules.Jobs.Sample(
        job =>
        {
            SchedulePlan plan = Scheduler.Solve(job, Enough);
            Assert.Empty(plan.Diagnostics);
            Assert.Empty(ScheduleRules.Broken(job, plan));
            Assert.True(plan.LowerBound <= plan.Makespan);
        },
        iter: 500);

    [Fact]
    public void A_plan_over_days_keeps_to_every_rule() => RandomSchedules.CalendarJobs.Sample(
        job =>
        {
            SchedulePlan plan = Scheduler.Solve(job, Enough);
            if (plan.Makespan is not null) Assert.Empty(ScheduleRules.Broken(job, plan));
            else Assert.Equal("schedule.no-plan", Assert.Single(plan.Diagnostics).Code);
        },
        iter: 500);

    [Fact]
    public void A_table_that_does_not_fit_its_days_is_a_fault_of_the_caller()
    {
        ScheduleJob job = Job(("a", 3, 2, []), ("b", 4, 3, ["a"])) with { DayLengths = [4, 4] };
        Assert.Throws<ArgumentException>(() => Scheduler.Solve(job with { DayLengths = [8, 0] }));
        Assert.Throws<ArgumentException>(() => Scheduler.Solve(job with { Resources = job.Resources.SetItem(0, job.Resources[0] with { AmountByDay = [4] }) }));
        Assert.Throws<ArgumentException>(() => Scheduler.Solve(job with { Activities = job.Activities.SetItem(0, job.Activities[0] with { Pace = new SchedulePace("crew", [1, 1, 1, 1, 1, 1, 1, 1]) }) }));
        Assert.Throws<ArgumentException>(() => Scheduler.Solve(job with { Activities = job.Activities.SetItem(1, job.Activities[1] with { Waits = [new ScheduleWait("a", [0, 1, 2, 3, 4, 5, 6, 7, 7])] }) }));
    }

    [Fact]
    public void Fewer_people_never_make_a_job_shorter_and_a_wait_left_out_never_longer() => RandomSchedules.Jobs.Sample(
        job =>
        {
            SchedulePlan plan = Scheduler.Solve(job, Enough);
            int needed = job.Activities.Max(activity => activity.Needs.GetValueOrDefault(job.Resources[0].Id));
            SchedulePlan fewer = Scheduler.Solve(job with { Resources = job.Resources.SetItem(0, job.Resources[0] with { Amount = Math.Max(needed, job.Resources[0].Amount - 1) }) }, Enough);
            SchedulePlan free = Scheduler.Solve(job with { Activities = job.Activities.SetItem(job.Activities.Length - 1, job.Activities[^1] with { After = [] }) }, Enough);
            Assert.True(fewer.Makespan >= plan.LowerBound);
            Assert.True(free.LowerBound <= plan.Makespan);
        },
        iter: 150);

    [Fact]
    public void The_same_job_gives_the_same_plan_whatever_the_order_of_needs()
    {
        ScheduleJob job = Job(("a", 3, 2, []), ("b", 4, 3, []), ("c", 2, 4, ["a", "b"]));
        Assert.Equal(Scheduler.Solve(job).Starts, Scheduler.Solve(job with { Activities = [.. job.Activities.Select(each => each with { Needs = each.Needs.Reverse().ToImmutableDictionary() })] }).Starts);
    }

    [Fact]
    public void A_job_of_nothing_ends_at_once()
    {
        SchedulePlan plan = Scheduler.Solve(new ScheduleJob([], [], null, []));
        Assert.Equal((0, true), (plan.Makespan, plan.IsProven));
    }

    [Fact]
    public void Work_that_is_ended_gives_the_best_plan_so_far_with_an_honest_bound()
    {
        ScheduleJob job = Job([.. Enumerable.Range(0, 40).Select(at => ($"a{at}", 1 + (at * 7 % 9), 1 + (at * 5 % 4), (string[])(at % 3 == 0 || at == 1 ? [] : [$"a{at - 1 - (at % 2)}"])))]);
        SchedulePlan cut = Scheduler.Solve(job, new ScheduleEffort(1)), whole = Scheduler.Solve(job, Enough);
        Assert.Empty(ScheduleRules.Broken(job, cut));
        Assert.True(cut.LowerBound <= whole.Makespan && cut.Makespan >= whole.LowerBound);
    }

    [Fact]
    public void Good_days_that_end_too_early_are_told()
    {
        ScheduleJob job = new([new("crew", 2)], [new("posts", 20, ImmutableDictionary<string, int>.Empty, []), new("film", 3, ImmutableDictionary<string, int>.Empty, ["posts"], GoodDaysOnly: true)], 8, [0, 1]);
        Assert.Equal("schedule.no-plan", Assert.Single(Scheduler.Solve(job).Diagnostics).Code);
    }

    private static ScheduleJob Job(params (string Id, int Duration, int Crew, string[] After)[] activities) => new(
        [new("crew", 4), new("cart", 1)],
        [.. activities.Select(each => new ScheduleActivity(each.Id, each.Duration, ImmutableDictionary<string, int>.Empty.Add("crew", each.Crew).Add("cart", each.Crew % 2), [.. each.After]))], null, []);
}
