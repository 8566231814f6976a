using System.CommandLine;
using System.Text;
using Hoopwright.Cover.Pull;
using Hoopwright.Days;
using Hoopwright.Inside;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Svg;
using Hoopwright.Weather;

namespace Hoopwright.Cli;

/// <summary>What the verbs that read weather have in common: charts as SVG files.</summary>
internal sealed class ChartFiles
{
    public Option<string?> Folder { get; } = new("--charts") { Description = "A folder for charts as SVG: hours and windows of a forecast, odds by month of a year, how far to pull; of a year inside heat, light and air.", HelpName = "FOLDER" };

    /// <summary>Writes what there is data for, where a folder is given.</summary>
    public void Write(ParseResult parsed, CoverDayReport? report, WeatherRecord? record, PullPlan? pull, string name, UnitSystem units, Terminal terminal)
    {
        if (parsed.GetValue(Folder) is not { } folder) return;
        Write(folder, CoverCharts.Offers(report, record, pull, Sheet(name, units)), terminal);
    }

    /// <summary>Writes the charts of a year inside, where a folder is given.</summary>
    public void Write(ParseResult parsed, InsideReport? report, string name, UnitSystem units, Terminal terminal)
    {
        if (parsed.GetValue(Folder) is { } folder && report is not null) Write(folder, InsideCharts.Offers(report, Sheet(name, units)), terminal);
    }

    private static FigureSheet Sheet(string name, UnitSystem units)
    {
        Paper paper = units switch { UnitSystem.UsCustomary => Paper.Letter, UnitSystem.Metric => Paper.A4 };
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        return new FigureSheet(widthMm, heightMm, name, "", units);
    }

    private static void Write(string folder, IEnumerable<FigureOffer> offers, Terminal terminal)
    {
        foreach (FigureOffer offer in offers)
        {
            string path = Path.Combine(folder, offer.Name + ".svg");
            Files.Write(path, Encoding.UTF8.GetBytes(SvgWriter.Write(offer.Draw())));
            terminal.Progress($"Wrote {path}.");
        }
    }
}
