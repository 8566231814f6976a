using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Strength;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>
/// Three invented tunnels, each begun on the shelf and entered field by field on the stage that asks for it: the plan that comes out is the one
/// that is typed into a file for the command line, and so is what it stands and costs.
/// </summary>
public sealed class ThreeTunnelsTests(Site site)
{
    [Theory]
    [InlineData("garden-12ft")]
    [InlineData("snow-34ft")]
    [InlineData("coast-8m")]
    public async Task A_tunnel_entered_on_the_screens_is_the_one_typed_into_a_file(string name)
    {
        string text = File.ReadAllText(Path.Combine(Site.Root, "tests", "Hoopwright.Browser.Tests", "Tunnels", name + ".json"));
        JsonObject plan = JsonNode.Parse(text)!.AsObject();
        List<string> faults = [];
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor, faults);
        string shape = plan["frame"]!["bow"]!["shape"]!.GetValue<string>();
        await page.Locator($".shape input[value=\"{shape}\"]").CheckAsync();
        await page.Locator(".begin select").SelectOptionAsync(plan["units"]!.GetValue<string>());
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await page.Locator(".paper svg").WaitForAsync();
        // What a starter plan says and this one does not is left to be taken as usual again.
        JsonObject begun = await SavedAsync(page);
        List<(string Path, string? Value)> left = [.. Leaves(plan).Select(leaf => (leaf.Path, (string?)leaf.Value)).Concat(Leaves(begun).Where(leaf => !Has(plan, leaf.Path)).Select(leaf => (leaf.Path, (string?)null)))
            .Where(leaf => leaf.Path is not ("hoopwright" or "frame.bow.shape" or "units"))];
        foreach ((string _, string stage) in Visit.Stages)
        {
            await Visit.StageAsync(page, stage);
            foreach ((string path, string? value) in left.ToArray())
            {
                if (await page.Locator($"[data-path=\"{path.Split('.', '[')[0]}\"]").CountAsync() == 0) continue;
                await EnterAsync(page, path, value);
                left.Remove((path, value));
            }
        }
        Assert.Empty(left);
        await Visit.SettledAsync(page);
        Assert.Equal(Leaves(plan).Order(), Leaves(await SavedAsync(page)).Order());

        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(text)));
        string band = await page.Locator(".band").InnerTextAsync();
        Assert.Contains(planned.Orders!.Total.Amount.ToString("0.00", CultureInfo.InvariantCulture), band, StringComparison.Ordinal);
        await Assertions.Expect(page.Locator(".band dd.doesNotStand")).ToHaveCountAsync(planned.Strength!.Verdict == StrengthVerdict.DoesNotStand ? 1 : 0);
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_SCREENS") is { Length: > 0 } folder)
        {
            foreach ((string address, string stage) in Visit.Stages)
            {
                await Visit.StageAsync(page, stage);
                await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{address}.png") });
            }
        }
        Assert.Empty(faults);
    }

    /// <summary>Types, chooses or empties a field as a visitor does: groups are unfolded and items added on the way.</summary>
    private static async Task EnterAsync(IPage page, string path, string? value)
    {
        for (int at = 0; at < path.Length; at++)
        {
            if (path[at] is not ('.' or '[')) continue;
            ILocator group = page.Locator($"details[data-path=\"{path[..at]}\"]");
            if (await group.CountAsync() == 0) continue;
            if (await group.GetAttributeAsync("open") is null) await group.Locator("> summary").ClickAsync();
            if (path[at] != '[') continue;
            ILocator item = page.Locator($"fieldset[data-path=\"{path[..(path.IndexOf(']', at) + 1)]}\"]");
            if (await item.CountAsync() == 0) await group.Locator("> button.add").ClickAsync();
            await item.WaitForAsync();
        }
        ILocator field = Visit.Field(page, path);
        if (await field.EvaluateAsync<string>("field => field.tagName") == "SELECT") await field.SelectOptionAsync(new SelectOptionValue { Value = value ?? "" });
        else await field.FillAsync(value ?? "");
        await Assertions.Expect(field).ToHaveValueAsync(value ?? "");
    }

    private static async Task<JsonObject> SavedAsync(IPage page)
    {
        await Visit.StageAsync(page, "Packet");
        return JsonNode.Parse(await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the plan file" })))!.AsObject();
    }

    private static bool Has(JsonObject plan, string path) => Leaves(plan).Any(leaf => leaf.Path == path);

    /// <summary>Every value of a plan with its path.</summary>
    private static IEnumerable<(string Path, string Value)> Leaves(JsonNode node, string path = "") => node switch
    {
        JsonObject group => group.SelectMany(each => Leaves(each.Value!, path.Length == 0 ? each.Key : $"{path}.{each.Key}")),
        JsonArray list => list.SelectMany((each, number) => Leaves(each!, $"{path}[{number}]")),
        _ => [(path, node.ToString())],
    };
}
