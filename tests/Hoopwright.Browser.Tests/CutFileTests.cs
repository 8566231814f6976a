using System.Globalization;
using System.Text;
using System.Text.Json;
using Hoopwright.Cutting;
using Hoopwright.Testing;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The page for any cut job says what the command line says of the same file, and how long people wait for it.</summary>
public sealed class CutFileTests(Site site, ITestOutputHelper output)
{
    private const int Orders = 60;

    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task A_cut_job_is_cut_as_by_the_command_line_and_the_screen_breaks_no_rule(string screen, ColorScheme scheme)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await page.GotoAsync("/cut");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cut the example job" }).ClickAsync();
        CutFileAnswer expected = CutFile.Solve(File.ReadAllBytes(Visit.Example("cut-job")));
        Assert.Equal(CutFileSheet.Of(expected).TrimEnd(), (await page.Locator("pre.beams").TextContentAsync())!.TrimEnd());
        List<string> faults = [];
        await AccessibilityTests.CheckAsync(page, "cut", faults);
        if (screen == "phone") faults.AddRange(await PhoneTests.FaultsAsync(page, "cut"));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    // The times are reported; what they must be is not a matter of how busy the machine of the tests is. What each order costs is.
    [Fact]
    public async Task Practical_orders_cost_in_the_browser_what_they_cost_elsewhere()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        page.SetDefaultTimeout(120_000);
        await page.GotoAsync("/cut");
        List<double> seconds = [];
        for (int order = 0; order < Orders; order++)
        {
            UnitlessCutJob job = PracticalOrders.Of(order, leftovers: false);
            await page.Locator(".file input").SetInputFilesAsync(new FilePayload { Name = $"order-{order}.json", MimeType = "application/json", Buffer = FileOf(job, $"order-{order}-") });
            // Not the sheet of the order before it.
            await page.Locator("pre.beams", new() { HasText = $"order-{order}-s" }).WaitForAsync();
            using JsonDocument answer = JsonDocument.Parse(await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the whole answer" })));
            Assert.Equal(Cutter.Solve(job).Cost, answer.RootElement.GetProperty("cost").GetDecimal());
            Assert.True(answer.RootElement.GetProperty("proven").GetBoolean());
            seconds.Add(answer.RootElement.GetProperty("seconds").GetDouble());
        }
        double[] rising = [.. seconds.Order()];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{Orders} practical orders cut in the browser: median {rising[Orders / 2] * 1000:0} ms, 19 of 20 within {rising[Orders * 19 / 20] * 1000:0} ms, worst {rising[^1]:0.0} s, the first {seconds[0] * 1000:0} ms."));
    }

    private static byte[] FileOf(UnitlessCutJob job, string name) => Encoding.UTF8.GetBytes(JsonSerializer.Serialize(new
    {
        kerf = job.Kerf,
        trim = job.Trim,
        stock = job.Stock.Select(bar => new { id = name + bar.Id, length = bar.Length, price = bar.Price, limit = bar.Limit }),
        pieces = job.Pieces.Select(piece => new { id = piece.Id, length = piece.Length, count = piece.Count }),
    }));
}
