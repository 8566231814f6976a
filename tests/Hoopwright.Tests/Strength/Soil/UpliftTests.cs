using CsCheck;
using Hoopwright.Plans;
using Hoopwright.Strength.Soil;
using Hoopwright.Testing;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Tests.Strength.Soil;

public sealed class UpliftTests
{
    private const string Plates = "Soil Reinforcement for Anchor Plates and Uplift Response, Butterworth-Heinemann, Appendix G (square plate in dense sand)";
    private const string Outside = "formulas of Meyerhof and Adams (1968) and of weight and friction, worked out outside this project";

    private static readonly Gen<SoilClass> Grounds = Gen.Enum<SoilClass>();

    // s printed, H/B, breakout factor Q/(γ A H) printed; Ku tan φ 0.92.
    [Theory]
    [InlineData(1, 1.48, 3.70, 3.723)]
    [InlineData(2, 1.96, 8.20, 8.213)]
    [InlineData(3, 2.44, 14.47, 14.470)]
    [InlineData(4, 2.92, 22.51, 22.491)]
    public void A_square_plate_in_dense_sand_breaks_out_as_printed(double depthRatio, double shape, double printed, double byFormula)
    {
        const double WidthM = 0.1, UnitWeight = 16e3;
        double m = (shape - 1) / depthRatio;
        double ultimateN = ShallowAnchor.RectangleN(WidthM, WidthM, depthRatio * WidthM, 0, UnitWeight, 0.92, m);
        double factor = ultimateN / (UnitWeight * WidthM * WidthM * depthRatio * WidthM);
        Published.Check(Plates, "breakout factor", printed, factor, 0.025, "s and Ku tan φ are printed to three digits");
        Published.Check(Outside, "breakout factor", byFormula, factor, 1.5e-3, "s is printed to three digits");
    }

    [Fact]
    public void A_collar_two_feet_under_is_held_as_worked_out_elsewhere()
    {
        double weight = 110 * PcfNPerM3, angle = 30 * Math.PI / 180;
        Published.Check(Outside, "prism, lb", 172.79, ShallowAnchor.PrismN(FootM, 2 * FootM, weight) / PoundN, 0.006, "last digit");
        Published.Check(Outside, "ultimate, lb", 665.60, ShallowAnchor.CircleN(FootM, 2 * FootM, 0, weight, angle) / PoundN, 0.02, "its two parts are rounded");
        Published.Check(Outside, "cone of 15°, lb", 424.14, ShallowAnchor.ConeWeightN(FootM, 2 * FootM, 15 * Math.PI / 180, weight) / PoundN, 0.006, "last digit");
        Published.Check(Outside, "cone of 30°, lb", 879.00, ShallowAnchor.ConeWeightN(FootM, 2 * FootM, angle, weight) / PoundN, 0.006, "last digit");
        Published.Check(Outside, "collar of 12 x 24 in, lb", 227.77, ShallowAnchor.PrismN(FootM, 2 * FootM, 145 * PcfNPerM3) / PoundN, 0.006, "last digit");
    }

    [Fact]
    public void A_bare_pipe_rubs_as_worked_out_elsewhere()
    {
        Published.Check(Outside, "pipe in clay of 130 psf, lb", 161.66, Shaft.ClayN(2.375 * InchM, 2 * FootM, 130 * PsfPa) / PoundN, 0.006, "last digit");
        double sandN = Shaft.SandN(2.375 * InchM, 0, 2 * FootM, 110 * PcfNPerM3, 0.5 * Math.Tan(20 * Math.PI / 180));
        Published.Check(Outside, "pipe in sand, lb", 24.9, sandN / PoundN, 0.05, "last digit");
        Assert.Equal(500, Shaft.CodeFrictionPa(SoilTable.For(SoilClass.Gravel)!) / PsfPa, 1e-9);
        Assert.Equal(250, Shaft.CodeFrictionPa(SoilTable.For(SoilClass.Clay)!) / PsfPa, 1e-9);
    }

    [Fact]
    public void The_shape_coefficient_meets_the_printed_angles_and_runs_straight_between()
    {
        // Meyerhof and Adams, from memory.
        foreach ((double angleDeg, double m, double critical) in new[] { (20, 0.05, 2.5), (25, 0.10, 3), (30, 0.15, 4), (35, 0.25, 5), (40, 0.35, 7), (45, 0.50, 9.0) })
        {
            Assert.Equal(m, ShallowAnchor.ShapeCoefficient(angleDeg * Math.PI / 180), 1e-9);
            Assert.Equal(critical, ShallowAnchor.CriticalDepthRatio(angleDeg * Math.PI / 180), 1e-9);
        }
        Assert.Equal(0.30, ShallowAnchor.ShapeCoefficient(37.5 * Math.PI / 180), 1e-9);
        Assert.Equal(0.05, ShallowAnchor.ShapeCoefficient(0));
        Assert.Equal(0.50, ShallowAnchor.ShapeCoefficient(50 * Math.PI / 180));
    }

    [Fact]
    public void Uplift_never_falls_with_depth_width_or_better_soil() =>
        Gen.Select(Gen.Double[0.1, 1], Gen.Double[0, 3], Gen.Double[0, 20e3], Gen.Double[0, 45]).Sample((widthM, depthM, cohesionPa, angleDeg) =>
        {
            double angle = angleDeg * Math.PI / 180;
            double before = ShallowAnchor.CircleN(widthM, depthM, cohesionPa, 17e3, angle);
            Assert.True(before >= 0 && double.IsFinite(before));
            const double Rounding = 1e-6;
            Assert.True(ShallowAnchor.CircleN(widthM, depthM + 0.1, cohesionPa, 17e3, angle) >= before - Rounding);
            Assert.True(ShallowAnchor.CircleN(widthM + 0.05, depthM, cohesionPa, 17e3, angle) >= before - Rounding);
            Assert.True(ShallowAnchor.CircleN(widthM, depthM, cohesionPa + 1000, 17e3, angle) >= before - Rounding);
            Assert.True(ShallowAnchor.CircleN(widthM, depthM, cohesionPa, 17e3, angle + 0.01) >= before - Rounding);
        });

    [Fact]
    public void The_answer_has_two_ends_and_the_lower_one_is_used() =>
        Gen.Select(Grounds, Gen.Int[0, 2], Gen.Double[0.04, 0.4], Gen.Double[0.3, 2], Gen.Double[1, 5000]).Sample((ground, kind, widthM, depthM, pullN) =>
        {
            UpliftCheck check = UpliftCheck.Of(SoilTable.For(ground), Anchor(kind, widthM, depthM, 0), pullN);
            Assert.True(check.AllowedN.Least <= check.AllowedN.Most && check.UltimateN.Least <= check.UltimateN.Most);
            Assert.True(check.AllowedN.Most < check.UltimateN.Most && check.Utilisation >= check.UtilisationAtBest);
            Checks.SaysWhy(check);
            Assert.True(UpliftCheck.Of(SoilTable.For(ground), Anchor(kind, widthM, depthM, 0.5), pullN).Utilisation >= check.Utilisation - 1e-12);
        });

    [Fact]
    public void In_soft_ground_only_weight_holds()
    {
        UpliftCheck check = UpliftCheck.Of(SoilTable.For(SoilClass.Soft), new ConcretePlug(0.25, 0.9, 1000) { PostWeightN = 50 }, 315);
        Assert.Equal((0.5, 0.5), (Math.Round(check.Utilisation, 9), Math.Round(check.UtilisationAtBest, 9)));
        Assert.Equal(1050, check.UltimateN.Most);
    }

    [Fact]
    public void A_bare_post_in_loose_sand_holds_next_to_nothing_and_a_plug_holds_its_weight_and_more()
    {
        SoilValues sand = SoilTable.For(SoilClass.Sand)!;
        // 440 lb a post at 80 mph is an extension bulletin's example of uplift on bows 4 ft apart.
        UpliftCheck bare = UpliftCheck.Of(sand, new DrivenPost(2.375 * InchM, 30 * InchM) { PostWeightN = 10 * PoundN }, 440 * PoundN);
        Assert.True(bare.Utilisation > 20 && bare.UtilisationAtBest > 3);
        UpliftCheck plug = UpliftCheck.Of(sand, new ConcretePlug(12 * InchM, 48 * InchM, 456 * PoundN), 440 * PoundN);
        Assert.True(plug.Utilisation < bare.Utilisation / 10);
    }

    [Fact]
    public void A_screw_anchor_is_judged_by_its_torque()
    {
        double factor = ScrewAnchor.TorqueFactorOf(1.5 * InchM)!.Value;
        ScrewAnchor tested = ScrewAnchor.Of(factor, 500 * PoundN * FootM, isTested: true, 1250 * PoundN);
        // 10 per foot and 500 lb·ft make 5000 lb, half of it with pull tests.
        Assert.Equal((5000, 2500, 0.5), (Math.Round(tested.UltimateN / PoundN, 6), Math.Round(tested.AllowedN / PoundN, 6), Math.Round(tested.Utilisation, 9)));
        Assert.Equal(1.5, ScrewAnchor.Of(factor, 500, false, 1000).Utilisation / ScrewAnchor.Of(factor, 500, true, 1000).Utilisation, 1e-9);
        Assert.Equal(7 / FootM, ScrewAnchor.TorqueFactorOf(3.5 * InchM));
        Assert.Null(ScrewAnchor.TorqueFactorOf(4 * InchM));
        Checks.SaysWhy(tested);
    }

    private static Anchorage Anchor(int kind, double widthM, double depthM, double frostM) => kind switch
    {
        0 => new DrivenPost(widthM, depthM) { PostWeightN = 40, FrostDepthM = frostM },
        1 => new ConcretePlug(widthM, depthM, 23e3 * widthM * widthM * depthM) { PostWeightN = 40, FrostDepthM = frostM },
        _ => new BuriedCollar(widthM, depthM, 300) { PostWeightN = 40, FrostDepthM = frostM },
    };
}
