using System.Globalization;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Inside.Air;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Inside;

/// <summary>Works out what a year inside a tunnel is like.</summary>
public static class InsidePlanner
{
    // A record of at least so many days speaks of a year; of a longer one the first year is taken.
    private const int LeastDays = 300, MostHours = 366 * 24;

    /// <summary>True for weather that is long enough to tell of a year.</summary>
    public static bool SpeaksOfAYear(WeatherRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Count >= LeastDays * 24;
    }

    /// <summary>For a tunnel and the weather of a year.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="record">The weather: most of a year with air, wind, dew point or humidity, and light.</param>
    public static InsideOutcome Plan(Tunnel tunnel, WeatherRecord record)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(record);
        Plan plan = tunnel.Plan;
        var answers = new Answers(tunnel.Units);
        List<Diagnostic> found = [];
        if (SitePlace.Of(plan, record, found) is not { } place) return new(null, [.. found]);
        if (!SpeaksOfAYear(record))
            found.Add(Error("inside.short", "weather", "The weather is too short to tell a year inside.", $"{record.Count / 24} days", $"{LeastDays} days or more"));
        WeatherRecord year = record;
        if (record.Count > MostHours)
        {
            year = FirstYear(record);
            found.Add(new Diagnostic("inside.first-year", Severity.Assumption, "weather", "The weather is longer than a year, so its first year was taken.", $"{record.Count / 24} days", "the first year"));
        }
        InsideSetup setup = InsideSetup.Of(tunnel, answers);
        CheckRules(tunnel, setup, found);
        (HourlyWeather? weather, WeatherElement? missing) = HourlyWeather.Of(year, place);
        if (missing is { } element)
            found.Add(Error("inside.no-element", "weather", $"The weather has too little of what a year inside is worked out from: {ElementFact.Of(element).Name}.", null, "a weather file with air, wind, dew point and light of every hour"));
        if (weather is null || found.Exists(each => each.Severity == Severity.Error)) return new(null, [.. found.OrderBy(each => each.Severity)]);
        if (weather.Filled > 0)
            found.Add(new Diagnostic("inside.filled", Severity.Warning, "weather", "Hours in which the weather does not know everything were filled from the day before.", weather.Filled.ToString(CultureInfo.InvariantCulture) + " h", "a record without gaps"));
        if (weather.Split) found.Add(new Diagnostic("inside.split-light", Severity.Assumption, "weather", "The weather has only all light together; what comes from the sun and what from the sky was told apart by a formula.", null, "by how clear the sky is"));
        if (weather.InfraredWorkedOut) found.Add(new Diagnostic("inside.sky", Severity.Assumption, "weather", "The weather has no infrared from the sky; it was worked out from air, dew point and cloud.", null, "the sky of Clark and Allen"));
        if (setup.Openings.IsEmpty) found.Add(new Diagnostic("inside.nothing-opens", Severity.Warning, "sides.left.kind", "Nothing of the tunnel opens for air, so it gets as hot as it does shut.", null, "a side that rolls up, a door or a vent"));
        var study = new InsideStudy(setup, weather, year, place);
        InsideReport report = study.Report(answers) with { Rules = answers.Rules };
        report = report with { Diagnostics = [.. found.Concat(answers.Assumptions).OrderBy(each => each.Severity)] };
        return new(report, report.Diagnostics);
    }

    private static void CheckRules(Tunnel tunnel, InsideSetup setup, List<Diagnostic> found)
    {
        if (setup.Coldest >= setup.Warmest)
            found.Add(Error("inside.temperatures", "inside.coldest", "The coldest that the crop takes is no colder than the warmest.", TapeText.Of(setup.Coldest, tunnel.Units), "below " + TapeText.Of(setup.Warmest, tunnel.Units)));
        if (setup.HeatTo is { } heat && heat >= setup.VentAt)
            found.Add(Error("inside.heat", "inside.heatTo", "The heater would heat what is let out again: it holds no less than the warmth at which sides are opened.", TapeText.Of(heat, tunnel.Units), "below " + TapeText.Of(setup.VentAt, tunnel.Units)));
        for (int obstacle = 0; obstacle < tunnel.Plan.Site.Obstacles.Length; obstacle++)
        {
            if (tunnel.Plan.Site.Obstacles[obstacle].Distance is { } distance && distance.Value < tunnel.Span / 2)
                found.Add(Error("inside.obstacle", $"site.obstacles[{obstacle}].distance", "The obstacle would stand in the tunnel: distances are from its middle.", distance.Text, "at least " + TapeText.OfRun(tunnel.Span / 2, tunnel.Units)));
        }
    }

    private static Diagnostic Error(string code, string path, string message, string? seen, string? accepted) => new(code, Severity.Error, path, message, seen, accepted);

    private static WeatherRecord FirstYear(WeatherRecord record)
    {
        int hours = Math.Min(MostHours, record.Hours.Length), end = record.Hours[0] + 8760, count = 0;
        while (count < hours && record.Hours[count] < end) count++;
        return new([.. record.Hours[..count]], [.. Enum.GetValues<WeatherElement>().Select(element => record.Column(element)?[..count])])
        {
            Form = record.Form,
            Name = record.Name,
            Place = record.Place,
            UtcOffset = record.UtcOffset,
            Stamp = record.Stamp,
            WindHeight = record.WindHeight,
            IsTypicalYear = record.IsTypicalYear,
            Epw = record.Epw,
        };
    }
}
