using System.Globalization;
using System.Text;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Svg;

namespace Hoopwright.Cli;

/// <summary>Writes the drawing of a bow before and after a change, on the paper of the plan's units.</summary>
internal static class BeforeAfterFile
{
    public static void Write(Terminal terminal, string file, PlannedTunnel before, PlannedTunnel after, string change, DateOnly day, string number = "1 of 1")
    {
        (double widthMm, double heightMm) = (after.Units == UnitSystem.Metric ? Paper.A4 : Paper.Letter).DrawingSize(landscape: true);
        var sheet = new FigureSheet(widthMm, heightMm, before.Plan.Name ?? "Tunnel", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), after.Units);
        Files.Write(file, Encoding.UTF8.GetBytes(SvgWriter.Write(BeforeAfterFigure.Draw(before, after, change, sheet, number))));
        terminal.Messages.WriteLine($"Wrote {file}.");
    }
}
