using System.CommandLine;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Ics;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using Hoopwright.Upkeep;
using Hoopwright.Weather;

namespace Hoopwright.Cli.Verbs;

/// <summary>Says what a tunnel that stands asks for: storms, rounds, the next cover.</summary>
internal static class UpkeepVerb
{
    public static Command Command(Terminal terminal)
    {
        var plan = new PlanInput();
        var options = new Options();
        var input = new WeatherInput();
        var command = new Command("upkeep", """
            Says what a tunnel that stands asks for: the storm card (how deep snow may lie before it is cleared, before which gusts to close,
            to tighten and to stay out, in which order to clear), rounds with a checklist of its own parts, how old the film is, when new
            film is due and what the next cover takes.

            With --weather: whether the storm of a forecast passes what the tunnel stands, when first, by how much and how long. Water that
            comes while the air is at or below 34 °F (1.1 °C) counts as snow, rain on snow stays in it, nothing melts. --snow is how deep snow lies
            on the roof already. --card writes the storm card and the checklists as a PDF, --ics the season calendar. See docs/upkeep.md.

            Examples:
              hoopwright upkeep examples/gothic-26ft.json
              hoopwright upkeep my-tunnel.json --weather forecast.json --clock -05:00 --snow "6 in" --kind wet
              hoopwright upkeep my-tunnel.json --card storm.pdf --language es --ics upkeep.ics
              hoopwright upkeep my-tunnel.json --weather forecast.json --json
            """) { plan.File, options.Weather, input.Clock, options.Snow, options.Kind, options.Card, options.Ics, options.Language, options.Paper, options.Date.Option, plan.Json };
        command.SetAction(parsed => Run(plan, parsed, input, options, terminal));
        return command;
    }

    private static int Run(PlanInput plan, ParseResult parsed, WeatherInput input, Options options, Terminal terminal)
    {
        string? weather = parsed.GetValue(options.Weather);
        if (weather == "-" && parsed.GetRequiredValue(plan.File) == "-")
        {
            terminal.Messages.WriteLine("Plan and weather cannot both come from standard input.");
            return ExitCode.WrongUsage;
        }
        (PlanReading reading, PlannedTunnel planned) = plan.Work(parsed, terminal);
        if (planned is not { Tunnel: not null, Upkeep: { } upkeep }) return PlanInput.Refuse(terminal, reading, planned);
        DateOnly today = options.Date.Of(parsed);
        List<Diagnostic> found = [];
        StormOutlook? outlook = weather is null ? null : Look(upkeep, planned, input.Read(parsed, weather, terminal), options.Lying(parsed), found);
        if (parsed.GetValue(plan.Json))
        {
            using JsonDocument results = JsonDocument.Parse(ResultsJson.Write(planned));
            WeatherVerb.Print(terminal, json =>
            {
                json.WritePropertyName("upkeep");
                results.RootElement.GetProperty("upkeep").WriteTo(json);
                json.WritePropertyName("storm");
                if (outlook is null) json.WriteNullValue();
                else StormOutlookJson.Write(json, outlook);
                json.WritePropertyName("diagnostics");
                DiagnosticJson.Write(json, found);
            });
        }
        else
        {
            if (outlook is not null)
            {
                terminal.Out.Write(UpkeepSheet.Of(outlook, planned.Units));
                terminal.Out.WriteLine();
            }
            terminal.Out.Write(UpkeepSheet.Of(upkeep, today, planned.Units));
            DiagnosticPrinter.Print(terminal.Messages, terminal, [.. found, .. upkeep.Assumptions], reading: null);
        }
        string language = parsed.GetValue(options.Language) ?? CrewWords.English.Language;
        if (parsed.GetValue(options.Card) is { } card)
        {
            Paper paper = (parsed.GetValue(options.Paper) ?? (planned.Units == UnitSystem.Metric ? "a4" : "letter")) == "a4" ? Paper.A4 : Paper.Letter;
            Files.Write(card, UpkeepSheets.Write(planned, paper, today, language).Bytes.AsSpan());
            terminal.Progress($"Wrote {card}.");
        }
        if (parsed.GetValue(options.Ics) is { } ics)
        {
            Files.Write(ics, UpkeepIcs.Write(upkeep, planned.Plan, CrewWords.Of(language), today));
            terminal.Progress($"Wrote {ics}.");
        }
        return found.Exists(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }

    private static StormOutlook? Look(UpkeepReport upkeep, PlannedTunnel planned, WeatherReading read, Pressure lying, List<Diagnostic> found)
    {
        found.AddRange(read.Diagnostics);
        if (read.Record is not { } record) return null;
        (StormOutlook? outlook, var told) = StormWatch.Look(upkeep, planned.Plan, record, lying);
        found.AddRange(told);
        return outlook;
    }

    private sealed class Options
    {
        public Options()
        {
            Language.AcceptOnlyFromAmong([.. CrewWords.Languages]);
            Paper.AcceptOnlyFromAmong("letter", "a4");
            Kind.AcceptOnlyFromAmong([.. SnowKind.All.Select(kind => kind.Id)]);
            Snow.Validators.Add(result =>
            {
                if (result.GetValueOrDefault<string?>() is { } text && Depth(text) is null) result.AddError($"'{text}' is no depth of snow; write it as \"6 in\" or \"15 cm\".");
            });
        }

        public Option<string?> Weather { get; } = new("--weather") { Description = "A forecast file to hold against the storm card; - reads standard input.", HelpName = "FILE" };

        public Option<string?> Snow { get; } = new("--snow") { Description = "How deep snow lies on the roof already, as \"6 in\" or \"15 cm\".", HelpName = "DEPTH" };

        public Option<string> Kind { get; } = new("--kind") { Description = "What kind of snow that is: light, settled, wet or soaked.", DefaultValueFactory = _ => "settled" };

        public Option<string?> Card { get; } = new("--card") { Description = "Write the storm card and the checklists of the rounds as a PDF.", HelpName = "FILE" };

        public Option<string?> Ics { get; } = new("--ics") { Description = "Write the season calendar as an iCalendar file.", HelpName = "FILE" };

        public Option<string?> Language { get; } = new("--language") { Description = "Language of card and calendar." };

        public Option<string?> Paper { get; } = new("--paper") { Description = "letter or a4; by the plan's units when left out." };

        public DayOption Date { get; } = new();

        public Pressure Lying(ParseResult parsed) =>
            parsed.GetValue(Snow) is { } text && Depth(text) is { } depth ? SnowKind.All.First(kind => kind.Id == parsed.GetValue(Kind)).WeightOf(depth) : Pressure.Zero;

        private static Length? Depth(string text) => QuantityText.ReadLength(text) is { IsRead: true, Value: { Metres: >= 0 and <= 20 } depth } ? depth : null;
    }
}
