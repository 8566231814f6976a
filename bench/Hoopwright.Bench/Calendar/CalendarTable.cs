using System.Diagnostics;
using System.Globalization;
using Hoopwright.Calendar;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Bench.Calendar;

/// <summary>The numbers of docs/days.md: how long the calendar of a crew takes for the example tunnels.</summary>
internal static class CalendarTable
{
    private const int Times = 9;

    /// <summary>Prints the rows.</summary>
    public static int Print(TextWriter to)
    {
        to.WriteLine("| plan | who comes | steps | end | proven | median ms, helpers more included |");
        to.WriteLine("|---|---|---|---|---|---|");
        foreach (string example in SamplePlans.GoodExamples)
        {
            PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)), depth: WorkDepth.Orders);
            foreach ((string who, Build build) in Crews)
            {
                Tunnel tunnel = planned.Tunnel! with { Plan = planned.Plan with { Build = build, Crew = planned.Plan.Crew with { People = 6 } } };
                CrewCalendarOutcome outcome = CrewCalendarPlanner.Plan(tunnel, planned.Steps!);
                string end = outcome.Calendar is { } calendar ? calendar.End.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) : outcome.Diagnostics[0].Message;
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {example} | {who} | {planned.Steps!.Steps.Length} | {end} | {outcome.Calendar?.IsProven} | {Median(() => CrewCalendarPlanner.Plan(tunnel, planned.Steps)):0} |"));
            }
        }
        Seasons(to);
        return 0;
    }

    private static void Seasons(TextWriter to)
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes("gothic-26ft")), depth: WorkDepth.Orders);
        WeatherRecord climate = WeatherReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "year-invented.csv"))).Record!;
        to.WriteLine();
        foreach ((string who, Build build) in Crews)
        {
            Tunnel tunnel = planned.Tunnel! with { Plan = planned.Plan with { Build = build, Crew = planned.Plan.Crew with { People = 6 } } };
            CrewCalendar calendar = CrewCalendarPlanner.Plan(tunnel, planned.Steps!, climate).Calendar!;
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"1,000 seasons of gothic-26ft, {who}: {Median(() => SeasonPlanner.Odds(tunnel, planned.Steps!, calendar, climate, 1000, 1)):0} ms"));
        }
    }

    private static (string Who, Build Build)[] Crews { get; } =
    [
        ("six, Monday to Saturday", new Build { Start = new(2026, 4, 13) }),
        ("two in the week, six on Saturday", new Build { Start = new(2026, 4, 13), Days = [.. Enum.GetValues<DayOfWeek>().Where(day => day != DayOfWeek.Sunday).Select(day => new BuildDay { Weekday = day, People = day == DayOfWeek.Saturday ? 6 : 2 })] }),
        ("six on Saturday", new Build { Start = new(2026, 4, 13), Days = [new BuildDay { Weekday = DayOfWeek.Saturday }] }),
    ];

    private static double Median(Action work)
    {
        List<double> took = [];
        for (int time = 0; time < Times; time++)
        {
            var clock = Stopwatch.StartNew();
            work();
            took.Add(clock.Elapsed.TotalMilliseconds);
        }
        return took.Order().ElementAt(Times / 2);
    }
}
