using System.CommandLine;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Weather;

namespace Hoopwright.Cli.Verbs;

/// <summary>Says when the roof film of a tunnel can be pulled.</summary>
internal static class DaysVerb
{
    public static Command Command(Terminal terminal)
    {
        var plan = new PlanInput();
        var weather = new Option<string>("--weather") { Description = "A weather or forecast file; - reads standard input.", Required = true, HelpName = "FILE" };
        var input = new WeatherInput();
        var charts = new ChartFiles();
        var command = new Command("days", """
            Says when the roof film of this tunnel can be pulled: calm, mild, dry and by daylight for as long as this crew needs for this
            sheet. Of a forecast the best ten stretches of the next seven days, of a year the odds by month; and what relaxing each
            limit would gain. The limits are in the plan's coverDay. A calendar of the crew's days comes later. See docs/weather.md.

            Examples:
              hoopwright days examples/gothic-26ft.json --weather examples/forecast-invented.json
              hoopwright days my-tunnel.json --weather my-station.epw --charts charts
              hoopwright days my-tunnel.json --weather forecast.json --from 2026-04-20 --json
            """) { plan.File, weather, input.From, input.Clock, charts.Folder, plan.Json };
        command.SetAction(parsed => Run(plan, parsed, input, parsed.GetRequiredValue(weather), charts, terminal));
        return command;
    }

    private static int Run(PlanInput plan, ParseResult parsed, WeatherInput input, string weather, ChartFiles charts, Terminal terminal)
    {
        if (weather == "-" && parsed.GetRequiredValue(plan.File) == "-")
        {
            terminal.Messages.WriteLine("Plan and weather cannot both come from standard input.");
            return ExitCode.WrongUsage;
        }
        PlanReading reading = PlanReader.Read(Files.Read(parsed.GetRequiredValue(plan.File), terminal));
        PlannedTunnel planned = TunnelWorks.Plan(reading, depth: WorkDepth.Orders);
        if (planned is not { Tunnel: { } tunnel, Cover: { } cover }) return PlanInput.Refuse(terminal, reading, planned);
        WeatherReading read = input.Read(parsed, weather, terminal);
        CoverDayOutcome? days = read.Record is { } record ? CoverDayPlanner.Plan(tunnel, cover, record, input.Day(parsed)) : null;
        Diagnostic[] found = [.. read.Diagnostics, .. days?.Diagnostics ?? []];
        if (parsed.GetValue(plan.Json))
        {
            WeatherVerb.Print(terminal, json =>
            {
                json.WritePropertyName("weather");
                WeatherJson.Write(json, read);
                WeatherVerb.Days(json, days?.Report, planned.Units);
                json.WritePropertyName("diagnostics");
                DiagnosticJson.Write(json, found);
            });
        }
        else
        {
            if (days?.Report is { } report) terminal.Out.Write(CoverDaySheet.Of(report, planned.Units));
            DiagnosticPrinter.Print(terminal.Messages, terminal, found, reading: null);
        }
        charts.Write(parsed, days?.Report, read.Record, cover.Pull, planned.Plan.Name ?? "", planned.Units, terminal);
        return found.Any(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }
}
