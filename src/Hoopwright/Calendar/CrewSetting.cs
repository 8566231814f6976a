using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.BuildSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>What is to be planned: what is left to do, from when, with whom, in what weather.</summary>
internal sealed class CrewSetting
{
    // A record of at least so many hours speaks of a climate and not of the days to come.
    private const int HoursOfClimate = 300 * 24;

    private CrewSetting(Tunnel tunnel, BuildPlan build, WeatherRecord? forecast, DateOnly from, WorkDays days, Answers answers)
    {
        (Tunnel, Build, From, Days, Answers) = (tunnel, build, from, days, answers);
        Forecast = forecast;
        Hours = forecast is null ? null : new StepHours(tunnel, forecast, answers);
    }

    internal Tunnel Tunnel { get; }

    internal BuildPlan Build { get; }

    internal DateOnly From { get; }

    internal WorkDays Days { get; }

    internal Answers Answers { get; }

    internal WeatherRecord? Forecast { get; }

    internal StepHours? Hours { get; }

    /// <summary>Tools of which there are only so many.</summary>
    internal required ImmutableArray<Tool> Tools { get; init; }

    /// <summary>The steps that are left.</summary>
    internal required ImmutableArray<BuildStep> Steps { get; init; }

    /// <summary>When each step that is done was; null where that is not said.</summary>
    internal required ImmutableDictionary<string, DateTime?> Done { get; init; }

    /// <summary>True for weather that speaks of a climate.</summary>
    internal static bool IsClimate(WeatherRecord record) => record.IsTypicalYear || record.Count >= HoursOfClimate;

    /// <summary>From plan, steps and weather; null when there is an error.</summary>
    internal static CrewSetting? Of(Tunnel tunnel, BuildPlan build, WeatherRecord? weather, DateOnly? from, TimeSpan? clock, List<Diagnostic> found)
    {
        Plan plan = tunnel.Plan;
        var answers = new Answers(tunnel.Units);
        if (plan.Build.Start is null && from is null)
            found.Add(new Diagnostic("calendar.no-start", Severity.Error, "build.start", "It is not said on which day work begins.", null, "\"start\": \"2026-04-18\""));
        if (plan.Build is { Start: { } first, FinishBy: { } last } && last < first)
            found.Add(new Diagnostic("calendar.finish-before-start", Severity.Error, "build.finishBy", "It is to be finished before work begins.", Written(last), $"{Written(first)} or later"));
        WorkDays? days = WorkDays.Of(plan, weather, clock, answers, found);
        ImmutableDictionary<string, DateTime?> done = Doings(plan, build, days, found);
        ImmutableArray<Tool> tools = ToolsOf(plan, build, done, found);
        if (days is null || found.Any(each => each.Severity == Severity.Error)) return null;
        DateOnly start = plan.Build.Start is { } begin && (from is null || begin > from) ? begin : from!.Value;
        return new CrewSetting(tunnel, build, weather is not null && !IsClimate(weather) ? weather.ByClock(clock ?? weather.UtcOffset) : null, start, days, answers)
        {
            Steps = [.. build.Steps.Where(step => !done.ContainsKey(step.Id))],
            Done = done,
            Tools = tools,
        };
    }

    // The tools that the plan says there are few of; of one that it names twice, the fewest.
    private static ImmutableArray<Tool> ToolsOf(Plan plan, BuildPlan build, ImmutableDictionary<string, DateTime?> done, List<Diagnostic> found)
    {
        ImmutableArray<string> known = [.. build.Steps.SelectMany(step => step.Tools).Select(tool => tool.Name).Distinct().Order(StringComparer.Ordinal)];
        Dictionary<string, int> few = [];
        for (int at = 0; at < plan.Build.Tools.Length; at++)
        {
            if (plan.Build.Tools[at] is not { Name: { } name, Count: { } count }) continue;
            string path = string.Create(CultureInfo.InvariantCulture, $"build.tools[{at}].name");
            if (!known.Contains(name)) found.Add(new Diagnostic("calendar.unknown-tool", Severity.Warning, path, "No step takes a tool of this name, so nothing waits for it.", name, NearestWord.Accepted(name, known)));
            else if (count == 0 && build.Steps.FirstOrDefault(step => !done.ContainsKey(step.Id) && step.Tools.Any(tool => tool.Name == name)) is { } step)
                found.Add(new Diagnostic("calendar.no-tool", Severity.Error, path, $"{step.Title} takes a tool of which there is none.", name, "one, borrowed or hired"));
            else few[name] = Math.Min(few.GetValueOrDefault(name, count), count);
        }
        return [.. few.OrderBy(tool => tool.Key, StringComparer.Ordinal).Select(tool => new Tool(tool.Key, tool.Value))];
    }

    internal static string Written(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // Steps that the site book says are done.
    private static ImmutableDictionary<string, DateTime?> Doings(Plan plan, BuildPlan build, WorkDays? days, List<Diagnostic> found)
    {
        ImmutableDictionary<string, StepMark> marks = StepMarks.Of(plan);
        Dictionary<string, DateTime?> done = [];
        foreach (BuildStep step in build.Steps.Where(step => marks.TryGetValue(step.Id, out StepMark? mark) && mark.IsDone))
        {
            DateOnly? day = marks[step.Id].Day;
            done[step.Id] = day?.ToDateTime(TimeOnly.MinValue) + (days?.UsualEnd ?? TimeSpan.Zero);
            if (day is null && build.Steps.Any(each => each.After.Any(wait => wait.StepId == step.Id && wait.Wait > TimeSpan.Zero)))
                found.Add(new Diagnostic("calendar.done-when", Severity.Warning, "siteBook", "It is not said on which day this step was done, so nothing waits for it to set.", step.Title.ToString(), "the day as its value, such as \"2026-04-18\""));
        }
        return done.ToImmutableDictionary();
    }
}
