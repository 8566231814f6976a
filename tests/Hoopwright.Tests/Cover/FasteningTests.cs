using CsCheck;
using Hoopwright.Cover;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cover;

public sealed class FasteningTests
{
    // Common practice, no source: 4 in for the first two, then every 6 in, a staple between each pair of nails.
    [Fact]
    public void A_batten_is_nailed_at_4_in_twice_then_every_6_in()
    {
        var marks = BattenFastening.Marks(Length.FromFeet(4), Length.FromInches(4), Length.FromInches(6));

        Assert.Equal([4, 8, 14, 20, 26, 32, 38, 44], marks.Select(mark => Math.Round(mark.Inches, 6)));
        Assert.Equal(7, BattenFastening.Staples(marks.Length));
    }

    [Fact]
    public void A_short_batten_has_one_nail_in_its_middle_and_none_has_none()
    {
        Assert.Equal([3], BattenFastening.Marks(Length.FromInches(6), Length.FromInches(4), Length.FromInches(6)).Select(mark => Math.Round(mark.Inches, 6)));
        Assert.Empty(BattenFastening.Marks(Length.Zero, Length.FromInches(4), Length.FromInches(6)));
        Assert.Equal(0, BattenFastening.Staples(0));
    }

    [Fact]
    public void Nails_rise_along_the_batten_and_leave_no_gap_wider_than_the_spacing() =>
        Gen.Select(Gen.Double[0.1, 40], Gen.Double[0.03, 0.3], Gen.Double[0.03, 0.6]).Sample((runM, firstM, spacingM) =>
        {
            var marks = BattenFastening.Marks(Length.FromMetres(runM), Length.FromMetres(firstM), Length.FromMetres(spacingM));
            double widestM = Math.Max(firstM, spacingM) + 1e-5;
            return marks.Length > 0
                && marks[0].Metres > 0 && marks[^1].Metres < runM
                && marks.Zip(marks.Skip(1)).All(pair => pair.Second > pair.First && (pair.Second - pair.First).Metres <= widestM);
        });

    // Bill of quantities, film house of galvanised tube (200 m²), public procurement notice, India, tender notice 27119787,
    // rows 11 to 13: 220 m of channel, 330 m of spring, 660 screws.
    [Fact]
    public void A_purchase_list_for_220_m_of_channel_counts_660_screws_and_330_m_of_wire()
    {
        var run = Length.FromMetres(220);

        Assert.Equal(660, ChannelFastening.Screws(run, Length.FromMetres(1) / 3, moreAtEachEnd: 0));
        Assert.Equal(330, ChannelFastening.WireLength(run, 1, Ratio.FromValue(1.5)).Metres, 9);
    }

    // Common practice, no source: about every 12 in, one extra at each end.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 3)]
    [InlineData(10, 12)]
    [InlineData(10.25, 13)]
    public void Channel_takes_a_screw_a_foot_and_one_more_at_each_end(double runFt, int screws) =>
        Assert.Equal(screws, ChannelFastening.Screws(Length.FromFeet(runFt), Length.FromInches(12), moreAtEachEnd: 1));

    [Theory]
    [InlineData(0, 0, 0, 0)]
    [InlineData(3, 1, 0, 2)]
    [InlineData(4, 1, 0, 2)]
    [InlineData(4.5, 2, 1, 3)]
    [InlineData(40, 10, 9, 11)]
    public void Wire_comes_in_pieces_that_lap_between_the_ends(double runFt, int pieces, int laps, int temporary)
    {
        Length run = Length.FromFeet(runFt), piece = Length.FromFeet(4);

        Assert.Equal(pieces, ChannelFastening.WirePieces(run, piece));
        Assert.Equal(laps, ChannelFastening.WireLaps(run, piece));
        Assert.Equal(temporary, ChannelFastening.TemporaryWires(run, piece));
    }
}
