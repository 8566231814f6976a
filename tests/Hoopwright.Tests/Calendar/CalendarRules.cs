using Hoopwright.BuildSteps;
using Hoopwright.Calendar;

namespace Hoopwright.Tests.Calendar;

/// <summary>What the days of a crew must keep to, said anew and plainly from the shifts alone.</summary>
internal static class CalendarRules
{
    internal static List<string> Broken(CrewCalendar calendar, BuildPlan build, IReadOnlyDictionary<DateOnly, int> comes)
    {
        List<string> broken = [];
        Dictionary<string, PlannedStep> times = calendar.Steps.ToDictionary(step => step.Step.Id);
        foreach (PlannedStep step in calendar.Steps)
        {
            broken.AddRange(step.Step.After.Where(wait => times.TryGetValue(wait.StepId, out PlannedStep? earlier) && step.Start < earlier.End + wait.Wait).Select(wait => $"{step.Step.Id} starts at {step.Start}, too early after {wait.StepId}"));
            if (step.Start != step.Shifts[0].From || step.End != step.Shifts[^1].To) broken.Add($"{step.Step.Id} does not last from its first shift to its last");
            if (step.Step.InOneGo && step.Shifts.Length > 1) broken.Add($"{step.Step.Id} goes over a night");
            if (step.Shifts.Any(shift => shift.People < step.Step.LeastPeople || shift.People > step.Step.BestPeople)) broken.Add($"{step.Step.Id} is done by too few or too many");
            double hours = step.Shifts.Sum(shift => (shift.To - shift.From).TotalHours * shift.People);
            if (hours < step.Step.Work.Likely.TotalHours - 1e-9) broken.Add($"{step.Step.Id} gets {hours} h");
            if (step.LatestStart < step.Start) broken.Add($"{step.Step.Id} may start no later than before it starts");
        }
        foreach (CrewDay day in calendar.Days)
        {
            for (TimeOnly at = day.Day.Begins; at < day.Day.Ends; at = at.AddMinutes(30))
            {
                DateTime now = day.Day.Date.ToDateTime(at);
                int busy = calendar.Steps.SelectMany(step => step.Shifts).Where(shift => shift.From <= now && shift.To > now).Sum(shift => shift.People);
                if (busy > comes[day.Day.Date]) broken.Add($"{busy} at work at {now}");
            }
            broken.AddRange(day.Shifts.Where(shift => TimeOnly.FromDateTime(shift.From) < day.Day.Begins || TimeOnly.FromDateTime(shift.To) > day.Day.Ends).Select(shift => $"{shift.StepId} at a time when nobody is there"));
        }
        if (calendar.Steps.Length > 0 && calendar.Steps.Max(step => step.End) != calendar.End) broken.Add("the end is not that of the last step");
        broken.AddRange(build.Steps.Where(step => !times.ContainsKey(step.Id) && !calendar.Done.Contains(step.Id)).Select(step => $"{step.Id} is not done"));
        return broken;
    }
}
