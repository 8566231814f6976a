using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Scheduling;

namespace Hoopwright.Calendar;

/// <summary>
/// Steps over days as a scheduling job. At each time as many work on a step as do good, of those who come that day: a step goes on at that
/// pace, and rests on a day with too few for it and in weather that it does not bear.
/// </summary>
internal sealed class CrewJob
{
    private const string People = "people", ToolPrefix = "tool ";

    private readonly WorkSlots _slots;
    private readonly Gate _gate;
    private readonly ImmutableDictionary<string, DateTime?> _done;

    internal CrewJob(WorkSlots slots, Gate gate, ImmutableArray<BuildStep> steps, ImmutableDictionary<string, DateTime?> done, ImmutableArray<Tool> tools, Func<WorkDay, int> people)
    {
        (_slots, _gate, _done, Steps, Tools) = (slots, gate, done, steps, tools);
        // With fewer than usual of a tool a step goes on with those there are.
        ToolsTaken = [.. steps.Select(step => tools.Select(limit => Math.Min(limit.Count, step.Tools.FirstOrDefault(tool => tool.Name == limit.Name)?.Count ?? 0)).ToArray())];
        PeopleOn = [.. slots.Days.Select(people)];
        Takes = [.. steps.Select(Pace)];
        Work = [.. steps.Select(step => Math.Max(1, WorkSlots.Of(step.Work.Likely)))];
        Job = new ScheduleJob([new ScheduleResource(People, PeopleOn.Max()) { AmountByDay = PeopleOn }, .. tools.Select(tool => new ScheduleResource(ToolPrefix + tool.Name, tool.Count))], [.. steps.Select(Activity)], null, []) { DayLengths = slots.Lengths };
    }

    /// <summary>The steps that are still to be done.</summary>
    internal ImmutableArray<BuildStep> Steps { get; }

    /// <summary>Tools of which there are only so many.</summary>
    internal ImmutableArray<Tool> Tools { get; }

    /// <summary>How many of each of those a step takes while it is worked on.</summary>
    internal int[][] ToolsTaken { get; }

    /// <summary>How many come on each day.</summary>
    internal ImmutableArray<int> PeopleOn { get; }

    /// <summary>How many work on each step in each slot.</summary>
    internal int[][] Takes { get; }

    /// <summary>Work of each step: slots of one person.</summary>
    internal int[] Work { get; }

    /// <summary>The job.</summary>
    internal ScheduleJob Job { get; }

    /// <summary>The first slot in which a step may start for what was done before the plan begins.</summary>
    internal int ReadyAfterDone(BuildStep step) =>
        step.After.Select(wait => _done.GetValueOrDefault(wait.StepId) is { } at ? _slots.FirstFrom(at + wait.Wait) : 0).DefaultIfEmpty(0).Max();

    /// <summary>When a step ends that starts in a slot; past the last slot when it does not.</summary>
    internal int EndOf(int step, int start)
    {
        int slot = start;
        for (int left = Work[step]; left > 0; slot++)
        {
            if (slot >= _slots.Count) return _slots.Count + 1;
            left -= Takes[step][slot];
        }
        return slot;
    }

    /// <summary>Whether a step that must end on its day can start in a slot.</summary>
    internal bool FitsInOneGo(int step, int start)
    {
        int slot = start;
        for (int left = Work[step]; left > 0; slot++)
        {
            if (slot >= _slots.Count || _slots.DayOf[slot] != _slots.DayOf[start] || Takes[step][slot] == 0) return false;
            left -= Takes[step][slot];
        }
        return true;
    }

    private int[] Pace(BuildStep step)
    {
        bool?[] fit = _gate.Of(step.Weather);
        int[] takes = new int[_slots.Count];
        for (int slot = 0; slot < takes.Length; slot++)
        {
            int there = PeopleOn[_slots.DayOf[slot]];
            takes[slot] = there < step.LeastPeople || fit[slot] == false ? 0 : Math.Min(step.BestPeople, there);
        }
        return takes;
    }

    private ScheduleActivity Activity(BuildStep step, int at)
    {
        HashSet<string> open = [.. Steps.Select(each => each.Id)];
        int ready = ReadyAfterDone(step);
        bool[] may = new bool[step.InOneGo ? _slots.Count : ready];
        if (step.InOneGo)
        {
            for (int slot = ready; slot < may.Length; slot++) may[slot] = FitsInOneGo(at, slot);
        }
        return new ScheduleActivity(
            step.Id, Work[at], Enumerable.Range(0, Tools.Length).Where(tool => ToolsTaken[at][tool] > 0).ToImmutableDictionary(tool => ToolPrefix + Tools[tool].Name, tool => ToolsTaken[at][tool]), [.. step.After.Where(wait => open.Contains(wait.StepId) && wait.Wait == TimeSpan.Zero).Select(wait => wait.StepId)],
            Pace: new SchedulePace(People, [.. Takes[at]]))
        {
            MayStart = [.. may],
            Waits = [.. step.After.Where(wait => open.Contains(wait.StepId) && wait.Wait > TimeSpan.Zero).Select(wait => new ScheduleWait(wait.StepId, _slots.ReadyAfter(wait.Wait)))],
        };
    }
}
