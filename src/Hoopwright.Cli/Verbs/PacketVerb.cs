using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Inside;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Dxf;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using Hoopwright.Weather;

namespace Hoopwright.Cli.Verbs;

/// <summary>Writes the whole packet.</summary>
internal static class PacketVerb
{
    public static Command Command(Terminal terminal)
    {
        var input = new PlanInput();
        var folder = new Option<string>("--out") { HelpName = "FOLDER", Description = "The folder to write to; made when it is not there.", DefaultValueFactory = _ => "packet" };
        var zip = new Option<bool>("--zip") { Description = "One zip file, packet.zip, in that folder." };
        var paper = new Option<string>("--paper") { Description = "letter or a4; by the plan's units when left out." };
        paper.AcceptOnlyFromAmong("letter", "a4");
        var drawnOn = new Option<string?>("--drawings") { Description = "The paper of the drawings, where it is larger than that of the pages: tabloid or a3." };
        drawnOn.AcceptOnlyFromAmong("tabloid", "a3");
        var revision = new Option<string?>("--revision") { HelpName = "MARK", Description = "Which revision it is, as the title strips are to print it, such as B." };
        var crew = new Option<string?>("--crew") { Description = "Also crew sheets, crew-es.pdf, and step cards, cards-es.pdf: what those who set out, dig, cover and cut need, in their language: en or es." };
        crew.AcceptOnlyFromAmong([.. CrewWords.Languages]);
        var date = new DayOption();
        var weather = new Option<string?>("--weather") { Description = "A weather or forecast file: the packet then says when the film can be pulled, and by a file of a year what it is like inside.", HelpName = "FILE" };
        var weatherInput = new WeatherInput();
        var only = new Option<string[]>("--only") { Description = "Only these kinds of file: pdf, svg, dxf, gltf, csv, xlsx, ics, geojson, json; everything when left out.", HelpName = "KIND", AllowMultipleArgumentsPerToken = true };
        only.AcceptOnlyFromAmong([.. Enum.GetNames<PacketForm>().Select(name => name.ToLowerInvariant())]);
        var exploded = new Option<bool>("--exploded") { Description = "Dimensions of DXF drawings as plain lines and texts." };
        var command = new Command("packet", """
            Writes the whole packet: PDF, drawings, tables, model, results; index.html lists them.

            Examples:
              hoopwright packet my-tunnel.json --out packet
              hoopwright packet my-tunnel.json --out packet --zip --paper a4
              hoopwright packet my-tunnel.json --out packet --only dxf xlsx
              hoopwright packet my-tunnel.json --out packet --drawings tabloid --revision B
              hoopwright packet my-tunnel.json --out packet --crew es
              hoopwright packet my-tunnel.json --out packet --weather forecast.json --clock -04:00
              hoopwright packet my-tunnel.json --out packet --weather my-station.epw
            """) { input.File, folder, zip, paper, drawnOn, revision, only, exploded, crew, date.Option, weather, weatherInput.From, weatherInput.Clock, input.Prices, input.Json };
        command.SetAction(parsed =>
        {
            terminal.Progress("Working out the plan …");
            (PlanReading reading, PlannedTunnel planned) = input.Work(parsed, terminal);
            if (planned.Tunnel is null) return PlanInput.Refuse(terminal, reading, planned);
            Paper size = (parsed.GetValue(paper) ?? (planned.Units == Quantities.UnitSystem.Metric ? "a4" : "letter")) == "a4" ? Paper.A4 : Paper.Letter;
            DateOnly day = date.Of(parsed);
            CoverWeather? days = null;
            if (parsed.GetValue(weather) is { } forecast)
            {
                WeatherReading read = weatherInput.Read(parsed, forecast, terminal);
                CoverDayOutcome? outcome = read.Record is { } record ? CoverDayPlanner.Plan(planned.Tunnel, planned.Cover!, record, weatherInput.Day(parsed)) : null;
                if (outcome?.Report is not { } report)
                {
                    DiagnosticPrinter.Print(terminal.Messages, terminal, [.. read.Diagnostics, .. outcome?.Diagnostics ?? []], reading: null);
                    return ExitCode.InputErrors;
                }
                // A forecast tells when to pull the film; of a year, what it is like inside too.
                InsideOutcome? inside = InsidePlanner.SpeaksOfAYear(read.Record!) ? InsidePlanner.Plan(planned.Tunnel, read.Record!) : null;
                if (inside is { Report: null }) DiagnosticPrinter.Print(terminal.Messages, terminal, inside.Diagnostics, reading: null);
                days = new CoverWeather(report, read.Record!, inside?.Report);
            }
            terminal.Progress("Drawing and setting the pages …");
            string to = parsed.GetValue(folder) ?? "packet";
            bool isZip = parsed.GetValue(zip);
            var choice = new PacketChoice
            {
                Only = [.. (parsed.GetValue(only) ?? []).Select(name => Enum.Parse<PacketForm>(name, ignoreCase: true))],
                Crew = parsed.GetValue(crew),
                Weather = days,
                DrawnOn = parsed.GetValue(drawnOn) switch { "tabloid" => Paper.Tabloid, "a3" => Paper.A3, _ => null },
                Revision = parsed.GetValue(revision),
                Dimensions = parsed.GetValue(exploded) ? DxfDimensions.Exploded : DxfDimensions.Entities,
                Earlier = isZip ? [] : EarlierPacket.In(to),
            };
            ImmutableArray<PacketFile> files = PacketWriter.Write(planned, size, day, Cores.Run, choice);
            terminal.Progress("Writing …");
            int taken = 0;
            if (isZip)
            {
                Files.Write(Path.Combine(to, "packet.zip"), ZipWriter.Write(files));
            }
            else
            {
                taken = EarlierPacket.Clear(to, choice, files);
                foreach (PacketFile file in files) Files.Write(Path.Combine(to, file.Name), file.Bytes.AsSpan());
            }
            ImmutableArray<Diagnostic> told = EarlierPacket.Told(to, choice) is { } stay ? [.. planned.Diagnostics, stay] : planned.Diagnostics;
            if (parsed.GetValue(input.Json)) terminal.Out.Write(DiagnosticPrinter.Json(told));
            else
            {
                DiagnosticPrinter.Print(terminal.Messages, terminal, told.Where(each => each.Severity == Severity.Warning), reading);
                terminal.Out.WriteLine($"Wrote {(isZip ? Path.Combine(to, "packet.zip") : $"{files.Length.ToString(CultureInfo.InvariantCulture)} files to {to}; begin with {Path.Combine(to, files.Any(file => file.Name == "packet.pdf") ? "packet.pdf" : "index.html")}")}.");
                if (taken > 0) terminal.Out.WriteLine($"Took away {taken.ToString(CultureInfo.InvariantCulture)} files of an earlier packet in {to}.");
                terminal.Out.WriteLine(DiagnosticPrinter.Count(told));
            }
            return ExitCode.Done;
        });
        return command;
    }
}
