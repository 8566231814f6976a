using System.CommandLine;
using Hoopwright.Diagnostics;
using Hoopwright.Inside;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Weather;

namespace Hoopwright.Cli.Verbs;

/// <summary>Says what a year inside a tunnel is like.</summary>
internal static class InsideVerb
{
    public static Command Command(Terminal terminal)
    {
        var plan = new PlanInput();
        var weather = new Argument<string>("WEATHER") { Description = "A weather file of a year, such as an EnergyPlus weather file; - reads standard input." };
        var input = new WeatherInput();
        var charts = new ChartFiles();
        var csv = new Option<bool>("--csv") { Description = "For spreadsheets: every hour as a CSV table on standard output." };
        var command = new Command("inside", """
            Says what a year inside this tunnel is like with the weather of a year: how hot and how cold it gets shut, open and opened by
            hand, when frost ends and begins, how much light falls on the floor, how much air its sides, doors and vents pass, what a
            heater and fans must do, and which way it would best lie. What it is worked out with is in the plan's inside, site and
            sides. See docs/inside.md.

            Examples:
              hoopwright inside examples/gothic-26ft.json examples/year-invented.csv
              hoopwright inside my-tunnel.json my-station.epw --charts charts
              hoopwright inside my-tunnel.json my-station.epw --json > inside.json
              hoopwright inside my-tunnel.json my-station.epw --csv > hours.csv
            """) { plan.File, weather, input.Clock, charts.Folder, csv, plan.Json };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(plan.Json) && parsed.GetValue(csv))
            {
                terminal.Messages.WriteLine("Choose --json or --csv, not both.");
                return ExitCode.WrongUsage;
            }
            OutputForm form = parsed.GetValue(plan.Json) ? OutputForm.Json : parsed.GetValue(csv) ? OutputForm.Csv : OutputForm.Text;
            return Run(plan, parsed, input, parsed.GetRequiredValue(weather), form, charts, terminal);
        });
        return command;
    }

    private static int Run(PlanInput plan, ParseResult parsed, WeatherInput input, string weather, OutputForm form, ChartFiles charts, Terminal terminal)
    {
        if (weather == "-" && parsed.GetRequiredValue(plan.File) == "-")
        {
            terminal.Messages.WriteLine("Plan and weather cannot both come from standard input.");
            return ExitCode.WrongUsage;
        }
        PlanReading reading = PlanReader.Read(Files.Read(parsed.GetRequiredValue(plan.File), terminal));
        PlannedTunnel planned = TunnelWorks.Plan(reading, depth: WorkDepth.Orders);
        if (planned.Tunnel is not { } tunnel) return PlanInput.Refuse(terminal, reading, planned);
        WeatherReading read = input.Read(parsed, weather, terminal);
        InsideOutcome? inside = read.Record is { } record ? InsidePlanner.Plan(tunnel, record) : null;
        Diagnostic[] found = [.. read.Diagnostics, .. inside?.Diagnostics ?? []];
        switch (form)
        {
            case OutputForm.Json:
                WeatherVerb.Print(terminal, json =>
                {
                    json.WritePropertyName("inside");
                    if (inside?.Report is { } report) InsideJson.Write(json, report);
                    else json.WriteNullValue();
                    json.WritePropertyName("diagnostics");
                    DiagnosticJson.Write(json, found);
                });
                break;
            case OutputForm.Csv:
                if (inside?.Report is { } hours) terminal.Out.Write(InsideTable.Of(hours));
                DiagnosticPrinter.Print(terminal.Messages, terminal, found, reading: null);
                break;
            case OutputForm.Text:
                if (inside?.Report is { } year) terminal.Out.Write(InsideSheet.Of(year, planned.Units));
                DiagnosticPrinter.Print(terminal.Messages, terminal, found, reading: null);
                break;
        }
        charts.Write(parsed, inside?.Report, planned.Plan.Name ?? "", planned.Units, terminal);
        return found.Any(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }
}
