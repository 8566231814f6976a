using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.BuildSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Ics;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using Hoopwright.Upkeep;
using Hoopwright.Weather;

namespace Hoopwright.Web.Engine;

/// <content>The tunnel that stands.</content>
public static partial class EngineWork
{
    /// <summary>Storm card, a forecast held against it, rounds, the film.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="weather">A forecast; empty for none.</param>
    /// <param name="clock">The clock on the wall, as -04:00, by which hours are told; empty for that of the file.</param>
    /// <param name="depth">How deep snow lies on the roof already, as 6 in; empty for none.</param>
    /// <param name="kind">What kind of snow that is, by its name on the card.</param>
    /// <param name="today">The day, as 2026-04-18.</param>
    /// <param name="language">The language of the crew.</param>
    /// <returns>
    /// JSON: noCard, roof, snow [kind, words, clear, limit], gusts [gust, does, why], weakerTitle, weaker, noParts, order, cautions, limits; rounds [id, title, items [id, what, seen]]; film, takes; storm {from, to, gust, snow, rain, lying, unknown,
    /// past, warnings} or null; depthUnread, diagnostics [code, severity, path, message, seen, accepted]; empty when the plan has errors.
    /// </returns>
    public static string Upkeep(string document, string weather, string clock, string depth, string kind, string today, string language)
    {
        PlannedTunnel planned = WholePlan(document);
        if (planned is not { Tunnel: { } tunnel, Upkeep: { } upkeep }) return "";
        CrewWords words = CrewWords.Of(language);
        UnitSystem units = planned.Units;
        DateOnly day = DateOnly.ParseExact(today, StepMarks.DayForm, CultureInfo.InvariantCulture);
        ImmutableDictionary<string, StepMark> marks = StepMarks.Of(planned.Plan);
        Reading<Length> lies = QuantityText.ReadLength(depth);
        bool isUnread = depth.Trim().Length > 0 && !(lies.IsRead && lies.Value.Metres is >= 0 and <= 20);
        Pressure lying = depth.Trim().Length == 0 || isUnread ? Pressure.Zero : SnowKind.All.First(each => each.Id == kind).WeightOf(lies.Value);
        WeatherRecord? record = weather.Length == 0 ? null : RecordOf(weather, clock).Record;
        (StormOutlook? outlook, ImmutableArray<Diagnostic> found) = record is null ? (null, []) : StormWatch.Look(upkeep, planned.Plan, record, lying);
        var make = new StepSheet(planned, tunnel, planned.RecoverSteps!, words);
        return Json(json =>
        {
            json.WriteString("noCard", upkeep.NoCard ?? "");
            if (upkeep.Card is { } card) Card(card);
            List(json, "rounds", upkeep.Rounds, round =>
            {
                json.WriteString("id", round.Id);
                json.WriteString("title", words.Say(round.Title));
                List(json, "items", round.Items, item =>
                {
                    json.WriteString("id", item.Id);
                    json.WriteString("what", words.Say(item.What));
                    json.WriteString("seen", marks.GetValueOrDefault(item.Id, StepMark.None).Day is { } seen ? StepSheet.Day(seen, words) : "");
                });
            });
            json.WriteString("film", words.Say(StormWords.Film(upkeep.Film, day)));
            json.WriteString("takes", make.Together(upkeep.Order));
            json.WriteBoolean("depthUnread", isUnread);
            json.WritePropertyName("storm");
            if (outlook is null) json.WriteNullValue();
            else Storm(outlook);
            json.WritePropertyName("diagnostics");
            DiagnosticJson.Write(json, found);

            void Card(StormCard card)
            {
                json.WriteString("roof", StormWords.Roof(card, units) is { } roof ? words.Say(roof) : "");
                List(json, "snow", card.Snow, snow =>
                {
                    json.WriteString("kind", snow.Kind.Id);
                    json.WriteString("words", words.Say(snow.Kind.Words));
                    json.WriteString("clear", StormWords.Depth(snow.ClearAt, units));
                    json.WriteString("limit", StormWords.Depth(snow.AtLimit, units));
                });
                List(json, "gusts", card.Gusts, gust =>
                {
                    json.WriteString("gust", StormWords.Gust(gust.Gust, units));
                    json.WriteString("does", words.Say(gust.Does));
                    json.WriteString("why", words.Say(gust.Why));
                });
                json.WriteString("weakerTitle", words.Say(StormWords.WeakerTitle));
                Texts(json, "weaker", StormWords.Weaker(card, units).Select(words.Say));
                json.WriteString("noParts", words.Say(card.Limits.NoParts ?? ""));
                Texts(json, "order", card.Order.Select(rule => words.Say(rule.Text)));
                Texts(json, "cautions", card.Cautions.Select(caution => words.Fill(caution.Text)));
                json.WriteString("limits", words.Fill(StormWords.Limits));
            }

            void Storm(StormOutlook outlook)
            {
                json.WriteStartObject();
                json.WriteString("from", StormWords.Time(outlook.From));
                json.WriteString("to", StormWords.Time(outlook.To));
                json.WriteString("gust", outlook.Gust is { } gust ? TapeText.Of(gust, units) : "");
                json.WriteString("snow", TapeText.Of(outlook.Snow, units));
                json.WriteString("rain", TapeText.Of(outlook.RainOnSnow, units));
                json.WriteString("lying", TapeText.Of(outlook.Lying, units));
                json.WriteNumber("unknown", outlook.HoursUnknown);
                json.WriteBoolean("past", outlook.PastLimit);
                Texts(json, "warnings", outlook.Warnings.Select(warning => words.Say(StormWords.Of(warning, units))));
                json.WriteEndObject();
            }
        });
    }

    /// <summary>Storm card and checklists, or the season calendar, as a file.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="today">The day.</param>
    /// <param name="language">The language of the crew.</param>
    /// <param name="paper">letter or a4.</param>
    /// <param name="what">pdf for card and checklists, ics for the calendar.</param>
    /// <returns>The bytes; empty when the plan has errors.</returns>
    public static byte[] UpkeepFile(string document, string today, string language, string paper, string what)
    {
        PlannedTunnel planned = WholePlan(document);
        if (planned.Upkeep is not { } upkeep) return [];
        DateOnly day = DateOnly.ParseExact(today, StepMarks.DayForm, CultureInfo.InvariantCulture);
        return what == "ics"
            ? UpkeepIcs.Write(upkeep, planned.Plan, CrewWords.Of(language), day)
            : [.. UpkeepSheets.Write(planned, paper == "a4" ? Paper.A4 : Paper.Letter, day, language).Bytes];
    }
}
