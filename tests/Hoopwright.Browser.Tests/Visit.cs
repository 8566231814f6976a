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

    /// <summary>Every stage of a plan, as its address has it, with its English name.</summary>
    public static (string Address, string Name)[] Stages { get; } =
        [("site", "Site"), ("frame", "Frame"), ("ground", "Ground"), ("ends", "Ends"), ("cover", "Cover"), ("weather", "Weather"), ("inside", "Inside"), ("strength", "Strength"), ("orders", "Orders"), ("cuts", "Cuts"), ("steps", "Steps"), ("days", "Days"), ("upkeep", "Upkeep"), ("site-book", "Site book"), ("packet", "Packet"), ("share", "Share")];

    /// <summary>A phone held upright: narrow, touched, finer dots.</summary>
    public static BrowserNewContextOptions Phone() => new() { ViewportSize = new() { Width = 360, Height = 740 }, HasTouch = true, IsMobile = true, DeviceScaleFactor = 2 };

    /// <summary>A desktop or laptop screen.</summary>
    public static BrowserNewContextOptions Desktop() => new() { ViewportSize = new() { Width = 1280, Height = 900 } };

    /// <summary>An example of the repository.</summary>
    public static string Example(string name) => Path.Combine(Site.Root, "examples", name + ".json");

    /// <summary>Opens a plan file by the picker and waits for its page.</summary>
    public static async Task ImportAsync(IPage page, string file)
    {
        await page.Locator(".file input").SetInputFilesAsync(file);
        await page.Locator(".questions h2").WaitForAsync();
    }

    /// <summary>The text of a file that a click saves.</summary>
    public static async Task<string> SavedAsync(IPage page, ILocator button)
    {
        IDownload download = await page.RunAndWaitForDownloadAsync(() => button.ClickAsync());
        return File.ReadAllText(await download.PathAsync());
    }

    /// <summary>The path of the field that has the keyboard; empty when none has.</summary>
    public static Task<string> FocusedPathAsync(IPage page) => page.EvaluateAsync<string>("document.activeElement?.closest('[data-path]')?.dataset.path ?? ''");

    /// <summary>Opens the bundled example and waits for its drawing.</summary>
    public static async Task ExampleAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the example tunnel" }).ClickAsync();
        await page.Locator(".paper svg").WaitForAsync();
    }

    /// <summary>Waits until everything shown belongs to the plan as it stands; from a keystroke on the band says that it does not.</summary>
    public static async Task SettledAsync(IPage page)
    {
        await page.Locator(".band[aria-busy='false']").WaitForAsync();
        await page.Locator(".band dd.stands, .band dd.marginal, .band dd.doesNotStand, .band dd.notJudged, .band dd.nothingEntered").First.WaitForAsync();
    }

    /// <summary>Goes to a stage by the tunnel of bays.</summary>
    public static async Task StageAsync(IPage page, string name)
    {
        await Bay(page, name).ClickAsync();
        await Heading(page, name).WaitForAsync();
    }

    /// <summary>The bay of a stage, by the whole of its name.</summary>
    public static ILocator Bay(IPage page, string name) => page.Locator($".bays a:has(span:text-is(\"{name}\"))");

    /// <summary>The heading of a stage that is in sight, by the whole of its name.</summary>
    public static ILocator Heading(IPage page, string name) => page.Locator($".questions h2:text-is(\"{name}\")");

    /// <summary>Copies the plan that is open, changes a field of the copy, and puts both side by side, the copy first.</summary>
    public static async Task CompareAsync(IPage page, string? path = null, string value = "")
    {
        string original = new Uri(page.Url).AbsolutePath.Split('/')[2];
        await page.GetByRole(AriaRole.Link, new() { Name = "Compare" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a copy of this plan to change" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("(copy)");
        if (path is not null)
        {
            await Field(page, path).FillAsync(value);
            await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
        }
        await page.GetByRole(AriaRole.Link, new() { Name = "Compare" }).ClickAsync();
        await page.Locator(".ways select").SelectOptionAsync(original);
        await page.Locator("table").First.WaitForAsync();
    }

    /// <summary>The entry of the field at a path.</summary>
    public static ILocator Field(IPage page, string path) => page.Locator($"[data-path=\"{path}\"]").Locator("input, select").First;

    /// <summary>Waits until the service worker holds every file.</summary>
    public static Task KeptAsync(IPage page) => page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; while (!navigator.serviceWorker.controller) await new Promise(go => setTimeout(go, 50)); }");
}
