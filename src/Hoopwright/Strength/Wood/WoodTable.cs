using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Wood;

/// <summary>
/// Reference design values of sawn lumber in psi, from memory of the NDS Supplement (Southern Pine as of 2013). Machine-graded
/// wood, beams and stringers, and widths over 12 in of Southern Pine are not held.
/// </summary>
internal static class WoodTable
{
    private static readonly Citation Dimension = Register.NdsSupplement.At("table 4A");
    private static readonly Citation SouthernDimension = Register.NdsSupplement.At("table 4B");
    private static readonly Citation Timbers = Register.NdsSupplement.At("table 4D, posts and timbers");

    private const WoodGrade Best = WoodGrade.SelectStructural;

    // Dimension lumber of every width: Fb, Ft, Fc, E and Emin. Size factor not in them.
    private static readonly ImmutableArray<(WoodSpecies Species, WoodGrade Grade, double Fb, double Ft, double Fc, double E, double EMin)> AnyWidth =
    [
        (WoodSpecies.DouglasFirLarch, Best, 1500, 1000, 1700, 1.9e6, 690e3),
        (WoodSpecies.DouglasFirLarch, WoodGrade.No1, 1000, 675, 1500, 1.7e6, 620e3),
        (WoodSpecies.DouglasFirLarch, WoodGrade.No2, 900, 575, 1350, 1.6e6, 580e3),
        (WoodSpecies.DouglasFirLarch, WoodGrade.No3, 525, 325, 775, 1.4e6, 510e3),
        (WoodSpecies.HemFir, Best, 1400, 925, 1500, 1.6e6, 580e3),
        (WoodSpecies.HemFir, WoodGrade.No1, 975, 625, 1350, 1.5e6, 550e3),
        (WoodSpecies.HemFir, WoodGrade.No2, 850, 525, 1300, 1.3e6, 470e3),
        (WoodSpecies.HemFir, WoodGrade.No3, 500, 300, 725, 1.2e6, 440e3),
        (WoodSpecies.SprucePineFir, Best, 1250, 700, 1400, 1.5e6, 550e3),
        (WoodSpecies.SprucePineFir, WoodGrade.No1, 875, 450, 1150, 1.4e6, 510e3),
        (WoodSpecies.SprucePineFir, WoodGrade.No2, 875, 450, 1150, 1.4e6, 510e3),
        (WoodSpecies.SprucePineFir, WoodGrade.No3, 500, 250, 650, 1.2e6, 440e3),
    ];

    // Southern Pine dimension lumber by nominal width: Fb, Ft, Fc. Size factor in them.
    private static readonly ImmutableArray<(WoodGrade Grade, int WidthIn, double Fb, double Ft, double Fc)> SouthernPine =
    [
        (Best, 4, 2350, 1650, 1900), (WoodGrade.No1, 4, 1500, 1000, 1650), (WoodGrade.No2, 4, 1100, 675, 1450), (WoodGrade.No3, 4, 650, 400, 850),
        (Best, 6, 2100, 1450, 1800), (WoodGrade.No1, 6, 1350, 875, 1550), (WoodGrade.No2, 6, 1000, 600, 1400), (WoodGrade.No3, 6, 575, 350, 800),
        (Best, 8, 1950, 1350, 1700), (WoodGrade.No1, 8, 1250, 800, 1500), (WoodGrade.No2, 8, 925, 550, 1350), (WoodGrade.No3, 8, 525, 325, 775),
        (Best, 10, 1700, 1150, 1650), (WoodGrade.No1, 10, 1050, 700, 1450), (WoodGrade.No2, 10, 800, 475, 1300), (WoodGrade.No3, 10, 475, 275, 750),
        (Best, 12, 1600, 1100, 1650), (WoodGrade.No1, 12, 1000, 650, 1400), (WoodGrade.No2, 12, 750, 450, 1250), (WoodGrade.No3, 12, 450, 250, 725),
    ];

    // Posts and timbers: Fb, Ft, Fc, E, Emin. No. 3 is not listed for them.
    private static readonly ImmutableArray<(WoodSpecies Species, WoodGrade Grade, double Fb, double Ft, double Fc, double E, double EMin)> Posts =
    [
        (WoodSpecies.SouthernPine, Best, 1500, 1000, 950, 1.5e6, 550e3),
        (WoodSpecies.SouthernPine, WoodGrade.No1, 1350, 900, 825, 1.5e6, 550e3),
        (WoodSpecies.SouthernPine, WoodGrade.No2, 850, 550, 525, 1.2e6, 440e3),
        (WoodSpecies.DouglasFirLarch, Best, 1500, 1000, 1150, 1.6e6, 580e3),
        (WoodSpecies.DouglasFirLarch, WoodGrade.No1, 1200, 825, 1000, 1.6e6, 580e3),
        (WoodSpecies.DouglasFirLarch, WoodGrade.No2, 750, 475, 700, 1.3e6, 470e3),
        (WoodSpecies.HemFir, Best, 1200, 800, 975, 1.3e6, 470e3),
        (WoodSpecies.HemFir, WoodGrade.No1, 975, 650, 850, 1.3e6, 470e3),
        (WoodSpecies.HemFir, WoodGrade.No2, 575, 375, 575, 1.1e6, 400e3),
        (WoodSpecies.SprucePineFir, Best, 1050, 700, 800, 1.3e6, 470e3),
        (WoodSpecies.SprucePineFir, WoodGrade.No1, 850, 550, 700, 1.3e6, 470e3),
        (WoodSpecies.SprucePineFir, WoodGrade.No2, 500, 325, 500, 1.0e6, 370e3),
    ];

    /// <summary>The values for a size, or null where none are held.</summary>
    internal static WoodValues? Find(WoodSpecies species, WoodGrade grade, WoodSection section) => section switch
    {
        { IsPost: true } => Post(species, grade),
        { IsTimber: true } => null,
        _ when species == WoodSpecies.SouthernPine => Southern(grade, section),
        _ => OfAnyWidth(species, grade),
    };

    /// <summary>Specific gravity G of the species, for fasteners; NDS table 12.3.3A, from memory.</summary>
    internal static double SpecificGravity(WoodSpecies species) => species switch
    {
        WoodSpecies.SouthernPine => 0.55,
        WoodSpecies.DouglasFirLarch => 0.50,
        WoodSpecies.HemFir => 0.43,
        WoodSpecies.SprucePineFir => 0.42,
    };

    private static WoodValues? OfAnyWidth(WoodSpecies species, WoodGrade grade)
    {
        var row = AnyWidth.Single(row => row.Species == species && row.Grade == grade);
        (double shear, double bearing) = species switch
        {
            WoodSpecies.DouglasFirLarch => (180, 625),
            WoodSpecies.HemFir => (150, 405),
            WoodSpecies.SprucePineFir => (135, 425),
            WoodSpecies.SouthernPine => (175, 565),
        };
        return Values(species, grade, row.Fb, row.Ft, shear, bearing, row.Fc, row.E, row.EMin, Dimension);
    }

    private static WoodValues? Southern(WoodGrade grade, WoodSection section)
    {
        int widthIn = section.WidthM switch
        {
            double width when WoodSection.AtMost(width, 3.5) => 4,
            double width when WoodSection.AtMost(width, 5.5) => 6,
            double width when WoodSection.AtMost(width, 7.25) => 8,
            double width when WoodSection.AtMost(width, 9.25) => 10,
            double width when WoodSection.AtMost(width, 11.25) => 12,
            _ => 0,
        };
        if (widthIn == 0) return null;
        var row = SouthernPine.Single(row => row.Grade == grade && row.WidthIn == widthIn);
        (double young, double youngMin) = grade switch
        {
            WoodGrade.SelectStructural => (1.8e6, 660e3),
            WoodGrade.No1 => (1.6e6, 580e3),
            WoodGrade.No2 => (1.4e6, 510e3),
            WoodGrade.No3 => (1.3e6, 470e3),
        };
        return Values(WoodSpecies.SouthernPine, grade, row.Fb, row.Ft, 175, 565, row.Fc, young, youngMin, SouthernDimension) with { HasSizeFactor = true };
    }

    private static WoodValues? Post(WoodSpecies species, WoodGrade grade)
    {
        if (grade == WoodGrade.No3) return null;
        var row = Posts.Single(row => row.Species == species && row.Grade == grade);
        (double shear, double bearing) = species switch
        {
            WoodSpecies.SouthernPine => (165, 375),
            WoodSpecies.DouglasFirLarch => (170, 625),
            WoodSpecies.HemFir => (140, 405),
            WoodSpecies.SprucePineFir => (125, 425),
        };
        // The table of Southern Pine timbers holds for wet and dry wood alike.
        return Values(species, grade, row.Fb, row.Ft, shear, bearing, row.Fc, row.E, row.EMin, Timbers) with { HoldsWet = species == WoodSpecies.SouthernPine };
    }

    private static WoodValues Values(
        WoodSpecies species, WoodGrade grade, double fb, double ft, double fv, double bearing, double fc, double young, double youngMin, Citation source) => new()
        {
            Species = species,
            Grade = grade,
            BendingPa = fb * PsiPa,
            TensionPa = ft * PsiPa,
            ShearPa = fv * PsiPa,
            BearingPa = bearing * PsiPa,
            CompressionPa = fc * PsiPa,
            YoungPa = young * PsiPa,
            YoungMinPa = youngMin * PsiPa,
            SpecificGravity = SpecificGravity(species),
            HasSizeFactor = false,
            HoldsWet = false,
            Source = source,
        };
}
