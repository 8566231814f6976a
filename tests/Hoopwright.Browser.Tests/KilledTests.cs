using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>The browser is killed while it saves, as a dead battery does: what it said was kept is there, and the plan opens.</summary>
public sealed class KilledTests(Site site)
{
    private const int Rounds = 6, Edits = 3;

    [Fact]
    public async Task Nothing_that_was_kept_is_lost_when_the_browser_is_killed_in_the_middle_of_a_save()
    {
        string folder = Directory.CreateTempSubdirectory("hoopwright-killed-").FullName, address = "";
        int kept = 40;
        try
        {
            for (int round = 0; round < Rounds; round++)
            {
                IBrowserContext visitor = await site.StartAgainAsync(folder);
                IPage page = round == 0 ? await BeginAsync(visitor) : await visitor.NewPageAsync();
                page.SetDefaultTimeout(60_000);
                if (round > 0)
                {
                    await page.GotoAsync(address);
                    await Visit.Field(page, "frame.length").WaitForAsync();
                    int found = int.Parse((await Visit.Field(page, "frame.length").InputValueAsync()).Split(' ')[0], CultureInfo.InvariantCulture);
                    // The one that was on its way may have been kept as well, before anybody could say so.
                    Assert.InRange(found, kept, kept + 1);
                    kept = found;
                }
                address = page.Url;
                for (int edit = 0; edit < Edits; edit++)
                {
                    await Visit.Field(page, "frame.length").FillAsync($"{++kept} ft");
                    await page.WaitForFunctionAsync(
                        "async ([id, value]) => (await (await import('/js/shelf.js')).load(id)).document.includes(`\"${value}\"`)", (string[])[new Uri(address).AbsolutePath.Split('/')[2], $"{kept} ft"]);
                }
                Task last = Visit.Field(page, "frame.length").FillAsync($"{kept + 1} ft");
                if (round % 2 == 0) await last;
                Kill(folder);
                await Record.ExceptionAsync(() => last);
                await Record.ExceptionAsync(() => visitor.CloseAsync());
            }
        }
        finally
        {
            Kill(folder);
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<IPage> BeginAsync(IBrowserContext visitor)
    {
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await Visit.StageAsync(page, "Frame");
        return page;
    }

    // Every process of that browser at once, without a word to any of them.
    private static void Kill(string folder)
    {
        foreach (Process process in Process.GetProcesses())
        {
            try
            {
                if (process.Id == Environment.ProcessId || !File.ReadAllText($"/proc/{process.Id}/cmdline").Contains(folder, StringComparison.Ordinal)) continue;
                process.Kill();
                process.WaitForExit();
            }
            catch (Exception gone) when (gone is IOException or InvalidOperationException or System.ComponentModel.Win32Exception or UnauthorizedAccessException)
            {
                // It ended by itself, or is none of ours.
            }
        }
    }
}
