using System.Text.RegularExpressions;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Diagnostics;

/// <summary>Holds docs/diagnostics.md to the codes that stand in the sources, both ways.</summary>
public sealed partial class DiagnosticsPageTests
{
    private const string Assumed = "assumed.";

    [Fact]
    public void Every_code_in_the_sources_has_a_row_in_the_docs() => Assert.Empty(CodesInSources().Except(CodesOnPage()).Order());

    [Fact]
    public void Every_row_in_the_docs_is_a_code_in_the_sources() =>
        Assert.Empty(CodesOnPage().Where(code => !code.StartsWith(Assumed, StringComparison.Ordinal)).Except(CodesInSources()).Order());

    // A scan that matches nothing would hold anything.
    [Theory]
    [InlineData("plan.missing-field")]
    [InlineData("plan.missing")]
    [InlineData("bow.bend-too-tight")]
    [InlineData("bow.peak-below-shoulder")]
    [InlineData("ends.door.does-not-fit")]
    [InlineData("frame.purlins.none")]
    [InlineData("cover.film-on-pvc")]
    [InlineData("cuts.film.no-roll")]
    [InlineData("cut.stock.too-few")]
    [InlineData("orders.stock.unknown-size")]
    [InlineData("assumed.strength")]
    [InlineData("packet.earlier-files")]
    public void The_scan_of_the_sources_finds_codes_however_they_are_written(string code) => Assert.Contains(code, CodesInSources());

    [Fact]
    public void Every_assumption_about_a_bare_tunnel_has_a_row_in_the_docs()
    {
        string[] taken =
        [
            .. new[] { "\"fixed\"", "\"rollUp\"" }
                .Select(kind => SamplePlans.Simple(rest: $"\"sides\": {{ \"left\": {{ \"kind\": {kind} }} }}, \"ends\": {{ \"front\": {{ \"doors\": [ {{ \"kind\": \"side\" }} ] }} }}"))
                .Append(SamplePlans.Simple())
                .SelectMany(plan => TunnelWorks.Plan(plan).Diagnostics)
                .Where(each => each.Severity == Severity.Assumption && each.Code.StartsWith(Assumed, StringComparison.Ordinal))
                .Select(each => each.Code).Distinct(),
        ];
        Assert.Contains("assumed.ground.post-embedment", taken);
        Assert.Empty(taken.Except(CodesOnPage()).Order());
    }

    private static HashSet<string> CodesOnPage() =>
        [.. Row().Matches(File.ReadAllText(Path.Combine(SamplePlans.Root, "docs", "diagnostics.md"))).Select(row => row.Groups["code"].Value)];

    private static HashSet<string> CodesInSources()
    {
        HashSet<string> codes = [.. PlanCodes.All];
        string[] folders = [.. new[] { "Hoopwright", "Hoopwright.Cli" }.Select(project => Path.Combine(SamplePlans.Root, "src", project))];
        foreach ((string folder, string file) in folders.SelectMany(folder => Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories).Select(file => (folder, file))))
        {
            if (Path.GetRelativePath(folder, file).Split(Path.DirectorySeparatorChar)[0] is "obj" or "bin") continue;
            string text = File.ReadAllText(file);
            codes.UnionWith(Written().Matches(text).Select(match => match.Groups["code"].Value));
            // A code made of a beginning and an ending: Check(…, "orders.stock", …) and code + ".item-missing".
            string[] endings = [.. Ending().Matches(text).Select(match => match.Groups["ending"].Value)];
            foreach (Match beginning in endings.Length > 0 ? Beginning().Matches(text).ToArray() : [])
                codes.UnionWith(endings.Select(ending => beginning.Groups["code"].Value + ending));
        }
        return codes;
    }

    [GeneratedRegex(@"(?:\b(?:Diagnostic|new|Error|Warn|Assume|Add|Refuse|Ask)|[?:] )\(\s*""(?<code>[a-z][a-z0-9-]*(?:\.[a-z0-9-]+)+)"",")]
    private static partial Regex Written();

    [GeneratedRegex(@"\bcode \+ ""(?<ending>\.[a-z0-9.-]+)""")]
    private static partial Regex Ending();

    [GeneratedRegex(@"\bCheck\([^;]*?, ""(?<code>[a-z][a-z0-9-]*(?:\.[a-z0-9-]+)+)"",")]
    private static partial Regex Beginning();

    [GeneratedRegex(@"^\| `(?<code>[a-z][a-z0-9.-]+)` \|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
