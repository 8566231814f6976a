using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Cover.Pull;

/// <summary>What is known of the strength of a film.</summary>
/// <param name="Name">What was tested or listed.</param>
/// <param name="LeastPa">Lower end, tensile strength unless the name says otherwise.</param>
/// <param name="MostPa">Upper end.</param>
/// <param name="LeastYoungPa">Lower end of E, short-term at room temperature; 0 where not given.</param>
/// <param name="MostYoungPa">Upper end of E; 0 where not given.</param>
/// <param name="Source">Where it stands.</param>
internal sealed record FilmStrength(string Name, double LeastPa, double MostPa, double LeastYoungPa, double MostYoungPa, Citation Source)
{
    private static readonly Citation Blown = new("Advances in Materials Science and Engineering 2019, article 1692126", "table 5, blown covering film", Standing.Published);

    /// <summary>One layer, new, blown.</summary>
    internal static FilmStrength Monolayer { get; } = new("covering film of one layer, new", 30.4e6, 32.1e6, 126e6, 176e6, Blown);

    /// <summary>Three layers, new, blown.</summary>
    internal static FilmStrength ThreeLayer { get; } = new("covering film of three layers, new", 17.8e6, 25.0e6, 207e6, 299e6, Blown);

    /// <summary>Three layers after nine months outdoors.</summary>
    internal static FilmStrength Aged { get; } = new("covering film of three layers, nine months outdoors", 14e6, 14e6, 0, 0,
        new Citation("Advances in Materials Science (Sciendo) 2024, adms-2024-0008", "strength after ageing", Standing.Published));

    /// <summary>The material in bulk.</summary>
    internal static FilmStrength Bulk { get; } = new("low-density polyethylene in bulk", 5e6, 26e6, 200e6, 300e6,
        new Citation("matmake.com citing Materials Handbook; designerdata.nl", "low-density polyethylene", Standing.Published));

    /// <summary>Where film starts to stretch for good.</summary>
    internal static FilmStrength Yield { get; } = new("yield of low-density polyethylene film at 23 °C", 8e6, 10e6, 0, 0, Citation.FromMemory);

    /// <summary>All rows.</summary>
    internal static ImmutableArray<FilmStrength> All { get; } = [Monolayer, ThreeLayer, Aged, Bulk, Yield];

    /// <summary>Thermal expansion, per kelvin, lower and upper end.</summary>
    internal static (double Least, double Most, Citation Source) ExpansionPerK { get; } =
        (1.0e-4, 2.2e-4, new Citation("matmake.com citing Materials Handbook; makeitfrom.com; greensutra.in", "low-density polyethylene", Standing.Published));

    /// <summary>
    /// What is left of E after weeks of pull at 20 °C. Pretension is as good as gone after the first warm days: every load is
    /// looked at with the whole of it and with none.
    /// </summary>
    internal static (double Least, double Most, Citation Source) LastingYoungPart { get; } = (1.0 / 3, 1.0 / 2, Citation.FromMemory);
}
