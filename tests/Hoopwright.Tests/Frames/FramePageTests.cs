using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>Runs what docs/frame-file.md shows.</summary>
public sealed partial class FramePageTests
{
    private static string Page { get; } = File.ReadAllText(Path.Combine(SamplePlans.Root, "docs", "frame-file.md"));

    [Fact]
    public void Every_model_on_the_page_is_solved_without_a_word()
    {
        string[] models = [.. Block().Matches(Page).Where(block => block.Groups["kind"].Value == "json").Select(block => block.Groups["text"].Value)];
        Assert.True(models.Length >= 2);
        foreach (string model in models)
        {
            var answer = FrameFile.Solve(Encoding.UTF8.GetBytes(model));
            Assert.Empty(answer.Diagnostics);
            Assert.NotEmpty(answer.States);
        }
    }

    [Fact]
    public void The_answer_on_the_page_is_the_answer()
    {
        var blocks = Block().Matches(Page).ToArray();
        var shown = JsonNode.Parse(blocks.First(block => block.Groups["kind"].Value == "answer").Groups["text"].Value)!;
        var given = JsonNode.Parse(FrameAnswerText.Json(FrameFile.Solve(Encoding.UTF8.GetBytes(blocks[0].Groups["text"].Value)), TimeSpan.Zero))!;
        foreach (var answer in (JsonNode[])[shown, given])
            answer["combinations"]!["C1"]!.AsObject().Remove("residual");
        Assert.Equal(Rounded(shown), Rounded(given));
    }

    [Fact]
    public void Every_field_and_word_of_the_file_stands_on_the_page()
    {
        string[] words =
        [
            "nodes", "sections", "materials", "members", "supports", "springs", "loadCases", "combinations", "analysis", "tube",
            "rectangle", "shearFlexible", "rollDeg", "releaseFrom", "releaseTo", "tensionOnly", "offsets", "selfWeight", "uniform", "end",
            "temperature", "gradient", "movements", .. FrameWords.Kinds.Select(kind => kind.Word), .. FrameWords.LoadPers.Select(per => per.Word),
            .. FrameWords.LoadFrames.Select(frame => frame.Word), .. FrameWords.FreedomNames, .. FrameWords.ForceNames, .. FrameWords.Controls.Select(control => control.Word),
            "planar", "modes", "tolerance", "control", "reach", "steps", "freedom",
        ];
        Assert.All(words, word => Assert.Matches($"`{word}(: true)?`", Page));
    }

    [Fact]
    public void The_example_is_solved_and_balances()
    {
        var answer = FrameFile.Solve(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "frame-portal.json")));
        Assert.Empty(answer.Diagnostics);
        Assert.Equal(2, answer.States.Length);
        Assert.All(answer.States, state => Assert.InRange(state.Residual, 0, 1e-9));
    }

    private static string Rounded(JsonNode node) =>
        Number().Replace(node.ToJsonString(), number => double.Parse(number.Value, System.Globalization.CultureInfo.InvariantCulture).ToString("G9", System.Globalization.CultureInfo.InvariantCulture));

    [GeneratedRegex(@"^```(?<kind>[a-z]+)\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"(?<=:)-?[0-9.]+(?:E[-+]?[0-9]+)?", RegexOptions.IgnoreCase)]
    private static partial Regex Number();
}
