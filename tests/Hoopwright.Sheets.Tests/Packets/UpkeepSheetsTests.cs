using System.Text;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Ics;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;
using Hoopwright.Upkeep;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;

namespace Hoopwright.Sheets.Tests.Packets;

/// <summary>The storm card, the checklists and the season calendar, in English and Spanish.</summary>
public sealed class UpkeepSheetsTests
{
    private static readonly DateOnly Day = new(2026, 11, 30);

    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_storm_card_is_one_page_no_text_meets_another_and_every_letter_is_in_the_face(string example)
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example(example));
        foreach (string language in CrewWords.Languages)
        {
            foreach (Paper paper in new[] { Paper.Letter, Paper.A4 })
            {
                PdfSheet[] pages = [.. UpkeepSheets.Pages(planned, paper, Day, language)];
                Assert.Equal([CrewWords.Of(language).Say("Storm card"), CrewWords.Of(language).Say("Rounds")], pages.Take(2).Select(page => page.Bookmark));
                Assert.All(pages, page => Assert.True(Collisions.In(page.Page).IsEmpty, $"{page.Bookmark}\n{string.Join("\n", Collisions.In(page.Page))}"));
                Assert.All(pages.SelectMany(page => page.Page.Marks.OfType<TextMark>()), text => Assert.True(Typeface.Of(text.Weight).Has(text.Text), text.Text));
            }
        }
        using UglyToad.PdfPig.PdfDocument read = UglyToad.PdfPig.PdfDocument.Open([.. UpkeepSheets.Write(planned, Paper.Letter, Day, "en").Bytes]);
        string first = read.GetPage(1).Text.Replace(" ", "", StringComparison.Ordinal);
        Assert.Contains("underaloadedroof", first, StringComparison.Ordinal);
        Assert.Contains("licensedengineer", first, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_sentence_is_known_in_Spanish()
    {
        CrewWords words = CrewWords.Of("es");
        var unknown = new SortedSet<string>(StringComparer.Ordinal);
        string[] rests = ["\"cover\": { \"layers\": 2 }", "\"site\": { \"groundSnow\": \"20 psf\", \"neighbourLeft\": \"4 ft\" }", "\"site\": { \"wind\": \"90 mph\" }, \"ends\": { \"front\": { \"closing\": \"framed\", \"doors\": [ { \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\" } ] } }", "\"site\": { \"groundSnow\": \"15 psf\", \"wind\": \"90 mph\" }, \"upkeep\": { \"closeWind\": \"140 mph\", \"tightenWind\": \"150 mph\", \"filmOn\": \"2024-05-01\" }"];
        foreach (Plan plan in SamplePlans.GoodExamples.Select(SamplePlans.Example).Concat(rests.Select(rest => SamplePlans.Simple(rest: rest))))
        {
            PlannedTunnel planned = TunnelWorks.Plan(plan);
            UpkeepReport upkeep = planned.Upkeep!;
            StormCard card = upkeep.Card!;
            Phrase[] said =
            [
                StormWords.Roof(card, planned.Units)!, .. StormWords.Weaker(card, planned.Units), .. card.Snow.Select(snow => snow.Kind.Words), .. card.Gusts.SelectMany(gust => new[] { gust.Does, gust.Why }), .. card.Order.Select(rule => rule.Text),
                .. upkeep.Rounds.Select(round => round.Title), .. upkeep.Rounds.SelectMany(round => round.Items).Select(item => item.What), StormWords.Film(upkeep.Film, Day), StormWords.Film(upkeep.Film, Day.AddYears(9)), StormWords.Film(upkeep.Film, Day.AddYears(-9)),
                .. UpkeepCalendar.From(upkeep, plan, Day).Select(day => day.Title),
            ];
            foreach (Phrase phrase in said)
            {
                if (!words.Knows(phrase.Pattern)) unknown.Add(phrase.Pattern);
                foreach (string value in phrase.Values.Where(value => value.Count(char.IsAsciiLetter) > 3 && !words.Knows(value))) unknown.Add(value);
            }
            foreach (string text in card.Cautions.Select(caution => caution.Text).Concat([StormWords.Limits, StormWords.WeakerTitle, card.Limits.NoParts ?? ""]).Where(text => !words.Knows(text))) unknown.Add(text);
        }
        Assert.True(unknown.Count == 0, string.Join("\n", unknown));
    }

    [Fact]
    public void Another_reader_finds_the_rounds_that_come_back_and_the_days_of_the_next_cover()
    {
        Plan plan = SamplePlans.Example("gothic-26ft") with { Upkeep = new() { FilmOn = new(2025, 5, 1) } };
        UpkeepReport upkeep = TunnelWorks.Plan(plan).Upkeep!;
        List<CalendarEvent> events = [.. Ical.Net.Calendar.Load(Encoding.UTF8.GetString(UpkeepIcs.Write(upkeep, plan, CrewWords.English, Day)))!.Events];
        UpkeepDate[] days = [.. UpkeepCalendar.From(upkeep, plan, Day)];
        Assert.Equal(days.Length, events.Count);
        Assert.Equal(days.Length, events.Select(each => each.Uid).Distinct().Count());
        foreach ((UpkeepDate day, CalendarEvent found) in days.Zip(events))
        {
            Assert.Equal(day.Title.ToString(), found.Summary);
            Assert.Equal(day.Day.ToDateTime(TimeOnly.MinValue), found.DtStart!.Value);
            Assert.False(found.DtStart.HasTime);
            // RFC 5545, 3.6.1: the end of a day without a time is not in it.
            if (day.Repeat != UpkeepRepeat.Weekly) Assert.Equal(day.Last.AddDays(1).ToDateTime(TimeOnly.MinValue), found.DtEnd!.Value);
        }
        CalendarEvent weekly = events.Single(each => each.Uid!.Contains("-weekly@", StringComparison.Ordinal));
        DateTime[] seen = [.. weekly.GetOccurrences(new CalDateTime(Day.Year, Day.Month, Day.Day)).TakeWhile(each => each.Period.StartTime.Value < new DateTime(2028, 12, 31)).Select(each => each.Period.StartTime.Value)];
        Assert.Equal(31, seen.Length);
        Assert.All(seen.Zip(seen.Skip(1)), pair => Assert.Equal(7, (pair.Second - pair.First).TotalDays));
        // Made again on another day, the same names come back with a later revision.
        List<CalendarEvent> later = [.. Ical.Net.Calendar.Load(Encoding.UTF8.GetString(UpkeepIcs.Write(upkeep, plan, CrewWords.Of("es"), Day.AddDays(3))))!.Events];
        Assert.Equal(events.Select(each => each.Uid).Order(), later.Select(each => each.Uid).Order());
        Assert.True(later[0].Sequence > events[0].Sequence);
    }
}
