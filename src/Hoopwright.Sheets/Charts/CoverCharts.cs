using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Days;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Weather;

namespace Hoopwright.Sheets.Charts;

/// <summary>The charts of covering: what there is data for.</summary>
public static class CoverCharts
{
    /// <summary>Hours of the days looked at, odds of months, and how far to pull.</summary>
    /// <param name="report">When the film can be pulled; null without weather.</param>
    /// <param name="record">The weather of the report; null without.</param>
    /// <param name="pull">How tight the film is pulled; null without a plan.</param>
    /// <param name="sheet">Paper, names, units and language.</param>
    public static ImmutableArray<FigureOffer> Offers(CoverDayReport? report, WeatherRecord? record, PullPlan? pull, FigureSheet sheet)
    {
        List<(string Name, Func<string, Drawing> Draw)> wanted = [];
        if (pull is not null) wanted.Add(("film-pull", number => PullChart.Draw(pull, null, sheet, number)));
        if (report is { From: not null } && record is not null) wanted.Add(("covering-hours", number => ForecastChart.Draw(report, record, sheet, number)));
        if (report is { Odds.IsEmpty: false }) wanted.Add(("covering-odds", number => OddsChart.Draw(report, sheet, number)));
        return
        [
            .. wanted.Select((each, index) => new FigureOffer(each.Name, FigureChapter.Cover, true,
                () => each.Draw(sheet.Words.Say(FormattableString.Invariant($"{index + 1} of {wanted.Count}"))))),
        ];
    }
}
