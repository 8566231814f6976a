using Hoopwright.Strength;
using Hoopwright.Strength.Steel;
using Hoopwright.Testing;
using static Hoopwright.Strength.CustomaryUnits;
using static Hoopwright.Tests.Strength.Steel.Tubes;

namespace Hoopwright.Tests.Strength.Steel;

public sealed class AisiTubeTests
{
    private const string ExampleII8 = "AISI Cold-Formed Steel Design Manual 2013, Example II-8, as quoted by a published verification manual (docs.bentley.com)";
    private const string Outside = "formulas of AISI S100-16 from memory, worked out outside this project";

    [Fact]
    public void The_cylindrical_tube_of_example_II_8_has_the_printed_strength()
    {
        const double Inch2 = InchM * InchM, Inch3 = Inch2 * InchM;
        TubeSection tube = Round(8.000, 0.100);
        Published.Check(ExampleII8, "A, in²", 2.482, tube.AreaM2 / Inch2, 0.0005, "last printed digit");
        Published.Check(ExampleII8, "Sf, in³", 4.841, tube.ElasticM3 / Inch3, 0.0015, "the book works with rounded radii");
        Published.Check(ExampleII8, "D/t", 80, tube.WallRatio, 1e-9, "exact");
        SteelMaterial steel = Aisi(42);
        SteelCapacity asd = AisiTube.Bending(tube, steel, DesignMethod.Asd), lrfd = AisiTube.Bending(tube, steel, DesignMethod.Lrfd);
        Published.Check(ExampleII8, "Mn/Ω, kip-in", 140, asd.Design / KipInNm, 0.6, "printed to three digits");
        Published.Check(ExampleII8, "φMn, kip-in", 221, lrfd.Design / KipInNm, 0.6, "printed to three digits");
        Published.Check(ExampleII8, "Mn/Ω recomputed by the manual, kip-in", 139.481, asd.Design / KipInNm, 0.03, "section modulus printed to four digits");
        Published.Check(ExampleII8, "φMn recomputed by the manual, kip-in", 221.286, lrfd.Design / KipInNm, 0.05, "section modulus printed to four digits");
        Published.Check(Outside, "Fc, ksi", 48.1150, asd.StressPa / KsiPa, 6e-5, "last digit");
        Published.Check(Outside, "Mn, kip-in", 232.933, asd.Nominal / KipInNm, 0.05, "section modulus rounded there");
        Assert.Equal(SteelLimitState.LocalBuckling, asd.LimitState);

        double fePa = FePa(tube, steel, 120);
        CompressionCapacity column = AisiTube.Compression(tube, steel, fePa, DesignMethod.Asd);
        Published.Check(Outside, "Fe, ksi", 157.759, fePa / KsiPa, 0.05, "radius of gyration rounded there");
        Published.Check(Outside, "λc", 0.5160, Math.Sqrt(steel.YieldPa / fePa), 1e-4, "last digit");
        Published.Check(Outside, "Fn, ksi", 37.5713, column.Strength.StressPa / KsiPa, 2e-3, "Fe rounded there");
        Published.Check(Outside, "Ae, in²", 2.4643, column.EffectiveAreaM2 / Inch2, 1e-3, "area rounded there");
        Published.Check(Outside, "Pn, kip", 92.588, column.Strength.Nominal / KipN, 0.02, "area rounded there");
        Published.Check(Outside, "Pn/Ω, kip", 51.438, column.Strength.Design / KipN, 0.01, "area rounded there");
        Published.Check(Outside, "φPn, kip", 78.700, AisiTube.Compression(tube, steel, fePa, DesignMethod.Lrfd).Strength.Design / KipN, 0.02, "area rounded there");
    }

    [Fact]
    public void A_tunnel_tube_has_the_strength_worked_out_elsewhere()
    {
        SteelMaterial steel = Aisi(50);
        TubeSection tube = Round(1.660, 0.083), wide = Round(2.375, 0.095);
        const string Why = "last digit";
        Published.Check(Outside, "Fc, ksi", 62.5, AisiTube.Bending(tube, steel, DesignMethod.Asd).StressPa / KsiPa, 1e-9, Why);
        Published.Check(Outside, "Mn, kip-in", 9.6524, AisiTube.Bending(tube, steel, DesignMethod.Asd).Nominal / KipInNm, 6e-5, Why);
        Published.Check(Outside, "Mn/Ω, kip-in", 5.7799, AisiTube.Bending(tube, steel, DesignMethod.Asd).Design / KipInNm, 6e-5, Why);
        Published.Check(Outside, "Mn, kip-in", 23.3124, AisiTube.Bending(wide, steel, DesignMethod.Asd).Nominal / KipInNm, 6e-5, Why);
        Published.Check(Outside, "Mn/Ω, kip-in", 13.9595, AisiTube.Bending(wide, steel, DesignMethod.Asd).Design / KipInNm, 6e-5, Why);
        CompressionCapacity column = AisiTube.Compression(tube, steel, FePa(tube, steel, 48), DesignMethod.Asd);
        Published.Check(Outside, "Pn, kip", 12.0867, column.Strength.Nominal / KipN, 6e-5, Why);
        Published.Check(Outside, "Pn/Ω, kip", 6.7148, column.Strength.Design / KipN, 6e-5, Why);
        CompressionCapacity tall = AisiTube.Compression(wide, steel, FePa(wide, steel, 120), DesignMethod.Asd);
        Published.Check(Outside, "Pn, kip", 7.8542, tall.Strength.Nominal / KipN, 6e-5, Why);
        Published.Check(Outside, "Pn/Ω, kip", 4.3634, tall.Strength.Design / KipN, 6e-5, Why);
    }

    [Fact]
    public void A_wall_past_the_limit_of_the_standard_carries_nothing()
    {
        SteelMaterial steel = Aisi(50);
        double limit = 0.441 * steel.YoungOverYield;
        Assert.True(AisiTube.Bending(Round(3, 3 / (limit - 0.1)), steel, DesignMethod.Asd).Nominal > 0);
        Assert.Equal(SteelLimitState.OutsideStandard, AisiTube.Bending(Round(3, 3 / (limit + 0.1)), steel, DesignMethod.Asd).LimitState);
        Assert.Equal(WallClass.OutsideStandard, AisiTube.Compression(Round(3, 3 / (limit + 0.1)), steel, 1e9, DesignMethod.Asd).Wall);
    }
}
