using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Scheduling;

namespace Hoopwright.Calendar;

/// <summary>Puts a plan in slots into days, and says what holds what.</summary>
internal sealed class CrewCalendarMaker
{
    private readonly CrewSetting _setting;
    private readonly WorkSlots _slots;
    private readonly CrewJob _job;
    private readonly ImmutableArray<int> _starts;
    private readonly int[] _ends;
    private readonly Gate _gate;
    private readonly Dictionary<string, int> _at = [];

    private CrewCalendarMaker(CrewSetting setting, WorkSlots slots, CrewJob job, SchedulePlan plan)
    {
        (_setting, _slots, _job, _starts) = (setting, slots, job, plan.Starts);
        _ends = [.. plan.Starts.Select((start, step) => job.EndOf(step, start))];
        _gate = new Gate(slots, setting.Forecast, setting.Hours);
        for (int at = 0; at < job.Steps.Length; at++) _at[job.Steps[at].Id] = at;
    }

    /// <summary>The calendar.</summary>
    internal static CrewCalendar Make(CrewSetting setting, WorkSlots slots, CrewJob job, SchedulePlan plan, ImmutableArray<MoreHelp> help)
    {
        var maker = new CrewCalendarMaker(setting, slots, job, plan);
        ImmutableArray<PlannedStep> steps = [.. Enumerable.Range(0, job.Steps.Length).OrderBy(step => plan.Starts[step]).ThenBy(step => step).Select(step => maker.Times(step, plan.LatestStarts[step]))];
        return new CrewCalendar
        {
            Job = setting.Build.Job,
            From = setting.From,
            End = slots.EndBefore(plan.Makespan!.Value),
            FinishBy = setting.Tunnel.Plan.Build.FinishBy,
            IsProven = plan.IsProven,
            Steps = steps,
            Done = [.. setting.Build.Steps.Where(step => setting.Done.ContainsKey(step.Id)).Select(step => step.Id)],
            Days = maker.Days(steps),
            HoldsUpTheEnd = Chain(steps),
            MoreHelp = help,
            ForecastTo = setting.Forecast is { } forecast ? DateOnly.FromDateTime(forecast[forecast.Count - 1].Start.DateTime) : null,
            Rules = setting.Answers.Rules,
        };
    }

    private PlannedStep Times(int step, int latest)
    {
        BuildStep of = _job.Steps[step];
        (StepHold hold, string? by) = Hold(step);
        return new PlannedStep
        {
            Step = of,
            Start = _slots.StartOf(_starts[step]),
            End = _slots.EndBefore(_ends[step]),
            Shifts = Shifts(step),
            LatestStart = _slots.StartOf(latest),
            MaySlipDays = _slots.DayOf[latest] - _slots.DayOf[_starts[step]],
            HeldBy = hold,
            HeldByStep = by,
            Weather = Look(step),
        };
    }

    private ImmutableArray<StepShift> Shifts(int step)
    {
        ImmutableArray<StepShift>.Builder shifts = ImmutableArray.CreateBuilder<StepShift>();
        foreach (IGrouping<int, int> day in Enumerable.Range(_starts[step], _ends[step] - _starts[step]).Where(slot => _job.Takes[step][slot] > 0).GroupBy(slot => _slots.DayOf[slot]))
            shifts.Add(new StepShift(_job.Steps[step].Id, shifts.Count + 1, _slots.StartOf(day.First()), _slots.EndBefore(day.Last() + 1), day.Max(slot => _job.Takes[step][slot]), day.Last() == _ends[step] - 1));
        return shifts.ToImmutable();
    }

    private WeatherLook Look(int step)
    {
        if (_job.Steps[step].Weather == StepWeather.Any) return WeatherLook.NotNeeded;
        bool?[] fit = _gate.Of(_job.Steps[step].Weather);
        int[] worked = [.. Enumerable.Range(_starts[step], _ends[step] - _starts[step]).Where(slot => _job.Takes[step][slot] > 0)];
        int seen = worked.Count(slot => fit[slot] is not null);
        return seen == 0 ? WeatherLook.NotLookedAt : seen < worked.Length ? WeatherLook.PartlyFit : WeatherLook.Fit;
    }

    // Why a step does not start a slot earlier.
    private (StepHold Hold, string? By) Hold(int step)
    {
        BuildStep of = _job.Steps[step];
        int start = _starts[step], ready = _job.ReadyAfterDone(of), readyStep = -1;
        bool isWait = ready > 0;
        foreach (StepWait wait in of.After)
        {
            if (!_at.TryGetValue(wait.StepId, out int earlier)) continue;
            int over = wait.Wait == TimeSpan.Zero ? _ends[earlier] : Math.Max(_ends[earlier], _slots.FirstFrom(_slots.EndBefore(_ends[earlier]) + wait.Wait));
            if (over < ready || (over == ready && readyStep >= 0)) continue;
            (ready, readyStep, isWait) = (over, earlier, wait.Wait > TimeSpan.Zero && over > _ends[earlier]);
        }
        if (start <= ready) return readyStep >= 0 ? (isWait ? StepHold.Wait : StepHold.Step, _job.Steps[readyStep].Id) : (isWait ? StepHold.Wait : StepHold.Beginning, null);
        // It was ready earlier: the last slot before its start tells what stood in its way.
        int slot = start - 1;
        string? before = readyStep >= 0 ? _job.Steps[readyStep].Id : null;
        int busy = Enumerable.Range(0, _starts.Length).Where(other => other != step && _starts[other] < start && _ends[other] > slot && _job.Takes[other][slot] > 0).OrderByDescending(other => _ends[other]).ThenBy(other => other).FirstOrDefault(-1);
        if (_gate.Of(of.Weather)[slot] == false) return (StepHold.Weather, before);
        if (busy >= 0 && _job.Takes[step][slot] > 0) return (StepHold.People, _job.Steps[busy].Id);
        bool isWeather = of.InOneGo && Enumerable.Range(ready, _slots.Count - ready).TakeWhile(each => each < start).Any(each => _gate.Of(of.Weather)[each] == false);
        return (isWeather ? StepHold.Weather : StepHold.Day, before);
    }

    // From the step that ends last back through what holds each.
    private static ImmutableArray<string> Chain(ImmutableArray<PlannedStep> steps)
    {
        List<string> chain = [];
        PlannedStep? at = steps.MaxBy(step => step.End);
        while (at is not null && !chain.Contains(at.Step.Id))
        {
            chain.Add(at.Step.Id);
            string? by = at.HeldByStep;
            at = steps.FirstOrDefault(step => step.Step.Id == by);
        }
        chain.Reverse();
        return [.. chain];
    }

    private ImmutableArray<CrewDay> Days(ImmutableArray<PlannedStep> steps)
    {
        ILookup<DateOnly, StepShift> shifts = steps.SelectMany(step => step.Shifts).ToLookup(shift => DateOnly.FromDateTime(shift.From));
        Dictionary<string, PlannedStep> byId = steps.ToDictionary(step => step.Step.Id);
        return [.. _slots.Days.Where(day => shifts.Contains(day.Date)).Select(day => new CrewDay(
            day,
            [.. shifts[day.Date].OrderBy(shift => shift.From).ThenBy(shift => shift.StepId, StringComparer.Ordinal)],
            Tools([.. shifts[day.Date]], byId),
            [.. shifts[day.Date].Where(shift => shift.Number == 1).OrderBy(shift => shift.From).ThenBy(shift => shift.StepId, StringComparer.Ordinal).SelectMany(shift => byId[shift.StepId].Step.Materials)]))];
    }

    // Of each tool as many as are at work at once.
    private static ImmutableArray<Tool> Tools(StepShift[] shifts, Dictionary<string, PlannedStep> steps) =>
        [.. shifts.SelectMany(shift => steps[shift.StepId].Step.Tools.Select(tool => (shift, tool)))
            .GroupBy(pair => pair.tool.Name)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new Tool(group.Key, group.Max(pair => group.Where(other => other.shift.From <= pair.shift.From && other.shift.To > pair.shift.From).Sum(other => other.tool.Count))))];
}
