using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The screen of days: planned, moved by hand and by date, saved as files, with or without a network.</summary>
public sealed class DaysTests(Site site)
{
    [Theory]
    [InlineData("desktop", ColorScheme.Dark)]
    [InlineData("phone", ColorScheme.Light)]
    public async Task A_day_is_moved_the_calendar_follows_and_is_saved(string screen, ColorScheme scheme)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await Visit.ExampleAsync(page);
        await Visit.KeptAsync(page);
        await Visit.StageAsync(page, "Days");
        await visitor.SetOfflineAsync(true);
        await page.Locator(".day-list > .works").First.WaitForAsync();
        string[] before = await DatesAsync(page);
        Assert.True(before.Length >= 3, string.Join(", ", before));
        DateOnly second = DateOnly.Parse(before[1], System.Globalization.CultureInfo.InvariantCulture), later = DateOnly.Parse(before[^1], System.Globalization.CultureInfo.InvariantCulture).AddDays(9);

        // By its date, as a keyboard or a thumb does it.
        await page.Locator($"li[data-date='{before[1]}'] input[type=date]").FillAsync(later.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await page.Locator($"li[data-date='{before[1]}'].free").WaitForAsync();
        string[] moved = await DatesAsync(page);
        Assert.DoesNotContain(before[1], moved);

        // Back by dragging a day that follows onto it.
        if (screen == "desktop")
        {
            await page.Locator($"li[data-date='{before[2]}'].works").DragToAsync(page.Locator($"li[data-date='{before[1]}'].free"));
            await page.Locator($"li[data-date='{before[1]}'].works").WaitForAsync();
            Assert.DoesNotContain(before[2], await DatesAsync(page));
        }
        await Visit.SettledAsync(page);
        List<string> faults = [];
        await AccessibilityTests.CheckAsync(page, "days", faults);
        if (screen == "phone") faults.AddRange(await PhoneTests.FaultsAsync(page, "days"));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{screen}-days.png"), FullPage = true });
        Assert.StartsWith("BEGIN:VCALENDAR", await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the calendar file" })), StringComparison.Ordinal);
        Assert.StartsWith("%PDF", await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the wall calendar" })), StringComparison.Ordinal);
        await page.ReloadAsync();
        await page.Locator(".day-list > .works").First.WaitForAsync();
        Assert.DoesNotContain(screen == "desktop" ? before[2] : before[1], await DatesAsync(page));
    }

    [Fact]
    public async Task Weather_of_a_year_gives_the_odds_and_a_forecast_holds_steps_up()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Weather");
        await page.Locator(".weather input[type=file]").SetInputFilesAsync(Path.Combine(Site.Root, "examples", "year-invented.csv"));
        await page.Locator(".weather table").First.WaitForAsync();
        await Visit.StageAsync(page, "Days");
        await Assertions.Expect(page.Locator(".days-desk")).ToContainTextAsync("In 300 seasons", new() { Timeout = 30_000 });
    }

    private static async Task<string[]> DatesAsync(IPage page) => await page.Locator(".day-list > .works").EvaluateAllAsync<string[]>("days => days.map(day => day.dataset.date)");
}
