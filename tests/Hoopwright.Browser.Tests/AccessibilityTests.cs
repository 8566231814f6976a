using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>
/// Every screen by axe-core: the rules of WCAG 2.0, 2.1 and 2.2 at levels A and AA, and the contrast of level AAA (7:1, success
/// criterion 1.4.6).
/// </summary>
public sealed class AccessibilityTests(Site site)
{
    private static readonly string[] Tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

    private static readonly Dictionary<string, object> Further = new() { ["color-contrast-enhanced"] = new { enabled = true }, ["region"] = new { enabled = true }, ["heading-order"] = new { enabled = true } };

    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    // What can differ between light and dark.
    private static readonly string[] OfColours = ["color-contrast", "color-contrast-enhanced", "link-in-text-block"];

    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task No_screen_breaks_a_rule_nor_one_of_colours_in_the_other_scheme(string screen, ColorScheme scheme)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        ColorScheme other = scheme == ColorScheme.Light ? ColorScheme.Dark : ColorScheme.Light;
        List<string> faults = [];
        await BothAsync("shelf");
        await Visit.ImportAsync(page, Visit.Example("wrong"));
        await page.Locator(".findings .error").First.WaitForAsync();
        await BothAsync("wrong plan");
        await Visit.StageAsync(page, "Site");
        await page.Locator(".row .error").First.WaitForAsync();
        await BothAsync("wrong fields");
        await page.GotoAsync("/");
        await BothAsync("shelf with a plan");
        await Visit.ExampleAsync(page);
        await Visit.SettledAsync(page);
        await BothAsync("overview");
        foreach ((string _, string name) in Visit.Stages)
        {
            await Visit.StageAsync(page, name);
            await Visit.SettledAsync(page);
            await BothAsync(name);
        }
        await Visit.StageAsync(page, "Frame");
        await page.Locator(".why").First.ClickAsync();
        await page.Locator(".working strong").First.WaitForAsync();
        await BothAsync("why");
        await page.GetByRole(AriaRole.Button, new() { Name = "Larger" }).ClickAsync();
        await page.Locator("dialog.large svg").WaitForAsync();
        await BothAsync("large drawing");
        await page.Keyboard.PressAsync("Escape");
        await page.GetByRole(AriaRole.Button, new() { Name = "3D" }).ClickAsync();
        await page.Locator(".space canvas").WaitForAsync();
        await BothAsync("space");
        await page.GotoAsync("/nowhere-at-all");
        await page.GetByRole(AriaRole.Heading).First.WaitForAsync();
        await BothAsync("nothing here");
        Assert.True(faults.Count == 0, string.Join('\n', faults));

        async Task BothAsync(string name)
        {
            await CheckAsync(page, name, faults);
            await page.EmulateMediaAsync(new() { ColorScheme = other });
            faults.AddRange(await BrokenAsync(page, $"{name}, {other}", new { runOnly = OfColours }));
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        }
    }

    [Fact]
    public async Task A_page_that_breaks_rules_is_told_so()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await visitor.NewPageAsync();
        await page.SetContentAsync("<html lang='en'><title>x</title><main><h1>x</h1><h3 id='twice'>y</h3><img id='twice' src='x.png'><p style='color: #666; background: #fff'>grey</p></main>");
        List<string> faults = [];
        await CheckAsync(page, "page", faults);
        foreach (string rule in new[] { "image-alt", "heading-order", "color-contrast-enhanced", "two parts have the id" }) Assert.Contains(faults, fault => fault.Contains(rule, StringComparison.Ordinal));
    }

    internal static async Task CheckAsync(IPage page, string screen, List<string> faults)
    {
        faults.AddRange(await BrokenAsync(page, screen, new { runOnly = Tags, rules = Further }));
        string[] drawings = await page.EvaluateAsync<string[]>("""
            () => {
              const faults = [], seen = new Set();
              for (const part of document.querySelectorAll('[id]')) { if (seen.has(part.id)) faults.push('two parts have the id ' + part.id); seen.add(part.id); }
              for (const drawing of document.querySelectorAll('.paper svg, .large svg')) {
                const named = (drawing.getAttribute('aria-labelledby') ?? '').split(' ').map(id => document.getElementById(id)?.textContent ?? '');
                if (drawing.getAttribute('role') !== 'img' || named.length !== 2 || named.some(text => text.length < 3)) faults.push('a drawing has no name or description');
              }
              return faults;
            }
            """);
        faults.AddRange(drawings.Select(fault => $"{screen}: {fault}"));
    }

    /// <summary>What a page breaks of some rules, by axe-core's own run in the page: it has no frames, for which the library would open one more page each time.</summary>
    private static async Task<IEnumerable<string>> BrokenAsync(IPage page, string screen, object rules)
    {
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window")) await page.EvaluateAsync(Axe);
        Broken[] broken = await page.EvaluateAsync<Broken[]>("""
            async rules => {
              const { violations, passes } = await axe.run(document, rules);
              if (passes.length === 0) throw new Error('axe-core has looked at nothing');
              return violations.map(rule => ({ Rule: rule.id, Parts: rule.nodes.slice(0, 4).map(node => node.html) }));
            }
            """, rules);
        return broken.SelectMany(rule => rule.Parts.Select(part => $"{screen}: {rule.Rule}: {part}"));
    }

    private sealed class Broken
    {
        public string Rule { get; set; } = "";

        public string[] Parts { get; set; } = [];
    }
}
