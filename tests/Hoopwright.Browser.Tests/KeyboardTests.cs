using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>Everything by keyboard alone (WCAG 2.2, 2.1.1, 2.1.2, 2.4.3, 2.4.7, 2.4.11).</summary>
public sealed class KeyboardTests(Site site)
{
    [Fact]
    public async Task The_whole_journey_goes_without_a_mouse()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await TabToAsync(page, "input[name=shape]");
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator(".shape.on")).ToContainTextAsync("Round");
        await TabToAsync(page, "fieldset.begin button");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".paper svg").WaitForAsync();
        await TabToAsync(page, ".bays a[href$='/frame']");
        await page.Keyboard.PressAsync("Enter");
        await Visit.Field(page, "frame.span").WaitForAsync();
        await page.WaitForFunctionAsync("() => document.activeElement?.tagName === 'H2'");
        await TabToAsync(page, "[data-path='frame.length'] input");
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("36 ft");
        await page.Locator(".facts dd", new() { HasTextString = "9" }).First.WaitForAsync();
        await TabToAsync(page, ".why");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".working strong").WaitForAsync();
        await TabToAsync(page, ".bar button:not(:disabled)", back: true);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Visit.Field(page, "frame.length")).Not.ToHaveValueAsync("36 ft");
        await TabToAsync(page, ".bays a[href$='/packet']", back: true);
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".packet").WaitForAsync();
        await TabToAsync(page, ".packet .ways button");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.Keyboard.PressAsync("Enter"));
        Assert.EndsWith(".pdf", download.SuggestedFilename, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_keyboard_walks_through_a_whole_stage_in_order_is_always_seen_and_never_caught()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(new() { ViewportSize = new() { Width = 480, Height = 800 } });
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Ends");
        await Visit.SettledAsync(page);
        await page.EvaluateAsync("document.activeElement.blur()");
        HashSet<string> walked = [];
        List<string> faults = [];
        double last = double.MinValue;
        for (int step = 0; step < 400; step++)
        {
            await page.Keyboard.PressAsync("Tab");
            Stop stop = await page.EvaluateAsync<Stop>(WhereAsync);
            if (stop.Name.Length == 0) break;
            if (!stop.Outlined) faults.Add($"{stop.Name} shows no focus");
            if (stop.Covered) faults.Add($"{stop.Name} is covered");
            if (stop.InQuestions && stop.Top < last - 1 && stop.Top >= 0) faults.Add($"{stop.Name} comes after what stands below it");
            if (stop.InQuestions) last = stop.Top;
            if (stop.Path.Length > 0) walked.Add(stop.Path);
        }
        string[] asked = await page.Locator(".questions .row[data-path]:visible").EvaluateAllAsync<string[]>("rows => rows.map(row => row.dataset.path)");
        Assert.True(asked.Length > 20, $"Only {asked.Length} fields are asked for.");
        Assert.Empty(asked.Except(walked));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    private sealed record Stop
    {
        public string Name { get; init; } = "";

        public string Path { get; init; } = "";

        public bool Outlined { get; init; }

        public bool Covered { get; init; }

        public bool InQuestions { get; init; }

        public double Top { get; init; }
    }

    // What has the keyboard: whether a line is seen around it, and whether something lies over its middle.
    private const string WhereAsync = """
        () => {
          const part = document.activeElement;
          if (!part || part === document.body) return { name: '', path: '', outlined: true, covered: false, inQuestions: false, top: 0 };
          const shown = part.matches('.file input, .shape input') ? part.closest('label') : part;
          const box = shown.getBoundingClientRect(), style = getComputedStyle(shown);
          const over = document.elementFromPoint(box.x + Math.min(box.width / 2, 40), box.y + Math.min(box.height / 2, 20));
          return {
            name: `${part.tagName.toLowerCase()} ${part.id || part.className} ${(part.innerText ?? '').slice(0, 30)}`,
            path: part.closest('.row[data-path]')?.dataset.path ?? '',
            outlined: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2,
            covered: !over || !(shown.contains(over) || over.contains(shown) || over.closest('label')?.contains(shown)),
            inQuestions: !!part.closest('.questions'),
            top: part.closest('.questions') ? box.top + scrollY : 0,
          };
        }
        """;

    private static async Task TabToAsync(IPage page, string selector, bool back = false)
    {
        for (int step = 0; step < 300; step++)
        {
            await page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
            if (await page.EvaluateAsync<bool>("selector => !!document.activeElement?.matches(selector)", selector)) return;
        }
        Assert.Fail($"The keyboard never came to {selector}.");
    }
}
