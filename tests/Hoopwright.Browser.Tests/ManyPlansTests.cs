using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>
/// A shelf of many plans with long site books, opened one after another in one page: the memory of the page and of its workers does not grow
/// with the number of plans that were open. Twelve plans of a season; two hundred of five years, an entry a day, where pictures and times are
/// asked for (HOOPWRIGHT_PICTURES), since that takes an hour.
/// </summary>
public sealed class ManyPlansTests(Site site, ITestOutputHelper output)
{
    private static readonly bool IsLong = Environment.GetEnvironmentVariable("HOOPWRIGHT_PICTURES") is { Length: > 0 };
    private static readonly int Plans = IsLong ? 200 : 12, Entries = IsLong ? 1_826 : 120;

    [Fact]
    public async Task Plans_opened_one_after_another_leave_the_memory_as_it_was()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        page.SetDefaultTimeout(120_000);
        await page.EvaluateAsync("""
            ({ text, plans }) => new Promise((resolve, reject) => {
              const request = indexedDB.open('hoopwright');
              request.onerror = () => reject(request.error);
              request.onsuccess = () => {
                const work = request.result.transaction('plans', 'readwrite'), shelf = work.objectStore('plans');
                for (let at = 0; at < plans; at++) {
                  const plan = JSON.parse(text);
                  plan.name = 'Tunnel ' + String(at + 1).padStart(3, '0');
                  shelf.put({ id: 'many' + at, name: plan.name, document: JSON.stringify(plan), changed: at, at: 0, of: 0 });
                }
                work.oncomplete = () => { request.result.close(); resolve(); };
                work.onabort = () => reject(work.error);
              };
            })
            """, new { text = Text(), plans = Plans });
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".plans a")).ToHaveCountAsync(Plans);
        double[] half = [];
        for (int number = 1; number <= Plans; number++)
        {
            string name = string.Create(CultureInfo.InvariantCulture, $"Tunnel {number:000}");
            await page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).ClickAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(name);
            await Visit.SettledAsync(page);
            await Visit.StageAsync(page, "Site book");
            await page.Locator(".checks li").First.WaitForAsync();
            if (number == (Plans + 1) / 2) half = await MemoryAsync(page);
            if (number % Math.Max(1, Plans / 10) == 0) output.WriteLine($"after {number} plans, MB: {Told(await MemoryAsync(page))}");
            await page.Locator("header .home").ClickAsync();
            await page.Locator(".plans a").First.WaitForAsync();
        }
        double[] end = await MemoryAsync(page);
        // Of a half of the plans as many again leave nothing; what a collector has not yet gone through is let be.
        for (int part = 0; part < half.Length; part++) Assert.True(end[part] <= (half[part] * 1.25) + 16, $"Memory grew from {Told(half)} to {Told(end)} MB over the second half of the plans.");
    }

    // The script's own memory of the page, then the memory of the runtime in the page and in each worker, in MB.
    private static async Task<double[]> MemoryAsync(IPage page)
    {
        const string Runtime = "() => globalThis.getDotnetRuntime(0).Module.HEAPU8.length / 1e6";
        List<double> all = [await page.EvaluateAsync<double>("() => performance.memory.usedJSHeapSize / 1e6"), await page.EvaluateAsync<double>(Runtime)];
        foreach (IWorker worker in page.Workers.OrderBy(each => each.Url, StringComparer.Ordinal)) all.Add(await worker.EvaluateAsync<double>(Runtime));
        return [.. all];
    }

    private static string Told(double[] memory) => string.Join(", ", memory.Select(each => each.ToString("0", CultureInfo.InvariantCulture)));

    private static string Text() => LongBook.Text(Entries, new DateTime(2026, 4, 18, 10, 0, 0, DateTimeKind.Utc), TimeSpan.FromDays(1), _ => new JsonObject
    {
        ["kind"] = "note",
        ["of"] = "site",
        ["by"] = "crew lead",
        ["note"] = "Looked at film, channel and doors; opened in the morning, closed at night.",
    });
}
