using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Takeoff;

public class ConcreteBagsTests
{
    // Bags to ASTM C387 are printed with these yields by many makers; the printed bag decides.
    private const string Bags = "yields printed on bags of dry concrete to ASTM C387";

    [Theory]
    [InlineData(40, 0.30)]
    [InlineData(50, 0.375)]
    [InlineData(60, 0.45)]
    [InlineData(80, 0.60)]
    public void A_bag_yields_what_is_printed_on_it(double pounds, double cubicFeet) => Published.Check(
        Bags, $"yield of {pounds} lb", cubicFeet, ConcreteBags.Yield(Mass.FromPounds(pounds)).CubicFeet, 1e-12, "printed to this");

    [Theory]
    [InlineData(80, 90 * 0.5)]
    [InlineData(60, 60)]
    [InlineData(50, 72)]
    [InlineData(40, 90)]
    public void A_cubic_yard_takes_the_printed_number_of_bags(double pounds, int bags) =>
        Assert.Equal(bags, ConcreteBags.Whole(Volume.FromCubicFeet(27), Mass.FromPounds(pounds)));

    // Arithmetic of the same yields: hole in in, post in in, volume in ft³, bags exact and whole.
    [Theory]
    [InlineData(12, 36, 12.25, 2.101, 80, 3.50, 4)]
    [InlineData(12, 36, 12.25, 2.101, 60, 4.67, 5)]
    [InlineData(12, 36, 12.25, 2.101, 50, 5.60, 6)]
    [InlineData(12, 36, 12.25, 2.101, 40, 7.00, 8)]
    [InlineData(10, 30, 12.25, 1.151, 80, 1.92, 2)]
    [InlineData(12, 36, 0, 2.356, 80, 3.93, 4)]
    [InlineData(8, 24, 2.835287, 0.659, 80, 1.10, 2)]
    public void A_hole_takes_the_bags_worked_out_by_hand(
        double diameterIn, double depthIn, double postIn2, double cubicFeet, double pounds, double bags, int whole)
    {
        Volume volume = ConcreteVolume.Of(
            Length.FromInches(diameterIn), Length.FromInches(depthIn), Area.FromSquareInches(postIn2), Length.FromInches(depthIn), Length.Zero);
        Published.Check(Bags, "volume", cubicFeet, volume.CubicFeet, 0.0006, "given to three decimals");
        Published.Check(Bags, "bags", bags, ConcreteBags.Exactly(volume, Mass.FromPounds(pounds)).Value, 0.006, "given to two decimals");
        Assert.Equal(whole, ConcreteBags.Whole(volume, Mass.FromPounds(pounds)));
    }

    [Fact]
    public void A_bag_is_named_in_the_unit_that_makes_it_round()
    {
        Assert.Equal("80 lb bag", ConcreteBags.SizeName(Mass.FromPounds(80)));
        Assert.Equal("25 kg bag", ConcreteBags.SizeName(Mass.FromKilograms(25)));
    }
}
