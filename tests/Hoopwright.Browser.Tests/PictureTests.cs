using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>
/// A picture of every screen, on a phone and on a desktop. With HOOPWRIGHT_PICTURES set they are written to docs/pictures/app;
/// without, they are taken all the same, so that a screen that breaks or grows too heavy to keep is found.
/// </summary>
public sealed class PictureTests(Site site)
{
    private const int MostBytes = 130 * 1024;

    private static bool IsKept => Environment.GetEnvironmentVariable("HOOPWRIGHT_PICTURES") is { Length: > 0 };

    [Theory]
    [InlineData("phone")]
    [InlineData("desktop")]
    public async Task Every_screen_has_its_picture(string screen)
    {
        List<string> faults = [];
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor, faults);
        await TakeAsync(page, screen, "shelf");
        await Visit.ExampleAsync(page);
        await Visit.SettledAsync(page);
        await TakeAsync(page, screen, "overview");
        foreach ((string address, string name) in Visit.Stages)
        {
            await Visit.StageAsync(page, name);
            await Visit.SettledAsync(page);
            await Assertions.Expect(page.Locator(".questions .busy")).ToHaveCountAsync(0);
            await TakeAsync(page, screen, address);
        }
        await Visit.StageAsync(page, "Ends");
        await page.GetByRole(AriaRole.Button, new() { Name = "Larger" }).ClickAsync();
        await page.Locator("dialog.large svg").WaitForAsync();
        await TakeAsync(page, screen, "large");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator("dialog.large")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "3D" }).ClickAsync();
        await page.Locator(".space canvas").WaitForAsync();
        // The shaded view is too heavy to keep on a desktop.
        if (screen == "phone") await TakeAsync(page, screen, "space");
        await page.GetByRole(AriaRole.Button, new() { Name = "Front end", Exact = true }).ClickAsync();
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await TakeAsync(page, screen, "dark");
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await Visit.StageAsync(page, "Frame");
        await Visit.Field(page, "frame.span").FillAsync("260 ft");
        await page.Locator(".row .error").First.WaitForAsync();
        await TakeAsync(page, screen, "wrong");
        await Visit.Field(page, "frame.span").FillAsync("26 ft");
        await Visit.SettledAsync(page);
        await Visit.CompareAsync(page, "frame.bowSpacing", "3 ft");
        await TakeAsync(page, screen, "compare");
        Assert.Empty(faults);
    }

    // A phone's picture is what two screens of it hold, so that drawing, results and the first questions are seen.
    private static async Task TakeAsync(IPage page, string screen, string name)
    {
        (int width, int height) = screen == "phone" ? (360, name is "large" or "space" or "dark" ? 740 : 1300) : (1000, 600);
        await page.SetViewportSizeAsync(width, height);
        await page.EvaluateAsync("async () => { scrollTo(0, 0); await document.fonts.ready; await new Promise(requestAnimationFrame); await new Promise(requestAnimationFrame); }");
        byte[] picture = await page.ScreenshotAsync(new() { Scale = ScreenshotScale.Css, Animations = ScreenshotAnimations.Disabled, Caret = ScreenshotCaret.Hide });
        Assert.True(picture.Length <= MostBytes, $"{screen}-{name} is {picture.Length / 1024} kB.");
        if (!IsKept) return;
        string folder = Path.Combine(Site.Root, "docs", "pictures", "app");
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, $"{screen}-{name}.png"), picture);
    }
}
