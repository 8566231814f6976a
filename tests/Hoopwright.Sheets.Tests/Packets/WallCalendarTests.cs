using Hoopwright.Calendar;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Packets;

/// <summary>The days of a crew for the wall.</summary>
public sealed class WallCalendarTests
{
    private static readonly DateOnly Day = new(2026, 4, 18);

    [Theory]
    [InlineData("gothic-26ft", "\"weekday\": \"saturday\", \"people\": 8")]
    [InlineData("gothic-26ft", "\"weekday\": \"monday\" }, { \"weekday\": \"tuesday\" }, { \"weekday\": \"saturday\", \"people\": 12")]
    [InlineData("round-14ft", "\"weekday\": \"sunday\", \"people\": 5")]
    [InlineData("metric-9m", "\"weekday\": \"friday\", \"people\": 6")]
    public void Every_shift_stands_on_its_page_no_text_meets_another_and_every_letter_is_in_the_face(string example, string days)
    {
        Plan plan = SamplePlans.Example(example);
        Build build = SamplePlans.Simple(rest: $"\"build\": {{ \"start\": \"2026-04-18\", \"hours\": 9, \"days\": [ {{ {days} }} ] }}").Build;
        PlannedTunnel planned = TunnelWorks.Plan(plan with { Build = build });
        CrewCalendarOutcome outcome = CrewCalendarPlanner.Plan(planned.Tunnel!, planned.Steps!);
        CrewCalendar calendar = outcome.Calendar ?? throw new InvalidOperationException(string.Join("\n", outcome.Diagnostics));
        foreach (string language in CrewWords.Languages)
        {
            foreach (Paper paper in new[] { Paper.Letter, Paper.A4 })
            {
                PdfSheet[] pages = [.. WallCalendar.Pages(planned, calendar, paper, Day, language)];
                Assert.All(pages, page => Assert.True(Collisions.In(page.Page).IsEmpty, $"{page.Bookmark}\n{string.Join("\n", Collisions.In(page.Page))}"));
                Assert.All(pages.SelectMany(page => page.Page.Marks.OfType<TextMark>()), text => Assert.True(Typeface.Of(text.Weight).Has(text.Text), text.Text));
                Assert.Equal(calendar.Days.Select(day => (day.Day.Date.Year, day.Day.Date.Month)).Distinct().Count(), pages.Count(page => page.Page.WidthMm > page.Page.HeightMm));
                // Nothing runs over the edge of its cell or the page.
                Assert.All(pages, page => Assert.All(page.Page.Marks.OfType<TextMark>(), text => Assert.InRange(text.Anchor.XMm, 0, page.Page.WidthMm)));
            }
        }
        using UglyToad.PdfPig.PdfDocument read = UglyToad.PdfPig.PdfDocument.Open([.. WallCalendar.Write(planned, calendar, Paper.Letter, Day, "en").Bytes]);
        string said = string.Concat(read.GetPages().Select(page => page.Text)).Replace(" ", "", StringComparison.Ordinal);
        Assert.All(calendar.Steps, step => Assert.Contains(step.Step.Title.ToString().Replace(" ", "", StringComparison.Ordinal), said, StringComparison.Ordinal));
    }
}
