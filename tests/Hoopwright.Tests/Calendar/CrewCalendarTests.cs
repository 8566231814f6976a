using CsCheck;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using static Hoopwright.Tests.Calendar.CalendarSamples;

namespace Hoopwright.Tests.Calendar;

public sealed class CrewCalendarTests
{
    private static readonly Build Weekdays = new() { Start = Monday, Begins = new TimeOnly(8, 0), Hours = 8 };

    [Fact]
    public void Work_by_several_people_is_their_hours_over_their_number()
    {
        CrewCalendar calendar = Planned(With(Weekdays), Plan(Step("posts", 12, 1, 3)));
        Assert.Equal((Monday.ToDateTime(new(8, 0)), Monday.ToDateTime(new(12, 0)), 3), (calendar["posts"].Start, calendar.End, calendar["posts"].Shifts[0].People));
        Assert.True(calendar.IsProven);
    }

    [Fact]
    public void Concrete_sets_over_nights_and_a_day_off()
    {
        // Placed on Saturday by noon, 48 hours are over on Monday at noon; Sunday counts, though nobody works.
        CrewCalendar calendar = Planned(With(Weekdays with { Start = Monday.AddDays(5) }), Plan(Step("concrete", 8, 1, 2), Step("bows", 4, 1, 2, ("concrete", 48))));
        Assert.Equal(Monday.AddDays(7).ToDateTime(new(12, 0)), calendar["bows"].Start);
        Assert.Equal((StepHold.Wait, "concrete"), (calendar["bows"].HeldBy, calendar["bows"].HeldByStep));
        Assert.Equal(["concrete", "bows"], calendar.HoldsUpTheEnd);
    }

    [Fact]
    public void A_step_for_many_hands_waits_for_the_day_on_which_they_come_and_a_long_one_rests_on_days_with_too_few()
    {
        Build build = Weekdays with { Days = [.. new[] { DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Thursday, DayOfWeek.Friday }.Select(day => new BuildDay { Weekday = day, People = 2 }), new BuildDay { Weekday = DayOfWeek.Saturday, People = 6, Hours = 4 }] };
        CrewCalendar calendar = Planned(With(build), Plan(Step("film", 12, 4, 6) with { InOneGo = true }, Step("boards", 32, 3, 4, ("film", 0))));
        Assert.Equal(Monday.AddDays(5), DateOnly.FromDateTime(calendar["film"].Start));
        Assert.All(calendar["boards"].Shifts, shift => Assert.Equal(DayOfWeek.Saturday, shift.From.DayOfWeek));
        Assert.True(calendar["boards"].Shifts.Length > 1);
        Assert.Empty(CalendarRules.Broken(calendar, Plan(), calendar.Days.ToDictionary(day => day.Day.Date, day => day.Day.People)));
    }

    /// <summary>Common practice, no source: the bottleneck of a crew is the number of its cordless drills.</summary>
    [Fact]
    public void Steps_wait_for_a_tool_of_which_there_is_one()
    {
        BuildPlan plan = Plan(Drilled("hip"), Drilled("channel"));
        Assert.Equal(Monday.ToDateTime(new(10, 0)), Planned(With(Weekdays), plan).End);
        Assert.Equal(Monday.ToDateTime(new(12, 0)), Planned(With(Weekdays with { Tools = [new() { Name = "cordless drill", Count = 1 }] }), plan).End);
        Assert.Equal(Monday.ToDateTime(new(10, 0)), Planned(With(Weekdays with { Tools = [new() { Name = "cordless drill", Count = 2 }] }), plan).End);

        static BuildStep Drilled(string id) => Step(id, 4, 1, 2) with { Tools = [new Tool("cordless drill", 1)] };
    }

    [Fact]
    public void A_date_goes_before_its_weekday_and_no_one_comes_on_a_day_off()
    {
        Build build = Weekdays with { Days = [new() { Weekday = DayOfWeek.Monday }, new() { Weekday = DayOfWeek.Tuesday }, new() { Date = Monday, People = 0 }, new() { Date = Monday.AddDays(1), People = 2, Begins = new(10, 0), Hours = 2 }] };
        CrewCalendar calendar = Planned(With(build), Plan(Step("posts", 8, 1, 4)));
        Assert.Equal([(Monday.AddDays(1), 2, 10), (Monday.AddDays(7), 4, 8)], calendar.Days.Select(day => (day.Day.Date, day.Day.People, day.Day.Begins.Hour)));
    }

    [Fact]
    public void Work_ends_at_sunset_where_that_is_earlier()
    {
        var site = new Site { Latitude = new Written<Angle>("42.5°", Angle.FromDegrees(42.5)), Longitude = new Written<Angle>("-76.5°", Angle.FromDegrees(-76.5)) };
        var tunnel = With(new Build { Start = new(2026, 12, 14), Begins = new(8, 0), Hours = 12 }, site: site);
        CrewCalendar calendar = Planned(tunnel, Plan(Step("posts", 60, 1, 4)));
        // The U.S. Naval Observatory's tables put sunset in mid-December at this latitude near 16:33 standard time: from memory.
        Assert.All(calendar.Days, day => Assert.Equal(new TimeOnly(16, 30), day.Day.Ends));
        // By a clock that is an hour ahead the sun sets an hour later.
        CrewCalendarOutcome summer = CrewCalendarPlanner.Plan(tunnel, Plan(Step("posts", 60, 1, 4)), clock: TimeSpan.FromHours(-4));
        Assert.All(summer.Calendar!.Days, day => Assert.Equal(new TimeOnly(17, 30), day.Day.Ends));
        Assert.Equal(["calendar.clock"], CrewCalendarPlanner.Plan(tunnel, Plan(Step("posts", 60, 1, 4))).Diagnostics.Select(each => each.Code).Except(summer.Diagnostics.Select(each => each.Code)));
    }

    [Fact]
    public void Film_waits_for_hours_of_the_forecast_that_are_calm_and_dry_and_what_lies_past_it_is_told()
    {
        StepWeather calm = new(Speed.FromMetresPerSecond(2), null, null, null, true);
        // Two days: wind on Monday but for two hours, rain on Tuesday morning.
        var forecast = Record(Enumerable.Range(0, 48).Select(hour => FormattableString.Invariant($"2026-04-{13 + (hour / 24):00}T{hour % 24:00}:00,15,{(hour is 13 or 14 or > 24 ? 1 : 9)},,{(hour is > 30 and < 36 ? 1 : 0)}")));
        BuildStep film = Step("film", 6, 2, 2) with { InOneGo = true, Weather = calm }, boards = Step("boards", 8, 2, 2) with { Weather = calm };
        CrewCalendar calendar = Planned(With(Weekdays), Plan(film, boards, Step("last", 100, 2, 4, ("film", 0)), Step("trim", 2, 1, 2, ("last", 0)) with { Weather = calm }), forecast);
        Assert.Equal((Monday.AddDays(1).ToDateTime(new(12, 0)), WeatherLook.Fit, StepHold.Weather), (calendar["film"].Start, calendar["film"].Weather, calendar["film"].HeldBy));
        Assert.Equal(Monday.ToDateTime(new(13, 0)), calendar["boards"].Start);
        Assert.Equal(Monday.ToDateTime(new(15, 0)), calendar["boards"].Shifts[0].To);
        Assert.Equal((WeatherLook.NotNeeded, WeatherLook.NotLookedAt), (calendar["last"].Weather, calendar["trim"].Weather));
        Assert.Equal(
            ["weather fit by the forecast", "", "weather not looked at: no forecast so far ahead"], new[] { "film", "last", "trim" }.Select(id => CrewCalendarSheet.Look(calendar, calendar[id])));
        CrewCalendar early = Planned(With(Weekdays with { Start = Monday.AddDays(-4) }), Plan(film), forecast), without = Planned(With(Weekdays), Plan(film));
        Assert.Equal("weather not looked at: no forecast of its hours", CrewCalendarSheet.Look(early, early["film"]));
        Assert.Equal((WeatherLook.NotLookedAt, "weather not looked at: no forecast"), (without["film"].Weather, CrewCalendarSheet.Look(without, without["film"])));
        Assert.Equal(Monday.ToDateTime(new(8, 0)), without["film"].Start);
    }

    [Fact]
    public void What_is_done_is_left_out_and_what_sets_after_it_still_waits()
    {
        BuildPlan build = Plan(Step("concrete", 8, 1, 2), Step("bows", 8, 1, 2, ("concrete", 72)), Step("boards", 8, 1, 2));
        CrewCalendar calendar = Planned(With(Weekdays, book: [new() { Id = "1", Kind = SiteBookKind.Done, Of = "concrete", Value = "2026-04-15" }]), build, from: Monday.AddDays(3));
        Assert.Equal(["concrete"], calendar.Done);
        // Done by 16:00 on Wednesday: three days are over on Saturday at 16:00, when work ends; Monday is next.
        Assert.Equal((Monday.AddDays(7).ToDateTime(new(8, 0)), Monday.AddDays(3).ToDateTime(new(8, 0))), (calendar["bows"].Start, calendar["boards"].Start));
    }

    [Fact]
    public void The_end_moves_with_what_holds_it_up_and_the_rest_may_slip_as_far_as_is_said()
    {
        BuildPlan build = Plan(Step("long", 48, 2, 2), Step("short", 8, 1, 2), Step("end", 4, 1, 2, ("long", 0), ("short", 0)));
        CrewCalendar calendar = Planned(With(Weekdays), build);
        Assert.True(calendar["long"].HoldsTheEnd && calendar["end"].HoldsTheEnd && !calendar["short"].HoldsTheEnd);
        Assert.Equal(["long", "end"], calendar.HoldsUpTheEnd);
        Assert.Equal((2, Monday.AddDays(2).ToDateTime(new(12, 0))), (calendar["short"].MaySlipDays, calendar["short"].LatestStart));
    }

    [Fact]
    public void Tools_are_those_at_work_at_once()
    {
        CrewCalendar calendar = Planned(With(Weekdays), Plan(Step("one", 8, 2, 2), Step("other", 8, 2, 2), Step("third", 4, 1, 1, ("one", 0))));
        Assert.Equal([new Tool("hammer", 4)], calendar.Days[0].Tools);
    }

    [Theory]
    [InlineData("calendar.circle")]
    [InlineData("calendar.nobody")]
    [InlineData("calendar.finish-before-start")]
    [InlineData("calendar.crew-too-small")]
    [InlineData("calendar.no-start")]
    [InlineData("calendar.no-day")]
    [InlineData("calendar.day-twice")]
    [InlineData("calendar.longer-than-a-day")]
    [InlineData("calendar.late")]
    [InlineData("calendar.done-when")]
    [InlineData("calendar.no-tool")]
    [InlineData("calendar.unknown-tool")]
    [InlineData("calendar.no-plan")]
    public void What_cannot_be_planned_is_told_with_what_would_do(string code)
    {
        BuildPlan two = Plan(Step("a", 8, 1, 2), Step("b", 8, 1, 2, ("a", 24)));
        CrewCalendarOutcome outcome = code switch
        {
            "calendar.circle" => CrewCalendarPlanner.Plan(With(Weekdays), Plan(Step("a", 8, 1, 2, ("b", 0)), Step("b", 8, 1, 2, ("a", 0)))),
            "calendar.nobody" => CrewCalendarPlanner.Plan(With(Weekdays with { Days = [new() { Weekday = DayOfWeek.Monday, People = 0 }] }), two),
            "calendar.finish-before-start" => CrewCalendarPlanner.Plan(With(Weekdays with { FinishBy = Monday.AddDays(-1) }), two),
            "calendar.crew-too-small" => CrewCalendarPlanner.Plan(With(Weekdays, people: 1), Plan(Step("film", 8, 4, 6))),
            "calendar.no-start" => CrewCalendarPlanner.Plan(With(new Build()), two),
            "calendar.no-day" => CrewCalendarPlanner.Plan(With(Weekdays with { Days = [new() { People = 2 }] }), two),
            "calendar.day-twice" => CrewCalendarPlanner.Plan(With(Weekdays with { Days = [new() { Weekday = DayOfWeek.Monday }, new() { Weekday = DayOfWeek.Monday, People = 3 }] }), two),
            "calendar.longer-than-a-day" => CrewCalendarPlanner.Plan(With(Weekdays), Plan(Step("film", 40, 2, 8) with { InOneGo = true })),
            "calendar.late" => CrewCalendarPlanner.Plan(With(Weekdays with { FinishBy = Monday }, people: 1), Plan(Step("posts", 16, 1, 2))),
            "calendar.done-when" => CrewCalendarPlanner.Plan(With(Weekdays, book: [new() { Id = "1", Kind = SiteBookKind.Done, Of = "a" }]), two),
            "calendar.no-tool" => CrewCalendarPlanner.Plan(With(Weekdays with { Tools = [new() { Name = "cordless drill", Count = 0 }] }), Plan(Step("a", 8, 1, 2) with { Tools = [new Tool("cordless drill", 1)] })),
            "calendar.unknown-tool" => CrewCalendarPlanner.Plan(With(Weekdays with { Tools = [new() { Name = "cordles drill", Count = 1 }] }), Plan(Step("a", 8, 1, 2) with { Tools = [new Tool("cordless drill", 1)] })),
            _ => CrewCalendarPlanner.Plan(With(Weekdays, people: 1), Plan(Step("dig", 8 * 700, 1, 1))),
        };
        Diagnostic found = Assert.Single(outcome.Diagnostics, each => each.Code == code);
        Assert.False(string.IsNullOrEmpty(found.Accepted));
        Assert.Equal(found.Severity == Severity.Error, outcome.Calendar is null);
        if (code == "calendar.crew-too-small") Assert.Equal(("Do film takes more people than ever come.", "1 person", true), (found.Message, found.Seen, found.Accepted!.StartsWith("4 people or more", StringComparison.Ordinal)));
        if (code == "calendar.late") Assert.StartsWith("1 more on every day", found.Accepted, StringComparison.Ordinal);
    }

    private static readonly Gen<(Build Build, BuildPlan Plan, int[] People)> Jobs =
        from people in Gen.Int[0, 6].Array[7]
        from hours in Gen.Int[2, 10].Array[7]
        from work in Gen.Int[1, 60].Array[2, 12]
        from kinds in Gen.Int[0, 5].Array[work.Length * 3]
        from waits in Gen.Int[0, 24].Array[work.Length * 2]
        select (
            new Build { Start = Monday, Begins = new(7, 30), Days = [.. people.Select((count, day) => new BuildDay { Weekday = (DayOfWeek)day, People = count, Hours = hours[day] })] },
            Plan([.. work.Select((each, at) => Step(FormattableString.Invariant($"s{at}"), each / 2.0, 1 + (kinds[3 * at] % 3), 1 + (kinds[3 * at] % 3) + (kinds[(3 * at) + 1] % 3), [.. Enumerable.Range(0, 2).Where(which => waits[(2 * at) + which] < at).Select(which => (FormattableString.Invariant($"s{waits[(2 * at) + which]}"), which * 30.0)).DistinctBy(wait => wait.Item1)]) with { InOneGo = kinds[(3 * at) + 2] == 0 && each < 12 })]),
            people);

    [Fact]
    public void No_step_starts_before_its_prerequisites_and_the_crew_is_never_over_booked()
    {
        int planned = 0;
        Jobs.Sample(
            job =>
            {
                CrewCalendar? calendar = CrewCalendarPlanner.Plan(With(job.Build), job.Plan).Calendar;
                if (calendar is null) return;
                planned++;
                Assert.Empty(CalendarRules.Broken(calendar, job.Plan, calendar.Days.ToDictionary(day => day.Day.Date, day => job.People[(int)day.Day.Date.DayOfWeek])));
            },
            iter: 60,
            threads: 1);
        Assert.True(planned > 35, $"Only {planned} could be planned.");
    }

    [Fact]
    public void Removing_a_helper_never_shortens_the_job()
    {
        int compared = 0;
        Jobs.Sample(
            job =>
            {
                CrewCalendar? all = CrewCalendarPlanner.Plan(With(job.Build), job.Plan).Calendar;
                CrewCalendar? fewer = CrewCalendarPlanner.Plan(With(job.Build with { Days = [.. job.Build.Days.Select(day => day with { People = Math.Max(0, day.People!.Value - 1) })] }), job.Plan).Calendar;
                if (fewer is null) return;
                compared++;
                Assert.NotNull(all);
                Assert.True(all.End <= fewer.End, $"{all.End} with all, {fewer.End} with one fewer");
                Assert.All(all.MoreHelp, help => Assert.True(help.End <= all.End));
            },
            iter: 40,
            threads: 1);
        Assert.True(compared > 15, $"Only {compared} could be compared.");
    }
}
