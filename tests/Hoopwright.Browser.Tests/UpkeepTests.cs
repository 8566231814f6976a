using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The screen of upkeep: the storm card, a forecast held against it, a round ticked off, files, with or without a network.</summary>
public sealed class UpkeepTests(Site site)
{
    [Theory]
    [InlineData("desktop", ColorScheme.Dark)]
    [InlineData("phone", ColorScheme.Light)]
    public async Task A_storm_is_held_against_the_card_a_round_is_ticked_and_the_card_is_saved(string screen, ColorScheme scheme)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await Visit.ExampleAsync(page);
        await Visit.KeptAsync(page);
        await Visit.StageAsync(page, "Weather");
        await page.Locator(".weather input[type=file]").SetInputFilesAsync(Path.Combine(Site.Root, "examples", "storm-invented.csv"));
        await page.Locator(".weather .said, .weather table").First.WaitForAsync();
        await visitor.SetOfflineAsync(true);
        await Visit.StageAsync(page, "Upkeep");
        await Assertions.Expect(page.Locator(".upkeep .storm")).ToContainTextAsync("Clear the snow", new() { Timeout = 30_000 });
        await page.Locator(".upkeep input[type=text]").First.FillAsync("30 in");
        await page.Locator(".upkeep input[type=text]").First.PressAsync("Tab");
        await page.Locator(".upkeep select").SelectOptionAsync("wet");
        await Assertions.Expect(page.Locator(".upkeep .said")).ToContainTextAsync("passes what the tunnel stands", new() { Timeout = 30_000 });

        await page.Locator(".upkeep summary", new() { HasText = "Each autumn" }).ClickAsync();
        await page.Locator("[data-item='round-winter-joints']").ClickAsync();
        await Assertions.Expect(page.Locator("li", new() { Has = page.Locator("[data-item='round-winter-joints']") })).ToContainTextAsync("Seen ", new() { Timeout = 30_000 });
        await Visit.SettledAsync(page);
        List<string> faults = [];
        await AccessibilityTests.CheckAsync(page, "upkeep", faults);
        if (screen == "phone") faults.AddRange(await PhoneTests.FaultsAsync(page, "upkeep"));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{screen}-upkeep.png"), FullPage = true });
        Assert.StartsWith("%PDF", await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the storm card" })), StringComparison.Ordinal);
        Assert.StartsWith("BEGIN:VCALENDAR", await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the season calendar" })), StringComparison.Ordinal);
    }
}
