using System.Text.RegularExpressions;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Documents;

public sealed partial class DiagnosticsPageTests
{
    [Fact]
    public void Every_code_in_the_source_stands_on_the_page()
    {
        string page = File.ReadAllText(Path.Combine(SamplePlans.Root, "docs", "diagnostics.md"));
        string source = Path.Combine(SamplePlans.Root, "src", "Hoopwright");
        string[] codes =
        [
            .. PlanCodes.All,
            .. Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
                .Where(file => !Path.GetRelativePath(source, file).StartsWith("obj", StringComparison.Ordinal))
                .SelectMany(file => Code().Matches(File.ReadAllText(file)).Select(match => match.Groups["code"].Value)),
        ];
        Assert.True(codes.Distinct().Count() > 100, "The scan finds too few codes to be trusted.");
        Assert.Empty(codes.Distinct().Where(code => !page.Contains($"| `{code}` |", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    [GeneratedRegex("""
        \b(?:Diagnostic|Error|Warn|Warning|Refuse|Ask)\(\s*"(?<code>[a-z0-9-]+(?:\.[a-z0-9-]+)+)"
        """, RegexOptions.CultureInvariant)]
    private static partial Regex Code();
}
