using System.IO.Compression;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Hoopwright.Browser.Tests;

public sealed class JourneyTests(Site site)
{
    [Fact]
    public async Task A_first_visitor_begins_a_plan_and_takes_the_packet_away()
    {
        List<string> faults = [];
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor, faults);
        await page.GetByText("Round", new() { Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await page.Locator(".paper svg").WaitForAsync();
        await Visit.StageAsync(page, "Site");
        await Visit.Field(page, "name").FillAsync("Test tunnel");
        await Visit.StageAsync(page, "Packet");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "zip" }).ClickAsync());
        Assert.Equal("test-tunnel.zip", download.SuggestedFilename);
        using ZipArchive zip = ZipFile.OpenRead(await download.PathAsync());
        Assert.Contains(zip.Entries, entry => entry.FullName == "packet.pdf");
        // What needs the libraries that only these forms use.
        foreach (string ending in (string[])[".dxf", ".xlsx", ".glb", "index.html"]) Assert.Contains(zip.Entries, entry => entry.FullName.EndsWith(ending, StringComparison.Ordinal) && entry.Length > 1000);
        Assert.Contains(zip.Entries, entry => entry.FullName.StartsWith("drawings/", StringComparison.Ordinal));
        await page.GetByLabel("Paper of the drawings").SelectOptionAsync("a3");
        await page.GetByLabel("Revision").FillAsync("B");
        IDownload pdf = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "PDF" }).ClickAsync());
        using PdfDocument document = PdfDocument.Open(await pdf.PathAsync());
        Assert.Contains("Test tunnel", document.GetPage(1).Text, StringComparison.Ordinal);
        // A3 is 420 mm wide (ISO 216).
        UglyToad.PdfPig.Content.Page drawing = document.GetPages().First(each => each.Width > each.Height);
        Assert.Equal(420 / 25.4 * 72, drawing.Width, 0.5);
        Assert.Contains("rev. B", drawing.Text, StringComparison.Ordinal);
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "GeoJSON" })).ToBeDisabledAsync();
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder) await page.Locator(".packet").ScreenshotAsync(new() { Path = Path.Combine(folder, "desktop-packet.png") });
        Assert.Empty(faults);
    }

    [Fact]
    public async Task An_edit_changes_drawing_and_results_and_can_be_taken_back_after_the_page_was_closed()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Frame");
        ILocator length = Visit.Field(page, "frame.length");
        await length.FillAsync("48 ft");
        await page.Locator(".facts dd", new() { HasTextString = "12" }).First.WaitForAsync();
        Assert.True(await length.EvaluateAsync<bool>("field => field === document.activeElement"), "The keyboard left the field while someone typed.");
        await page.ReloadAsync();
        await Visit.Field(page, "frame.length").WaitForAsync();
        await Assertions.Expect(Visit.Field(page, "frame.length")).ToHaveValueAsync("48 ft");
        string address = page.Url;
        await page.CloseAsync();
        IPage again = await visitor.NewPageAsync();
        await again.GotoAsync(address);
        await again.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(Visit.Field(again, "frame.length")).ToHaveValueAsync("72 ft");
        await again.GetByRole(AriaRole.Button, new() { Name = "Redo" }).ClickAsync();
        await Assertions.Expect(Visit.Field(again, "frame.length")).ToHaveValueAsync("48 ft");
    }

    [Fact]
    public async Task What_is_wrong_stands_beside_its_field_in_words()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Frame");
        await Visit.Field(page, "frame.span").FillAsync("26");
        ILocator error = page.Locator("[data-path=\"frame.span\"] .error");
        await Assertions.Expect(error).ToContainTextAsync("unit");
        await Assertions.Expect(Visit.Field(page, "frame.span")).ToHaveAttributeAsync("aria-invalid", "true");
        await Visit.Field(page, "frame.span").FillAsync("26 ft");
        await Assertions.Expect(error).ToHaveCountAsync(0);
    }
}
