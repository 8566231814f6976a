using Hoopwright.Plans;
using Hoopwright.Strength.Wood;
using Hoopwright.Testing;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Tests.Strength.Wood;

/// <summary>Values of wood cell by cell, written down apart from the code.</summary>
public sealed class WoodTableTests
{
    private const string Supplement = "NDS supplement, tables 4A, 4B and 4D, psi from memory; Southern Pine of 4 and 6 in and of 5 by 5 in also from an open collection of rounded SI values";

    // Species, grade, thickness and width in; Fb, Ft, Fv, Fc across the grain, Fc along it psi; E and Emin in ksi.
    [Theory]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.SelectStructural, 1.5, 3.5, 2350, 1650, 175, 565, 1900, 1800, 660)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No1, 1.5, 3.5, 1500, 1000, 175, 565, 1650, 1600, 580)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No2, 1.5, 3.5, 1100, 675, 175, 565, 1450, 1400, 510)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No3, 1.5, 3.5, 650, 400, 175, 565, 850, 1300, 470)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.SelectStructural, 1.5, 5.5, 2100, 1450, 175, 565, 1800, 1800, 660)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No1, 1.5, 5.5, 1350, 875, 175, 565, 1550, 1600, 580)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No2, 3.5, 5.5, 1000, 600, 175, 565, 1400, 1400, 510)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No3, 1.5, 5.5, 575, 350, 175, 565, 800, 1300, 470)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.SelectStructural, 1.5, 7.25, 1950, 1350, 175, 565, 1700, 1800, 660)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No1, 1.5, 7.25, 1250, 800, 175, 565, 1500, 1600, 580)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No2, 1.5, 7.25, 925, 550, 175, 565, 1350, 1400, 510)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No3, 1.5, 7.25, 525, 325, 175, 565, 775, 1300, 470)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.SelectStructural, 1.5, 9.25, 1700, 1150, 175, 565, 1650, 1800, 660)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No1, 1.5, 9.25, 1050, 700, 175, 565, 1450, 1600, 580)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No2, 1.5, 9.25, 800, 475, 175, 565, 1300, 1400, 510)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No3, 1.5, 9.25, 475, 275, 175, 565, 750, 1300, 470)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.SelectStructural, 1.5, 11.25, 1600, 1100, 175, 565, 1650, 1800, 660)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No1, 1.5, 11.25, 1000, 650, 175, 565, 1400, 1600, 580)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No2, 1.5, 11.25, 750, 450, 175, 565, 1250, 1400, 510)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No3, 1.5, 11.25, 450, 250, 175, 565, 725, 1300, 470)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.SelectStructural, 5.5, 5.5, 1500, 1000, 165, 375, 950, 1500, 550)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No1, 5.5, 5.5, 1350, 900, 165, 375, 825, 1500, 550)]
    [InlineData(WoodSpecies.SouthernPine, WoodGrade.No2, 5.5, 5.5, 850, 550, 165, 375, 525, 1200, 440)]
    [InlineData(WoodSpecies.DouglasFirLarch, WoodGrade.SelectStructural, 1.5, 5.5, 1500, 1000, 180, 625, 1700, 1900, 690)]
    [InlineData(WoodSpecies.DouglasFirLarch, WoodGrade.No1, 1.5, 5.5, 1000, 675, 180, 625, 1500, 1700, 620)]
    [InlineData(WoodSpecies.DouglasFirLarch, WoodGrade.No2, 1.5, 5.5, 900, 575, 180, 625, 1350, 1600, 580)]
    [InlineData(WoodSpecies.DouglasFirLarch, WoodGrade.No3, 1.5, 5.5, 525, 325, 180, 625, 775, 1400, 510)]
    [InlineData(WoodSpecies.DouglasFirLarch, WoodGrade.SelectStructural, 5.5, 5.5, 1500, 1000, 170, 625, 1150, 1600, 580)]
    [InlineData(WoodSpecies.DouglasFirLarch, WoodGrade.No1, 5.5, 5.5, 1200, 825, 170, 625, 1000, 1600, 580)]
    [InlineData(WoodSpecies.DouglasFirLarch, WoodGrade.No2, 5.5, 5.5, 750, 475, 170, 625, 700, 1300, 470)]
    [InlineData(WoodSpecies.HemFir, WoodGrade.SelectStructural, 1.5, 5.5, 1400, 925, 150, 405, 1500, 1600, 580)]
    [InlineData(WoodSpecies.HemFir, WoodGrade.No1, 1.5, 5.5, 975, 625, 150, 405, 1350, 1500, 550)]
    [InlineData(WoodSpecies.HemFir, WoodGrade.No2, 1.5, 5.5, 850, 525, 150, 405, 1300, 1300, 470)]
    [InlineData(WoodSpecies.HemFir, WoodGrade.No3, 1.5, 5.5, 500, 300, 150, 405, 725, 1200, 440)]
    [InlineData(WoodSpecies.HemFir, WoodGrade.SelectStructural, 5.5, 5.5, 1200, 800, 140, 405, 975, 1300, 470)]
    [InlineData(WoodSpecies.HemFir, WoodGrade.No1, 5.5, 5.5, 975, 650, 140, 405, 850, 1300, 470)]
    [InlineData(WoodSpecies.HemFir, WoodGrade.No2, 5.5, 5.5, 575, 375, 140, 405, 575, 1100, 400)]
    [InlineData(WoodSpecies.SprucePineFir, WoodGrade.SelectStructural, 1.5, 5.5, 1250, 700, 135, 425, 1400, 1500, 550)]
    [InlineData(WoodSpecies.SprucePineFir, WoodGrade.No1, 1.5, 5.5, 875, 450, 135, 425, 1150, 1400, 510)]
    [InlineData(WoodSpecies.SprucePineFir, WoodGrade.No2, 1.5, 5.5, 875, 450, 135, 425, 1150, 1400, 510)]
    [InlineData(WoodSpecies.SprucePineFir, WoodGrade.No3, 1.5, 5.5, 500, 250, 135, 425, 650, 1200, 440)]
    [InlineData(WoodSpecies.SprucePineFir, WoodGrade.SelectStructural, 5.5, 5.5, 1050, 700, 125, 425, 800, 1300, 470)]
    [InlineData(WoodSpecies.SprucePineFir, WoodGrade.No1, 5.5, 5.5, 850, 550, 125, 425, 700, 1300, 470)]
    [InlineData(WoodSpecies.SprucePineFir, WoodGrade.No2, 5.5, 5.5, 500, 325, 125, 425, 500, 1000, 370)]
    public void A_grade_of_wood_has_the_values_of_its_table(WoodSpecies species, WoodGrade grade, double thickIn, double wideIn, double fb, double ft, double fv, double bearing, double fc, double young, double youngMin)
    {
        WoodValues found = WoodTable.Find(species, grade, new WoodSection(thickIn * InchM, wideIn * InchM))!;
        double[] cells = [fb, ft, fv, bearing, fc, young, youngMin];
        double[] actual = [found.BendingPa, found.TensionPa, found.ShearPa, found.BearingPa, found.CompressionPa, found.YoungPa / 1000, found.YoungMinPa / 1000];
        for (int cell = 0; cell < cells.Length; cell++) Published.Check(Supplement, $"{species} {grade} {wideIn} in, cell {cell + 1}", cells[cell], actual[cell] / PsiPa, 1e-6, "exact");
    }

    // Load, unbraced length and depth as numbers of depths; effective length in the same.
    [Theory]
    [InlineData(nameof(BeamLoad.Uniform), 6, 12.36)]
    [InlineData(nameof(BeamLoad.Uniform), 10, 19.3)]
    [InlineData(nameof(BeamLoad.Middle), 6, 10.8)]
    [InlineData(nameof(BeamLoad.Middle), 10, 16.7)]
    [InlineData(nameof(BeamLoad.EndMoments), 6, 11.04)]
    [InlineData(nameof(BeamLoad.EndMoments), 10, 18.4)]
    [InlineData(nameof(BeamLoad.CantileverUniform), 6, 7.98)]
    [InlineData(nameof(BeamLoad.CantileverUniform), 10, 12)]
    [InlineData(nameof(BeamLoad.CantileverEnd), 6, 11.22)]
    [InlineData(nameof(BeamLoad.CantileverEnd), 10, 17.4)]
    [InlineData(nameof(BeamLoad.Any), 6, 12.36)]
    [InlineData(nameof(BeamLoad.Any), 10, 19.3)]
    [InlineData(nameof(BeamLoad.Any), 20, 36.8)]
    public void Effective_lengths_of_beams(string load, double unbraced, double expected) =>
        Published.Check("NDS-2018, table 3.3.3 with its notes, from memory", "le/d", expected, WoodStability.BeamEffectiveLengthM(unbraced * 0.2, 0.2, Enum.Parse<BeamLoad>(load)) / 0.2, 1e-9, "exact");
}
