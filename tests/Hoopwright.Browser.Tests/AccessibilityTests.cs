using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>
/// Every screen by axe-core: the rules of WCAG 2.0, 2.1 and 2.2 at levels A and AA, and the contrast of level AAA (7:1, success
/// criterion 1.4.6).
/// </summary>
public sealed class AccessibilityTests(Site site)
{
    private static readonly string[] Tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("desktop", ColorScheme.Dark)]
    [InlineData("phone", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task No_screen_breaks_a_rule(string screen, ColorScheme scheme)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        List<string> faults = [];
        await CheckAsync(page, "shelf", faults);
        await Visit.ImportAsync(page, Visit.Example("wrong"));
        await page.Locator(".findings .error").First.WaitForAsync();
        await CheckAsync(page, "wrong plan", faults);
        await Visit.StageAsync(page, "Site");
        await page.Locator(".row .error").First.WaitForAsync();
        await CheckAsync(page, "wrong fields", faults);
        await page.GotoAsync("/");
        await CheckAsync(page, "shelf with a plan", faults);
        await Visit.ExampleAsync(page);
        await Visit.SettledAsync(page);
        await CheckAsync(page, "overview", faults);
        foreach ((string _, string name) in Visit.Stages)
        {
            await Visit.StageAsync(page, name);
            await Visit.SettledAsync(page);
            await CheckAsync(page, name, faults);
        }
        await Visit.StageAsync(page, "Frame");
        await page.Locator(".why").First.ClickAsync();
        await page.Locator(".working strong").First.WaitForAsync();
        await CheckAsync(page, "why", faults);
        await page.GetByRole(AriaRole.Button, new() { Name = "Larger" }).ClickAsync();
        await page.Locator("dialog.large svg").WaitForAsync();
        await CheckAsync(page, "large drawing", faults);
        await page.Keyboard.PressAsync("Escape");
        await page.GetByRole(AriaRole.Button, new() { Name = "3D" }).ClickAsync();
        await page.Locator(".space canvas").WaitForAsync();
        await CheckAsync(page, "space", faults);
        await page.GotoAsync("/nowhere-at-all");
        await page.GetByRole(AriaRole.Heading).First.WaitForAsync();
        await CheckAsync(page, "nothing here", faults);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    internal static async Task CheckAsync(IPage page, string screen, List<string> faults)
    {
        AxeResult result = await page.RunAxe(new AxeRunOptions
        {
            RunOnly = new RunOnlyOptions { Type = "tag", Values = [.. Tags] },
            Rules = new Dictionary<string, RuleOptions> { ["color-contrast-enhanced"] = new() { Enabled = true }, ["region"] = new() { Enabled = true }, ["heading-order"] = new() { Enabled = true } },
        });
        Assert.NotEmpty(result.Passes);
        faults.AddRange(result.Violations.SelectMany(rule => rule.Nodes.Take(4).Select(node => $"{screen}: {rule.Id}: {node.Html}")));
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
}
