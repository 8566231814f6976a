using System.Text;
using Bunit;
using Hoopwright.Packets;
using Hoopwright.Testing;
using Hoopwright.Upkeep;
using Hoopwright.Web.Engine;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;
using Microsoft.Extensions.DependencyInjection;

namespace Hoopwright.Web.Tests;

/// <summary>What the screen of upkeep shows, by the engine itself.</summary>
public sealed class UpkeepPanelTests : BunitContext
{
    private static readonly string Storm = File.ReadAllText(Path.Combine(SamplePlans.Root, "examples", "storm-invented.csv"));

    private readonly PanelDesk desk;

    public UpkeepPanelTests()
    {
        desk = new PanelDesk(Services);
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<PageScript>();
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing) desk.Dispose();
        base.Dispose(disposing);
    }

    [Fact]
    public async Task The_storm_card_and_the_rounds_are_those_of_the_domain()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("round-14ft"));
        StormCard card = planned.Upkeep!.Card!;
        await desk.OpenAsync("round-14ft");
        IRenderedComponent<UpkeepPanel> panel = Render<UpkeepPanel>();
        panel.WaitForAssertion(() => Assert.Equal(card.Snow.Select(snow => StormWords.Depth(snow.ClearAt, planned.Units)), panel.FindAll("tbody tr").Select(row => row.QuerySelectorAll("td")[0].TextContent)));
        Assert.Equal(card.Gusts.Length, panel.FindAll(".gusts > li").Count);
        Assert.Equal(planned.Upkeep.Rounds.SelectMany(round => round.Items).Select(item => item.Id), panel.FindAll(".round button").Select(button => button.GetAttribute("data-item")));
        Assert.Contains("Nobody under a loaded roof", panel.Find(".caution").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_forecast_and_snow_that_lies_already_are_held_against_the_card_in_both_languages()
    {
        string plan = PlanText.Plain(Encoding.UTF8.GetString(SamplePlans.ExampleBytes("gothic-26ft")))!;
        Assert.Contains("Clear the snow: ", EngineWork.Upkeep(plan, Storm, "", "", "settled", "2027-01-21", "en"), StringComparison.Ordinal);
        string spanish = EngineWork.Upkeep(plan, Storm, "", "16 in", "wet", "2027-01-21", "es");
        Assert.Contains("Quitar la nieve: ", spanish, StringComparison.Ordinal);
        Assert.Contains("\"past\":true", spanish, StringComparison.Ordinal);
        Assert.Contains("\"depthUnread\":true", EngineWork.Upkeep(plan, Storm, "", "deep", "wet", "2027-01-21", "en"), StringComparison.Ordinal);
        Assert.Contains("\"storm\":null", EngineWork.Upkeep(plan, "", "", "", "settled", "2027-01-21", "en"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_seen_on_a_round_stands_beside_it_and_files_are_made()
    {
        string plan = PlanText.Plain(Encoding.UTF8.GetString(SamplePlans.ExampleBytes("round-14ft")))!;
        string seen = plan.TrimEnd()[..^1] + ", \"siteBook\": [ { \"id\": \"20261115T090000000Z-aaaaaaaa\", \"kind\": \"done\", \"of\": \"round-winter-joints\", \"value\": \"2026-11-15\" } ] }";
        Assert.Contains("\"seen\":\"Sun 2026-11-15\"", EngineWork.Upkeep(seen, "", "", "", "settled", "2026-11-30", "en"), StringComparison.Ordinal);
        Assert.StartsWith("%PDF", Encoding.ASCII.GetString(EngineWork.UpkeepFile(plan, "2026-11-30", "es", "letter", "pdf"), 0, 4), StringComparison.Ordinal);
        Assert.StartsWith("BEGIN:VCALENDAR", Encoding.UTF8.GetString(EngineWork.UpkeepFile(plan, "2026-11-30", "es", "letter", "ics")), StringComparison.Ordinal);
    }
}
