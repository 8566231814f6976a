using System.Globalization;
using System.Text;
using System.Text.Json;
using Hoopwright.Comparisons;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>Two variants side by side: what stands there is what the command line's comparison of the same two files says.</summary>
public sealed class CompareTests(Site site)
{
    private static readonly string[] Paths =
    [
        "strength.verdict", "bows", "bayText", "bowTube", "peakText", "ties", "purlins", "braces", "groundPosts", "holes", "concreteText", "filmBoughtText", "cutBars", "total",
    ];

    [Theory]
    [InlineData("desktop", ColorScheme.Light)]
    [InlineData("phone", ColorScheme.Dark)]
    public async Task The_numbers_of_two_plans_side_by_side_are_those_of_the_comparison_and_the_screen_breaks_no_rule(string screen, ColorScheme scheme)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync(screen == "phone" ? Visit.Phone() : Visit.Desktop());
        IPage page = await Visit.OpenAsync(visitor);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await Visit.ExampleAsync(page);
        await Visit.CompareAsync(page, "frame.bowSpacing", "3 ft");
        (JsonElement told, string[][] results, string[][] fields, string[][] orders) = await ReadAsync(page);

        JsonElement before = told.GetProperty("before"), after = told.GetProperty("after");
        string[][] facts =
        [
            .. Paths.Select(path => path == "total" ? [NumberTests.Money(before, path), NumberTests.Money(after, path)] : new[] { At(before, path), At(after, path) }).Where(pair => pair[0].Length + pair[1].Length > 0),
            .. told.GetProperty("cost").GetProperty("stages").EnumerateArray().Select(stage => new[] { NumberTests.Money(stage, "before"), NumberTests.Money(stage, "after") }),
        ];
        Assert.Equal(facts.Select(pair => $"{Verdict(pair[0])} | {Verdict(pair[1])}"), results.Select(row => $"{row[1]} | {row[2]}"));
        Assert.NotEqual(At(before, "bows"), At(after, "bows"));
        Assert.Equal(["Frame: Bow spacing | 3 ft | 4 ft"], fields.Select(row => string.Join(" | ", row)).Where(row => row.Contains("Bow spacing", StringComparison.Ordinal)));
        Assert.Equal(told.GetProperty("orders").EnumerateArray().Select(line => $"{Bought(line, "before")} | {Bought(line, "after")}"), orders.Select(row => $"{row[1]} | {row[2]}"));
        await page.Locator(".page .paper svg").WaitForAsync();

        List<string> faults = [];
        await AccessibilityTests.CheckAsync(page, "compare", faults);
        if (screen == "phone") faults.AddRange(await PhoneTests.FaultsAsync(page, "compare"));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Fact]
    public async Task A_copy_that_nothing_was_changed_in_is_said_to_be_alike_but_for_its_name()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, Visit.Example("round-14ft"));
        await Visit.CompareAsync(page);
        (JsonElement told, string[][] results, string[][] fields, string[][] orders) = await ReadAsync(page);
        Assert.Equal(At(told.GetProperty("before"), "total"), At(told.GetProperty("after"), "total"));
        Assert.All(results, row => Assert.Equal(row[1], row[2]));
        Assert.Empty(orders);
        Assert.All(fields, row => Assert.Contains("Name", row[0], StringComparison.Ordinal));
    }

    // The comparison by the domain of the two plans as they are stored, and the rows on the screen.
    private static async Task<(JsonElement Told, string[][] Results, string[][] Fields, string[][] Orders)> ReadAsync(IPage page)
    {
        string[] documents = await page.EvaluateAsync<string[]>("""
            async () => {
              const shelf = await import('/js/shelf.js'), first = location.pathname.split('/').pop(), second = document.querySelector('.ways select').value;
              return [(await shelf.load(first)).document, (await shelf.load(second)).document];
            }
            """);
        PlannedTunnel[] planned = [.. documents.Select(document => TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(document))))];
        using JsonDocument told = JsonDocument.Parse(ComparisonJson.Write(Comparison.Of(planned[0], planned[1])));
        string[][][] tables = await page.Locator("table").EvaluateAllAsync<string[][][]>("tables => tables.map(table => [...table.tBodies[0].rows].map(row => [...row.cells].map(cell => cell.innerText.replace(/[ \\t\\r\\n]+/g, ' ').trim())))");
        return (told.RootElement.Clone(), tables[0], tables[1], tables[2]);
    }

    private static string Verdict(string text) => text switch { "doesNotStand" => "does not stand", "nothingEntered" => "no snow or wind entered", "notJudged" => "not judged", _ => text };

    private static string Bought(JsonElement line, string name) => line.TryGetProperty(name, out JsonElement bought)
        ? string.Create(CultureInfo.InvariantCulture, $"{At(bought, "packages")} {At(bought, "package")} · {NumberTests.Money(bought, "extension")}").Trim() : "–";

    private static string At(JsonElement group, string path)
    {
        foreach (string step in path.Split('.'))
        {
            if (group.ValueKind != JsonValueKind.Object || !group.TryGetProperty(step, out group)) return "";
        }
        return group.ValueKind == JsonValueKind.Null ? "" : group.ToString();
    }
}
