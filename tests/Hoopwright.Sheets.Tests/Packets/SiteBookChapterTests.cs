using Hoopwright.Packets;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Testing;
using UglyToad.PdfPig;

namespace Hoopwright.Sheets.Tests.Packets;

/// <summary>Reads the packet back with an outside reader of PDF.</summary>
public sealed class SiteBookChapterTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);

    [Fact]
    public void Cut_sheets_of_a_plan_without_measurements_say_what_to_measure_first()
    {
        string all = Read("gothic-26ft", "packet.pdf");
        // Once on the page of the checks, and once on each of the sheets for holes and posts, film, boards, channel and posts.
        Assert.True(Count(all, "Measure this first: left side of the string rectangle, right side of the string rectangle, length over the outside of bow 1,") >= 2, "The page of the checks and the sheet of the film.");
        Assert.True(Count(all, "Measure this first:") >= 10, $"{Count(all, "Measure this first:")} times.");
        Assert.DoesNotContain("Planned against measured", all, StringComparison.Ordinal);
    }

    [Fact]
    public void A_built_one_has_what_was_measured_what_to_put_right_and_its_stops()
    {
        string all = Read(SamplePlans.BuiltExample, "packet.pdf");
        Assert.Contains("As built", all, StringComparison.Ordinal);
        Assert.Contains("waits for a second", all, StringComparison.Ordinal);
        Assert.Contains("Go, as decided by invented crew lead", all, StringComparison.Ordinal);
        Assert.True(Count(all, "hole-right-post-19 is short by 4") >= 2, "The stop stands on the page of the checks and on the sheet of the holes.");
        Assert.Contains("Hold the right string. Move front left", all, StringComparison.Ordinal);
        Assert.Contains("3 of 19 bows were measured over their outside", all, StringComparison.Ordinal);
    }

    [Fact]
    public void The_crew_reads_it_in_its_language()
    {
        Assert.Contains("Mida esto primero: lado izquierdo del rectángulo de hilos", Read("gothic-26ft", "crew-es.pdf"), StringComparison.Ordinal);
        Assert.Contains("Alto: cortado solo según el plan", Read(SamplePlans.BuiltExample, "crew-es.pdf"), StringComparison.Ordinal);
    }

    private static string Read(string example, string file)
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example(example));
        using PdfDocument document = PdfDocument.Open([.. PacketWriter.Write(planned, Paper.Letter, Day, choice: new PacketChoice { Crew = "es" }).First(each => each.Name == file).Bytes]);
        return string.Join(" ", document.GetPages().Select(page => string.Join(" ", page.GetWords().Select(word => word.Text))));
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
