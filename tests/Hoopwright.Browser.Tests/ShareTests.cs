using System.Text.Json;
using Microsoft.Playwright;
using ZXing;

namespace Hoopwright.Browser.Tests;

/// <summary>Copies of a plan on two devices: by file and by code.</summary>
public sealed class ShareTests(Site site)
{
    [Fact]
    public async Task Two_copies_that_changed_apart_are_put_together_by_file_and_the_question_is_decided()
    {
        await using IBrowserContext office = await site.NewVisitorAsync(Visit.Desktop()), phone = await site.NewVisitorAsync(Visit.Phone());
        IPage here = await ExampleAsync(office), there = await ExampleAsync(phone);
        await office.SetOfflineAsync(true);
        await phone.SetOfflineAsync(true);
        await TypeAsync(here, "Frame", "frame.length", "48 ft");
        await NoteAsync(here, "called the yard", "Wren");
        await TypeAsync(there, "Frame", "frame.length", "60 ft");
        await NoteAsync(there, "<b>soft</b> ground", "Sage");
        await Visit.StageAsync(there, "Share");
        string file = await SavedAsync(there);

        await Visit.StageAsync(here, "Share");
        await here.Locator(".share-desk .file input").SetInputFilesAsync(file);
        await Assertions.Expect(here.GetByText("1 new entries from the other copy, 1 that only you had")).ToBeVisibleAsync();
        ILocator question = here.Locator(".undecided fieldset");
        await Assertions.Expect(question).ToHaveCountAsync(1);
        await Assertions.Expect(question).ToContainTextAsync("frame.length");
        await Visit.SettledAsync(here);
        List<string> faults = [];
        await AccessibilityTests.CheckAsync(here, "a question", faults);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        await question.GetByRole(AriaRole.Button, new() { Name = "60 ft" }).ClickAsync();
        await Assertions.Expect(here.Locator(".undecided")).ToHaveCountAsync(0);

        // What was decided here is no question there.
        await there.Locator(".share-desk .file input").SetInputFilesAsync(await SavedAsync(here));
        await Assertions.Expect(there.GetByText("1 new entries from the other copy, 0 that only you had")).ToBeVisibleAsync();
        await Assertions.Expect(there.Locator(".undecided")).ToHaveCountAsync(0);
        Assert.Equal(Read(await SavedAsync(here)), Read(await SavedAsync(there)));
        await Visit.StageAsync(there, "Frame");
        await Assertions.Expect(Visit.Field(there, "frame.length")).ToHaveValueAsync("60 ft");
    }

    [Fact]
    public async Task Entries_go_from_screen_to_camera_without_a_network_as_an_outside_reader_reads_them()
    {
        await using IBrowserContext one = await site.NewVisitorAsync(Visit.Phone()), other = await site.NewVisitorAsync(Visit.Phone());
        IPage shows = await ExampleAsync(one), reads = await ExampleAsync(other);
        await one.SetOfflineAsync(true);
        await other.SetOfflineAsync(true);
        await NoteAsync(shows, "<i>soft</i> ground", "Sage");
        await Visit.StageAsync(shows, "Share");
        await shows.GetByRole(AriaRole.Button, new() { Name = "Show the codes" }).ClickAsync();
        string address = await CodeAsync(shows);
        Assert.StartsWith(new Uri(shows.Url).GetLeftPart(UriPartial.Authority) + "/take#", address, StringComparison.Ordinal);
        await Visit.SettledAsync(shows);
        List<string> faults = [.. await PhoneTests.FaultsAsync(shows, "codes")];
        await AccessibilityTests.CheckAsync(shows, "codes", faults);

        IPage taken = await other.NewPageAsync();
        await taken.GotoAsync(address);
        await Assertions.Expect(taken.GetByText("1 entries for the site book of")).ToBeVisibleAsync();
        await AccessibilityTests.CheckAsync(taken, "entries from a code", faults);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.Equal(0, await taken.Locator("main i, .page i").CountAsync());
        await taken.Locator(".plans button").First.ClickAsync();
        await Visit.Heading(taken, "Site book").WaitForAsync();
        await Assertions.Expect(taken.Locator(".entries [data-path='siteBook[0]']")).ToContainTextAsync("<i>soft</i> ground");
        // Read twice, it stands there once.
        await taken.GotoAsync("about:blank");
        await taken.GotoAsync(address);
        await taken.Locator(".plans button").First.ClickAsync();
        await Visit.Heading(taken, "Site book").WaitForAsync();
        await Assertions.Expect(taken.Locator(".entries > li")).ToHaveCountAsync(1);
        await taken.GotoAsync("about:blank");
        await taken.GotoAsync(address[..^9]);
        await Assertions.Expect(taken.Locator(".caution.stop")).ToContainTextAsync("no entries");
        Assert.NotNull(reads);
    }

    [Fact]
    public async Task Two_devices_that_were_without_a_network_are_alike_again_and_a_revoked_link_opens_nothing()
    {
        await using IBrowserContext office = await site.NewVisitorAsync(Visit.Desktop()), phone = await site.NewVisitorAsync(Visit.Phone());
        IPage here = await ExampleAsync(office);
        await NoteAsync(here, "before it was shared", "Wren");
        await Visit.StageAsync(here, "Share");
        await here.GetByRole(AriaRole.Button, new() { Name = "Keep this plan on the server" }).ClickAsync();
        await Assertions.Expect(here.GetByText("Alike with the server")).ToBeVisibleAsync();
        await here.GetByLabel("It may").SelectOptionAsync("Edit");
        await here.GetByLabel("For whom").FillAsync("<img src=x onerror=alert(1)>");
        await here.GetByRole(AriaRole.Button, new() { Name = "Make the link" }).ClickAsync();
        string link = await here.Locator("code.link").InnerTextAsync();
        Assert.Equal(link, await CodeAsync(here));

        IPage there = await phone.NewPageAsync();
        there.SetDefaultTimeout(60_000);
        await there.GotoAsync(link);
        await there.Locator(".paper svg").WaitForAsync();
        await Visit.KeptAsync(there);
        await Visit.StageAsync(there, "Steps");
        await there.Locator("summary[data-step=lines-marked]").ClickAsync();
        await Assertions.Expect(there.Locator(".jot figcaption")).ToHaveTextAsync("before it was shared Wren");

        // What changes with a network is there at once, without anybody asking.
        await TypeAsync(there, "Frame", "frame.bowSpacing", "3 ft");
        await Visit.StageAsync(here, "Frame");
        await Assertions.Expect(Visit.Field(here, "frame.bowSpacing")).ToHaveValueAsync("3 ft");

        await office.SetOfflineAsync(true);
        await phone.SetOfflineAsync(true);
        await TypeAsync(here, "Frame", "frame.length", "48 ft");
        await NoteAsync(here, "called the yard", "Wren");
        await TypeAsync(there, "Frame", "frame.length", "60 ft");
        await TypeAsync(there, "Site", "site.place", "Mill field");
        await NoteAsync(there, "soft ground", "Sage");
        await phone.SetOfflineAsync(false);
        await office.SetOfflineAsync(false);
        foreach (IPage page in (IPage[])[here, there])
        {
            await Visit.StageAsync(page, "Share");
            await Assertions.Expect(page.Locator(".undecided fieldset")).ToHaveCountAsync(1);
            await Assertions.Expect(page.GetByText("Alike with the server")).ToBeVisibleAsync();
        }
        await there.Locator(".undecided").GetByRole(AriaRole.Button, new() { Name = "48 ft" }).ClickAsync();
        await Assertions.Expect(here.Locator(".undecided")).ToHaveCountAsync(0);
        await Assertions.Expect(there.GetByText("Alike with the server")).ToBeVisibleAsync();
        string one = Read(await SavedAsync(here)), other = Read(await SavedAsync(there));
        Assert.Equal(one, other);
        foreach (string kept in (string[])["before it was shared", "called the yard", "soft ground", "Mill field", "48 ft"]) Assert.Contains(kept, one, StringComparison.Ordinal);

        List<string> faults = [];
        await here.GetByRole(AriaRole.Button, new() { Name = "All links" }).ClickAsync();
        await here.GetByRole(AriaRole.Button, new() { Name = "What was changed" }).ClickAsync();
        await Assertions.Expect(here.GetByText("link made").First).ToBeVisibleAsync();
        Assert.Equal(0, await here.Locator(".share-desk img").CountAsync());
        await Visit.SettledAsync(here);
        await AccessibilityTests.CheckAsync(here, "shared", faults);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder) await here.ScreenshotAsync(new() { Path = Path.Combine(folder, "desktop-share.png"), FullPage = true });
        await here.GetByRole(AriaRole.Button, new() { Name = "Revoke" }).ClickAsync();
        await Assertions.Expect(here.GetByText("revoked").First).ToBeVisibleAsync();
        await TypeAsync(there, "Site", "site.place", "Barn field");
        await Visit.StageAsync(there, "Share");
        await Assertions.Expect(there.GetByText("This link opens nothing any more")).ToBeVisibleAsync();
        await Assertions.Expect(there.GetByText("Keep this plan")).ToHaveCountAsync(0);
        await Visit.StageAsync(there, "Site");
        await Assertions.Expect(Visit.Field(there, "site.place")).ToHaveValueAsync("Barn field");
    }

    private static async Task<IPage> ExampleAsync(IBrowserContext visitor)
    {
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.KeptAsync(page);
        return page;
    }

    private static async Task TypeAsync(IPage page, string stage, string path, string value)
    {
        await Visit.StageAsync(page, stage);
        await Visit.Field(page, path).FillAsync(value);
        await Visit.Field(page, path).PressAsync("Tab");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
    }

    private static async Task NoteAsync(IPage page, string note, string by)
    {
        await Visit.StageAsync(page, "Steps");
        if (!await page.GetByLabel("Note", new() { Exact = true }).IsVisibleAsync()) await page.Locator("summary[data-step=lines-marked]").ClickAsync();
        await page.GetByLabel("Your name").FillAsync(by);
        await page.GetByLabel("Your name").PressAsync("Tab");
        await page.GetByLabel("Note", new() { Exact = true }).FillAsync(note);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the note" }).ClickAsync();
        await Assertions.Expect(page.Locator(".jot figcaption").Last).ToHaveTextAsync($"{note} {by}");
    }

    private static async Task<string> SavedAsync(IPage page)
    {
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.Locator(".share-desk").GetByRole(AriaRole.Button, new() { Name = "Save the plan file" }).ClickAsync());
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        await download.SaveAsAsync(file);
        return file;
    }

    private static string Read(string file)
    {
        using JsonDocument plan = JsonDocument.Parse(File.ReadAllText(file));
        return JsonSerializer.Serialize(plan.RootElement);
    }

    // The code as it stands on the screen, read by ZXing, a reader of such codes that is independent of the one who wrote it (ISO/IEC 18004).
    private static async Task<string> CodeAsync(IPage page)
    {
        await page.Locator("svg.code").WaitForAsync();
        string pixels = await page.Locator("svg.code").EvaluateAsync<string>("""
            async svg => {
              const side = 800, canvas = new OffscreenCanvas(side, side), to = canvas.getContext('2d'), copy = svg.cloneNode(true);
              copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg'); copy.setAttribute('width', side); copy.setAttribute('height', side);
              const picture = new Image(side, side);
              picture.src = 'data:image/svg+xml,' + encodeURIComponent(copy.outerHTML);
              await picture.decode();
              to.drawImage(picture, 0, 0, side, side);
              const data = to.getImageData(0, 0, side, side).data;
              let grey = '';
              for (let at = 0; at < data.length; at += 4) grey += String.fromCharCode(data[at]);
              return btoa(grey);
            }
            """);
        byte[] grey = Convert.FromBase64String(pixels);
        RGBLuminanceSource source = new(grey, 800, 800, RGBLuminanceSource.BitmapFormat.Gray8);
        return new BarcodeReaderGeneric { Options = new() { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true } }.Decode(source)?.Text ?? "";
    }
}
