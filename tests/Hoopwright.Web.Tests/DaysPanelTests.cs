using System.Text;
using Bunit;
using Hoopwright.Calendar;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;
using Hoopwright.Web.Engine;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;
using Microsoft.Extensions.DependencyInjection;

namespace Hoopwright.Web.Tests;

/// <summary>What the screen of days shows, by the engine itself.</summary>
public sealed class DaysPanelTests : BunitContext
{
    private readonly PanelDesk desk;

    public DaysPanelTests()
    {
        desk = new PanelDesk(Services);
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<PageScript>().AddSingleton<TimeProvider>(new Noon(new DateTimeOffset(2026, 4, 18, 12, 0, 0, TimeSpan.Zero)));
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing) desk.Dispose();
        base.Dispose(disposing);
    }

    [Fact]
    public async Task The_days_are_those_of_the_domain()
    {
        Plan plan = SamplePlans.Example("round-14ft");
        PlannedTunnel planned = TunnelWorks.Plan(plan);
        CrewCalendar calendar = CrewCalendarPlanner.Plan(planned.Tunnel!, planned.Steps!, from: new DateOnly(2026, 4, 18)).Calendar!;
        await desk.OpenAsync("round-14ft");
        IRenderedComponent<DaysPanel> panel = Render<DaysPanel>();
        panel.WaitForAssertion(() => Assert.Equal(
            calendar.Days.Select(day => day.Day.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)), panel.FindAll(".day-list > .works").Select(day => day.GetAttribute("data-date"))));
        Assert.Equal(calendar.Days.Sum(day => day.Shifts.Length), panel.FindAll(".day-list > .works > ul > li").Count);
        Assert.Contains(calendar.IsProven ? "No order of the steps" : "not ruled out", panel.Find(".said").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Weather_of_a_year_gives_odds_and_the_calendar_file_holds_every_shift()
    {
        string plan = PlanText.Plain(Encoding.UTF8.GetString(SamplePlans.ExampleBytes("round-14ft")))!, year = Encoding.UTF8.GetString(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "year-invented.csv")));
        Assert.Contains("\"seasons\":300", EngineWork.Days(plan, "build", year, "", "2026-04-18", "en"), StringComparison.Ordinal);
        string ics = Encoding.UTF8.GetString(EngineWork.DaysFile(plan, "build", "", "", "2026-04-18", "es", "letter", "ics", "1776500000"));
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("round-14ft"));
        CrewCalendar calendar = CrewCalendarPlanner.Plan(planned.Tunnel!, planned.Steps!, from: new DateOnly(2026, 4, 18)).Calendar!;
        Assert.Equal(calendar.Days.Sum(day => day.Shifts.Length), ics.Split("BEGIN:VEVENT").Length - 1);
        Assert.StartsWith("%PDF", Encoding.ASCII.GetString(EngineWork.DaysFile(plan, "build", "", "", "2026-04-18", "es", "letter", "pdf", "1776500000"), 0, 4), StringComparison.Ordinal);
    }

    [Fact]
    public void The_packet_has_pages_on_the_weather_file_that_is_open()
    {
        string plan = PlanText.Plain(Encoding.UTF8.GetString(SamplePlans.ExampleBytes("round-14ft")))!, forecast = Encoding.UTF8.GetString(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "forecast-invented.json")));
        byte[] without = EngineWork.Packet(new PacketWish(plan, "letter", "2026-04-18", "pdf", "en")), with = EngineWork.Packet(new PacketWish(plan, "letter", "2026-04-18", "pdf", "en") { Weather = forecast, Clock = "-04:00" });
        Assert.True(with.Length > without.Length + 2_000, $"{with.Length} bytes with and {without.Length} without weather.");
    }

    private sealed class Noon(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }
}
