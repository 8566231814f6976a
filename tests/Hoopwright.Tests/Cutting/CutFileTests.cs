using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using CsCheck;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Cutting;

public sealed partial class CutFileTests
{
    private const string Stock = """ "stock": [{ "id": "a", "length": 1000, "price": 5 }] """;
    private const string Pieces = """ "pieces": [{ "id": "p", "length": 300, "count": 4 }] """;

    public static TheoryData<string, string, string> Bad => new()
    {
        { "model.not-json", "", "{ \"kerf\": 3" },
        { "model.wrong-kind", "", "[]" },
        { "model.bad-character", "", "{ \"\\ud800\": 1 }" },
        { "model.unknown-field", "kerff", $$"""{ "kerff": 3, "kerf": 3, {{Stock}}, {{Pieces}} }""" },
        { "model.duplicate", "kerf", $$"""{ "kerf": 3, "kerf": 3, {{Stock}}, {{Pieces}} }""" },
        { "model.missing-field", "stock", $$"""{ "kerf": 3, {{Pieces}} }""" },
        { "model.missing-field", "pieces", $$"""{ "kerf": 3, {{Stock}} }""" },
        { "model.wrong-kind", "pieces", $$"""{ "kerf": 3, {{Stock}}, "pieces": {} }""" },
        { "model.wrong-kind", "pieces[0]", $$"""{ "kerf": 3, {{Stock}}, "pieces": [7] }""" },
        { "model.missing-field", "pieces[0].count", $$"""{ "kerf": 3, {{Stock}}, "pieces": [{ "id": "p", "length": 300 }] }""" },
        { "model.count", "pieces[0].count", $$"""{ "kerf": 3, {{Stock}}, "pieces": [{ "id": "p", "length": 300, "count": 1.5 }] }""" },
        { "model.count", "pieces[0].count", $$"""{ "kerf": 3, {{Stock}}, "pieces": [{ "id": "p", "length": 300, "count": 1e30 }] }""" },
        { "cut.piece.count-negative", "pieces[0].count", $$"""{ "kerf": 3, {{Stock}}, "pieces": [{ "id": "p", "length": 300, "count": -1 }] }""" },
        { "cut.piece.too-long", "pieces[0].length", $$"""{ "kerf": 3, {{Stock}}, "pieces": [{ "id": "p", "length": 1001, "count": 1 }] }""" },
        { "cut.piece.length-not-positive", "pieces[0].length", $$"""{ "kerf": 3, {{Stock}}, "pieces": [{ "id": "p", "length": 0, "count": 1 }] }""" },
        { "cut.stock.too-few", "stock", $$"""{ "kerf": 3, "stock": [{ "id": "a", "length": 1000, "price": 5, "limit": 1 }], {{Pieces}} }""" },
        { "model.count", "stock[0].limit", $$"""{ "kerf": 3, "stock": [{ "id": "a", "length": 1000, "price": 5, "limit": 0.5 }], {{Pieces}} }""" },
        { "model.wrong-kind", "stock[0].id", $$"""{ "kerf": 3, "stock": [{ "id": 1, "length": 1000, "price": 5 }], {{Pieces}} }""" },
        { "model.name", "stock[0].id", $$"""{ "kerf": 3, "stock": [{ "id": "", "length": 1000, "price": 5 }], {{Pieces}} }""" },
        { "cut.id.repeated", "pieces[1].id", $$"""{ "kerf": 3, {{Stock}}, "pieces": [{ "id": "p", "length": 300, "count": 1 }, { "id": "p", "length": 200, "count": 1 }] }""" },
        { "model.number", "stock[0].price", $$"""{ "kerf": 3, "stock": [{ "id": "a", "length": 1000, "price": 1e999 }], {{Pieces}} }""" },
        { "model.number", "kerf", $$"""{ "kerf": 0.1000000000000000000000000001, {{Stock}}, {{Pieces}} }""" },
        { "cut.job.too-fine", "", $$"""{ "kerf": 0.1234567890123, {{Stock}}, {{Pieces}} }""" },
        { "cut.units.mixed", "stock[0].length", $$"""{ "kerf": "3 mm", {{Stock}}, "pieces": [{ "id": "p", "length": "300 mm", "count": 1 }] }""" },
        { "cut.length.unread", "kerf", $$"""{ "kerf": "3", "stock": [{ "id": "a", "length": "1 m", "price": 5 }], "pieces": [] }""" },
        { "cut.length.unread", "kerf", $$"""{ "kerf": "1.234567890123456 mm", "stock": [{ "id": "a", "length": "1 m", "price": 5 }], "pieces": [] }""" },
        { "model.wrong-kind", "kerf", $$"""{ "kerf": true, {{Stock}}, {{Pieces}} }""" },
        { "cut.price.unread", "stock[0].price", """{ "kerf": 0, "stock": [{ "id": "a", "length": 5, "price": "dear" }], "pieces": [] }""" },
        { "cut.leftover.rule", "leftover.value", $$"""{ "kerf": 3, "leftover": { "minLength": 5, "value": 3 }, {{Stock}}, {{Pieces}} }""" },
        { "cut.leftover.rule", "leftover.valuePer1000", """{ "kerf": "3 mm", "leftover": { "minLength": "5 mm", "valuePer1000": 3 }, "stock": [], "pieces": [] }""" },
        { "cut.leftover.value-negative", "leftover.value", """{ "kerf": "3 mm", "leftover": { "minLength": "5 mm", "value": -3, "per": "1 m" }, "stock": [], "pieces": [] }""" },
        { "cut.leftover.per-not-positive", "leftover.per", """{ "kerf": "3 mm", "leftover": { "minLength": "5 mm", "value": 3, "per": "0 mm" }, "stock": [], "pieces": [] }""" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_is_wrong_with_a_file_is_said_once_and_where(string code, string path, string file)
    {
        var answer = Solve(file);

        Assert.Equal([(code, path)], answer.Diagnostics.Where(found => found.Severity == Severity.Error).Select(found => (found.Code, found.Path)));
        Assert.Equal("", CutFileSheet.Of(answer));
        Assert.False(Json(answer).TryGetProperty("cost", out _));
    }

    [Fact]
    public void Faults_of_the_file_and_of_the_job_are_said_in_one_pass()
    {
        var answer = Solve("""{ "kerf": -1, "trimm": 2, "stock": [{ "id": "a", "length": -1, "price": 5 }], "pieces": [{ "id": "p", "length": 3 }] }""");

        Assert.Equal(
            ["trimm", "pieces[0].count", "kerf", "stock[0].length"],
            answer.Diagnostics.Select(found => found.Path));
    }

    [Fact]
    public void A_saw_cut_that_is_not_given_is_an_assumption()
    {
        var answer = Solve($"{{ {Stock}, {Pieces} }}");

        Assert.Equal(("cut.kerf.not-given", Severity.Assumption), (answer.Diagnostics.Single().Code, answer.Diagnostics.Single().Severity));
        Assert.Equal(2, Json(answer).GetProperty("bars").GetInt32());
    }

    [Fact]
    public void Decimals_are_reckoned_as_written()
    {
        // 0.1 + 0.2 fills a bar of 0.3 exactly; as binary fractions it does not.
        var json = Json(Solve("""{ "kerf": 0, "stock": [{ "id": "a", "length": 0.3, "price": 0.1 }], "pieces": [{ "id": "p", "length": 0.1, "count": 3 }, { "id": "q", "length": 0.2, "count": 3 }] }"""));

        Assert.Equal((3, "0.3", 0m), (json.GetProperty("bars").GetInt32(), json.GetProperty("cost").GetRawText(), json.GetProperty("patterns")[0].GetProperty("leftover").GetDecimal()));
    }

    [Fact]
    public void Tape_fractions_fill_a_bar_exactly()
    {
        // 7 × 13-45/64 in and 6 cuts of 1/8 in are 96-43/64 in, to the mark; a 64th less does not hold them.
        static int Bars(string bar) => Json(Solve($$"""
            { "kerf": "1/8 in", "stock": [{ "id": "a", "length": "{{bar}}", "price": "$7.49" }], "pieces": [{ "id": "p", "length": "13-45/64 in", "count": 7 }] }
            """)).GetProperty("bars").GetInt32();

        Assert.Equal((1, 2), (Bars("8 ft 43/64 in"), Bars("8 ft 42/64 in")));
    }

    [Fact]
    public void Leftovers_with_units_are_worth_a_share_of_the_value_rounded_down_to_a_cent()
    {
        // The rest of 7 ft is worth 7 × 0.333 = 2.331, down to 2.33; 10.00 − 2.33.
        var json = Json(Solve("""
            { "kerf": 0, "leftover": { "minLength": "2 ft", "value": 0.333, "per": "1 ft" },
              "stock": [{ "id": "a", "length": "16 ft", "price": 10 }], "pieces": [{ "id": "p", "length": "9 ft", "count": 1 }] }
            """));

        Assert.Equal((7.67m, "7' 0\"", 2.1336m), (json.GetProperty("cost").GetDecimal(), json.GetProperty("patterns")[0].GetProperty("leftover").GetString(), json.GetProperty("patterns")[0].GetProperty("leftoverM").GetDecimal()));
    }

    [Fact]
    public void A_file_costs_what_its_job_costs_as_numbers_or_with_units() =>
        CutJobs.Tiny.Sample(
            job =>
            {
                var plan = Cutter.Solve(job);
                Assert.Equal(plan.Cost, Json(Solve(File(job, length => length))).GetProperty("cost").GetDecimal());
                var withUnits = Json(Solve(File(job with { Leftover = null }, length => $"{length} mm")));
                Assert.Equal(Cutter.Solve(job with { Leftover = null }).Cost, withUnits.GetProperty("cost").GetDecimal());
            },
            iter: 300);

    [Fact]
    public void The_answer_read_back_cuts_every_piece_once_within_its_bar_and_costs_what_it_says() =>
        CutJobs.Tiny.Sample(
            job =>
            {
                var json = Json(Solve(File(job, length => length)));
                var made = new Dictionary<string, int>();
                var cost = 0m;
                foreach (var pattern in json.GetProperty("patterns").EnumerateArray())
                {
                    var bar = job.Stock.Single(bar => bar.Id == pattern.GetProperty("stock").GetString());
                    var times = pattern.GetProperty("times").GetInt32();
                    var taken = 0m;
                    foreach (var piece in pattern.GetProperty("pieces").EnumerateArray().Select(piece => piece.GetString()!))
                    {
                        made[piece] = made.GetValueOrDefault(piece) + times;
                        taken += job.Pieces.Single(each => each.Id == piece).Length + job.Kerf;
                    }

                    Assert.True(taken <= bar.Length - job.Trim + job.Kerf);
                    var rest = Math.Max(0, bar.Length - job.Trim - taken);
                    Assert.Equal(rest, pattern.GetProperty("leftover").GetDecimal());
                    cost += times * (bar.Price - (job.Leftover is { } rule && rest >= rule.MinLength ? Math.Floor(rest * rule.ValuePer1000 / 1000) : 0));
                }

                Assert.All(job.Pieces, piece => Assert.Equal(piece.Count, made.GetValueOrDefault(piece.Id)));
                Assert.Equal((cost, true), (json.GetProperty("cost").GetDecimal(), json.GetProperty("proven").GetBoolean()));
            },
            iter: 300);

    [Fact]
    public void Mangled_files_are_answered_and_never_thrown_at()
    {
        var good = SamplePlans.ExampleBytes("cut-job");
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte, Gen.Int[0, 40]).Sample(
            (at, put, gone) =>
            {
                byte[] mangled = [.. good[..at], put, .. good[Math.Min(good.Length, at + gone)..]];
                var answer = CutFile.Solve(mangled, CutEffort.Least);
                Assert.Equal(answer.Plan is null, answer.Diagnostics.Any(found => found.Severity == Severity.Error));
                _ = CutFileSheet.Of(answer);
            },
            iter: 2000);
    }

    [Fact]
    public void The_sheet_has_a_box_for_every_cut_and_every_piece_under_its_saw_stop()
    {
        var answer = CutFile.Solve(SamplePlans.ExampleBytes("cut-job"));
        var sheet = CutFileSheet.Of(answer);
        var pieces = answer.Job!.Job.Pieces.Sum(piece => piece.Count);

        Assert.StartsWith("15 bars, cost 126.65: proven least cost.\n", sheet, StringComparison.Ordinal);
        Assert.Equal(pieces, Regex.Count(sheet, @"\[ \]", RegexOptions.CultureInvariant));
        Assert.Equal(pieces, StopCounts().Matches(sheet[sheet.IndexOf("Saw stop", StringComparison.Ordinal)..]).Sum(count => int.Parse(count.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void The_first_job_of_the_page_has_the_answer_of_the_page()
    {
        var page = System.IO.File.ReadAllText(Path.Combine(SamplePlans.Root, "docs", "cut-job.md"));
        var job = Block(page, "json");
        var said = Encoding.UTF8.GetString(CutFileJson.Of(Solve(job), TimeSpan.Zero));

        Assert.Equal(Block(page, "answer"), said.TrimEnd('\n'));

        static string Block(string page, string kind)
        {
            var from = page.IndexOf($"```{kind}\n", StringComparison.Ordinal) + kind.Length + 4;
            return page[from..page.IndexOf("\n```", from, StringComparison.Ordinal)];
        }
    }

    private static CutFileAnswer Solve(string file) => CutFile.Solve(Encoding.UTF8.GetBytes(file));

    private static JsonElement Json(CutFileAnswer answer)
    {
        using var document = JsonDocument.Parse(CutFileJson.Of(answer, TimeSpan.Zero));
        return document.RootElement.Clone();
    }

    private static string File(UnitlessCutJob job, Func<decimal, object> length) => JsonSerializer.Serialize(new
    {
        kerf = length(job.Kerf),
        trim = length(job.Trim),
        leftover = job.Leftover is { } rule ? new { minLength = rule.MinLength, valuePer1000 = rule.ValuePer1000 } : null,
        stock = job.Stock.Select(bar => new { id = bar.Id, length = length(bar.Length), price = bar.Price, limit = bar.Limit }),
        pieces = job.Pieces.Select(piece => new { id = piece.Id, length = length(piece.Length), count = piece.Count }),
    });

    [GeneratedRegex(@"(\d+) × ", RegexOptions.CultureInvariant)]
    private static partial Regex StopCounts();
}
