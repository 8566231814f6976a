namespace Hoopwright.Mutants;

/// <summary>A part of the domain and the tests that are to notice a fault in it.</summary>
/// <param name="Name">What it is asked for by.</param>
/// <param name="Folders">Its folders under <c>src/Hoopwright</c>.</param>
/// <param name="Tests">Its namespaces under <c>Hoopwright.Tests</c>; an asterisk stands for any letters.</param>
internal sealed record Area(string Name, string[] Folders, string[] Tests)
{
    public static readonly Area[] All =
    [
        new("geometry", ["Geometry"], ["Geometry", "Layout", "Cover"]),
        new("loads", ["Strength/Loads"], ["Strength.Loads", "Strength.Kept", "PublishedCases"]),
        new("checks", ["Strength/Steel", "Strength/Wood", "Strength/Soil", "Strength/Fasteners", "Strength/Posts", "Strength/Film"], ["Strength.Steel", "Strength.Wood", "Strength.Soil", "Strength.Fasteners", "Strength.Posts", "Strength.Film", "Strength.Kept", "PublishedCases"]),
        new("cutting", ["Cutting"], ["Cutting", "Cuts"]),
        new("tension", ["Cover/Pull"], ["Cover"]),
        new("merge", ["SiteBooks"], ["SiteBooks"]),
    ];

    /// <summary>What the runner of the tests is told, so that it runs just these.</summary>
    public IEnumerable<string> Filter => Tests.SelectMany(each => new[] { "-namespace", $"Hoopwright.Tests.{each}" });
}
