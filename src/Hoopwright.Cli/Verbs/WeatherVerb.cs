using System.CommandLine;
using System.Text.Json;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Cli.Verbs;

/// <summary>Reads a weather or forecast file: what it holds, what was repaired, when film could be pulled.</summary>
internal static class WeatherVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = "An EnergyPlus weather file, a gridpoint or hourly forecast of the National Weather Service, or a table; - reads standard input." };
        var input = new WeatherInput();
        var charts = new ChartFiles();
        var metric = new Option<bool>("--metric") { Description = "Metric units in the text." };
        var asJson = new Option<bool>("--json") { Description = "For machines: one JSON document on standard output." };
        var command = new Command("weather", """
            Reads weather hour by hour and says what the file holds, what was repaired in it, and when roof film could be pulled by the
            usual limits: of a forecast the best ten stretches of the next seven days, of a year the odds by month. For your own
            tunnel and crew use 'days'. The forms are in docs/weather.md.

            Examples:
              hoopwright weather examples/forecast-invented.json
              hoopwright weather my-station.epw --json > weather.json
              hoopwright weather my-station.epw --charts charts
              hoopwright weather my-table.csv --from 2026-04-18 --metric
            """) { file, input.From, input.Clock, charts.Folder, metric, asJson };
        command.SetAction(parsed => Run(input.Read(parsed, parsed.GetRequiredValue(file), terminal), input.Day(parsed), parsed.GetValue(metric) ? UnitSystem.Metric : UnitSystem.UsCustomary, parsed.GetValue(asJson), charts, parsed, terminal));
        return command;
    }

    private static int Run(WeatherReading reading, DateOnly? from, UnitSystem units, bool asJson, ChartFiles charts, ParseResult parsed, Terminal terminal)
    {
        CoverDayOutcome? days = reading.Record is { } record ? CoverDayPlanner.Plan(record, from) : null;
        Diagnostic[] found = [.. reading.Diagnostics, .. days?.Diagnostics ?? []];
        if (asJson)
        {
            Print(terminal, json =>
            {
                json.WritePropertyName("weather");
                WeatherJson.Write(json, reading);
                Days(json, days?.Report, units);
                json.WritePropertyName("diagnostics");
                DiagnosticJson.Write(json, found);
            });
        }
        else
        {
            if (reading.Record is { } known) terminal.Out.WriteLine(WeatherSheet.Of(known, units));
            if (days?.Report is { } report) terminal.Out.Write(CoverDaySheet.Of(report, units));
            DiagnosticPrinter.Print(terminal.Messages, terminal, found, reading: null);
        }
        charts.Write(parsed, days?.Report, reading.Record, null, reading.Record?.Name ?? "", units, terminal);
        return found.Any(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }

    /// <summary>Writes the property <c>coverDays</c>, null where nothing can be said.</summary>
    internal static void Days(Utf8JsonWriter json, CoverDayReport? report, UnitSystem units)
    {
        json.WritePropertyName("coverDays");
        if (report is null) json.WriteNullValue();
        else CoverDayJson.Write(json, report, units);
    }

    /// <summary>Prints one JSON object.</summary>
    internal static void Print(Terminal terminal, Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonText.Written))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }
        terminal.Out.WriteLine(System.Text.Encoding.UTF8.GetString(stream.ToArray()));
    }
}
