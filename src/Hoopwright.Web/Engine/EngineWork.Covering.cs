using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Hoopwright.Cover.Pull;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Inside;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Words;
using Hoopwright.Weather;

namespace Hoopwright.Web.Engine;

/// <content>Putting the film on, and the weather for it.</content>
public static partial class EngineWork
{
    /// <summary>How tight to pull the film of a temperature, and how it is put on.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="film">Temperature of the film in degrees of the plan's units; empty or no number for the plan's own day.</param>
    /// <param name="language">The language of the crew.</param>
    /// <returns>
    /// JSON: unit; pull {film, advice, perBay, along, overBow, sag, give, push, hotSag, coldPull}, band {coldest, warmest, best}; drawing; people, side, why, fewer, inWind [wind, pull, people, fit],
    /// cautions, steps [id, title, does, good, people, uses, cautions]; empty when the plan has errors.
    /// </returns>
    public static string Covering(string document, string film, string language)
    {
        PlannedTunnel planned = Supplied(document);
        if (planned is not { Tunnel: { } tunnel, Cover: { } cover, Fastening: { } fastening }) return "";
        CrewWords words = CrewWords.Of(language);
        UnitSystem units = planned.Units;
        PullRow row = double.TryParse(film, NumberStyles.Float, CultureInfo.InvariantCulture, out double degrees) && Math.Abs(degrees) <= 200
            ? cover.Pull.At(units == UnitSystem.UsCustomary ? Temperature.FromFahrenheit(degrees) : Temperature.FromCelsius(degrees)) : cover.Pull.Planned;
        CoverSheet sheet = new(planned, tunnel, words);
        return Json(json =>
        {
            json.WriteString("unit", units == UnitSystem.UsCustomary ? "°F" : "°C");
            json.WriteStartObject("pull");
            json.WriteString("film", TapeText.Of(row.Film, units));
            json.WriteString("advice", row.Advice.ToString());
            json.WriteString("perBay", Tape(row.PastSnugPerBay));
            json.WriteString("along", Tape(row.PastSnugAlong));
            json.WriteString("overBow", Tape(row.PastSnugOverBow));
            json.WriteString("sag", Tape(row.Sag));
            json.WriteString("give", Tape(row.Give));
            json.WriteString("push", TapeText.Of(cover.Pull.GaugePush, units));
            json.WriteString("hotSag", Tape(row.HotSag));
            json.WriteString("coldPull", $"{TapeText.Of(row.ColdPullCrept, units)} – {TapeText.Of(row.ColdPull, units)}");
            json.WriteEndObject();
            json.WriteStartObject("band");
            json.WriteString("coldest", TapeText.Of(cover.Band.Coldest, units));
            json.WriteString("warmest", TapeText.Of(cover.Band.Warmest, units));
            json.WriteString("best", TapeText.Of(cover.Pull.Best, units));
            json.WriteEndObject();
            json.WritePropertyName("drawing");
            WriteDrawing(json, new FigureOffer("film-pull-today", FigureChapter.Cover, true, () => PullChart.Draw(cover.Pull, row, Sheet(planned) with { Language = words.Language }, words.Say("1 of 1"))));
            json.WriteNumber("people", fastening.People);
            json.WriteString("side", words.Say(fastening.RollSide.Name + " side"));
            json.WriteString("why", sheet.Said(fastening.RollSide.Why));
            json.WriteString("fewer", fastening.WithFewer is { } fewer ? sheet.Said(fewer) : "");
            List(json, "inWind", fastening.InWind, each =>
            {
                json.WriteString("wind", TapeText.Of(each.Wind, units));
                json.WriteString("pull", TapeText.Of(each.Pull, units));
                json.WriteNumber("people", each.People);
                json.WriteBoolean("fit", each.IsFit);
            });
            List(json, "steps", fastening.Steps, step =>
            {
                json.WriteString("id", step.Id);
                json.WriteString("title", sheet.Said(step.Title));
                Texts(json, "does", step.Does.Select(sheet.Said));
                Texts(json, "good", step.Good.Select(sheet.Said));
                json.WriteNumber("people", step.People);
                json.WriteString("uses", sheet.Uses(step));
                List(json, "cautions", step.Cautions, caution =>
                {
                    json.WriteString("id", words.Say(caution.Id));
                    json.WriteString("text", words.Fill(caution.Text));
                    json.WriteBoolean("first", fastening.TellsFirst(caution, step));
                });
            });
        });

        string Tape(Length length) => TapeText.Of(TapeText.RoundToMark(length.Abs(), units), units);
    }

    /// <summary>What a weather or forecast file says of days on which the film can be pulled.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="weather">The file as text.</param>
    /// <param name="language">The language of the charts.</param>
    /// <param name="clock">The clock on the wall, as -04:00, by which hours are told; empty for that of the file.</param>
    /// <returns>
    /// JSON: name, summary, clock (by which the hours are told), clocks [to choose from]; diagnostics [severity, message, seen, accepted]; limits {hours, wind, gust, coldest, warmest}; windows [day, begin, end, wind, gust, air, rain, used, tightest, sunrise, sunset], odds
    /// [month, days, goodDays, week], goodDays, relaxed [limit, to, gained], drawings; empty when the plan has errors.
    /// </returns>
    public static string Weather(string document, string weather, string language, string clock)
    {
        PlannedTunnel planned = Supplied(document);
        if (planned is not { Tunnel: { } tunnel, Cover: { } cover }) return "";
        (WeatherReading reading, WeatherRecord? record) = RecordOf(weather, clock);
        CoverDayOutcome? days = record is null ? null : CoverDayPlanner.Plan(tunnel, cover, record);
        CrewWords words = CrewWords.Of(language);
        UnitSystem units = planned.Units;
        return Json(json =>
        {
            json.WriteString("summary", record is null ? "" : WeatherSheet.Of(record, units));
            json.WriteString("clock", record is null ? "" : Offset(record.UtcOffset));
            Texts(json, "clocks", record is null ? [] : Enumerable.Range(-26, 53).Select(hours => record.UtcOffset + TimeSpan.FromHours(hours)).Where(each => each >= LeastClock && each <= MostClock).Select(Offset));
            FoundInFile(json, reading.Diagnostics.Concat(days?.Diagnostics ?? []));
            if (days?.Report is not { } report) return;
            json.WriteStartObject("limits");
            json.WriteNumber("hours", report.Limits.Hours);
            json.WriteString("wind", TapeText.Of(report.Limits.Wind, units));
            json.WriteString("gust", report.Limits.Gust is { } gust ? TapeText.Of(gust, units) : "");
            json.WriteString("coldest", TapeText.Of(report.Limits.Coldest, units));
            json.WriteString("warmest", TapeText.Of(report.Limits.Warmest, units));
            json.WriteEndObject();
            json.WriteBoolean("hasDays", report.From is not null);
            List(json, "windows", report.Windows, window =>
            {
                json.WriteString("day", words.Say(window.Begin.ToString("ddd", CultureInfo.InvariantCulture)) + window.Begin.ToString(" yyyy-MM-dd", CultureInfo.InvariantCulture));
                json.WriteString("begin", Clock(window.Begin));
                json.WriteString("end", Clock(window.End));
                json.WriteString("from", Clock(window.From));
                json.WriteString("to", Clock(window.To));
                json.WriteString("wind", TapeText.Of(window.Wind, units));
                json.WriteString("gust", TapeText.Of(window.Gust, units));
                json.WriteBoolean("gustEstimated", window.GustEstimated);
                json.WriteString("air", $"{TapeText.Of(window.Coldest, units)} – {TapeText.Of(window.Warmest, units)}");
                json.WriteString("rain", window.RainChance is { } chance ? chance.Percent.ToString("0", CultureInfo.InvariantCulture) + " %" : "");
                json.WriteString("used", window.Used.Percent.ToString("0", CultureInfo.InvariantCulture) + " %");
                json.WriteString("tightest", Camel(window.Tightest.ToString()));
                json.WriteString("sun", $"{Clock(window.Sunrise)}–{Clock(window.Sunset)}");
            });
            List(json, "odds", report.Odds.Where(month => month.Days > 0), month =>
            {
                json.WriteString("month", words.Month(month.Month));
                json.WriteNumber("days", month.Days);
                json.WriteNumber("goodDays", month.GoodDays);
                json.WriteString("week", month.InAWeek.Percent.ToString("0", CultureInfo.InvariantCulture) + " %");
            });
            json.WriteNumber("goodDays", report.GoodDays);
            List(json, "relaxed", report.Relaxed, each =>
            {
                json.WriteString("limit", Camel(each.Limit.ToString()));
                json.WriteString("to", Relaxed(each, units));
                json.WriteNumber("gained", each.Gained);
            });
            json.WriteStartArray("drawings");
            foreach (FigureOffer offer in CoverCharts.Offers(report, record, null, Sheet(planned) with { Language = words.Language })) WriteDrawing(json, offer);
            json.WriteEndArray();
        });

        static string Clock(DateTimeOffset time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

        static string Offset(TimeSpan offset) => (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString(@"hh\:mm", CultureInfo.InvariantCulture);
    }

    // Clocks that people live by.
    private static readonly TimeSpan LeastClock = TimeSpan.FromHours(-12), MostClock = TimeSpan.FromHours(14);

    private static TimeSpan? OffsetOf(string clock) =>
        TimeSpan.TryParseExact(clock.TrimStart('+', '-'), @"hh\:mm", CultureInfo.InvariantCulture, out TimeSpan span) && span <= MostClock ? (clock.StartsWith('-') ? -span : span) : null;

    /// <summary>What a year inside is like with the weather of a file.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="weather">The file as text.</param>
    /// <param name="language">The language of the charts.</param>
    /// <returns>
    /// JSON: diagnostics [severity, message, seen, accepted]; ways [kept, highest, lowest, tooHot, tooCold, lastFrost, firstFrost, growth], band {highest, lowest}, sheet (all of it in words), drawings, seconds
    /// (of the working out alone); empty when the plan has errors.
    /// </returns>
    public static string Inside(string document, string weather, string language)
    {
        PlannedTunnel planned = Supplied(document);
        if (planned.Tunnel is not { } tunnel) return "";
        WeatherReading reading = WeatherReader.Read(Encoding.UTF8.GetBytes(weather));
        long start = Stopwatch.GetTimestamp();
        InsideOutcome? inside = reading.Record is { } record ? InsidePlanner.Plan(tunnel, record) : null;
        TimeSpan took = Stopwatch.GetElapsedTime(start);
        UnitSystem units = planned.Units;
        return Json(json =>
        {
            FoundInFile(json, reading.Diagnostics.Concat(inside?.Diagnostics ?? []));
            if (inside?.Report is not { } report) return;
            List(json, "ways", report.Ways, way =>
            {
                json.WriteString("kept", Camel(way.Way.ToString()));
                json.WriteString("highest", TapeText.Of(way.Highest, units));
                json.WriteString("lowest", TapeText.Of(way.Lowest, units));
                json.WriteString("tooHot", string.Create(CultureInfo.InvariantCulture, $"{way.HoursTooHot} h"));
                json.WriteString("tooCold", string.Create(CultureInfo.InvariantCulture, $"{way.HoursTooCold} h"));
                json.WriteString("lastFrost", way.LastFrost?.ToString("MM-dd", CultureInfo.InvariantCulture) ?? "–");
                json.WriteString("firstFrost", way.FirstFrost?.ToString("MM-dd", CultureInfo.InvariantCulture) ?? "–");
                json.WriteString("growth", TapeText.Of(way.Growth, units));
            });
            json.WriteStartObject("band");
            json.WriteString("highest", $"{TapeText.Of(report.Band.HighestFrom, units)} – {TapeText.Of(report.Band.HighestTo, units)}");
            json.WriteString("lowest", $"{TapeText.Of(report.Band.LowestFrom, units)} – {TapeText.Of(report.Band.LowestTo, units)}");
            json.WriteEndObject();
            json.WriteString("sheet", InsideSheet.Of(report, units));
            json.WriteString("seconds", took.TotalSeconds.ToString("0.00", CultureInfo.InvariantCulture));
            json.WriteStartArray("drawings");
            foreach (FigureOffer offer in InsideCharts.Offers(report, Sheet(planned) with { Language = CrewWords.Of(language).Language })) WriteDrawing(json, offer);
            json.WriteEndArray();
        });
    }

    private static string Camel(string word) => char.ToLowerInvariant(word[0]) + word[1..];

    private static void FoundInFile(Utf8JsonWriter json, IEnumerable<Diagnostic> found) =>
        List(json, "diagnostics", found.Where(each => each.Severity != Severity.Assumption || !each.Code.StartsWith("assumed.", StringComparison.Ordinal)), each =>
        {
            json.WriteString("severity", each.Severity.ToString().ToLowerInvariant());
            json.WriteString("message", each.Message);
            json.WriteString("seen", each.Seen);
            json.WriteString("accepted", each.Accepted);
        });

    private static string Relaxed(LimitRelaxing each, UnitSystem units) => each.Limit switch
    {
        WindowLimit.Wind => TapeText.Of(each.Limits.Wind, units),
        WindowLimit.Gust => each.Limits.Gust is { } gust ? TapeText.Of(gust, units) : "",
        WindowLimit.Coldest => TapeText.Of(each.Limits.Coldest, units),
        WindowLimit.Warmest => TapeText.Of(each.Limits.Warmest, units),
        WindowLimit.Rain => each.Limits.RainChance is { } chance ? chance.Percent.ToString("0", CultureInfo.InvariantCulture) + " %" : "",
        WindowLimit.Hours => each.Limits.Hours.ToString(CultureInfo.InvariantCulture) + " h",
        WindowLimit.Daylight => "±1 h",
    };

    /// <summary>A plan worked out as far as its film and what holds it; the very one that was worked out last where there is one.</summary>
    // What the packet says of a weather file: when to pull, and of a whole year what it is like inside.
    private static CoverWeather? WeatherOf(PlannedTunnel planned, string weather, string clock)
    {
        if (weather.Length == 0 || planned is not { Tunnel: { } tunnel, Cover: { } cover } || RecordOf(weather, clock).Record is not { } record || CoverDayPlanner.Plan(tunnel, cover, record).Report is not { } report) return null;
        return new CoverWeather(report, record, InsidePlanner.SpeaksOfAYear(record) ? InsidePlanner.Plan(tunnel, record).Report : null);
    }

    private static (WeatherReading Reading, WeatherRecord? Record) RecordOf(string weather, string clock)
    {
        TimeSpan? wall = OffsetOf(clock);
        WeatherReading reading = WeatherReader.Read(Encoding.UTF8.GetBytes(weather), wall);
        return (reading, wall is { } told ? reading.Record?.ByClock(told) : reading.Record);
    }

    private static PlannedTunnel Supplied(string document) =>
        Memory.Last is { } known && known.Document == document ? known.Planned : Glance(document);

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
