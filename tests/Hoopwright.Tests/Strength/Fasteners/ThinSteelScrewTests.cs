using CsCheck;
using Hoopwright.Strength;
using Hoopwright.Strength.Fasteners;
using Hoopwright.Testing;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Tests.Strength.Fasteners;

public sealed class ThinSteelScrewTests
{
    private const string Report = "ICC Evaluation Service report ESR-1976, table 2, allowable pull-out of self-drilling screws, Fu = 45 ksi (lfportal.everettwa.gov)";

    private static readonly Gen<ThinSteelJoint> Joints = Gen.Select(Gen.Double[0.13, 0.25], Gen.Double[0.2, 1], Gen.Double[0.02, 0.15], Gen.Double[0.02, 0.15])
        .Select((screwIn, headIn, frontIn, behindIn) => Joint(screwIn, headIn, frontIn, behindIn));

    // screw, in; thickness behind, in; allowable pull-out, lb.
    [Theory]
    [InlineData(0.190, 0.018, 44)]
    [InlineData(0.190, 0.036, 87)]
    [InlineData(0.190, 0.048, 116)]
    [InlineData(0.190, 0.060, 145)]
    [InlineData(0.190, 0.075, 182)]
    [InlineData(0.216, 0.018, 50)]
    [InlineData(0.216, 0.030, 83)]
    [InlineData(0.216, 0.048, 132)]
    [InlineData(0.216, 0.105, 289)]
    [InlineData(0.250, 0.024, 77)]
    [InlineData(0.250, 0.060, 191)]
    [InlineData(0.250, 0.125, 398)]
    public void A_screw_pulls_out_of_sheet_at_the_printed_load(double screwIn, double behindIn, double printedLb)
    {
        ThinSteelScrew screw = ThinSteelScrew.Of(Joint(screwIn, 0.5, 0.25, behindIn), DesignMethod.Asd, 100, 0);
        Published.Check(Report, "allowable pull-out, lb", printedLb, screw.AllowedPullN / PoundN, 0.6, "printed to whole pounds");
        Assert.Equal(ThinSteelLimit.PullOut, screw.PullLimit);
    }

    [Fact]
    public void A_thin_channel_tears_over_the_head()
    {
        // 1.5·0.02·0.4·45 ksi = 540 lb against 0.85·0.109·0.19·45 ksi = 792 lb.
        ThinSteelScrew screw = ThinSteelScrew.Of(Joint(0.19, 0.4, 0.02, 0.109), DesignMethod.Lrfd, 100, 0);
        Assert.Equal((ThinSteelLimit.PullOver, 540), (screw.PullLimit, Math.Round(screw.PullOverN / PoundN, 6)));
        Assert.Equal(270, screw.AllowedPullN / PoundN, 1e-6);
        // A washer wider than 3/4 in counts as 3/4 in.
        Assert.Equal(
            ThinSteelScrew.Of(Joint(0.19, 0.75, 0.02, 0.2), DesignMethod.Asd, 1, 0).PullOverN, ThinSteelScrew.Of(Joint(0.19, 2, 0.02, 0.2), DesignMethod.Asd, 1, 0).PullOverN, 1e-9);
    }

    [Fact]
    public void The_maker_s_strength_of_the_screw_counts_where_it_is_given()
    {
        ThinSteelJoint joint = Joint(0.19, 0.4, 0.05, 0.109);
        ThinSteelScrew unknown = ThinSteelScrew.Of(joint, DesignMethod.Asd, 100, 100);
        ThinSteelScrew known = ThinSteelScrew.Of(joint with { ScrewTensionN = 300, ScrewShearN = 200 }, DesignMethod.Asd, 100, 100);
        Assert.False(unknown.IsScrewItselfChecked);
        Assert.True(known.IsScrewItselfChecked);
        Assert.Equal((ThinSteelLimit.Screw, ThinSteelLimit.Screw, 100, 2.5), (known.PullLimit, known.ShearLimit, known.AllowedPullN, Math.Round(known.Utilisation, 9)));
        Assert.True(ThinSteelScrew.Of(joint with { ScrewTensionN = 300 }, DesignMethod.Asd, 100, 0).IsScrewItselfChecked);
    }

    [Fact]
    public void Tilting_governs_in_alike_sheets_and_not_in_a_thick_part_behind()
    {
        ThinSteelScrew alike = ThinSteelScrew.Of(Joint(0.19, 0.4, 0.036, 0.036), DesignMethod.Asd, 0, 1);
        Assert.Equal(4.2 * Math.Sqrt(0.036 * 0.036 * 0.036 * 0.19) * 45_000, alike.ShearN / PoundN, 1e-6);
        ThinSteelScrew thick = ThinSteelScrew.Of(Joint(0.19, 0.4, 0.036, 0.1), DesignMethod.Asd, 0, 1);
        Assert.Equal(2.7 * 0.036 * 0.19 * 45_000, thick.ShearN / PoundN, 1e-6);
    }

    [Fact]
    public void Thicker_steel_and_a_thicker_screw_never_hold_less() =>
        Gen.Select(Joints, Gen.Double[1, 2]).Sample((joint, more) =>
        {
            ThinSteelScrew before = ThinSteelScrew.Of(joint, DesignMethod.Asd, 100, 100);
            ThinSteelScrew behind = ThinSteelScrew.Of(joint with { PointSideM = more * joint.PointSideM }, DesignMethod.Asd, 100, 100);
            ThinSteelScrew screw = ThinSteelScrew.Of(joint with { ScrewM = more * joint.ScrewM }, DesignMethod.Asd, 100, 100);
            ThinSteelScrew stronger = ThinSteelScrew.Of(joint with { HeadSideUltimatePa = more * joint.HeadSideUltimatePa }, DesignMethod.Asd, 100, 100);
            const double Rounding = 1 + 1e-12;
            Assert.True(behind.Utilisation <= before.Utilisation * Rounding && screw.Utilisation <= before.Utilisation * Rounding && stronger.Utilisation <= before.Utilisation * Rounding);
            Checks.SaysWhy(before);
        });

    private static ThinSteelJoint Joint(double screwIn, double headIn, double frontIn, double behindIn) => new()
    {
        ScrewM = screwIn * InchM,
        HeadM = headIn * InchM,
        HeadSideM = frontIn * InchM,
        HeadSideUltimatePa = 45 * KsiPa,
        PointSideM = behindIn * InchM,
        PointSideUltimatePa = 45 * KsiPa,
    };
}
