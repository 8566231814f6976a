using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Orders;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Tests.Orders;

public class StageSharesTests
{
    [Fact]
    public void Three_equal_stages_share_a_dollar_to_the_cent() => Assert.Equal(
        [0.34m, 0.33m, 0.33m],
        StageShares.Of(new Money(1), [(BuildStage.Ends, 1), (BuildStage.Ground, 1), (BuildStage.Frame, 1)]).Select(share => share.Cost.Amount));

    [Fact]
    public void Stages_that_need_nothing_leave_the_whole_to_the_first() =>
        Assert.Equal(new StageCost(BuildStage.Ground, new Money(5)), Assert.Single(StageShares.Of(new Money(5), [(BuildStage.Ends, 0), (BuildStage.Ground, 0)])));

    [Fact]
    public void Shares_add_up_and_none_is_a_cent_off_its_part() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 1000].Array[1, 5]).Sample((cents, weights) =>
        {
            ImmutableArray<(BuildStage, decimal)> stages = [.. weights.Select((weight, index) => ((BuildStage)index, (decimal)weight))];
            ImmutableArray<StageCost> shares = StageShares.Of(new Money(cents / 100m), stages);
            decimal whole = weights.Sum();
            return shares.Sum(share => share.Cost.Amount) == cents / 100m
                && (whole == 0 || shares.All(share => Math.Abs(share.Cost.Amount - (cents / 100m * weights[(int)share.Stage!] / whole)) < 0.01m));
        });
}
