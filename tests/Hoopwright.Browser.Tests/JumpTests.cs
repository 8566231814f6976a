using System.Text.Json;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>Nothing moves under the eyes or the finger of someone who did not ask for it.</summary>
[Collection(Alone.Name)]
public sealed class JumpTests(Site site, ITestOutputHelper output)
{
    // "Good" by the published measure of layout shift: https://web.dev/articles/cls, which leaves out what follows a touch within half a second.
    private const double MostShift = 0.1;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Results_that_come_later_move_nothing(bool isPhone)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(isPhone ? Visit.Phone() : Visit.Desktop());
        await visitor.AddInitScriptAsync("""
            window.shifts = [];
            new PerformanceObserver(list => {
              for (const shift of list.getEntries()) if (!shift.hadRecentInput) window.shifts.push(shift.value);
            }).observe({ type: 'layout-shift', buffered: true });
            """);
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.SettledAsync(page);
        foreach ((string _, string name) in Visit.Stages) await Visit.StageAsync(page, name);
        await Visit.StageAsync(page, "Frame");
        ILocator field = page.Locator("[data-path='frame.bow.peakHeight'] input");
        await field.ScrollIntoViewIfNeededAsync();
        await page.EvaluateAsync("() => new Promise(done => setTimeout(done, 600))");
        double at = await TopAsync(field);
        await field.EvaluateAsync("""
            async field => {
              const drawn = new Promise(done => new MutationObserver((_, watch) => { watch.disconnect(); done(); }).observe(document.querySelector('.paper'), { childList: true, subtree: true }));
              field.focus({ preventScroll: true });
              field.value = "13' 1\"";
              field.dispatchEvent(new Event('input', { bubbles: true }));
              await drawn;
            }
            """);
        Assert.Equal(at, await TopAsync(field), 1.0);
        await Visit.SettledAsync(page);
        Assert.Equal(at, await TopAsync(field), 1.0);
        double[] shifts = await page.EvaluateAsync<double[]>("window.shifts");
        output.WriteLine(JsonSerializer.Serialize(shifts));
        Assert.InRange(shifts.Sum(), 0, MostShift);
    }

    private static Task<double> TopAsync(ILocator field) => field.EvaluateAsync<double>("field => field.getBoundingClientRect().top");
}
