using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>What a visitor does, step by step; each step waits for what it should bring about, never for a time.</summary>
internal static class Visit
{
    /// <summary>Opens the app.</summary>
    public static async Task<IPage> OpenAsync(IBrowserContext visitor, List<string>? faults = null)
    {
        IPage page = await visitor.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        if (faults is not null)
        {
            page.PageError += (_, fault) => faults.Add(fault);
            page.Console += (_, said) =>
            {
                if (said.Type == "error") faults.Add(said.Text);
            };
        }
        await page.GotoAsync("/");
        await page.Locator(".ways button").First.WaitForAsync();
        return page;
    }

    /// <summary>Opens the bundled example and waits for its drawing.</summary>
    public static async Task ExampleAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the example tunnel" }).ClickAsync();
        await page.Locator(".paper svg").WaitForAsync();
    }

    /// <summary>Waits until everything shown belongs to the plan as it stands.</summary>
    public static async Task SettledAsync(IPage page)
    {
        await page.Locator(".band[aria-busy='false']").WaitForAsync();
        await page.Locator(".band dd.stands, .band dd.marginal, .band dd.doesNotStand").First.WaitForAsync();
    }

    /// <summary>Goes to a stage by the tunnel of bays.</summary>
    public static async Task StageAsync(IPage page, string name)
    {
        await page.Locator(".bays").GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync();
        await page.Locator(".questions h2", new() { HasTextString = name }).WaitForAsync();
    }

    /// <summary>The entry of the field at a path.</summary>
    public static ILocator Field(IPage page, string path) => page.Locator($"[data-path=\"{path}\"]").Locator("input, select").First;

    /// <summary>Waits until the service worker holds every file.</summary>
    public static Task KeptAsync(IPage page) => page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; while (!navigator.serviceWorker.controller) await new Promise(go => setTimeout(go, 50)); }");
}
