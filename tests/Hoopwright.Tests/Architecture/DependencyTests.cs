using System.Text.RegularExpressions;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Architecture;

/// <summary>Holds the folders of the domain to one order: a folder uses only folders before it.</summary>
public sealed partial class DependencyTests
{
    private static readonly string[] Order =
    [
        "Running", "Lists", "Quantities", "Sources", "Diagnostics", "Geometry", "ModelFiles", "Cutting", "Scheduling", "Frames", "Sun", "Weather", "Plans", "SiteBooks", "Layout", "AsBuilt", "Cover", "Strength", "Takeoff", "Pricing", "Cuts", "BeforeCuts", "Orders", "Days", "CoverSteps", "BuildSteps", "Calendar", "Inside", "Upkeep",
        "Packets", "Comparisons", "Sweeps",
    ];

    private static string Domain => Path.Combine(SamplePlans.Root, "src", "Hoopwright");

    [Fact]
    public void The_list_of_folders_is_the_real_one() => Assert.Equal(
        Order.Order(StringComparer.Ordinal),
        Directory.GetDirectories(Domain).Select(folder => Path.GetFileName(folder)!).Where(name => name is not ("bin" or "obj")).Order(StringComparer.Ordinal));

    [Fact]
    public void A_folder_uses_only_folders_before_it()
    {
        var wrong = new List<string>();
        int seen = 0;
        foreach (string folder in Order)
        {
            foreach (string file in Directory.GetFiles(Path.Combine(Domain, folder), "*.cs", SearchOption.AllDirectories))
            {
                foreach (Match used in Used().Matches(File.ReadAllText(file)))
                {
                    seen++;
                    if (Array.IndexOf(Order, used.Groups["folder"].Value) > Array.IndexOf(Order, folder)) wrong.Add($"{Path.GetRelativePath(Domain, file)} uses {used.Groups["folder"].Value}");
                }
            }
        }
        Assert.Empty(wrong);
        Assert.True(seen > 200, "The rule matched next to nothing, so it holds nothing.");
    }

    [GeneratedRegex(@"^using (static )?Hoopwright\.(?<folder>[A-Za-z]+)", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Used();
}
