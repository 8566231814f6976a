using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Calendar;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Weather;

namespace Hoopwright.Upkeep;

/// <summary>
/// Holds a forecast against a storm card. Water that comes while the air is at or below 34 °F (1.1 °C) counts as snow; rain that falls onto lying snow
/// stays in it; nothing melts, slides or blows off. All of that is on the careful side.
/// </summary>
public static class StormWatch
{
    /// <summary>How snow is told from rain, and what is left out.</summary>
    public static Formula Rule { get; } = new("s", "lying + sum of water in hours with air at most 34 °F (1.1 °C) or not known + rain onto lying snow; no melting, sliding or blowing off", "Pa", Citation.CommonPractice);

    // Snow falls up to about 1 °C: common practice, no source. Forecasts are in whole degrees Fahrenheit.
    private const double SnowUpToF = 34;

    // Winds of a forecast are held against a mast of this height in open country.
    private static readonly Length Mast = Length.FromMetres(10);

    /// <summary>The forecast against the storm card; nothing and the reason where it is no forecast, or there is no card.</summary>
    /// <param name="report">The upkeep.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="record">The forecast.</param>
    /// <param name="lying">Snow that lies on the roof already, by weight.</param>
    public static (StormOutlook? Outlook, ImmutableArray<Diagnostic> Diagnostics) Look(UpkeepReport report, Plan plan, WeatherRecord record, Pressure lying)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(record);
        if (report.Card is not { } card)
            return (null, [new Diagnostic("storm.no-card", Severity.Error, "frame.bowTube", "The frame is not checked, so there is nothing to hold the forecast against.", report.NoCard, "a frame of steel tube")]);
        if (!CrewCalendarPlanner.IsForecast(record))
            return (null, [new Diagnostic("storm.no-forecast", Severity.Error, "weather", "Years that were say nothing of the storm that comes.", record.Name.Length > 0 ? record.Name : null, "a forecast of the next days")]);
        var answers = new Answers(plan.Units ?? UnitSystem.UsCustomary);
        double gustFactor = answers.Take("coverDay.gustFactor", DayDefaults.GustFactor, plan.CoverDay.GustFactor).Value, toMast = SiteWind.Open(Mast, record.WindHeight).Gust.Value;
        WeatherHour[] hours = [.. Enumerable.Range(0, record.Count).Select(at => record[at])];
        double?[] gusts = [.. hours.Select(hour => (hour.Gust?.MetresPerSecond ?? hour.Wind?.MetresPerSecond * gustFactor) * toMast)];
        bool estimated = hours.Any(hour => hour.Gust is null && hour.Wind is not null), rainKnown = hours.Any(hour => hour.Precipitation is not null);
        (double[] pa, double snowPa, double rainPa) = Pile(hours, lying.Pascals);
        List<Diagnostic> found = [];
        if (!rainKnown) found.Add(new Diagnostic("storm.no-precipitation", Severity.Assumption, "weather", "The forecast has no amounts of snow or rain, so only snow that lies already is held against the card.", null, "no more snow"));
        if (estimated) found.Add(new Diagnostic("storm.gusts-estimated", Severity.Assumption, "coverDay.gustFactor", "Where the forecast has no gusts they were estimated from the mean wind.", null, gustFactor.ToString("0.##", CultureInfo.InvariantCulture) + " times the mean"));
        int strongest = gusts.Any(gust => gust is not null) ? Array.IndexOf(gusts, gusts.Max()) : -1;
        var outlook = new StormOutlook
        {
            From = hours[0].Start,
            To = hours[^1].Start + TimeSpan.FromHours(record.RowsLast ? 1 : 0),
            Gust = strongest < 0 ? null : Speed.FromMetresPerSecond(gusts[strongest]!.Value),
            GustAt = strongest < 0 ? null : hours[strongest].Start,
            GustsEstimated = estimated,
            Lying = lying,
            Snow = Pressure.FromPascals(snowPa),
            RainOnSnow = Pressure.FromPascals(rainPa),
            HoursUnknown = hours.Where((hour, at) => gusts[at] is null || (rainKnown && hour.Precipitation is null)).Count(),
            Warnings =
            [
                .. card.Gusts.Select(each => Wind(each.Action, each.Gust)).Concat([
                    Snow(StormAction.ClearSnow, card.Fall is { } clear ? clear * card.ClearAt.Value : null), Snow(StormAction.SnowLimit, card.Fall)])
                    .OfType<StormWarning>().OrderBy(each => each.First).ThenBy(each => each.Action),
            ],
            Diagnostics = [.. found],
        };
        return (outlook, outlook.Diagnostics);

        StormWarning? Wind(StormAction action, Speed limit)
        {
            int[] past = [.. Enumerable.Range(0, hours.Length).Where(at => gusts[at] >= limit.MetresPerSecond)];
            return past.Length == 0 ? null : new(action, hours[past[0]].Start, past.Length, hours[strongest].Start, Speed.FromMetresPerSecond(gusts[strongest]!.Value), limit, null, null);
        }

        StormWarning? Snow(StormAction action, Pressure? limit)
        {
            if (limit is not { Pascals: > 0 } at) return null;
            int first = Array.FindIndex(pa, each => each >= at.Pascals);
            return first < 0 ? null : new(action, hours[first].Start, hours.Length - first, hours[Array.FindIndex(pa, each => each >= pa[^1])].Start, null, null, Pressure.FromPascals(pa[^1]), at);
        }
    }

    // Weight at the end of every hour, and what of it came as snow and as rain.
    private static (double[] Pa, double SnowPa, double RainPa) Pile(WeatherHour[] hours, double lyingPa)
    {
        var pa = new double[hours.Length];
        double now = lyingPa, snow = 0, rain = 0;
        for (int at = 0; at < hours.Length; at++)
        {
            double came = hours[at].Precipitation is { } water ? SnowKind.OfWater(water).Pascals : 0;
            bool isSnow = hours[at].AirTemperature is not { } air || air.Fahrenheit <= SnowUpToF + 1e-9;
            if (isSnow) snow += came;
            else if (now > 0) rain += came;
            else came = 0;
            pa[at] = now += came;
        }
        return (pa, snow, rain);
    }
}
