using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Ics;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using Hoopwright.Weather;

namespace Hoopwright.Cli.Verbs;

/// <summary>Says when the roof film of a tunnel can be pulled, and who does what on which day.</summary>
internal static class DaysVerb
{
    private const int MostSeasons = 100_000;

    public static Command Command(Terminal terminal)
    {
        var plan = new PlanInput();
        var input = new WeatherInput();
        var options = new Options();
        var command = new Command("days", """
            Says when the roof film of this tunnel can be pulled, and plans the days of the crew.

            With --weather: calm, mild, dry and by daylight for as long as this crew needs for this sheet. Of a forecast the best ten
            stretches of the next seven days, of a year the odds by month; and what relaxing each limit would gain. The limits are in
            the plan's coverDay.

            The crew calendar: which steps on which day, by whom, what to load, so that all is done as early as can be; what holds up
            the end, how far each step may slip, what one helper more would do. It begins with the plan's build.start, or with --from;
            steps that the site book says are done are left out. Steps wait for their weather as far as a forecast goes. --odds tries
            many seasons of a weather file of a year or more. --ics writes a calendar file; where the file is there already, its
            events are moved and not doubled. See docs/days.md.

            Examples:
              hoopwright days examples/gothic-26ft.json --weather examples/forecast-invented.json
              hoopwright days my-tunnel.json --from 2026-04-20 --ics crew.ics --language es
              hoopwright days my-tunnel.json --climate my-station.epw --odds 1000 --seed 7 --json
            """) { plan.File, options.Weather, input.From, input.Clock, options.Recover, options.Climate, options.Odds, options.Seed, options.Ics, options.Wall, options.Language, options.Stamp.Option, options.Charts.Folder, plan.Json };
        command.SetAction(parsed => Run(plan, parsed, input, options, terminal));
        return command;
    }

    private static int Run(PlanInput plan, ParseResult parsed, WeatherInput input, Options options, Terminal terminal)
    {
        string file = parsed.GetRequiredValue(plan.File);
        string? weather = parsed.GetValue(options.Weather), climate = parsed.GetValue(options.Climate);
        if (new[] { file, weather, climate }.Count(each => each == "-") > 1)
        {
            terminal.Messages.WriteLine("Only one of plan and weather can come from standard input.");
            return ExitCode.WrongUsage;
        }
        PlanReading reading = PlanReader.Read(Files.Read(file, terminal));
        PlannedTunnel planned = TunnelWorks.Plan(reading, depth: WorkDepth.Orders);
        if (planned is not { Tunnel: { } tunnel, Cover: { } cover, Steps: { } steps, RecoverSteps: { } recover }) return PlanInput.Refuse(terminal, reading, planned);
        WeatherReading? read = weather is null ? null : input.Read(parsed, weather, terminal), years = climate is null ? null : input.Read(parsed, climate, terminal);
        DateOnly? from = input.Day(parsed);
        CoverDayOutcome? days = read?.Record is { } record ? CoverDayPlanner.Plan(tunnel, cover, record, from) : null;
        List<Diagnostic> found = [.. read?.Diagnostics ?? [], .. years?.Diagnostics ?? [], .. days?.Diagnostics ?? []];
        BuildPlan build = parsed.GetValue(options.Recover) ? recover : steps;
        CrewCalendar? calendar = read is null || read.Record is not null ? Calendar(tunnel, build, read?.Record ?? years?.Record, from, input.Wall(parsed), found) : null;
        SeasonOdds? odds = calendar is null || parsed.GetValue(options.Odds) is not { } seasons ? null : Odds(tunnel, build, calendar, years?.Record ?? read?.Record, seasons, parsed.GetValue(options.Seed), input.Wall(parsed), found);
        if (parsed.GetValue(plan.Json))
        {
            WeatherVerb.Print(terminal, json =>
            {
                if (read is not null)
                {
                    json.WritePropertyName("weather");
                    WeatherJson.Write(json, read);
                }
                WeatherVerb.Days(json, days?.Report, planned.Units);
                json.WritePropertyName("calendar");
                if (calendar is null) json.WriteNullValue();
                else CrewCalendarJson.Write(json, calendar);
                json.WritePropertyName("odds");
                if (odds is null) json.WriteNullValue();
                else CrewCalendarJson.Write(json, odds, calendar!.FinishBy);
                json.WritePropertyName("diagnostics");
                DiagnosticJson.Write(json, found);
            });
        }
        else
        {
            if (days?.Report is { } report) terminal.Out.Write(CoverDaySheet.Of(report, planned.Units));
            if (calendar is not null)
            {
                if (days?.Report is not null) terminal.Out.WriteLine();
                terminal.Out.Write(CrewCalendarSheet.Of(calendar, odds, planned.Units));
            }
            DiagnosticPrinter.Print(terminal.Messages, terminal, found, reading: null);
        }
        if (calendar is not null && parsed.GetValue(options.Ics) is { } ics)
        {
            KeptEvents before = File.Exists(ics) ? KeptEvents.Read(File.ReadAllBytes(ics)) : KeptEvents.None;
            DateTimeOffset stamp = new(options.Stamp.Of(parsed).ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
            Files.Write(ics, CrewIcs.Write(calendar, planned.Plan.Name ?? "", CrewWords.Of(parsed.GetValue(options.Language) ?? "en"), planned.Units, stamp, before));
            terminal.Progress($"Wrote {ics}.");
        }
        if (calendar is not null && parsed.GetValue(options.Wall) is { } wall)
        {
            Paper paper = planned.Units == Quantities.UnitSystem.Metric ? Paper.A4 : Paper.Letter;
            Files.Write(wall, [.. WallCalendar.Write(planned, calendar, paper, options.Stamp.Of(parsed), parsed.GetValue(options.Language) ?? "en").Bytes]);
            terminal.Progress($"Wrote {wall}.");
        }
        options.Charts.Write(parsed, days?.Report, read?.Record, cover.Pull, planned.Plan.Name ?? "", planned.Units, terminal);
        return found.Exists(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }

    private static CrewCalendar? Calendar(Tunnel tunnel, BuildPlan build, WeatherRecord? weather, DateOnly? from, TimeSpan? clock, List<Diagnostic> found)
    {
        if (weather is not null && from is null && tunnel.Plan.Build.Start is null)
        {
            // The covering days are told all the same; a forecast has a first day of its own.
            from = CrewCalendarPlanner.IsForecast(weather) ? DateOnly.FromDateTime(weather[0].Start.DateTime) : null;
            found.Add(new Diagnostic(
                "calendar.no-start", Severity.Assumption, "build.start", from is null ? "It is not said on which day work begins, so there is no crew calendar." : "It is not said on which day work begins, so the crew calendar begins with the forecast.", null,
                from?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "\"start\": \"2026-04-18\", or --from"));
            if (from is null) return null;
        }
        CrewCalendarOutcome outcome = CrewCalendarPlanner.Plan(tunnel, build, weather, from, clock);
        // What was asked for the covering day already is told once.
        found.AddRange(outcome.Diagnostics.Where(each => !found.Exists(told => told.Code == each.Code)));
        return outcome.Calendar;
    }

    private static SeasonOdds? Odds(Tunnel tunnel, BuildPlan build, CrewCalendar calendar, WeatherRecord? climate, int seasons, ulong seed, TimeSpan? clock, List<Diagnostic> found)
    {
        if (climate is null)
        {
            found.Add(new Diagnostic("calendar.no-climate", Severity.Error, "weather", "There is no weather to draw seasons from.", null, "--climate with a weather file of a year, or of many"));
            return null;
        }
        (SeasonOdds? odds, ImmutableArray<Diagnostic> told) = SeasonPlanner.Odds(tunnel, build, calendar, climate, seasons, seed, clock);
        found.AddRange(told);
        return odds;
    }

    private sealed class Options
    {
        public Options()
        {
            Odds.Validators.Add(result =>
            {
                if (result.GetValueOrDefault<int?>() is { } seasons && seasons is < 1 or > MostSeasons) result.AddError($"'{seasons}' is no number of seasons from 1 to {MostSeasons}.");
            });
            Language.AcceptOnlyFromAmong([.. CrewWords.Languages]);
        }

        public Option<string?> Weather { get; } = new("--weather") { Description = "A weather or forecast file; - reads standard input.", HelpName = "FILE" };

        public Option<string?> Climate { get; } = new("--climate") { Description = "A weather file of a year or of many, from which --odds draws; that of --weather when left out.", HelpName = "FILE" };

        public Option<bool> Recover { get; } = new("--recover") { Description = "Plan the days of new film on the tunnel that stands, not of the build." };

        public Option<int?> Odds { get; } = new("--odds") { Description = "Try so many seasons and tell the odds of being done by each day.", HelpName = "SEASONS" };

        public Option<ulong> Seed { get; } = new("--seed") { HelpName = "NUMBER", Description = "What the seasons are drawn by; 1 when left out. The same seed gives the same odds.", DefaultValueFactory = _ => 1 };

        public Option<string?> Wall { get; } = new("--wall") { Description = "Write the crew calendar as a PDF for the wall, a page a month and what to load on each day.", HelpName = "FILE" };

        public Option<string?> Ics { get; } = new("--ics") { Description = "Write the crew calendar as an iCalendar file.", HelpName = "FILE" };

        public Option<string?> Language { get; } = new("--language") { Description = "Language of the calendar files." };

        public DayOption Stamp { get; } = new();

        public ChartFiles Charts { get; } = new();
    }
}
