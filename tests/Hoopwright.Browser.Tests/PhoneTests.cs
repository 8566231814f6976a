using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The narrowest phone that is still sold, 360 px wide, used by thumb.</summary>
public sealed class PhoneTests(Site site)
{
    [Fact]
    public async Task The_whole_journey_goes_by_touch_with_nothing_wider_than_the_screen_and_every_target_of_44_pixels()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Phone());
        IPage page = await Visit.OpenAsync(visitor);
        List<string> faults = [.. await FaultsAsync(page, "shelf")];
        await page.GetByText("Peaked", new() { Exact = true }).TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).TapAsync();
        await page.Locator(".paper svg").WaitForAsync();
        await Visit.SettledAsync(page);
        faults.AddRange(await FaultsAsync(page, "overview"));
        foreach ((string _, string name) in Visit.Stages)
        {
            await Visit.Bay(page, name).TapAsync();
            await Visit.Heading(page, name).WaitForAsync();
            await Visit.SettledAsync(page);
            faults.AddRange(await FaultsAsync(page, name));
        }
        await Visit.StageAsync(page, "Frame");
        await Visit.Field(page, "frame.length").TapAsync();
        await Visit.Field(page, "frame.length").FillAsync("40 ft");
        await Assertions.Expect(page.Locator(".paper svg")).ToBeInViewportAsync();
        await Visit.StageAsync(page, "Packet");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "PDF" }).TapAsync());
        Assert.EndsWith(".pdf", download.SuggestedFilename, StringComparison.Ordinal);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Fact]
    public async Task A_touch_on_a_drawing_shows_it_large_and_a_touch_on_a_part_there_goes_to_its_field()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Phone());
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await page.Locator(".paper").TapAsync();
        ILocator large = page.Locator("dialog.large");
        await large.Locator("svg").WaitForAsync();
        await Assertions.Expect(page.Locator("svg[role=img]")).ToHaveCountAsync(1);
        double before = await large.Locator("svg").EvaluateAsync<double>("svg => svg.getBoundingClientRect().width");
        await large.GetByRole(AriaRole.Button, new() { Name = "Nearer" }).TapAsync();
        await page.WaitForFunctionAsync("before => document.querySelector('dialog.large svg').getBoundingClientRect().width > before", before);
        // Letters of 2.5 mm on a sheet of 262 mm: on the first view of the large drawing they are as tall as small print on the page.
        Assert.True(before * 2.5 / 262 > 6, $"Letters are {before * 2.5 / 262:0.0} px tall.");
        await large.Locator("[data-layer='bow']").First.DispatchEventAsync("click");
        await Assertions.Expect(large).ToHaveCountAsync(0);
        await page.WaitForFunctionAsync("() => document.activeElement?.closest('[data-path]')?.dataset.path === 'frame.bow.peakHeight'");
    }

    // What is wider than the screen, and what is too small for a finger (WCAG 2.2, success criterion 2.5.5: 44 by 44 px; links
    // within a sentence are let off there).
    internal static async Task<string[]> FaultsAsync(IPage page, string screen)
    {
        string[] found = await page.EvaluateAsync<string[]>("""
            () => {
              const faults = [], width = document.documentElement.clientWidth;
              if (document.documentElement.scrollWidth > width) {
                faults.push(`the page is ${document.documentElement.scrollWidth} px wide on a screen of ${width}`);
              }
              const name = part => `${part.tagName.toLowerCase()}.${part.className} “${(part.innerText || part.getAttribute('aria-label') || part.id || '').slice(0, 40)}”`;
              for (const part of document.querySelectorAll('a, button, select, summary, input, label.shape, label.file')) {
                if (part.closest('.skip, .file input') || part.matches('.file input, .shape input')) continue;
                const target = part.matches('input[type=checkbox], input[type=radio]') ? part.closest('label') ?? part : part;
                const box = target.getBoundingClientRect();
                if (box.width === 0 || !part.checkVisibility({ visibilityProperty: true })) continue;
                if (box.width < 43.9 || box.height < 43.9) faults.push(`${name(target)} is ${box.width.toFixed(1)} by ${box.height.toFixed(1)} px`);
              }
              return faults;
            }
            """);
        return [.. found.Distinct().Select(fault => $"{screen}: {fault}")];
    }
}
