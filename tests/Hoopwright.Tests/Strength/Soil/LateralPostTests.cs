using CsCheck;
using Hoopwright.Plans;
using Hoopwright.Strength.Soil;
using Hoopwright.Testing;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Tests.Strength.Soil;

public sealed class LateralPostTests
{
    private const string Solved = "worked example of IBC 1807.3.2.2 (constrained pole, 30 kip), published sheet 560795266";
    private const string Code = "IBC 2018/2021 table 1806.2 (up.codes)";
    private const string Outside = "IBC 1807.3.2 solved outside this project";

    private static readonly Gen<(double DepthM, double HeightM, double WidthM, double LateralPaPerM)> Posts =
        Gen.Select(Gen.Double[0.1, 6], Gen.Double[0, 4], Gen.Double[0.03, 1], Gen.Double[10e3, 80e3]);

    [Fact]
    public void A_pole_held_at_the_ground_needs_the_printed_depth()
    {
        double lateralPaPerM = 2 * 350 * PcfNPerM3;
        double depthM = LateralPost.HeldDepthM(30_000 * PoundN * 3 * FootM, 4.5 * FootM, lateralPaPerM);
        Published.Check(Solved, "d, m", 1.509, depthM, 0.0005, "last printed digit");
        Published.Check(Solved, "S3, kPa", 165.9, LateralPost.PressurePa(lateralPaPerM, depthM) / 1000, 0.1, "the sheet takes d rounded");
        Published.Check(Outside, "d, m", 1.50935, depthM, 6e-6, "last digit");
    }

    // P lb, h ft, b ft, S psf/ft, factor: d free, d held, ft.
    [Theory]
    [InlineData(200, 4, 2.375 / 12, 150, 2, 6.3211, 3.8544)]
    [InlineData(200, 4, 2.375 / 12, 150, 1, 8.4647, 4.8563)]
    [InlineData(200, 4, 2.375 / 12, 100, 2, 7.4909, 4.4122)]
    [InlineData(500, 3, 1.0, 150, 2, 4.4956, 2.7698)]
    [InlineData(300, 6, 0.5, 100, 1, 8.6091, 5.3485)]
    public void A_post_needs_the_depth_worked_out_elsewhere(double forceLb, double heightFt, double widthFt, double lateralPsf, double factor, double freeFt, double heldFt)
    {
        double lateral = factor * lateralPsf * PcfNPerM3;
        Published.Check(Outside, "free d, ft", freeFt, LateralPost.FreeDepthM(forceLb * PoundN, heightFt * FootM, widthFt * FootM, lateral) / FootM, 6e-5, "last digit");
        Published.Check(Outside, "held d, ft", heldFt, LateralPost.HeldDepthM(forceLb * heightFt * PoundN * FootM, widthFt * FootM, lateral) / FootM, 6e-5, "last digit");
        if (factor == 2 && lateralPsf == 150 && heightFt == 4)
        {
            double pressurePa = LateralPost.PressurePa(lateral, freeFt * FootM / 3);
            Published.Check(Outside, "S1, psf", 632.11, pressurePa / PsfPa, 0.006, "last digit");
            Published.Check(Outside, "A, ft", 3.7408, 2.34 * 200 * PoundN / (pressurePa * widthFt * FootM) / FootM, 6e-5, "last digit");
        }
    }

    [Fact]
    public void The_depth_a_load_needs_allows_that_load() =>
        Gen.Select(Posts, Gen.Double[1, 20e3]).Sample((post, forceN) =>
        {
            double freeM = LateralPost.FreeDepthM(forceN, post.HeightM, post.WidthM, post.LateralPaPerM);
            Assert.Equal(1, LateralPost.FreeLoadN(freeM, post.HeightM, post.WidthM, post.LateralPaPerM) / forceN, 1e-9);
            // The code's own equation, put in the way it is printed.
            double s1 = LateralPost.PressurePa(post.LateralPaPerM, Math.Min(freeM, LateralPost.DeepestPressureM) / 3), a = 2.34 * forceN / (s1 * post.WidthM);
            Assert.Equal(1, 0.5 * a * (1 + Math.Sqrt(1 + (4.36 * post.HeightM / a))) / freeM, 1e-9);

            double momentNm = forceN * 1.5, heldM = LateralPost.HeldDepthM(momentNm, post.WidthM, post.LateralPaPerM);
            Assert.Equal(1, LateralPost.HeldMomentNm(heldM, post.WidthM, post.LateralPaPerM) / momentNm, 1e-9);
            Assert.Equal(1, Math.Sqrt(4.25 * momentNm / (LateralPost.PressurePa(post.LateralPaPerM, heldM) * post.WidthM)) / heldM, 1e-9);
        });

    [Fact]
    public void Deeper_wider_and_lower_never_carry_less() =>
        Gen.Select(Posts, Gen.Double[1, 2], Gen.Double[1, 2]).Sample((post, more, wider) =>
        {
            double before = LateralPost.FreeLoadN(post.DepthM, post.HeightM, post.WidthM, post.LateralPaPerM);
            Assert.True(LateralPost.FreeLoadN(post.DepthM * more, post.HeightM, post.WidthM * wider, post.LateralPaPerM) >= before);
            Assert.True(LateralPost.FreeLoadN(post.DepthM, post.HeightM / more, post.WidthM, post.LateralPaPerM) >= before);
            Assert.True(LateralPost.HeldMomentNm(post.DepthM * more, post.WidthM * wider, post.LateralPaPerM) >= LateralPost.HeldMomentNm(post.DepthM, post.WidthM, post.LateralPaPerM));
        });

    [Theory]
    [InlineData(nameof(SoilClass.Bedrock), 12_000, 1200, 0.70, 0)]
    [InlineData(nameof(SoilClass.SedimentaryRock), 4000, 400, 0.35, 0)]
    [InlineData(nameof(SoilClass.Gravel), 3000, 200, 0.35, 0)]
    [InlineData(nameof(SoilClass.Sand), 2000, 150, 0.25, 0)]
    [InlineData(nameof(SoilClass.Clay), 1500, 100, 0, 130)]
    public void A_soil_has_the_values_of_the_code(string name, double bearingPsf, double lateralPsfPerFt, double friction, double cohesionPsf)
    {
        SoilValues soil = SoilTable.For(Enum.Parse<SoilClass>(name))!;
        Published.Check(Code, "bearing, psf", bearingPsf, soil.BearingPa / PsfPa, 1e-6, "exact");
        Published.Check(Code, "lateral, psf/ft", lateralPsfPerFt, soil.LateralPaPerM / PcfNPerM3, 1e-6, "exact");
        Published.Check(Code, "friction", friction, soil.SlidingFriction, 1e-12, "exact");
        Published.Check(Code, "cohesion, psf", cohesionPsf, soil.SlidingCohesionPa / PsfPa, 1e-6, "exact");
    }

    [Fact]
    public void Of_soft_ground_nothing_is_presumed() => Assert.Null(SoilTable.For(SoilClass.Soft));

    [Fact]
    public void A_hoop_post_two_feet_deep_fails_for_a_modest_load_and_says_how_deep_it_should_be()
    {
        SoilValues sand = SoilTable.For(SoilClass.Sand)!;
        var post = new PostInGround(2 * FootM, 2.375 * InchM);
        LateralCheck check = LateralCheck.Of(sand, post, 200 * PoundN, 4 * FootM, PostHold.Free, isDoubled: true);
        Assert.True(check.Utilisation > 10, FormattableString.Invariant($"{check.Utilisation}"));
        Assert.Equal(6.3211, check.NeededEmbedmentM / FootM, 1e-4);
        Checks.SaysWhy(check);
        // Doubling halves the use of a depth.
        Assert.Equal(2, LateralCheck.Of(sand, post, 200 * PoundN, 4 * FootM, PostHold.Free, isDoubled: false).Utilisation / check.Utilisation, 1e-9);
    }

    [Fact]
    public void Frozen_soil_is_not_counted()
    {
        SoilValues clay = SoilTable.For(SoilClass.Clay)!;
        var thawed = new PostInGround(4 * FootM, 0.3);
        LateralCheck warm = LateralCheck.Of(clay, thawed, 300, 1, PostHold.Free, false);
        LateralCheck cold = LateralCheck.Of(clay, thawed with { FrostDepthM = 1.5 * FootM }, 300, 1, PostHold.Free, false);
        Assert.True(cold.AllowedForceN < warm.AllowedForceN && cold.NeededEmbedmentM > warm.NeededEmbedmentM);
        Assert.Equal(LateralPost.FreeLoadN(2.5 * FootM, 1 + (1.5 * FootM), 0.3, clay.LateralPaPerM), cold.AllowedForceN, 1e-9);
        Assert.Contains(LateralPost.FrostLeftOut, cold.Formulas);
        LateralCheck frozen = LateralCheck.Of(clay, thawed with { FrostDepthM = 5 * FootM }, 300, 1, PostHold.Free, false);
        Assert.Equal((0, double.PositiveInfinity), (frozen.AllowedForceN, frozen.Utilisation));
        Checks.SaysWhy(LateralCheck.Of(clay, thawed, 300, 1, PostHold.RigidFloor, false));
    }

    [Fact]
    public void A_floor_never_makes_a_post_need_more_depth() =>
        Posts.Sample(post => Assert.True(
            LateralPost.HeldDepthM(1000 * post.HeightM, post.WidthM, post.LateralPaPerM) <= LateralPost.FreeDepthM(1000, post.HeightM, post.WidthM, post.LateralPaPerM)));

    [Fact]
    public void No_load_needs_no_depth_and_no_soil_is_never_deep_enough()
    {
        Assert.Equal(0, LateralPost.FreeDepthM(0, 1, 0.1, 20e3));
        Assert.Equal(double.PositiveInfinity, LateralPost.FreeDepthM(1, 1, 0.1, 0));
        Assert.Equal(0, LateralPost.FreeLoadN(0, 1, 0.1, 20e3));
    }
}
