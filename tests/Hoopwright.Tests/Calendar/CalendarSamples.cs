using System.Collections.Immutable;
using System.Text;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Calendar;

/// <summary>Steps written by hand, and a bare tunnel to plan them for.</summary>
internal static class CalendarSamples
{
    private static readonly Tunnel Bare = SamplePlans.LayOut(SamplePlans.Simple());

    /// <summary>The bare tunnel with what a plan says of crew, days and site book.</summary>
    internal static Tunnel With(Build build, int? people = null, ImmutableArray<SiteBookEntry>? book = null, Site? site = null) => Bare with
    {
        Plan = Bare.Plan with { Build = build, Crew = Bare.Plan.Crew with { People = people ?? 4 }, SiteBook = book ?? [], Site = site ?? Bare.Plan.Site },
    };

    /// <summary>A Monday.</summary>
    internal static DateOnly Monday { get; } = new(2026, 4, 13);

    internal static BuildStep Step(string id, double hours, int least, int best, params (string Id, double Hours)[] after) => new()
    {
        Id = id,
        Stage = BuildStage.Ground,
        Title = Phrase.Of("Do {0}", id),
        Purpose = Phrase.Of("So that it is done."),
        After = [.. after.Select(each => new StepWait(each.Id, TimeSpan.FromHours(each.Hours), null))],
        Tasks = [new StepTask(Phrase.Of("each"), 1, TimeSpan.FromHours(hours), TimeSpan.FromHours(hours), Sources.Citation.CommonPractice)],
        Work = new WorkSpan(TimeSpan.FromHours(hours * 0.8), TimeSpan.FromHours(hours), TimeSpan.FromHours(hours * 1.6)),
        LeastPeople = least,
        BestPeople = best,
        Tools = [new Tool("hammer", best)],
        Parts = [],
        Overnight = Phrase.Of("May stay."),
    };

    internal static BuildPlan Plan(params BuildStep[] steps) => new(BuildJob.Build, CrewSkill.Practised, [.. steps]);

    internal static WeatherRecord Record(IEnumerable<string> rows, string notes = "# latitude: 42.5\n# longitude: -76.5\n# utc offset: -4\n# wind height: 10 m\n# time: start of hour\n") =>
        WeatherReader.Read(Encoding.UTF8.GetBytes(notes + "time,temperature [°C],wind [m/s],gust [m/s],precipitation [mm]\n" + string.Join('\n', rows) + "\n")).Record!;

    internal static CrewCalendar Planned(Tunnel tunnel, BuildPlan build, WeatherRecord? weather = null, DateOnly? from = null)
    {
        CrewCalendarOutcome outcome = CrewCalendarPlanner.Plan(tunnel, build, weather, from);
        Assert.True(outcome.Calendar is not null, string.Join('\n', outcome.Diagnostics));
        return outcome.Calendar;
    }
}
