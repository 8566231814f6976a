using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>
/// The standards that loads are taken from. None of the texts is part of this project: what stands here from memory is to be
/// confirmed with the current standard before anything rests on it.
/// </summary>
internal static class LoadSources
{
    public static Citation Asce7(LoadStandard standard, string place) => new(
        standard switch
        {
            LoadStandard.Asce7Of2016 => "ASCE/SEI 7-16, Minimum Design Loads and Associated Criteria",
            LoadStandard.Asce7Of2022 => "ASCE/SEI 7-22, Minimum Design Loads and Associated Criteria",
            LoadStandard.En1991 => throw new ArgumentOutOfRangeException(nameof(standard), "EN 1991 is no part of ASCE 7."),
        },
        place, Standing.FromMemory);

    /// <summary>What both editions have alike.</summary>
    public static Citation Asce7(string place) => new("ASCE/SEI 7-16 and 7-22, Minimum Design Loads and Associated Criteria", place, Standing.FromMemory);

    public static Citation En1990(string place) => new("EN 1990, Basis of structural design", place, Standing.FromMemory);

    public static Citation EnSnow(string place) => new("EN 1991-1-3, Snow loads", place, Standing.FromMemory);

    public static Citation EnWind(string place) => new("EN 1991-1-4, Wind actions", place, Standing.FromMemory);

    /// <summary>Figures of the snow chapter that a public copy of the table was seen for.</summary>
    public static Citation SnowTables(string place) =>
        new("ASCE/SEI 7-16 snow tables as held by the open structural library xcfem/xc (github.com)", place, Standing.Published);

    /// <summary>A model of ours, from mechanics, where no standard was read.</summary>
    public static Citation OwnModel { get; } = new("model of this program, not of a standard", "", Standing.Derived);
}
