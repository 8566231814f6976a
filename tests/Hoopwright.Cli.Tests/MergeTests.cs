using System.Text.Json;
using Hoopwright.Plans;

namespace Hoopwright.Cli.Tests;

/// <summary>Putting copies of a plan together.</summary>
public sealed class MergeTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hoopwright").FullName;

    private string Out => Path.Combine(folder, "plan.json");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Two_copies_make_one_and_what_waits_for_a_decision_is_shown_and_decided()
    {
        string office = Copy("office", "30 ft", "it rained"), phone = Copy("phone", "26 ft", "it snowed");
        (int code, string output, _) = Run("merge", office, phone, "--out", Out);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("2 entries of the site book; 1 only the first had, 1 only the second", output, StringComparison.Ordinal);
        Assert.Contains("frame.span: the copies say different things", output, StringComparison.Ordinal);
        byte[] once = File.ReadAllBytes(Out);
        Run("merge", phone, office, "--out", Out);
        Assert.Equal(once, File.ReadAllBytes(Out));

        (code, output, _) = Run("merge", Out, phone, "--out", Out, "--decide", "frame.span=30 ft", "--by", "the lead", "--json");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(0, json.RootElement.GetProperty("undecided").GetArrayLength());
        Plan plan = PlanReader.Read(File.ReadAllBytes(Out)).Plan;
        Assert.Equal("30 ft", plan.Frame.Span?.Text);
        Assert.Equal("the lead", Assert.Single(plan.Edits, edit => edit.Path == "frame.span").By);
    }

    [Fact]
    public void A_copy_that_breaks_off_writes_nothing_and_a_decision_of_nothing_is_refused()
    {
        string good = Copy("good", "30 ft", "it rained"), broken = Path.Combine(folder, "broken.json");
        File.WriteAllText(broken, File.ReadAllText(good)[..40]);
        (int code, _, string messages) = Run("merge", good, broken, "--out", Out);
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.StartsWith(broken, messages, StringComparison.Ordinal);
        Assert.False(File.Exists(Out));

        (code, _, messages) = Run("merge", good, good, "--out", Out, "--decide", "frame.span=30 ft");
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.Contains("do not differ in frame.span", messages, StringComparison.Ordinal);
        Assert.False(File.Exists(Out));
        Assert.Equal(ExitCode.WrongUsage, Run("merge", good, good, "--out", Out, "--decide", "frame.span").Code);
        Assert.Equal(ExitCode.WrongUsage, Run("merge", good, good).Code);
        Assert.Equal(ExitCode.WrongUsage, Run("merge", "-", "-", "--out", Out).Code);
    }

    private string Copy(string name, string span, string note)
    {
        string file = Path.Combine(folder, name + ".json");
        File.WriteAllText(file, $$"""{ "hoopwright": "1.0", "frame": { "span": "{{span}}" }, "siteBook": [ { "id": "20260401T081500000Z-{{name}}", "kind": "note", "note": "{{note}}" } ] }""");
        return file;
    }

    private static (int Code, string Output, string Messages) Run(params string[] args) => CommandLine.Run(args);
}
