using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Days;

/// <summary>When the roof film can be pulled, as plain text for people.</summary>
public static class CoverDaySheet
{
    /// <summary>What everyone who pulls film must hear.</summary>
    public const string Caution =
        "A forecast is no promise: look at the sky and the trees before the sheet is lifted, and stop when small twigs move all the time. A sheet in the wind lifts people. Keep clear of overhead lines.";

    /// <summary>The limits, the windows or the odds, and what relaxing a limit would gain.</summary>
    /// <param name="report">The report.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Of(CoverDayReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        var text = new StringBuilder();
        WindowLimits limits = report.Limits;
        if (report.Hours is { } hours)
            text.Append(CultureInfo.InvariantCulture, $"Roof film {TapeText.Of(hours.Film, units)}, {hours.People} people: {Clock(hours.Work)} of work, {hours.Needed} h of weather with the reserve.\n");
        else
            text.Append(CultureInfo.InvariantCulture, $"Without a plan: {limits.Hours} h of weather, bows of {TapeText.OfRun(report.Height, units)} in open country.\n");
        text.Append(CultureInfo.InvariantCulture, $"Wanted: mean wind at most {TapeText.Of(limits.Wind, units)}");
        if (limits.Gust is { } gust) text.Append(CultureInfo.InvariantCulture, $", gusts at most {TapeText.Of(gust, units)}");
        text.Append(CultureInfo.InvariantCulture, $" at the bows, {TapeText.Of(limits.Coldest, units)} to {TapeText.Of(limits.Warmest, units)}");
        if (limits.RainChance is { } chance) text.Append(report.RainKnown ? string.Create(CultureInfo.InvariantCulture, $", chance of rain at most {chance.Percent:0} %") : ", dry (rain is not known)");
        text.Append(", by daylight.\n");
        text.Append(CultureInfo.InvariantCulture, $"At {TapeText.OfRun(report.Height, units)} here the mean wind is {report.SiteWind.Mean.Value:0.00} and gusts are {report.SiteWind.Gust.Value:0.00} of those of the weather ({report.SiteWind.Formula.Source}).\n");
        if (report.From is { } from) Windows(text, report, from, units);
        if (!report.Odds.IsEmpty) Odds(text, report);
        Relaxed(text, report, units);
        text.Append('\n').Append(Caution).Append('\n');
        return text.ToString();
    }

    /// <summary>Why a window stands where it does, one part a limit.</summary>
    /// <param name="window">The window.</param>
    /// <param name="limits">What was asked for.</param>
    /// <param name="units">The units to show it in.</param>
    public static ImmutableArray<string> Reasons(WeatherWindow window, WindowLimits limits, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(window);
        ArgumentNullException.ThrowIfNull(limits);
        List<string> parts =
        [
            $"wind to {TapeText.Of(window.Wind, units)}",
            $"gusts to {TapeText.Of(window.Gust, units)}{(window.GustEstimated ? " (estimated)" : "")}",
            $"{TapeText.Of(window.Coldest, units)} to {TapeText.Of(window.Warmest, units)}",
        ];
        if (window.RainChance is { } rain) parts.Add(string.Create(CultureInfo.InvariantCulture, $"chance of rain {rain.Percent:0} %"));
        else if (window.RainKnown) parts.Add("dry");
        int spare = (int)(window.To - window.From).TotalHours - limits.Hours;
        if (spare > 0) parts.Add(string.Create(CultureInfo.InvariantCulture, $"{spare} h to spare"));
        parts.Add(string.Create(CultureInfo.InvariantCulture, $"{window.Used.Percent:0} % of the limit on {Name(window.Tightest)}"));
        return [.. parts];
    }

    /// <summary>A limit in words.</summary>
    public static string Name(WindowLimit limit) => limit switch
    {
        WindowLimit.Wind => "mean wind",
        WindowLimit.Gust => "gusts",
        WindowLimit.Coldest => "cold",
        WindowLimit.Warmest => "heat",
        WindowLimit.Rain => "rain",
        WindowLimit.Hours => "hours",
        WindowLimit.Daylight => "daylight",
    };

    private static void Windows(StringBuilder text, CoverDayReport report, DateOnly from, UnitSystem units)
    {
        DateOnly last = from.AddDays(CoverDayReport.DaysAhead - 1);
        text.Append(CultureInfo.InvariantCulture, $"\n{from:yyyy-MM-dd} to {last:yyyy-MM-dd}: ");
        if (report.Windows.IsEmpty)
        {
            text.Append("no hours meet all limits.\n");
            return;
        }
        text.Append("best first.\n");
        foreach (WeatherWindow window in report.Windows)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {window.Begin:ddd yyyy-MM-dd HH:mm} to {window.End:HH:mm} (fit {window.From:HH:mm} to {window.To:HH:mm}; sun {window.Sunrise:HH:mm} to {window.Sunset:HH:mm})\n    ");
            text.AppendJoin(", ", Reasons(window, report.Limits, units)).Append('\n');
        }
    }

    private static void Odds(StringBuilder text, CoverDayReport report)
    {
        text.Append("\nmonth  days that are fit  of all days  weeks with one  begin best at\n");
        foreach (MonthOdds odds in report.Odds.Where(odds => odds.Days > 0))
        {
            int best = Enumerable.Range(0, 24).MaxBy(hour => odds.StartingAt[hour].Value);
            string begin = odds.GoodDays == 0 ? "-" : string.Create(CultureInfo.InvariantCulture, $"{best:00}:00 ({odds.StartingAt[best].Percent:0} %)");
            text.Append(CultureInfo.InvariantCulture, $"{CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(odds.Month),-5}  {odds.GoodDays,4} of {odds.Days,-10}  {odds.OnADay.Percent,9:0} %  {odds.InAWeek.Percent,12:0} %  {begin}\n");
        }
    }

    private static void Relaxed(StringBuilder text, CoverDayReport report, UnitSystem units)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n{report.GoodDays} {(report.GoodDays == 1 ? "day is" : "days are")} fit as it is. With one limit relaxed:\n");
        foreach (LimitRelaxing each in report.Relaxed) text.Append(CultureInfo.InvariantCulture, $"  {Step(each, units)}: {(each.Gained > 0 ? "+" : "")}{each.Gained}\n");
    }

    private static string Step(LimitRelaxing each, UnitSystem units) => each.Limit switch
    {
        WindowLimit.Wind => "mean wind to " + TapeText.Of(each.Limits.Wind, units),
        WindowLimit.Gust => "gusts to " + TapeText.Of(each.Limits.Gust!.Value, units),
        WindowLimit.Coldest => "from " + TapeText.Of(each.Limits.Coldest, units),
        WindowLimit.Warmest => "to " + TapeText.Of(each.Limits.Warmest, units),
        WindowLimit.Rain => string.Create(CultureInfo.InvariantCulture, $"chance of rain to {each.Limits.RainChance!.Value.Percent:0} %"),
        WindowLimit.Hours => string.Create(CultureInfo.InvariantCulture, $"{each.Limits.Hours} h instead, with more people"),
        WindowLimit.Daylight => "an hour before sunrise and after sunset too",
    };

    private static string Clock(TimeSpan time) => string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours} h {time.Minutes:00} min");
}
