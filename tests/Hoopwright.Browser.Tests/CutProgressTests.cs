using Hoopwright.Cuts;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>At the saw with a phone: what is ticked is written down, a bad board is planned around, and a slip is taken back.</summary>
public sealed class CutProgressTests(Site site)
{
    [Fact]
    public async Task What_is_cut_or_bad_goes_into_the_site_book_and_the_rest_is_planned_around_it()
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example("round-14ft"))), depth: WorkDepth.Orders);
        CutSheet sheet = planned.Cuts!.Sheets.First(each => each.IsSawn && each.Bars.Length > 2);
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Phone());
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, Visit.Example("round-14ft"));
        await Visit.StageAsync(page, "Cuts");
        ILocator first = Bar(1), second = Bar(2);
        await first.Locator("input[type=checkbox]").CheckAsync();
        await Assertions.Expect(first).ToHaveAttributeAsync("data-state", "cut");
        await second.GetByRole(AriaRole.Button, new() { Name = "Bad", Exact = true }).ClickAsync();
        await second.GetByRole(AriaRole.Button, new() { Name = "It is bad" }).ClickAsync();
        await Assertions.Expect(second).ToHaveAttributeAsync("data-state", "bad");
        await Assertions.Expect(page.GetByText("Cut: 1. Bad: 1.")).ToBeVisibleAsync();
        await Visit.SettledAsync(page);
        List<string> faults = [.. await PhoneTests.FaultsAsync(page, "cuts")];
        await AccessibilityTests.CheckAsync(page, "cuts", faults);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        await first.Locator("input[type=checkbox]").UncheckAsync();
        await Assertions.Expect(first).ToHaveAttributeAsync("data-state", "toCut");

        await Visit.StageAsync(page, "Packet");
        string saved = await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the plan file" }));
        PlannedTunnel now = TunnelWorks.Plan(PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(saved)), depth: WorkDepth.Orders);
        Assert.Equal([SiteBookKind.Cut, SiteBookKind.Cut, SiteBookKind.Correction], now.Plan.SiteBook.Select(entry => entry.Kind!.Value));
        Assert.Equal((0, 1), (now.Cuts!.Of(sheet.Item, sheet.Size)!.Progress!.Cut, now.Cuts.Of(sheet.Item, sheet.Size)!.Progress!.Bad));

        ILocator Bar(int number) => page.Locator($"[data-bar='{sheet.Name} {number}']");
    }
}
