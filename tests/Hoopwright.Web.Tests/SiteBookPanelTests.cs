using System.Text.Json.Nodes;
using Bunit;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Hoopwright.Web.Tests;

/// <summary>What the screen of the site book shows, by the engine itself.</summary>
public sealed class SiteBookPanelTests : BunitContext
{
    private readonly PanelDesk desk;

    public SiteBookPanelTests()
    {
        desk = new PanelDesk(Services);
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing) desk.Dispose();
        base.Dispose(disposing);
    }

    [Fact]
    public async Task Before_anything_is_measured_every_cut_says_what_to_measure_first()
    {
        await desk.OpenAsync("gothic-26ft");
        IRenderedComponent<SiteBookPanel> panel = Render<SiteBookPanel>();
        panel.WaitForAssertion(() => Assert.Equal(5, panel.FindAll(".checks > li").Count));
        Assert.All(panel.FindAll(".checks .verdict"), verdict => Assert.Equal("measure this first", verdict.TextContent));
        panel.Find("[data-check=check-film] .ways button").Click();
        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll(".pad")));
        await PressAsync(panel, "7", "2", "ft", "3", "1/8");
        Assert.Equal("72' 3-1/8\"", panel.Find(".pad input").GetAttribute("value"));
    }

    [Fact]
    public async Task What_was_measured_stands_against_the_plan_with_what_to_move()
    {
        await desk.OpenAsync("round-14ft", plan => plan["siteBook"] = new JsonArray(Reading(1, "bow-01-length", "30 ft"), Reading(2, "bow-01-length", "30 ft"), Reading(3, "square-left", "24' 1\""), Reading(4, "none-such", "1 ft")));
        IRenderedComponent<SiteBookPanel> panel = Render<SiteBookPanel>();
        panel.WaitForElement(".checks > li");
        Assert.NotEmpty(panel.FindAll("table tbody tr"));
        Assert.Contains(panel.FindAll("table tbody tr"), row => row.TextContent.Contains("out of tolerance", StringComparison.Ordinal));
        Assert.Equal(SiteBookPage.Count(Services.GetRequiredService<OpenPlan>().Root), panel.FindAll(".entries > li").Count);
        Services.GetRequiredService<Wording>().Choose("es");
        panel.WaitForAssertion(() => Assert.Contains("Antes de cortar", panel.Markup, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("39' 8-1/2\"", "3", "9", "ft", "8", "1/2")]
    [InlineData("0-1/16\"", "0", "1/16")]
    [InlineData("1/16\"", "1/16")]
    [InlineData("5' 3/4\"", "5", "ft", "3/4")]
    [InlineData("5' 11\"", "5", "ft", "1", "1", "in")]
    [InlineData("6-3/8\"", "6", "1/2", "3/8")]
    public async Task The_keys_write_what_a_tape_says(string says, params string[] keys)
    {
        await desk.OpenAsync("gothic-26ft");
        IRenderedComponent<SiteBookPanel> panel = Render<SiteBookPanel>();
        panel.WaitForElement(".checks > li");
        panel.Find("[data-check=check-film] .ways button").Click();
        panel.WaitForElement(".pad");
        await PressAsync(panel, keys);
        Assert.Equal(says, panel.Find(".pad input").GetAttribute("value"));
        Assert.True(Quantities.QuantityText.ReadLength(says).IsRead);
    }

    private static JsonObject Reading(int number, string of, string value) =>
        new() { ["id"] = $"20260401T08150000{number}Z-abcdefgh", ["kind"] = "measurement", ["of"] = of, ["value"] = value, ["by"] = "Wren" };

    // On the renderer's own thread: a click from beside it waits behind what is drawn just then, and what it writes comes after it was looked for.
    private static async Task PressAsync(IRenderedComponent<SiteBookPanel> panel, params string[] keys)
    {
        foreach (string key in keys) await panel.InvokeAsync(() => panel.FindAll(".pad .keys button").First(button => button.TextContent == key).Click());
    }
}
