using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Plans;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

public sealed class SiteBookPageTests
{
    [Theory]
    [InlineData("2026-04-01T08:15:00Z", "20260401T081500000Z-")]
    [InlineData("2026-04-01T10:15:00+02:00", "20260401T081500000Z-")]
    public void An_entry_is_marked_with_the_time_alike_in_every_time_zone(string now, string id) =>
        Assert.StartsWith(id, SiteBookPage.NewEntry("{}", DateTimeOffset.Parse(now, System.Globalization.CultureInfo.InvariantCulture))["id"]!.GetValue<string>(), StringComparison.Ordinal);

    [Fact]
    public void Entries_made_one_after_another_are_a_site_book_without_fault_even_when_the_clock_goes_back()
    {
        JsonObject plan = JsonNode.Parse("""{"hoopwright":"1.0","frame":{"span":"26 ft","length":"48 ft","bow":{"shape":"round","peakHeight":"11 ft"}}}""")!.AsObject();
        string[] times = ["2026-04-01T08:15:00Z", "2026-04-01T08:15:00Z", "2026-04-01T08:15:00Z", "2026-03-01T08:15:00Z", "2026-05-01T08:15:00Z"];
        foreach (string time in times)
        {
            JsonObject entry = SiteBookPage.NewEntry(plan.ToJsonString(), DateTimeOffset.Parse(time, System.Globalization.CultureInfo.InvariantCulture));
            if (plan["siteBook"] is JsonArray book) book.Add(entry);
            else plan["siteBook"] = new JsonArray(entry);
        }
        PlanReading reading = PlanReader.Read(Encoding.UTF8.GetBytes(plan.ToJsonString()));
        Assert.Empty(reading.Diagnostics);
        Assert.Equal(times.Length, reading.Plan.SiteBook.Length);
    }
}
