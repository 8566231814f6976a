using Hoopwright.BuildSteps;

namespace Hoopwright.Calendar;

/// <summary>What is the same in all seasons: steps in the planned order, who is there, waits.</summary>
internal sealed class SeasonPlan
{
    private readonly int[] _there;

    internal SeasonPlan(WorkSlots slots, CrewJob job, IEnumerable<string> order)
    {
        (Slots, Job, Takes) = (slots, job, job.Takes);
        Dictionary<string, int> at = [];
        for (int step = 0; step < job.Steps.Length; step++) at[job.Steps[step].Id] = step;
        Order = [.. order.Select(id => at[id])];
        Waits = [.. job.Steps.Select(step => step.After.Where(wait => at.ContainsKey(wait.StepId)).Select(wait => (at[wait.StepId], Table(wait))).ToArray())];
        _there = [.. slots.DayOf.Select(day => job.PeopleOn[day])];

        int[]? Table(StepWait wait) => wait.Wait == TimeSpan.Zero ? null : [.. slots.ReadyAfter(wait.Wait)];
    }

    internal WorkSlots Slots { get; }

    internal CrewJob Job { get; }

    /// <summary>How many work on each step in each slot, weather apart.</summary>
    internal int[][] Takes { get; }

    /// <summary>The steps in the order in which they are planned to start.</summary>
    internal int[] Order { get; }

    /// <summary>For each step what it waits for, and for each end of that when it may start; null for at once.</summary>
    internal (int Earlier, int[]? ReadyAt)[][] Waits { get; }

    /// <summary>How many people are there in a slot.</summary>
    internal int There(int slot) => _there[slot];
}
