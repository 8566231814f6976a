using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Bunit;
using Hoopwright.Testing;
using Hoopwright.Web.Engine;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;
using UglyToad.PdfPig;

namespace Hoopwright.Web.Tests;

public sealed class PacketPanelTests : BunitContext
{
    [Fact]
    public async Task What_is_chosen_goes_to_the_engine_with_each_button()
    {
        using PanelDesk desk = new(Services);
        await desk.OpenAsync("round-14ft");
        IRenderedComponent<PacketPanel> panel = Render<PacketPanel>();
        Assert.Equal(("", "", ""), await WishedAsync("Save the drawings (DXF)"));
        await panel.InvokeAsync(() => panel.FindAll("select")[1].Change("tabloid"));
        await panel.InvokeAsync(() => panel.Find("input[maxlength]").Change(" B "));
        await panel.InvokeAsync(() => panel.Find("input[type=checkbox]").Change(true));
        Assert.Equal(("tabloid", "exploded", "B"), await WishedAsync("Save the drawings (DXF)"));
        Assert.Equal("dxf", desk.Wishes[^1].Wish.What);
        Assert.EndsWith("-dxf.zip", desk.Wishes[^1].FileName, StringComparison.Ordinal);
        Assert.Contains("Saved.", panel.Find("[role=status]").TextContent, StringComparison.Ordinal);

        async Task<(string, string, string)> WishedAsync(string button)
        {
            await Button(panel, button).ClickAsync(new());
            PacketWish wish = desk.Wishes[^1].Wish;
            return (wish.Drawings, wish.Dimensions, wish.Revision);
        }
    }

    [Fact]
    public async Task A_map_can_be_had_where_the_plan_says_where_and_is_explained_where_not()
    {
        using PanelDesk desk = new(Services);
        await desk.OpenAsync("round-14ft", plan =>
        {
            foreach (string name in (string[])["latitude", "longitude", "frontFaces"]) (plan["site"] as JsonObject)?.Remove(name);
        });
        IRenderedComponent<PacketPanel> panel = Render<PacketPanel>();
        Assert.True(Button(panel, "Save the map (GeoJSON)").HasAttribute("disabled"));
        Assert.Contains("latitude", panel.Find("#packet-place").TextContent, StringComparison.Ordinal);
        await desk.OpenAsync("round-14ft", Placed);
        panel.Render();
        Assert.Empty(panel.FindAll("#packet-place"));
        await Button(panel, "Save the map (GeoJSON)").ClickAsync(new());
        Assert.EndsWith(".geojson", desk.Wishes[^1].FileName, StringComparison.Ordinal);
        Assert.Contains("Saved.", panel.Find("[role=status]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_engine_makes_what_was_wished()
    {
        JsonObject document = PlanText.Tree(PlanText.Plain(Encoding.UTF8.GetString(SamplePlans.ExampleBytes("round-14ft")))!).AsObject();
        Assert.Empty(EngineWork.Packet(new PacketWish("{}", "letter", "2026-03-01", "geojson", "en")));
        Placed(document);
        PacketWish wish = new(document.ToJsonString(), "letter", "2026-03-01", "geojson", "en");
        using JsonDocument map = JsonDocument.Parse(EngineWork.Packet(wish));
        Assert.Equal("FeatureCollection", map.RootElement.GetProperty("type").GetString());
        Assert.Contains("\nDIMENSION\n", Drawing(wish with { What = "dxf" }), StringComparison.Ordinal);
        Assert.DoesNotContain("\nDIMENSION\n", Drawing(wish with { What = "dxf", Dimensions = "exploded" }), StringComparison.Ordinal);
        // Points of Letter, and of A3 across (ISO 216): 72 to the inch.
        byte[] large = EngineWork.Packet(wish with { What = "pdf", Drawings = "a3" });
        using PdfDocument pages = PdfDocument.Open(large);
        Assert.Equal([(612, 792), (1191, 842)], pages.GetPages().Select(each => (Math.Round(each.Width), Math.Round(each.Height))).Distinct().Order());
        Assert.NotEqual(large, EngineWork.Packet(wish with { What = "pdf", Drawings = "a3", Revision = "C" }));
    }

    private static string Drawing(PacketWish wish)
    {
        using ZipArchive zip = new(new MemoryStream(EngineWork.Packet(wish)));
        using StreamReader reader = new(zip.Entries.Single(entry => entry.FullName.EndsWith("-set-out.dxf", StringComparison.Ordinal)).Open());
        return reader.ReadToEnd();
    }

    private static void Placed(JsonObject plan)
    {
        JsonObject site = plan["site"] as JsonObject ?? [];
        (site["latitude"], site["longitude"], site["frontFaces"]) = ("42.9°", "-78.7°", "S");
        plan["site"] = site;
    }

    private static IElement Button(IRenderedComponent<PacketPanel> panel, string words) => panel.FindAll("button").Single(button => button.TextContent.Trim() == words);
}
