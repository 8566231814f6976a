using System.Text.RegularExpressions;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Documents;

/// <summary>Holds docs/verification.md to the sources that the tests check against.</summary>
public sealed partial class VerificationPageTests
{
    [Fact]
    public void Every_source_that_a_test_checks_against_stands_on_the_page()
    {
        HashSet<string> sources = [];
        foreach (string file in Directory.EnumerateFiles(Path.Combine(SamplePlans.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories))
        {
            string text = File.ReadAllText(file);
            foreach (Match check in Call().Matches(text))
            {
                string name = check.Groups["name"].Value;
                sources.Add(name.Length == 0 ? check.Groups["text"].Value : Regex.Match(text, $@"const string {name} =\s*""([^""]+)""").Groups[1].Value);
            }
        }
        Assert.True(sources.Count >= 5, "The scan found too few sources to mean anything.");
        string page = File.ReadAllText(Path.Combine(SamplePlans.Root, "docs", "verification.md"));
        Assert.Empty(sources.Where(source => source.Length == 0 || !page.Contains(source, StringComparison.Ordinal)).Order());
    }

    [GeneratedRegex(@"Published\.Check\(\s*(?:""(?<text>[^""]+)""|(?<name>[A-Z]\w*)),")]
    private static partial Regex Call();
}
