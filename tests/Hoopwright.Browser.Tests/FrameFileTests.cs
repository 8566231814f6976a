using System.Text.Json;
using Hoopwright.Frames;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The page for any frame of beams says what the command line says of the same file.</summary>
public sealed class FrameFileTests(Site site)
{
    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task A_frame_file_is_solved_as_by_the_command_line_and_the_screen_breaks_no_rule(string screen, ColorScheme scheme)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await page.GotoAsync("/frame");
        await page.GetByRole(AriaRole.Button, new() { Name = "Solve the example frame" }).ClickAsync();
        FrameAnswer expected = FrameFile.Solve(File.ReadAllBytes(Visit.Example("frame-portal")));
        Assert.Equal(FrameAnswerText.Table(expected).TrimEnd(), (await page.Locator("pre.beams").TextContentAsync())!.TrimEnd());
        using JsonDocument saved = JsonDocument.Parse(await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the whole answer" }))),
            whole = JsonDocument.Parse(FrameAnswerText.Json(expected, TimeSpan.Zero));
        Assert.Equal(whole.RootElement.GetProperty("combinations").GetRawText(), saved.RootElement.GetProperty("combinations").GetRawText());
        List<string> faults = [];
        await AccessibilityTests.CheckAsync(page, "frame", faults);
        if (screen == "phone") faults.AddRange(await PhoneTests.FaultsAsync(page, "frame"));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Fact]
    public async Task What_is_wrong_with_a_frame_file_is_told_and_nothing_is_solved()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.GotoAsync("/frame");
        byte[] wrong = """{ "nodes": { "1": [0, 0, 0], "2": [0, 0, 0] }, "members": { "a": { "from": "1", "to": "3" } } }"""u8.ToArray();
        await page.Locator(".file input").SetInputFilesAsync(new FilePayload { Name = "wrong.json", MimeType = "application/json", Buffer = wrong });
        await page.Locator(".findings .error").First.WaitForAsync();
        string[] expected = [.. FrameFile.Solve(wrong).Diagnostics.Select(each => each.Message)];
        Assert.Equal(expected.Length, await page.Locator(".findings li").CountAsync());
        for (int at = 0; at < expected.Length; at++) await Assertions.Expect(page.Locator(".findings li").Nth(at)).ToContainTextAsync(expected[at]);
        Assert.Equal(0, await page.Locator("pre.beams").CountAsync());
    }
}
