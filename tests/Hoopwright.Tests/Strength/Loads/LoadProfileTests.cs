using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Tests.Strength.Loads;

public sealed class LoadProfileTests
{
    [Fact]
    public void A_jump_is_one_place_however_its_distance_was_worked_out()
    {
        const double JumpM = 4.7;
        LoadProfile profile = LoadProfile.Of([(0, 300), (JumpM, 300), (JumpM, 100), (9, 100)]);
        foreach (double atM in (double[])[JumpM, Math.BitIncrement(JumpM), Math.BitDecrement(JumpM)])
        {
            Assert.Equal(300, profile.Before(Length.FromMetres(atM)).Pascals, 1e-9);
            Assert.Equal(100, profile.At(Length.FromMetres(atM)).Pascals, 1e-9);
        }
        Assert.Equal((0, 300, 100, 100, 0), (Pa(0, after: false), Pa(0, after: true), Pa(9, after: false), Pa(9, after: true), Pa(9.1, after: false)));
        Assert.Equal((300, 100), (Pa(JumpM - 0.001, after: true), Pa(JumpM + 0.001, after: false)));

        double Pa(double atM, bool after) => (after ? profile.At(Length.FromMetres(atM)) : profile.Before(Length.FromMetres(atM))).Pascals;
    }
}
