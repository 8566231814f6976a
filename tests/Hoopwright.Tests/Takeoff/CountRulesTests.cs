using CsCheck;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Tests.Takeoff;

public class CountRulesTests
{
    [Theory]
    [InlineData(10, 2.5, 5)]
    [InlineData(10.1, 2.5, 6)]
    [InlineData(0.5, 2.5, 2)]
    [InlineData(0, 2.5, 0)]
    public void Both_ends_are_counted(double runFt, double spacingFt, int count) =>
        Assert.Equal(count, CountRules.EndsIncluded(Length.FromFeet(runFt), Length.FromFeet(spacingFt)));

    [Fact]
    public void No_gap_is_wider_than_the_spacing_and_one_fewer_would_make_one() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[0.1, 5]).Sample((runM, spacingM) =>
        {
            int count = CountRules.EndsIncluded(Length.FromMetres(runM), Length.FromMetres(spacingM));
            return runM / (count - 1) <= spacingM * (1 + 1e-8) && (count == 2 || runM / (count - 2) > spacingM * (1 - 1e-8));
        });

    [Theory]
    [InlineData(4, 8, 1)]
    [InlineData(8, 4, 1)]
    [InlineData(3.5, 7, 1)]
    [InlineData(4.5, 6, 2)]
    [InlineData(9, 5, 3)]
    public void Sheets_lie_whichever_way_takes_fewer(double widthFt, double heightFt, int sheets) => Assert.Equal(
        sheets, CountRules.Sheets(Length.FromFeet(widthFt), Length.FromFeet(heightFt), Length.FromFeet(4), Length.FromFeet(8)));

    [Theory]
    [InlineData(4.4, "3/8 x 4-1/2 in")]
    [InlineData(4.5, "3/8 x 4-1/2 in")]
    [InlineData(4.6, "3/8 x 5 in")]
    [InlineData(0.4, "3/8 x 1/2 in")]
    public void A_bolt_is_long_enough_in_half_inches(double leastIn, string size) => Assert.Equal(size, CountRules.ScrewSize(ScrewKind.Bolt, Length.FromInches(leastIn), UnitSystem.UsCustomary));

    // Bays of 6 ft and a height of 4 ft: half a bay and the height make a 3-4-5 triangle, so each bay takes 10 ft of rope.
    [Fact]
    public void Lacing_goes_up_and_down_once_a_bay()
    {
        Length rope = SideTakeoff.LacingOf(Enumerable.Repeat(Length.FromFeet(6), 8), Length.FromFeet(4), TakeoffDefaults.LacingTie.Value);
        Assert.Equal(80 + (2 * TakeoffDefaults.LacingTie.Value.Feet), rope.Feet, 1e-9);
    }

    [Fact]
    public void Strings_run_from_batter_board_to_batter_board_with_their_ends_to_tie()
    {
        // 20 ft by 48 ft, boards 3 ft outside: two strings of 54 ft and two of 26 ft, each with 2 ft at both ends.
        Length strings = SiteTakeoff.StringLength(Testing.SamplePlans.LayOut(Testing.SamplePlans.Simple()).SetOut.BatterBoards, TakeoffDefaults.StringTie.Value);
        Assert.Equal((2 * 54) + (2 * 26) + (4 * 4), strings.Feet, 1e-9);
    }

    [Fact]
    public void Every_role_of_a_member_belongs_to_a_stage() =>
        Assert.Equal(Enum.GetValues<BuildStage>().Except([BuildStage.Site]), Enum.GetValues<MemberRole>().Select(MemberTakeoff.StageOf).Distinct().Order());
}
