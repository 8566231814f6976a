using System.Globalization;
using Hoopwright.Cover.Pull;
using Hoopwright.Days;
using Hoopwright.Inside;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Weather;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The screens of cover and weather: what stands there is what the domain says, on a phone and on a desktop, and no file leaves the device.</summary>
public sealed class CoveringTests(Site site)
{
    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task A_temperature_is_entered_by_keyboard_and_the_pull_and_the_steps_are_those_of_the_domain(string screen, ColorScheme scheme)
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example("gothic-26ft"))), depth: WorkDepth.Orders);
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Cover");
        await page.Locator(".steps h4").First.WaitForAsync();
        Assert.Equal(planned.Fastening!.Steps.Select(step => step.Title.ToString()), await page.Locator(".steps h4").AllTextContentsAsync());

        await page.Locator(".covering input").FocusAsync();
        await page.Keyboard.TypeAsync("40");
        await page.Keyboard.PressAsync("Tab");
        PullRow row = planned.Cover!.Pull.At(Temperature.FromFahrenheit(40));
        Assert.Equal(PullAdvice.PastSnug, row.Advice);
        await Assertions.Expect(page.Locator("#pull-said")).ToContainTextAsync($"Film at 40 °F: pull past snug by {TapeText.Of(TapeText.RoundToMark(row.PastSnugAlong, planned.Units), planned.Units)}");
        await Assertions.Expect(page.Locator(".covering .chart svg")).ToContainTextAsync("40 °F");
        await Visit.SettledAsync(page);
        await CheckAsync(page, screen, "cover");
        await KeepAsync(page, $"{screen}-cover");
    }

    [Theory]
    [InlineData("desktop", ColorScheme.Dark)]
    [InlineData("phone", ColorScheme.Light)]
    public async Task A_forecast_is_opened_and_its_windows_are_those_of_the_domain_and_nothing_is_sent(string screen, ColorScheme scheme)
    {
        string file = Path.Combine(Site.Root, "examples", "forecast-invented.json");
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example("gothic-26ft"))), depth: WorkDepth.Orders);
        CoverDayReport report = CoverDayPlanner.Plan(planned.Tunnel!, planned.Cover!, WeatherReader.Read(File.ReadAllBytes(file)).Record!).Report!;
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Weather");
        await Visit.SettledAsync(page);
        List<string> sent = [];
        page.Request += (_, request) => sent.Add($"{request.Method} {request.Url} {request.PostData?.Length ?? 0}");
        await page.Locator(".weather input[type=file]").SetInputFilesAsync(file);
        await page.Locator(".windows li").First.WaitForAsync();
        string[] windows = [.. await page.Locator(".windows li strong").AllTextContentsAsync()];
        Assert.Equal(report.Windows.Select(window => string.Create(CultureInfo.InvariantCulture, $"{window.Begin:ddd yyyy-MM-dd} {window.Begin:HH:mm}–{window.End:HH:mm}")), windows);
        await page.Locator(".weather .chart svg").WaitForAsync();
        Assert.DoesNotContain(sent, request => !request.StartsWith("GET ", StringComparison.Ordinal) || request.Contains("forecast", StringComparison.Ordinal));
        await CheckAsync(page, screen, "weather");
        await KeepAsync(page, $"{screen}-weather");

        // The clock on the wall is an hour ahead in summer: the same hours, told by it.
        await page.Locator(".weather .pick select").SelectOptionAsync("-04:00");
        CoverDayReport summer = CoverDayPlanner.Plan(planned.Tunnel!, planned.Cover!, WeatherReader.Read(File.ReadAllBytes(file), TimeSpan.FromHours(-4)).Record!).Report!;
        await Assertions.Expect(page.Locator(".windows li strong").First).ToHaveTextAsync(string.Create(CultureInfo.InvariantCulture, $"{summer.Windows[0].Begin:ddd yyyy-MM-dd} {summer.Windows[0].Begin:HH:mm}–{summer.Windows[0].End:HH:mm}"));

        // A chart fills the screen, by touch on a phone and by keyboard elsewhere, and is left by Escape.
        await Visit.SettledAsync(page);
        if (screen == "phone")
        {
            await page.Locator(".weather .chart").First.TapAsync();
        }
        else
        {
            await page.Locator(".weather .enlarge").First.FocusAsync();
            await page.Keyboard.PressAsync("Enter");
        }
        await page.Locator("dialog.large[open] svg").WaitForAsync();
        await CheckAsync(page, screen, "weather chart, large");
        await KeepAsync(page, $"{screen}-weather-large");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator("dialog.large")).ToHaveCountAsync(0);

        // The plan's limits go with the hours found.
        await Visit.Field(page, "coverDay.wind").FillAsync("1 mph");
        await page.GetByText("No hours meet all limits.").First.WaitForAsync();
    }

    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task A_year_is_opened_and_what_it_is_like_inside_is_what_the_domain_says(string screen, ColorScheme scheme)
    {
        string file = Path.Combine(Site.Root, "examples", "year-invented.csv");
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example("gothic-26ft"))), depth: WorkDepth.Orders);
        InsideReport report = InsidePlanner.Plan(planned.Tunnel!, WeatherReader.Read(File.ReadAllBytes(file)).Record!).Report!;
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Inside");
        await Visit.SettledAsync(page);
        await page.Locator(".inside input[type=file]").SetInputFilesAsync(file);
        await page.Locator(".inside tbody tr").First.WaitForAsync();
        string[] hottest = [.. await page.Locator(".inside tbody tr td:nth-child(2)").AllTextContentsAsync()], coldest = [.. await page.Locator(".inside tbody tr td:nth-child(3)").AllTextContentsAsync()];
        Assert.Equal(report.Ways.Select(way => TapeText.Of(way.Highest, planned.Units)), hottest);
        Assert.Equal(report.Ways.Select(way => TapeText.Of(way.Lowest, planned.Units)), coldest);
        await Assertions.Expect(page.Locator(".inside .chart svg")).ToHaveCountAsync(3);
        await CheckAsync(page, screen, "inside");
        await KeepAsync(page, $"{screen}-inside");

        // Another stage that reads weather has the same file, and keeps it.
        await Visit.StageAsync(page, "Weather");
        await page.Locator(".weather .chart svg").First.WaitForAsync();
        await Visit.StageAsync(page, "Inside");
        await page.Locator(".inside tbody tr").First.WaitForAsync();
    }

    private static async Task CheckAsync(IPage page, string screen, string name)
    {
        List<string> faults = [];
        await AccessibilityTests.CheckAsync(page, name, faults);
        if (screen == "phone") faults.AddRange(await PhoneTests.FaultsAsync(page, name));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    // A whole page to look at, where a folder is named.
    private static async Task KeepAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder)
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = true });
    }
}
