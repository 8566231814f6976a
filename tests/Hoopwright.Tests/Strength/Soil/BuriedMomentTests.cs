using CsCheck;
using Hoopwright.Plans;
using Hoopwright.Strength.Soil;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Soil;

public sealed class BuriedMomentTests
{
    [Fact]
    public void With_the_soil_pressure_of_Broms_the_moment_turns_where_he_says()
    {
        // f = 0.82·√(P/(γ·Kp·b)), with soil pressure 3·γ·Kp·z; P 1000 N, γ 18 kN/m³, Kp 3, b 0.3 m.
        double pushN = 1000, gammaNPerM3 = 18_000, kp = 3, widthM = 0.3;
        Published.Check("Broms, J. Soil Mech. Found. Div. ASCE 90 (SM3), 1964, free pile in cohesionless soil, f; from memory", "f",
            0.82 * Math.Sqrt(pushN / (gammaNPerM3 * kp * widthM)), BuriedMoment.TurnsAtM(pushN, 3 * gammaNPerM3 * kp, widthM), 0.005, "printed as 0.82, exactly √(2/3)");
    }

    [Fact]
    public void The_moment_is_the_push_less_the_soil_above_the_place_where_both_are_equal()
    {
        Gen.Select(Gen.Double[10, 5000], Gen.Double[0, 3000], Gen.Double[1e4, 2e5], Gen.Double[0.05, 0.6], Gen.Double[0.3, 3], Gen.Double[0, 1]).Sample((pushN, turningNm, lateralPaPerM, widthM, depthM, frostM) =>
        {
            var post = new PostInGround(depthM, widthM, frostM);
            // Moment at every depth by adding up slices: the push turns about the depth, the soil above it turns back.
            double topM = Math.Min(frostM, depthM), most = turningNm, momentNm = turningNm, shearN = pushN;
            const int Slices = 20_000;
            double sliceM = depthM / Slices;
            for (int slice = 0; slice < Slices; slice++)
            {
                momentNm += shearN * sliceM;
                shearN -= Math.Max(0, ((slice + 0.5) * sliceM) - topM) * lateralPaPerM * widthM * sliceM;
                if (shearN < 0) break;
                most = momentNm;
            }
            double greatestNm = BuriedMoment.GreatestNm(pushN, turningNm, lateralPaPerM, post);
            // Where the post ends before the soil has taken up the push, the last third of the depth is not counted on.
            if (topM + BuriedMoment.TurnsAtM(pushN, lateralPaPerM, widthM) < depthM)
                Assert.Equal(most, greatestNm, 2e-3 * most);
            else
                Assert.InRange(greatestNm, turningNm, turningNm + (pushN * depthM));
        }, iter: 200);
    }

    [Fact]
    public void Deeper_frost_weaker_soil_and_a_harder_push_bend_a_post_no_less()
    {
        var post = new PostInGround(1, 0.25);
        double sand = SoilTable.For(SoilClass.Sand)!.LateralPaPerM, gravel = SoilTable.For(SoilClass.Gravel)!.LateralPaPerM;
        double usual = BuriedMoment.GreatestNm(1000, 200, gravel, post);
        Assert.True(BuriedMoment.GreatestNm(1000, 200, sand, post) > usual);
        Assert.True(BuriedMoment.GreatestNm(1000, 200, gravel, post with { FrostDepthM = 0.3 }) > usual);
        Assert.True(BuriedMoment.GreatestNm(1500, 200, gravel, post) > usual);
        Assert.Equal(200 + (1000 * 2.0 / 3), BuriedMoment.GreatestNm(1000, 200, 0, post), 1e-9);
    }
}
