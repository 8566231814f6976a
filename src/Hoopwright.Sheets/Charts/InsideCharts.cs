using System.Collections.Immutable;
using Hoopwright.Inside;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;

namespace Hoopwright.Sheets.Charts;

/// <summary>The charts of a year inside.</summary>
public static class InsideCharts
{
    /// <summary>Heat and cold over the year, light across the floor, air through what opens.</summary>
    /// <param name="report">A year inside.</param>
    /// <param name="sheet">Paper, names, units and language.</param>
    public static ImmutableArray<FigureOffer> Offers(InsideReport report, FigureSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(sheet);
        return [Offer("inside-year", 1, InsideYearChart.Draw), Offer("inside-light", 2, InsideLightChart.Draw), Offer("inside-air", 3, InsideAirChart.Draw)];

        FigureOffer Offer(string name, int at, Func<InsideReport, FigureSheet, string, Drawing> draw) =>
            new(name, FigureChapter.Cover, true, () => draw(report, sheet, sheet.Words.Say(FormattableString.Invariant($"{at} of 3"))));
    }
}
