using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>Measuring on a phone without a network: every reading by keys, until film may be cut, and what was measured changes the plan.</summary>
public sealed class SiteBookTests(Site site)
{
    [Fact]
    public async Task Film_is_measured_by_keys_until_it_may_be_cut_and_a_longer_bow_makes_longer_film()
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example("round-14ft"))), depth: WorkDepth.Orders);
        CutCheck film = planned.Checks!.Of(CutCheckKind.Film)!;
        Assert.Equal(CutVerdict.MeasureFirst, film.Verdict);
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Phone());
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, Visit.Example("round-14ft"));
        await Visit.KeptAsync(page);
        await visitor.SetOfflineAsync(true);
        await Visit.StageAsync(page, "Site book");
        ILocator check = page.Locator("[data-check=check-film]");
        await Assertions.Expect(check.Locator(".verdict")).ToHaveTextAsync("measure this first");
        await page.GetByLabel("Your name").FillAsync("Sage");
        await page.GetByLabel("Your name").PressAsync("Tab");
        foreach (CheckNeed need in film.Missing)
        {
            int left = await check.Locator(".ways button").CountAsync();
            await check.GetByRole(AriaRole.Button, new() { Name = "Measure: " + need.Of.What, Exact = true }).ClickAsync();
            // As planned to the sixteenth: what stands is what was drawn, until the last reading.
            await PressAsync(page, need.Of.Planned);
            await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
            await Assertions.Expect(check.Locator(".ways button")).ToHaveCountAsync(left - 1);
        }
        await Assertions.Expect(check.Locator(".verdict")).ToHaveTextAsync("go");
        CheckNeed bow = film.Missing.Last(need => need.Of.Kind == MeasurableKind.BowLength);
        await page.Locator("[data-path='measure'] select").SelectOptionAsync(bow.Of.Name);
        await PressAsync(page, bow.Of.Planned + Quantities.Length.FromInches(7));
        await Assertions.Expect(page.GetByText("longer than planned")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await Assertions.Expect(check.Locator(".verdict")).Not.ToHaveTextAsync("go");
        await Visit.SettledAsync(page);
        List<string> faults = [.. await PhoneTests.FaultsAsync(page, "site book")];
        await AccessibilityTests.CheckAsync(page, "site book", faults);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, "phone-site-book.png"), FullPage = true });

        // The very numbers of the domain, from the plan as the page keeps it.
        await Visit.StageAsync(page, "Packet");
        string saved = await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the plan file" }));
        PlannedTunnel now = TunnelWorks.Plan(PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(saved)), depth: WorkDepth.Orders);
        Assert.NotNull(now.AsBuilt);
        Assert.True(now.Tunnel!.Bow.FilmLine.Length > planned.Tunnel!.Bow.FilmLine.Length);
        Assert.All(now.Plan.SiteBook, entry => Assert.Equal("Sage", entry.By));
    }

    private static async Task PressAsync(IPage page, Quantities.Length length)
    {
        int sixteenths = (int)Math.Round(length.Inches * 16), feet = sixteenths / 192, inches = sixteenths / 16 % 12, part = sixteenths % 16;
        foreach (char digit in feet.ToString(System.Globalization.CultureInfo.InvariantCulture)) await KeyAsync(digit.ToString());
        await KeyAsync("ft");
        foreach (char digit in inches.ToString(System.Globalization.CultureInfo.InvariantCulture)) await KeyAsync(digit.ToString());
        int shared = (int)System.Numerics.BigInteger.GreatestCommonDivisor(part, 16);
        await KeyAsync(part == 0 ? "in" : $"{part / shared}/{16 / shared}");

        Task KeyAsync(string key) => page.Locator($".pad .keys button:text-is(\"{key}\")").ClickAsync();
    }
}
