using System.Reflection;
using System.Text.RegularExpressions;
using Hoopwright.Server.Api;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Hoopwright.Testing;

namespace Hoopwright.Server.Tests.Api;

/// <summary>Holds docs/sharing.md to what the server does.</summary>
public sealed partial class SharingPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(SamplePlans.Root, "docs", "sharing.md"));

    [Fact]
    public void Every_refusal_has_its_row_and_every_row_its_refusal()
    {
        SharingProblem[] problems =
        [
            .. typeof(Problems).GetProperties(BindingFlags.Public | BindingFlags.Static).Where(each => each.PropertyType == typeof(SharingProblem)).Select(each => (SharingProblem)each.GetValue(null)!),
            .. Enum.GetValues<StorageFault>().Select(Problems.Of), Problems.TooLarge(""), Problems.Malformed(""),
        ];
        Assert.Equal(
            problems.Select(problem => (problem.Code, problem.Status.ToString(System.Globalization.CultureInfo.InvariantCulture))).Distinct().Order(),
            Row().Matches(Page).Select(row => (row.Groups["code"].Value, row.Groups["status"].Value)).Order());
    }

    [Fact]
    public void Every_word_of_the_audit_stands_there() =>
        Assert.All(typeof(AuditWords).GetFields(BindingFlags.Public | BindingFlags.Static), word => Assert.Contains($"`{word.GetRawConstantValue()}`", Page, StringComparison.Ordinal));

    [GeneratedRegex(@"^\| `(?<code>[a-z-]+)` \| (?<status>\d+) \|", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Row();
}
