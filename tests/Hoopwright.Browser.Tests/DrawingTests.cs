using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Hoopwright.Browser.Tests;

/// <summary>The drawing belongs to the fields, in sight and on paper.</summary>
public sealed class DrawingTests(Site site)
{
    [Theory]
    [InlineData("Bow", "bow", "frame.bow.peakHeight")]
    [InlineData("Left side", "bows", "frame.bowSpacing")]
    [InlineData("Left side", "posts", "ground.postEmbedment")]
    [InlineData("Front end", "leaves", "ends.front.doors[0].width")]
    [InlineData("Back end", "posts", "ends.back.postSpacing")]
    public async Task A_click_on_a_part_goes_to_the_field_that_decides_it_and_marks_it(string drawing, string layer, string path)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.SettledAsync(page);
        ILocator tab = page.Locator(".tabs").GetByRole(AriaRole.Button, new() { Name = drawing, Exact = true });
        await tab.ClickAsync();
        // Layers are called alike on several drawings: the one in sight must be the one that was chosen.
        await Assertions.Expect(tab).ToHaveAttributeAsync("aria-pressed", "true");
        await page.Locator($".paper [id$=\"lines-{layer}\"]").DispatchEventAsync("click");
        await page.WaitForFunctionAsync("path => document.activeElement?.closest('[data-path]')?.dataset.path === path", path);
        await page.Locator(".paper .lit path").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
    }

    [Fact]
    public async Task The_large_drawing_leaves_by_the_escape_key_and_gives_the_keyboard_back()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        ILocator larger = page.GetByRole(AriaRole.Button, new() { Name = "Larger" });
        await larger.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("dialog.large[open] svg").WaitForAsync();
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator("dialog.large")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".paper svg")).ToBeVisibleAsync();
        await Assertions.Expect(larger).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Without_WebGL_the_drawing_stays_and_the_page_says_why()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        await visitor.AddInitScriptAsync("const get = HTMLCanvasElement.prototype.getContext; HTMLCanvasElement.prototype.getContext = function (kind, ...rest) { return /webgl/.test(kind) ? null : get.call(this, kind, ...rest); };");
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "3D" }).ClickAsync();
        await Assertions.Expect(page.GetByText("This browser has no WebGL")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".paper svg")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".space")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task A_printed_page_has_drawing_answers_and_tables_and_no_buttons()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Orders");
        await Visit.SettledAsync(page);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        foreach (string hidden in new[] { ".top", ".bays", ".tabs", ".enlarge", ".why >> nth=0", ".add >> nth=0" }) await Assertions.Expect(page.Locator(hidden)).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(".paper svg")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".questions table").First).ToBeVisibleAsync();
        using PdfDocument paper = PdfDocument.Open(await page.PdfAsync(new() { Format = "Letter", PrintBackground = false }));
        string text = string.Concat(paper.GetPages().Select(each => each.Text));
        Assert.Contains("North tunnel", text, StringComparison.Ordinal);
        Assert.Contains("Cost by stage", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Undo", text, StringComparison.Ordinal);
        Assert.True(paper.GetPages().All(each => each.Text.Length > 0), "There is an empty page.");
        Assert.True(paper.GetPage(1).Paths.Count > 50, "The drawing is not on the first page.");
    }
}
