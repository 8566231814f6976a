using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The browser's database refuses, is full, is damaged or is newer: the page says so, and the work can be saved as a file.</summary>
public sealed class StorageTests(Site site)
{
    [Fact]
    public async Task A_browser_that_keeps_nothing_says_so_and_the_work_can_be_saved()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        await visitor.AddInitScriptAsync("IDBFactory.prototype.open = () => { throw new DOMException('Not in private windows.', 'SecurityError'); }");
        IPage page = await Visit.OpenAsync(visitor);
        await Assertions.Expect(page.Locator(".page > .caution").First).ToContainTextAsync("This browser keeps nothing");
        await Assertions.Expect(page.Locator(".page > .caution").First).ToContainTextAsync("Not in private windows.");
        await EditAndSaveAsync(page);
    }

    [Fact]
    public async Task With_no_room_left_the_change_holds_on_the_page_and_is_kept_once_there_is_room()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        await visitor.AddInitScriptAsync(FullWhenAsked);
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Frame");
        await page.EvaluateAsync("window.isFull = true");
        await Visit.Field(page, "frame.length").FillAsync("48 ft");
        await Visit.Field(page, "frame.bowSpacing").FillAsync("3 ft");
        ILocator warning = page.Locator(".plan > .caution.stop");
        await Assertions.Expect(warning).ToContainTextAsync("no room left");
        string saved = await Visit.SavedAsync(page, warning.GetByRole(AriaRole.Button));
        Assert.Contains("\"length\": \"48 ft\"", saved, StringComparison.Ordinal);
        Assert.Contains("\"bowSpacing\": \"3 ft\"", saved, StringComparison.Ordinal);
        await Assertions.Expect(page.Locator(".facts dd").Filter(new() { HasText = "16" }).First).ToBeVisibleAsync();
        await page.EvaluateAsync("window.isFull = false");
        await Visit.Field(page, "frame.span").FillAsync("24 ft");
        await Assertions.Expect(warning).ToHaveCountAsync(0);
        await page.ReloadAsync();
        await Assertions.Expect(Visit.Field(page, "frame.length")).ToHaveValueAsync("48 ft");
        await Assertions.Expect(Visit.Field(page, "frame.bowSpacing")).ToHaveValueAsync("3 ft");
        await Assertions.Expect(Visit.Field(page, "frame.span")).ToHaveValueAsync("24 ft");
    }

    [Fact]
    public async Task With_no_room_from_the_start_a_plan_opens_all_the_same()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        await visitor.AddInitScriptAsync(FullWhenAsked);
        IPage page = await Visit.OpenAsync(visitor);
        await page.EvaluateAsync("window.isFull = true");
        await EditAndSaveAsync(page);
        await Assertions.Expect(page.Locator(".plan > .caution.stop")).ToContainTextAsync("no room left");
        await page.EvaluateAsync("window.isFull = false");
        await Visit.Field(page, "frame.span").FillAsync("24 ft");
        await Assertions.Expect(page.Locator(".plan > .caution.stop")).ToHaveCountAsync(0);
        await page.ReloadAsync();
        await Assertions.Expect(Visit.Field(page, "frame.length")).ToHaveValueAsync("48 ft");
        await Assertions.Expect(Visit.Field(page, "frame.span")).ToHaveValueAsync("24 ft");
    }

    [Fact]
    public async Task A_damaged_record_is_named_can_be_saved_as_it_is_and_leaves_the_other_plans_alone()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await page.EvaluateAsync("""
            () => new Promise((done, fail) => {
              const opening = indexedDB.open('hoopwright');
              opening.onsuccess = () => {
                const change = opening.result.transaction('plans', 'readwrite');
                change.objectStore('plans').put({ id: 'broken', name: 'Broken tunnel', document: '{"frame": {"span"', changed: 1 });
                change.objectStore('plans').put({ id: 'empty' });
                change.oncomplete = () => { opening.result.close(); done(); };
                change.onerror = fail;
              };
              opening.onerror = fail;
            })
            """);
        await page.GotoAsync("/");
        ILocator broken = page.Locator(".plans li", new() { HasTextString = "Broken tunnel" });
        await Assertions.Expect(broken).ToContainTextAsync("damaged");
        Assert.Equal("{\"frame\": {\"span\"", await Visit.SavedAsync(page, broken.GetByRole(AriaRole.Button, new() { Name = "Save" })));
        await Assertions.Expect(page.Locator(".plans").First.Locator("li")).ToHaveCountAsync(3);
        await page.GotoAsync("/plan/broken");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("damaged");
        Assert.Equal("{\"frame\": {\"span\"", await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save" })));
        await page.GotoAsync("/");
        await page.Locator(".plans a").ClickAsync();
        await page.Locator(".paper svg").WaitForAsync();
    }

    [Fact]
    public async Task A_plan_of_a_newer_version_is_told_apart_and_goes_out_as_it_came()
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        const string Newer = """{"hoopwright":"99.0","name":"From tomorrow","frame":{"span":"20 ft","hoverHeight":"3 ft"}}""";
        File.WriteAllText(file, Newer);
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, file);
        File.Delete(file);
        await Assertions.Expect(page.Locator(".findings li.error").First).ToContainTextAsync("newer");
        await Visit.StageAsync(page, "Packet");
        Assert.Equal(Newer, await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the plan file" })));
    }

    [Fact]
    public async Task A_database_of_a_newer_app_is_left_alone_and_the_page_says_what_to_do()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage first = await visitor.NewPageAsync();
        await first.GotoAsync("/health");
        await first.EvaluateAsync("() => new Promise((done, fail) => { const opening = indexedDB.open('hoopwright', 77); opening.onsuccess = () => { opening.result.close(); done(); }; opening.onerror = fail; })");
        IPage page = await Visit.OpenAsync(visitor);
        await Assertions.Expect(page.Locator(".page > .caution").First).ToContainTextAsync("newer version of this app");
        await EditAndSaveAsync(page);
        Assert.Equal(77, await page.EvaluateAsync<int>("async () => (await indexedDB.databases()).find(each => each.name === 'hoopwright').version"));
    }

    private const string FullWhenAsked = """
        const put = IDBObjectStore.prototype.put;
        IDBObjectStore.prototype.put = function (...given) {
          if (window.isFull) throw new DOMException('There is no room.', 'QuotaExceededError');
          return put.apply(this, given);
        };
        """;

    private static async Task EditAndSaveAsync(IPage page)
    {
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Frame");
        await Visit.Field(page, "frame.length").FillAsync("48 ft");
        await page.Locator(".facts dd", new() { HasTextString = "12" }).First.WaitForAsync();
        await Visit.StageAsync(page, "Packet");
        Assert.Contains("\"length\": \"48 ft\"", await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the plan file" }).Last), StringComparison.Ordinal);
        await Visit.StageAsync(page, "Frame");
    }
}
