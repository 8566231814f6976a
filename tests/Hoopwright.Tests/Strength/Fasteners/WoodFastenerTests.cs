using CsCheck;
using Hoopwright.Strength.Fasteners;
using Hoopwright.Strength.Wood;
using Hoopwright.Testing;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Tests.Strength.Fasteners;

public sealed class WoodFastenerTests
{
    private const string E21 = "AWC Structural Wood Design Examples 2015/2018, E2.1a, as quoted by an open test suite (xcfem/xc)";
    private const string E23 = "AWC Structural Wood Design Examples 2015/2018, E2.3, as quoted by an open test suite (xcfem/xc)";
    private const string E24 = "AWC Structural Wood Design Examples 2015/2018, E2.4, as recomputed by an open test suite (xcfem/xc)";
    private const string LateralNail = "lateral design value of a nail in an open test suite (xcfem/xc), test 01";
    private const string Outside = "formulas of NDS-2018 chapter 12 from memory, worked out outside this project";
    private const double Inch = InchM, PoundPerInch = PoundPerInchNPerM;

    private static readonly JointConditions Plain = new(LoadDuration.TenYears);

    private static readonly Gen<Fastener> AnyFastener = Gen.Select(Gen.Enum<FastenerKind>(), Gen.Double[0.1, 0.5]).Select((kind, diameterIn) =>
        kind == FastenerKind.Nail ? Fastener.Nail(diameterIn * Inch) : new Fastener(kind, diameterIn * Inch, 0.75 * diameterIn * Inch));

    [Fact]
    public void The_nail_of_example_E_2_1a_pulls_out_at_the_printed_load()
    {
        double perM = Withdrawal.ReferenceNPerM(FastenerKind.Nail, 0.42, 0.131 * Inch);
        Published.Check(E21, "W, lb/in", 20.667, perM / PoundPerInch, 0.0006, "last printed digit");
        Published.Check(E21, "W for 2.395 in, lb", 49.497, perM * 2.395 * Inch / PoundN, 0.001, "last printed digit");
    }

    [Fact]
    public void The_lag_screw_of_example_E_2_3_pulls_out_at_the_printed_load()
    {
        double perM = Withdrawal.ReferenceNPerM(FastenerKind.LagScrew, 0.55, 0.5 * Inch);
        Published.Check(E23, "W, lb/in", 436.56, perM / PoundPerInch, 0.006, "last printed digit");
        Published.Check(E23, "W for 4 - 1.5 - 0.3125 in, lb", 954.98, perM * (4 - 1.5 - 0.3125) * Inch / PoundN, 0.01, "last printed digit");
        Published.Check(Outside, "lag 3/8, lb/in", 351.84, Withdrawal.ReferenceNPerM(FastenerKind.LagScrew, 0.55, 0.375 * Inch) / PoundPerInch, 0.006, "last digit");
        Published.Check(Outside, "lag 5/16, lb/in", 306.87, Withdrawal.ReferenceNPerM(FastenerKind.LagScrew, 0.55, 0.3125 * Inch) / PoundPerInch, 0.006, "last digit");
        Published.Check(Outside, "#10 screw, lb/in", 163.80, Withdrawal.ReferenceNPerM(FastenerKind.WoodScrew, 0.55, 0.19 * Inch) / PoundPerInch, 0.006, "last digit");
    }

    [Fact]
    public void A_nail_through_a_thin_board_gives_way_as_printed_in_every_mode()
    {
        Fastener nail = Fastener.Nail(0.148 * Inch);
        double bearingPa = DowelBearing.WoodPa(0.5, nail.DiameterM, 0);
        YieldLimit limit = YieldLimit.Of(nail, 2.25 * Inch, 0.75 * Inch, bearingPa, bearingPa, 0);
        double[] printed = [701.8, 233.9, 233.9, 243.7, 105.10, 117.4];
        foreach (YieldMode mode in Enum.GetValues<YieldMode>())
            Published.Check(LateralNail, mode.ToString(), printed[(int)mode], limit.ModesN[(int)mode] / PoundN, 0.1, "the suite takes psi to six digits");
        Published.Check(LateralNail, "Z, N", 467.49, limit.ReferenceN, 0.05, "the suite takes psi to six digits");
        Assert.Equal(YieldMode.BendsInMain, limit.Mode);
    }

    [Fact]
    public void Other_joints_give_way_as_worked_out_elsewhere()
    {
        Fastener nail = Fastener.Nail(0.148 * Inch);
        double pinePa = DowelBearing.WoodPa(0.55, nail.DiameterM, 0);
        YieldLimit thick = YieldLimit.Of(nail, 1.5 * Inch, 1.5 * Inch, pinePa, pinePa, 0);
        Published.Check(Outside, "nail through 1.5 in, lb", 128.19, thick.ReferenceN / PoundN, 0.006, "last digit");
        Assert.Equal(YieldMode.BendsTwice, thick.Mode);
        Fastener lag = new(FastenerKind.LagScrew, 0.375 * Inch, 0.265 * Inch);
        double alongPa = DowelBearing.WoodPa(0.55, lag.DiameterM, 0);
        YieldLimit screwed = YieldLimit.Of(lag, 2.2 * Inch, 1.5 * Inch, alongPa, alongPa, 0);
        Published.Check(Outside, "lag 3/8 mode IV, lb", 210.9, screwed.ModesN[(int)YieldMode.BendsTwice] / PoundN, 0.06, "last digit");
        // Two planes of shear carry twice mode IV. Root diameter bends, nominal diameter reduces.
        Fastener screw = new(FastenerKind.WoodScrew, 0.19 * Inch, 0.152 * Inch);
        double screwPa = DowelBearing.WoodPa(0.55, screw.DiameterM, 0);
        Published.Check(E24, "twice mode IV, N", 1039.596, 2 * YieldLimit.Of(screw, 3 * Inch, 1.3 * Inch, screwPa, screwPa, 0).ModesN[(int)YieldMode.BendsTwice], 0.01, "the suite takes psi to six digits");
        Assert.Equal(80 * KsiPa, screw.BendingYieldPa, 1);
    }

    [Fact]
    public void Bearing_across_the_grain_lies_on_the_curve_between()
    {
        double along = DowelBearing.WoodPa(0.5, 0.5 * Inch, 0), across = DowelBearing.WoodPa(0.5, 0.5 * Inch, Math.PI / 2);
        // NDS-2018 table 12.3.3, G = 0.50, from memory: 5600 along, 3150 psi across for D = 1/2 in.
        Assert.Equal(5600.0, along / PsiPa, 1e-6);
        Assert.Equal(3150.0, across / PsiPa, 30.0);
        Gen.Double[0, Math.PI / 2].Sample(angle => Assert.InRange(DowelBearing.WoodPa(0.5, 0.5 * Inch, angle), across - 1e-6, along + 1e-6));
        Assert.Equal(DowelBearing.WoodPa(0.5, 0.2 * Inch, 0), DowelBearing.WoodPa(0.5, 0.2 * Inch, 1));
    }

    [Fact]
    public void End_grain_wet_wood_and_slant_take_their_part()
    {
        Assert.Equal(0, JointFactors.OnWithdrawal(FastenerKind.Nail, Plain with { IsEndGrain = true }));
        Assert.Equal(0, JointFactors.OnWithdrawal(FastenerKind.WoodScrew, Plain with { IsEndGrain = true }));
        Assert.Equal(0.75, JointFactors.OnWithdrawal(FastenerKind.LagScrew, Plain with { IsEndGrain = true }));
        Assert.Equal(0.67, JointFactors.OnLateral(Fastener.Nail(0.131 * Inch), Plain with { IsEndGrain = true }));
        Assert.Equal(0.25, JointFactors.OnWithdrawal(FastenerKind.Nail, Plain with { WasWet = true }));
        Assert.Equal(1.0, JointFactors.OnWithdrawal(FastenerKind.Nail, Plain with { WasWet = true, IsWet = true }));
        Assert.Equal(0.7, JointFactors.OnWithdrawal(FastenerKind.LagScrew, Plain with { IsWet = true }));
        Assert.Equal(0.7, JointFactors.OnLateral(Fastener.Nail(0.131 * Inch), Plain with { IsWet = true }));
        Assert.Equal(0.4, JointFactors.OnLateral(new Fastener(FastenerKind.LagScrew, 0.375 * Inch, 0.265 * Inch), Plain with { WasWet = true }));
        Assert.Equal(0.83, JointFactors.OnLateral(Fastener.Nail(0.131 * Inch), Plain with { IsToeNailed = true }));
        Assert.Equal(0.67, JointFactors.OnWithdrawal(FastenerKind.Nail, Plain with { IsToeNailed = true }));
        Assert.Equal(1.6, JointFactors.OnLateral(Fastener.Nail(0.131 * Inch), Plain with { Duration = LoadDuration.Impact }));
        Assert.Equal(0.7, JointFactors.OnLateral(Fastener.Nail(0.131 * Inch), Plain with { Temperature = WoodTemperature.UpTo150F }));
    }

    [Fact]
    public void Longer_and_thicker_never_hold_less() =>
        Gen.Select(AnyFastener, Gen.Double[0.5, 4], Gen.Double[0.5, 3], Gen.Double[1, 2], Gen.Double[0.36, 0.6]).Sample((fastener, mainIn, sideIn, more, gravity) =>
        {
            double bearingPa = DowelBearing.WoodPa(gravity, fastener.DiameterM, 0);
            YieldLimit before = YieldLimit.Of(fastener, mainIn * Inch, sideIn * Inch, bearingPa, bearingPa, 0);
            Assert.All(before.ModesN, mode => Assert.True(double.IsFinite(mode) && mode > 0));
            Assert.True(YieldLimit.Of(fastener, mainIn * more * Inch, sideIn * Inch, bearingPa, bearingPa, 0).ReferenceN >= before.ReferenceN * (1 - 1e-12));
            Assert.True(YieldLimit.Of(fastener, mainIn * Inch, sideIn * more * Inch, bearingPa, bearingPa, 0).ReferenceN >= before.ReferenceN * (1 - 1e-12));
            Assert.True(YieldLimit.Of(fastener, mainIn * Inch, sideIn * Inch, bearingPa, bearingPa, 1).ReferenceN <= before.ReferenceN * (1 + 1e-12));
        });

    [Fact]
    public void The_turning_mode_of_equal_members_is_the_closed_form() =>
        // Re = Rt = 1: k1 = (√8 − 2)/2 = √2 − 1. The six modes hang together: with equal members it is less than crushing.
        Gen.Double[0.5, 3].Sample(lengthIn =>
        {
            Fastener nail = Fastener.Nail(0.148 * Inch);
            YieldLimit limit = YieldLimit.Of(nail, lengthIn * Inch, lengthIn * Inch, 30e6, 30e6, 0);
            Assert.Equal((Math.Sqrt(2) - 1) * limit.ModesN[(int)YieldMode.SideCrushes], limit.ModesN[(int)YieldMode.Turns], 1e-9);
        });

    [Fact]
    public void Pull_and_push_together_use_more_than_either_and_no_more_than_their_sum() =>
        Gen.Select(AnyFastener, Gen.Double[1, 500], Gen.Double[1, 500]).Sample((fastener, pullN, pushN) =>
        {
            double bearingPa = DowelBearing.WoodPa(0.5, fastener.DiameterM, 0);
            YieldLimit limit = YieldLimit.Of(fastener, 2 * Inch, 1.5 * Inch, bearingPa, bearingPa, 0);
            FastenerCheck both = FastenerCheck.Of(fastener, 0.5, 2 * Inch, limit, Plain, pullN, pushN);
            double pull = FastenerCheck.Of(fastener, 0.5, 2 * Inch, limit, Plain, pullN, 0).Utilisation, push = FastenerCheck.Of(fastener, 0.5, 2 * Inch, limit, Plain, 0, pushN).Utilisation;
            // Twice as deep holds twice as much (NDS-2018, 12.2: withdrawal values are a length of shank or thread; from memory).
            Assert.Equal(2, both.WithdrawalN / FastenerCheck.Of(fastener, 0.5, Inch, limit, Plain, pullN, pushN).WithdrawalN, 1e-9);
            Assert.True(both.Utilisation <= (pull + push) * (1 + 1e-12));
            Assert.True(both.Utilisation >= Math.Min(pull, push) * (1 - 1e-12));
            if (fastener.Kind == FastenerKind.Nail) Assert.Equal(pull + push, both.Utilisation, 1e-9);
            else
            {
                // Hankinson's curve as it is printed.
                double angle = Math.Atan2(pullN, pushN), w = both.WithdrawalN, z = both.LateralN;
                double allowed = w * z / ((w * Math.Cos(angle) * Math.Cos(angle)) + (z * Math.Sin(angle) * Math.Sin(angle)));
                Assert.Equal(1, double.Hypot(pullN, pushN) / allowed / both.Utilisation, 1e-9);
            }
            Checks.SaysWhy(both);
        });

    [Fact]
    public void A_nail_in_end_grain_that_is_pulled_carries_nothing()
    {
        Fastener nail = Fastener.Nail(0.148 * Inch);
        YieldLimit limit = YieldLimit.Of(nail, 2 * Inch, 1.5 * Inch, 30e6, 30e6, 0);
        JointConditions endGrain = Plain with { IsEndGrain = true };
        Assert.Equal(double.PositiveInfinity, FastenerCheck.Of(nail, 0.5, 2 * Inch, limit, endGrain, 1, 0).Utilisation);
        Assert.Equal(double.PositiveInfinity, FastenerCheck.Of(new Fastener(FastenerKind.WoodScrew, 0.19 * Inch, 0.152 * Inch), 0.5, 2 * Inch, limit, endGrain, 1, 1).Utilisation);
        Assert.True(double.IsFinite(FastenerCheck.Of(nail, 0.5, 2 * Inch, limit, endGrain, 0, 1).Utilisation));
    }

    [Fact]
    public void Screws_of_a_channel_share_the_pull_of_the_film_by_their_spacing()
    {
        // 15 psf of suction on a free arc of 15 ft radius pulls 225 lb/ft; screws 12 in apart take 225 lb each where it pulls straight off.
        double linePull = 15 * PsfPa * 15 * FootM;
        Assert.Equal(225, ChannelScrews.PullN(linePull, FootM, Math.PI / 2) / PoundN, 1e-9);
        Assert.Equal(0, ChannelScrews.SlideN(linePull, FootM, Math.PI / 2) / PoundN, 1e-9);
        Assert.Equal(225, double.Hypot(ChannelScrews.PullN(linePull, FootM, 0.7), ChannelScrews.SlideN(linePull, FootM, 0.7)) / PoundN, 1e-9);
        Assert.Equal(FootM / 2, ChannelScrews.MostSpacingM(FootM, 2));
    }
}
