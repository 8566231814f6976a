using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>
/// A long site book: the plan opens, opens again after the page was closed, and takes one more entry. How long that takes is reported; it hangs on the machine, so no time makes it fail.
/// Two thousand entries, or a hundred thousand, thirty years of a busy farm, where pictures and times are asked for (HOOPWRIGHT_PICTURES), since that takes a minute.
/// </summary>
public sealed class BigBookTests(Site site, ITestOutputHelper output)
{
    private static readonly int Entries = Environment.GetEnvironmentVariable("HOOPWRIGHT_PICTURES") is { Length: > 0 } ? 100_000 : 2_000;

    [Fact]
    public async Task A_long_site_book_opens_opens_again_and_takes_one_more_entry()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        page.SetDefaultTimeout(120_000);
        Stopwatch watch = Stopwatch.StartNew();
        await Visit.ImportAsync(page, Big());
        Told("from the file to its first stage", watch);
        await Visit.SettledAsync(page);
        Told("to complete results", watch);
        string address = page.Url;
        await page.CloseAsync();
        page = await visitor.NewPageAsync();
        page.SetDefaultTimeout(120_000);
        watch.Restart();
        await page.GotoAsync(address);
        await page.Locator(".questions h2").WaitForAsync();
        Told("opened again from the shelf, to its first stage", watch);
        await Visit.SettledAsync(page);
        Told("to complete results", watch);
        await Visit.StageAsync(page, "Site book");
        await page.Locator(".entries li").First.WaitForAsync();
        watch.Restart();
        await page.Locator("textarea").FillAsync("Looked at after the storm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the note" }).ClickAsync();
        await page.Locator(".entries li").First.GetByText("Looked at after the storm").WaitForAsync();
        Told("one more entry on the page", watch);
    }

    private void Told(string what, Stopwatch watch) => output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {watch.Elapsed.TotalSeconds:0.0} s"));

    private static string Big()
    {
        string plan = LongBook.Text(Entries, new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc), TimeSpan.FromHours(1), number => new JsonObject
        {
            ["kind"] = (number % 3) switch { 0 => "measurement", 1 => "note", _ => "done" },
            ["of"] = number % 3 == 0 ? "bow-01-length" : number % 3 == 1 ? "site" : "bows",
            ["value"] = number % 3 == 2 ? "2026-04-18" : "26' 0\"",
            ["by"] = "crew lead",
        });
        string file = Path.Combine(Path.GetTempPath(), "hoopwright-big-book.json");
        File.WriteAllText(file, plan, Encoding.UTF8);
        return file;
    }
}
