using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>What a reader chooses holds, across visits; what was done can be undone, across visits.</summary>
public sealed class ChoiceTests(Site site)
{
    [Fact]
    public async Task The_language_changes_the_whole_page_at_once_and_is_remembered()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await page.Locator(".top select").First.SelectOptionAsync("es");
        await Visit.StageAsync(page, "Estructura");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Deshacer" })).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByLabel("Ancho")).ToHaveValueAsync("26 ft");
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByLabel("Ancho")).ToHaveValueAsync("26 ft");
        Assert.Equal("es", await page.EvaluateAsync<string>("document.documentElement.lang"));
        await page.Locator(".top select").First.SelectOptionAsync("en");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Light_and_dark_follow_the_device_until_chosen_and_are_remembered()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        const string Ground = "getComputedStyle(document.documentElement).backgroundColor";
        const string Light = "rgb(251, 250, 246)", Dark = "rgb(23, 28, 27)";
        Assert.Equal(Light, await page.EvaluateAsync<string>(Ground));
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        Assert.Equal(Dark, await page.EvaluateAsync<string>(Ground));
        await page.Locator(".top select").Last.SelectOptionAsync("light");
        await page.WaitForFunctionAsync($"() => {Ground} === '{Light}'");
        await page.ReloadAsync();
        await page.Locator(".ways button").First.WaitForAsync();
        Assert.Equal(Light, await page.EvaluateAsync<string>(Ground));
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await page.Locator(".top select").Last.SelectOptionAsync("dark");
        await page.WaitForFunctionAsync($"() => {Ground} === '{Dark}'");
        await page.Locator(".top select").Last.SelectOptionAsync("");
        await page.WaitForFunctionAsync($"() => {Ground} === '{Light}'");
    }

    [Fact]
    public async Task Edits_of_several_fields_are_taken_back_one_by_one_across_a_reload_and_made_again()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Frame");
        (string Path, string Before, string After)[] edits =
            [("frame.span", "26 ft", "24 ft"), ("frame.length", "72 ft", "48 ft"), ("frame.bowSpacing", "4 ft", "3 ft"), ("frame.bays", "equal", "lastShort")];
        foreach ((string path, string before, string after) in edits)
        {
            ILocator field = Visit.Field(page, path);
            await Assertions.Expect(field).ToHaveValueAsync(before);
            if (path == "frame.bays") await field.SelectOptionAsync(after);
            else await field.FillAsync(after);
            await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
        }
        await page.WaitForFunctionAsync(StoredAsync("lastShort"));
        await page.ReloadAsync();
        foreach ((string path, string before, string _) in edits.Reverse())
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
            await Assertions.Expect(Visit.Field(page, path)).ToHaveValueAsync(before);
            Assert.Equal(path, await Visit.FocusedPathAsync(page));
        }
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeDisabledAsync();
        foreach ((string path, string _, string after) in edits)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Redo" }).ClickAsync();
            await Assertions.Expect(Visit.Field(page, path)).ToHaveValueAsync(after);
        }
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Redo" })).ToBeDisabledAsync();
    }

    // True once the plan on the shelf has this choice of bays.
    private static string StoredAsync(string bays) => $$"""
        () => new Promise(done => {
          const opening = indexedDB.open('hoopwright');
          opening.onsuccess = () => {
            const asked = opening.result.transaction('plans').objectStore('plans').getAll();
            asked.onsuccess = () => { opening.result.close(); done(asked.result.some(plan => JSON.parse(plan.document).frame?.bays === '{{bays}}')); };
          };
        })
        """;
}
