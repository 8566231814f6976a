using System.IO.Compression;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

public sealed class OfflineTests(Site site)
{
    [Fact]
    public async Task After_the_first_visit_everything_works_without_a_network_the_packet_too()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.KeptAsync(page);
        await visitor.SetOfflineAsync(true);
        await page.ReloadAsync();
        await page.Locator(".ways button").First.WaitForAsync();
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Frame");
        await Visit.Field(page, "frame.length").FillAsync("36 ft");
        await page.Locator(".band dd.stands, .band dd.marginal, .band dd.doesNotStand").First.WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "3D" }).ClickAsync();
        await page.Locator(".space canvas").WaitForAsync();
        await Visit.StageAsync(page, "Packet");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "zip" }).ClickAsync());
        using ZipArchive zip = ZipFile.OpenRead(await download.PathAsync());
        Assert.Contains(zip.Entries, entry => entry.FullName == "results.json");
    }
}
