using Hoopwright.BuildSteps;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The screen of steps: ticked, signed and noted on a phone, without a network, and kept with the plan.</summary>
public sealed class StepsTests(Site site)
{
    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task Steps_are_those_of_the_domain_and_what_is_ticked_signed_and_noted_is_kept(string screen, ColorScheme scheme)
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example("gothic-26ft"))), depth: WorkDepth.Orders);
        BuildPlan plan = planned.Steps!;
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await Visit.ExampleAsync(page);
        await Visit.KeptAsync(page);
        await Visit.StageAsync(page, "Steps");
        await page.Locator(".step-list summary").First.WaitForAsync();
        Assert.Equal(plan.Steps.Select(step => step.Title.ToString()), await page.Locator(".step-list .name").AllTextContentsAsync());
        Assert.Equal("can begin", await MarkAsync(page, "lines-marked"));
        Assert.Equal("waits", await MarkAsync(page, "set-out"));

        // From here on the field has no signal.
        await visitor.SetOfflineAsync(true);
        await page.GetByLabel("Your name").FillAsync("Wren");
        await page.GetByLabel("Your name").PressAsync("Tab");
        await page.Locator("summary[data-step=lines-marked]").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Done today" }).ClickAsync();
        await Assertions.Expect(page.Locator("summary[data-step=lines-marked] .mark")).ToHaveTextAsync("to sign");
        Assert.Equal("waits", await MarkAsync(page, "set-out"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Signed, Wren" }).ClickAsync();
        await Assertions.Expect(page.Locator("summary[data-step=set-out] .mark")).ToHaveTextAsync("can begin");
        await page.GetByLabel("Note", new() { Exact = true }).FillAsync("<b>gas</b> along the lane");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the note" }).ClickAsync();
        await Assertions.Expect(page.Locator(".jot figcaption")).ToHaveTextAsync("<b>gas</b> along the lane Wren");
        Assert.Equal(0, await page.Locator(".jot b").CountAsync());
        await page.Locator(".step-list input[type=file]").SetInputFilesAsync(Path.Combine(Site.Root, "docs", "pictures", "front-end.png"));
        await page.Locator(".jot img").WaitForAsync();
        Assert.True(await page.Locator(".jot img").EvaluateAsync<bool>("async picture => { await picture.decode(); return picture.naturalWidth > 100 && picture.src.length <= 60000; }"));
        await page.Locator(".step-list input[type=file]").SetInputFilesAsync(Visit.Example("wrong"));
        await Assertions.Expect(page.GetByText("That is no picture")).ToBeVisibleAsync();
        await Visit.SettledAsync(page);
        List<string> faults = [];
        await AccessibilityTests.CheckAsync(page, "steps", faults);
        if (screen == "phone") faults.AddRange(await PhoneTests.FaultsAsync(page, "steps"));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{screen}-steps.png"), FullPage = true });

        await page.ReloadAsync();
        await page.Locator("summary[data-step=set-out]").WaitForAsync();
        Assert.Equal("can begin", await MarkAsync(page, "set-out"));
        Assert.StartsWith("done 20", await MarkAsync(page, "lines-marked"), StringComparison.Ordinal);
        await page.Locator("summary[data-step=lines-marked]").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it back" }).ClickAsync();
        await Assertions.Expect(page.Locator("summary[data-step=lines-marked] .mark")).ToHaveTextAsync("can begin");
        await Assertions.Expect(page.Locator(".jot")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task The_cards_are_saved_in_the_language_of_the_page()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Steps");
        await page.Locator(".step-list summary").First.WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "New film later" }).ClickAsync();
        await page.Locator("summary[data-step=old-film]").WaitForAsync();
        string text = await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the step cards" }));
        Assert.StartsWith("%PDF", text, StringComparison.Ordinal);
    }

    private static async Task<string> MarkAsync(IPage page, string step) => await page.Locator($"summary[data-step={step}] .mark").TextContentAsync() ?? "";
}
