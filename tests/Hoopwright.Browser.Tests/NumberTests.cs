using System.Globalization;
using System.IO.Compression;
using System.Text.Json;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>What stands on the screen is what the command line's results say for the same file.</summary>
public sealed class NumberTests(Site site)
{
    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public async Task The_numbers_on_screen_are_those_of_the_results(string example)
    {
        byte[] file = File.ReadAllBytes(Visit.Example(example));
        using JsonDocument document = JsonDocument.Parse(ResultsJson.Write(TunnelWorks.Plan(PlanReader.Read(file))));
        JsonElement results = document.RootElement;
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, Visit.Example(example));
        await Visit.SettledAsync(page);

        JsonElement orders = results.GetProperty("orders"), strength = results.GetProperty("strength");
        Dictionary<string, string> verdicts = new() { ["stands"] = "stands", ["marginal"] = "marginal", ["doesNotStand"] = "does not stand", ["nothingEntered"] = "no snow or wind entered" };
        string band = await page.Locator(".band").InnerTextAsync();
        Assert.Contains(verdicts[Text(strength, "verdict")], band, StringComparison.Ordinal);
        Assert.Contains($"{Money(orders, "total")} {Text(orders, "currency")}", band, StringComparison.Ordinal);
        foreach (string quantity in new[] { "groundSnowText", "windText" })
        {
            JsonElement limit = strength.GetProperty("limits").EnumerateArray().First(each => Text(each, "level") == "code" && each.TryGetProperty(quantity, out _));
            Assert.Contains(Text(limit, quantity), band, StringComparison.Ordinal);
            if (Text(strength, quantity) is { Length: > 0 } asked) Assert.Contains("asked: " + asked, band, StringComparison.Ordinal);
        }
        Assert.Equal(results.GetProperty("assumptions").GetArrayLength().ToString(CultureInfo.InvariantCulture), await page.Locator(".band dd button").InnerTextAsync());
        await FactsAsync(page, results, ["frame.spanText", "frame.lengthText", "frame.peakHeightText", "frame.bayText", "frame.bow.filmLineText", "site.footprintText", "site.diagonalText", "orders.total"]);

        await Visit.StageAsync(page, "Site");
        await FactsAsync(page, results, ["site.acrossText", "site.alongText", "site.diagonalText", "site.groundFallText", "site.footprintText"]);
        await Visit.StageAsync(page, "Frame");
        await FactsAsync(page, results, ["frame.bayText", "frame.bays", "frame.bow.filmLineText", "frame.bow.centreLineText", "frame.bow.pieces", "frame.bow.pieceText", "frame.bow.endAreaText", "frame.bow.tube"]);
        await Visit.StageAsync(page, "Ground");
        await FactsAsync(page, results, ["ground.posts[0].embedmentText", "ground.posts[0].projectionText", "ground.holes[0].diameterText", "ground.holes[0].depthText", "ground.holes[0].volumeText"]);
        await Visit.StageAsync(page, "Ends");
        await FactsAsync(page, results, ["ends.front.doors[0].roughWidthText", "ends.front.doors[0].headerTopText", "ends.back.doors[0].roughWidthText", "ends.back.doors[0].headerTopText"]);
        await Visit.StageAsync(page, "Cover");
        await FactsAsync(page, results, ["cover.pieces[0].alongRollText", "cover.pieces[0].acrossRollText", "cover.film.boughtAreaText", "cover.ropes.count", "cover.ropes.lengthText", "cover.bowTapeText"]);
        await Visit.StageAsync(page, "Strength");
        await FactsAsync(page, results, ["strength.groundSnowText", "strength.windText", "strength.yieldText"]);
        string told = await page.Locator(".questions").InnerTextAsync();
        foreach (JsonElement limit in strength.GetProperty("limits").EnumerateArray())
        {
            string kind = limit.TryGetProperty("groundSnowText", out _) ? "groundSnow" : "wind";
            Assert.Contains($"{Text(limit, kind + "Text")} ({Text(limit, kind + "LeastText")}–{Text(limit, kind + "MostText")})", told, StringComparison.Ordinal);
        }

        await Visit.StageAsync(page, "Orders");
        string[][] lines = await RowsAsync(page, ".questions section > .wide tbody tr");
        JsonElement[] bought = [.. orders.GetProperty("lines").EnumerateArray()];
        Assert.Equal(bought.Length, lines.Length);
        Assert.Equal(
            bought.Select(line => string.Join(" | ", One($"{Text(line, "item")} {Text(line, "size")} {Text(line, "lengthText")}"), Text(line, "neededText"), One($"{Text(line, "packages")} {Text(line, "package")}"), Or(Money(line, "extension")))).Order(StringComparer.Ordinal),
            lines.Select(line => string.Join(" | ", line[0], line[1], line[2], line[4])).Order(StringComparer.Ordinal));
        string[][] stages = await RowsAsync(page, ".questions section > table tbody tr");
        Assert.Equal(orders.GetProperty("stages").EnumerateArray().Select(stage => Money(stage, "cost")), stages.Select(stage => stage[1]));

        await Visit.StageAsync(page, "Cuts");
        string[][] bars = await RowsAsync(page, ".questions section > .wide tbody tr");
        string[] expected =
        [
            .. results.GetProperty("cuts").EnumerateArray().SelectMany(sheet => sheet.GetProperty("bars").EnumerateArray()).Select(bar => string.Join(" | ",
                $"{Text(bar, "number")}: {Text(bar, "stockText")}",
                string.Join(" · ", bar.GetProperty("pieces").EnumerateArray().Select(piece => One($"{Text(piece, "number")} {Text(piece, "lengthText")} ({Text(piece, "place")})"))))),
        ];
        Assert.Equal(expected, bars.Select(bar => $"{bar[1].Replace(" (from the barn)", "", StringComparison.Ordinal).Replace(" Bad", "", StringComparison.Ordinal)} | {bar[2]}"));
    }

    /// <summary>
    /// Every text of the results is the same letter for letter, so every displayed digit is; numbers agree to a part in a million, which leaves room
    /// for what is searched until it is balanced to a part in a hundred million, and begins with sines that libraries of mathematics round otherwise.
    /// </summary>
    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    [InlineData("as-built-26ft")]
    public async Task The_results_that_the_browser_works_out_are_those_of_the_command_line(string example)
    {
        using JsonDocument expected = JsonDocument.Parse(ResultsJson.Write(TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example(example))))));
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        page.SetDefaultTimeout(120_000);
        await Visit.ImportAsync(page, Visit.Example(example));
        await Visit.StageAsync(page, "Packet");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "zip" }).ClickAsync());
        using ZipArchive zip = ZipFile.OpenRead(await download.PathAsync());
        using Stream stream = zip.GetEntry("results.json")!.Open();
        using JsonDocument browser = JsonDocument.Parse(stream);
        List<string> differ = [];
        int seen = Compare(expected.RootElement, browser.RootElement, "", differ);
        Assert.True(seen > 1_000, $"Only {seen} values were compared.");
        Assert.True(differ.Count == 0, string.Join("\n", differ.Take(40)));
    }

    private static int Compare(JsonElement one, JsonElement other, string path, List<string> differ)
    {
        if (one.ValueKind != other.ValueKind)
        {
            differ.Add($"{path}: {one.ValueKind}, {other.ValueKind}");
            return 0;
        }
        switch (one.ValueKind)
        {
            case JsonValueKind.Object:
                if (!one.EnumerateObject().Select(field => field.Name).SequenceEqual(other.EnumerateObject().Select(field => field.Name))) differ.Add($"{path}: other fields");
                return one.EnumerateObject().Sum(field => other.TryGetProperty(field.Name, out JsonElement same) ? Compare(field.Value, same, $"{path}.{field.Name}", differ) : 0);
            case JsonValueKind.Array:
                if (one.GetArrayLength() != other.GetArrayLength()) differ.Add($"{path}: {one.GetArrayLength()}, {other.GetArrayLength()} items");
                return one.EnumerateArray().Zip(other.EnumerateArray()).Select((pair, at) => Compare(pair.First, pair.Second, $"{path}[{at}]", differ)).Sum();
            case JsonValueKind.Number:
                double first = one.GetDouble(), second = other.GetDouble();
                if (Math.Abs(first - second) > 1e-6 * Math.Max(1e-3, Math.Abs(first))) differ.Add($"{path}: {one.GetRawText()}, {other.GetRawText()}");
                return 1;
            default:
                if (one.ToString() != other.ToString()) differ.Add($"{path}: {one}, {other}");
                return 1;
        }
    }

    private static async Task FactsAsync(IPage page, JsonElement results, string[] paths)
    {
        string[] shown = await page.Locator(".questions .facts dd").EvaluateAllAsync<string[]>("facts => facts.map(fact => [...fact.childNodes].filter(node => node.nodeType === 3).map(node => node.textContent).join('').trim())");
        Assert.Equal(paths.Select(path => path == "orders.total" ? Money(results.GetProperty("orders"), "total") : At(results, path)).Where(text => text.Length > 0), shown);
    }

    private static Task<string[][]> RowsAsync(IPage page, string selector) =>
        page.Locator(selector).EvaluateAllAsync<string[][]>("rows => rows.map(row => [...row.cells].map(cell => cell.innerText.replace(/[ \\t\\r\\n]+/g, ' ').trim()))");

    private static string At(JsonElement results, string path)
    {
        foreach (string step in path.Replace("[0]", ".0", StringComparison.Ordinal).Split('.'))
        {
            if (step == "0")
            {
                if (results.GetArrayLength() == 0) return "";
                results = results[0];
            }
            else if (results.ValueKind != JsonValueKind.Object || !results.TryGetProperty(step, out results)) return "";
        }
        return results.ValueKind == JsonValueKind.Null ? "" : results.ToString();
    }

    internal static string Money(JsonElement group, string name) => group.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.Number ? value.GetDecimal().ToString("0.00", CultureInfo.InvariantCulture) : "";

    private static string Text(JsonElement group, string name) => group.TryGetProperty(name, out JsonElement value) && value.ValueKind != JsonValueKind.Null ? value.ToString() : "";

    private static string One(string text) => string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static string Or(string text) => text.Length > 0 ? text : "–";
}
