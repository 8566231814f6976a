using CsCheck;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Tests.Drawings;

public sealed class SpreadTests
{
    private static readonly Gen<(double Wanted, double Width)[]> Items = Gen.Select(Gen.Double[0, 100], Gen.Double[1, 12]).Array[1, 10];

    [Fact]
    public void Things_keep_their_order_their_distance_and_their_limits() => Items.Sample(items =>
    {
        double[] wanted = [.. items.Select(item => item.Wanted).Order()], widths = [.. items.Select(item => item.Width)];
        double[] placed = Spread.Apart(wanted, widths, 1, -20, 140);
        for (int index = 1; index < placed.Length; index++)
            Assert.True(placed[index] - placed[index - 1] >= ((widths[index] + widths[index - 1]) / 2) + 1 - 1e-9);
        Assert.True(placed[0] - (widths[0] / 2) >= -20 - 1e-9);
        Assert.True(placed[^1] + (widths[^1] / 2) <= 140 + 1e-9);
    });

    [Fact]
    public void Things_far_enough_apart_stay_where_they_are() =>
        Assert.Equal([10, 20, 30], Spread.Apart([10, 20, 30], [4, 4, 4], 1, 0, 100));

    [Fact]
    public void No_small_shift_of_one_thing_makes_the_sum_of_squared_moves_less() => Items.Sample(items =>
    {
        double[] wanted = [.. items.Select(item => item.Wanted).Order()], widths = [.. items.Select(item => item.Width)];
        double[] placed = Spread.Apart(wanted, widths, 1, -1000, 1000);
        for (int index = 0; index < placed.Length; index++)
        {
            foreach (double shift in (double[])[-0.01, 0.01])
            {
                double moved = placed[index] + shift;
                bool isAllowed = (index == 0 || moved - placed[index - 1] >= ((widths[index] + widths[index - 1]) / 2) + 1)
                    && (index == placed.Length - 1 || placed[index + 1] - moved >= ((widths[index] + widths[index + 1]) / 2) + 1);
                if (isAllowed) Assert.True(Math.Abs(moved - wanted[index]) >= Math.Abs(placed[index] - wanted[index]) - 1e-9);
            }
        }
    });
}
