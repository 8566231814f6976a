using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;

namespace Hoopwright.Cli.Verbs;

/// <summary>Writes the whole packet.</summary>
internal static class PacketVerb
{
    public static Command Command(Terminal terminal)
    {
        var input = new PlanInput();
        var folder = new Option<string>("--out") { Description = "The folder to write to; made when it is not there.", DefaultValueFactory = _ => "packet" };
        var zip = new Option<bool>("--zip") { Description = "One zip file, packet.zip, in that folder." };
        var paper = new Option<string>("--paper") { Description = "letter or a4; by the plan's units when left out." };
        paper.AcceptOnlyFromAmong("letter", "a4");
        var date = new DayOption();
        var command = new Command("packet", """
            Writes the whole packet: PDF, drawings, tables, results.

            Examples:
              hoopwright packet my-tunnel.json --out packet
              hoopwright packet my-tunnel.json --out packet --zip --paper a4
            """) { input.File, folder, zip, paper, date.Option, input.Prices, input.Json };
        command.SetAction(parsed =>
        {
            terminal.Progress("Working out the plan …");
            (PlanReading reading, PlannedTunnel planned) = input.Work(parsed, terminal);
            if (planned.Tunnel is null) return PlanInput.Refuse(terminal, reading, planned);
            Paper size = (parsed.GetValue(paper) ?? (planned.Units == Quantities.UnitSystem.Metric ? "a4" : "letter")) == "a4" ? Paper.A4 : Paper.Letter;
            DateOnly day = date.Of(parsed);
            terminal.Progress("Drawing and setting the pages …");
            ImmutableArray<PacketFile> files = PacketWriter.Write(planned, size, day, Cores.Run);
            string to = parsed.GetValue(folder) ?? "packet";
            terminal.Progress("Writing …");
            if (parsed.GetValue(zip)) Files.Write(Path.Combine(to, "packet.zip"), ZipWriter.Write(files));
            else foreach (PacketFile file in files) Files.Write(Path.Combine(to, file.Name), file.Bytes.AsSpan());
            if (parsed.GetValue(input.Json)) terminal.Out.Write(DiagnosticPrinter.Json(planned.Diagnostics));
            else
            {
                DiagnosticPrinter.Print(terminal.Messages, terminal, planned.Diagnostics.Where(each => each.Severity == Severity.Warning), reading);
                terminal.Out.WriteLine($"Wrote {(parsed.GetValue(zip) ? Path.Combine(to, "packet.zip") : $"{files.Length.ToString(CultureInfo.InvariantCulture)} files to {to}; begin with {Path.Combine(to, "packet.pdf")}")}.");
                terminal.Out.WriteLine(DiagnosticPrinter.Count(planned.Diagnostics));
            }
            return ExitCode.Done;
        });
        return command;
    }
}
