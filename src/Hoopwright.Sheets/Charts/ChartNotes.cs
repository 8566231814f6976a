using System.Globalization;
using Hoopwright.Days;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Figures;
using Hoopwright.Weather;

namespace Hoopwright.Sheets.Charts;

/// <summary>What the charts of weather say in words.</summary>
internal static class ChartNotes
{
    /// <summary>The limits that hours were held against, on one line.</summary>
    public static string Limits(CoverDayReport report, FigureSheet sheet)
    {
        WindowLimits limits = report.Limits;
        string wind = TapeText.Of(limits.Wind, sheet.Units), gust = limits.Gust is { } most ? TapeText.Of(most, sheet.Units) : "",
            from = TapeText.Of(limits.Coldest, sheet.Units), to = TapeText.Of(limits.Warmest, sheet.Units), hours = limits.Hours.ToString(CultureInfo.InvariantCulture);
        return gust.Length > 0
            ? sheet.Words.Fill("fit: {0} h by daylight, wind to {1} and gusts to {2} at the bows, {3} to {4}, dry", hours, wind, gust, from, to)
            : sheet.Words.Fill("fit: {0} h by daylight, wind to {1} at the bows, {2} to {3}, dry", hours, wind, from, to);
    }
}
