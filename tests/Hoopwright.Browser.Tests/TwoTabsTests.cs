using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>One plan open in two tabs of one browser.</summary>
public sealed class TwoTabsTests(Site site)
{
    [Fact]
    public async Task Edits_of_different_fields_in_two_tabs_are_all_kept()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        (IPage one, IPage other) = await TwoAsync(visitor);
        await Task.WhenAll(TypeAsync(one, "frame.length", "48 ft"), TypeAsync(other, "frame.bowSpacing", "3 ft"));
        await Assertions.Expect(Visit.Field(one, "frame.bowSpacing")).ToHaveValueAsync("3 ft");
        await Assertions.Expect(Visit.Field(other, "frame.length")).ToHaveValueAsync("48 ft");
        await one.ReloadAsync();
        await Assertions.Expect(Visit.Field(one, "frame.length")).ToHaveValueAsync("48 ft");
        await Assertions.Expect(Visit.Field(one, "frame.bowSpacing")).ToHaveValueAsync("3 ft");
    }

    [Fact]
    public async Task Edits_of_one_field_in_two_tabs_end_alike_and_the_one_that_was_overtaken_can_be_had_back()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        (IPage one, IPage other) = await TwoAsync(visitor);
        await Visit.Field(one, "frame.length").FillAsync("48 ft");
        await Assertions.Expect(Visit.Field(other, "frame.length")).ToHaveValueAsync("48 ft");
        await Visit.Field(other, "frame.length").FillAsync("60 ft");
        await Visit.Field(one, "frame.bowSpacing").FocusAsync();
        await Assertions.Expect(Visit.Field(one, "frame.length")).ToHaveValueAsync("60 ft");
        await one.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(Visit.Field(one, "frame.length")).ToHaveValueAsync("48 ft");
        await Visit.Field(other, "frame.bowSpacing").FocusAsync();
        await Assertions.Expect(Visit.Field(other, "frame.length")).ToHaveValueAsync("48 ft");
        await one.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(Visit.Field(one, "frame.length")).ToHaveValueAsync("72 ft");
    }

    [Fact]
    public async Task A_plan_that_was_removed_in_another_tab_can_still_be_saved()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        (IPage one, IPage other) = await TwoAsync(visitor);
        await other.GotoAsync("/");
        await other.Locator(".plans").First.GetByRole(AriaRole.Button, new() { Name = "Remove" }).ClickAsync();
        await other.GetByRole(AriaRole.Button, new() { Name = "Remove for good" }).ClickAsync();
        await Assertions.Expect(other.GetByText("None yet.")).ToBeVisibleAsync();
        await Visit.Field(one, "frame.length").FillAsync("48 ft");
        ILocator warning = one.Locator(".plan > .caution.stop");
        await Assertions.Expect(warning).ToContainTextAsync("removed");
        Assert.Contains("\"length\": \"48 ft\"", await Visit.SavedAsync(one, warning.GetByRole(AriaRole.Button)), StringComparison.Ordinal);
    }

    private static async Task<(IPage One, IPage Other)> TwoAsync(IBrowserContext visitor)
    {
        IPage one = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(one);
        await Visit.StageAsync(one, "Frame");
        IPage other = await visitor.NewPageAsync();
        await other.GotoAsync(one.Url);
        await Visit.Field(other, "frame.length").WaitForAsync();
        return (one, other);
    }

    // Letter by letter, as a keyboard does, but without needing the one window that has the keyboard.
    private static async Task TypeAsync(IPage page, string path, string text)
    {
        ILocator field = Visit.Field(page, path);
        for (int letters = 0; letters <= text.Length; letters++)
            await field.EvaluateAsync("(field, text) => { field.value = text; field.dispatchEvent(new Event('input', { bubbles: true })); }", text[..letters]);
        await Assertions.Expect(field).ToHaveValueAsync(text);
    }
}
