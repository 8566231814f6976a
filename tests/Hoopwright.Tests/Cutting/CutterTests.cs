using Hoopwright.Cutting;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cutting;

public sealed class CutterTests
{
    private static readonly CutStock Board16 = new("16 ft", Length.FromFeet(16), new Money(14.50m));
    private static readonly CutStock Board12 = new("12 ft", Length.FromFeet(12), new Money(10m));

    [Fact]
    public void Three_five_foot_pieces_fit_a_sixteen_foot_board_with_two_cuts_an_eighth_wide()
    {
        var plan = Cutter.Solve(Job([Board16], [new("girt", Length.FromFeet(5), 3)], kerf: Length.FromInches(0.125)));

        var pattern = Assert.Single(plan.Patterns);
        Assert.Equal(["girt", "girt", "girt"], pattern.Pieces);
        Assert.Equal(11.625, pattern.Leftover.Inches, 9);
        Assert.Equal(0.375, pattern.KerfLost.Inches, 9);
        Assert.Equal((1, 14.50m, true), (plan.Bars, plan.Cost.Amount, plan.Proven));
    }

    [Fact]
    public void The_last_piece_may_end_with_the_bar_and_needs_no_cut()
    {
        // Two of 8 ft − 1/16 in, one cut of 1/8 in between them, make 16 ft exactly.
        var plan = Cutter.Solve(Job(
            [Board16], [new("post", Length.FromInches(96 - (1 / 16.0)), 2)], kerf: Length.FromInches(0.125)));

        var pattern = Assert.Single(plan.Patterns);
        Assert.Equal((1, 0.0), (plan.Bars, pattern.Leftover.Inches));
        Assert.Equal(0.125, pattern.KerfLost.Inches, 9);
    }

    [Fact]
    public void A_sixty_fourth_of_an_inch_too_much_takes_a_second_board()
    {
        var plan = Cutter.Solve(Job(
            [Board16], [new("post", Length.FromInches(96 - (3 / 64.0)), 2)], kerf: Length.FromInches(0.125)));

        Assert.Equal((2, true), (plan.Bars, plan.Proven));
    }

    [Fact]
    public void End_trim_shortens_every_board()
    {
        var job = Job([Board16], [new("post", Length.FromFeet(8), 2)]);

        Assert.Equal(1, Cutter.Solve(job).Bars);
        Assert.Equal(2, Cutter.Solve(job with { Trim = Length.FromInches(0.5) }).Bars);
    }

    [Fact]
    public void Stock_on_hand_is_used_before_stock_that_costs_money()
    {
        var onHand = new CutStock("barn", Length.FromFeet(12), Money.Zero, Limit: 1);
        var plan = Cutter.Solve(Job([Board12, onHand], [new("rail", Length.FromFeet(6), 4)]));

        Assert.Equal((2, 10m, true), (plan.Bars, plan.Cost.Amount, plan.Proven));
        Assert.Equal(["12 ft", "barn"], plan.Patterns.Select(pattern => pattern.StockId));
    }

    [Fact]
    public void A_useful_leftover_makes_the_longer_board_the_cheaper_one()
    {
        // 16 ft at 14.50 leaves 8 ft worth 8 × 0.80 = 6.40: 8.10 net. 12 ft at 10.00 leaves 4 ft, too short to keep.
        var job = Job([Board16, Board12], [new("sill", Length.FromFeet(8), 1)]) with
        {
            Leftover = new LeftoverRule(Length.FromFeet(6), new Money(0.80m), Length.FromFeet(1)),
        };
        var plan = Cutter.Solve(job);

        Assert.Equal("16 ft", Assert.Single(plan.Patterns).StockId);
        Assert.Equal((8.10m, true), (plan.Cost.Amount, plan.Proven));
    }

    [Fact]
    public void Equal_lengths_with_different_names_share_boards_and_keep_their_names()
    {
        var plan = Cutter.Solve(Job(
            [Board12], [new("left", Length.FromFeet(4), 2), new("right", Length.FromInches(48), 4)]));

        Assert.Equal(2, plan.Bars);
        var made = plan.Patterns.SelectMany(pattern => Enumerable.Repeat(pattern.Pieces, pattern.Times)).SelectMany(ids => ids)
            .CountBy(id => id).ToDictionary();
        Assert.Equal((2, 4), (made["left"], made["right"]));
    }

    [Fact]
    public void Two_boards_for_two_lengths_are_cut_alike()
    {
        // Four of 5 and four of 3 from bars of 8 in any pairing take four bars; cut alike they are one pattern.
        var plan = Cutter.Solve(new UnitlessCutJob { Stock = [new("eight", 8, 1)], Pieces = [new("five", 5, 4), new("three", 3, 4)] });

        Assert.Equal(4, Assert.Single(plan.Patterns).Times);
    }

    [Fact]
    public void At_equal_cost_the_leftover_is_kept_in_one_length()
    {
        // 6 + 3 and 5 + 2 leave 1 and 3; 5 + 3 + 2 and 6 leave 0 and 4.
        var plan = Cutter.Solve(new UnitlessCutJob
        {
            Stock = [new("ten", 10, 1)],
            Pieces = [new("six", 6, 1), new("five", 5, 1), new("three", 3, 1), new("two", 2, 1)],
        });

        Assert.Equal([0m, 4m], plan.Patterns.Select(pattern => pattern.Leftover));
    }

    [Fact]
    public void Nothing_to_cut_costs_nothing()
    {
        var plan = Cutter.Solve(Job([], []));

        Assert.True(plan.Found && plan.Proven);
        Assert.Equal((0, Money.Zero), (plan.Bars, plan.Cost));
    }

    [Fact]
    public void A_stop_asked_for_at_once_still_gives_a_whole_plan()
    {
        var pieces = Enumerable.Range(0, 40).Select(index => new UnitlessCutPiece($"p{index}", 401 + (37 * index), 9));
        var plan = Cutter.Solve(
            new UnitlessCutJob { Stock = [new("a", 6000, 31)], Pieces = [.. pieces] }, stopAsked: () => true);

        Assert.Equal(360, plan.Patterns.Sum(pattern => pattern.Times * pattern.Pieces.Length));
        Assert.True(plan.LowerBound <= plan.Cost);
    }

    [Fact]
    public void Lengths_without_a_common_measure_still_get_a_plan_near_the_bound()
    {
        var plan = Cutter.Solve(Job(
            [Board16, Board12],
            [.. Enumerable.Range(1, 12).Select(index => new CutPiece($"p{index}", Length.FromMetres(Math.Sqrt(index)), index))],
            kerf: Length.FromMillimetres(2.9)));

        Assert.Equal(78, plan.Patterns.Sum(pattern => pattern.Times * pattern.Pieces.Length));
        Assert.True(plan.LowerBound <= plan.Cost);
        Assert.True(plan.Cost.Amount <= plan.LowerBound.Amount * 1.01m, $"{plan.Cost} against {plan.LowerBound}");
    }

    [Fact]
    public void A_million_pieces_of_a_million_lengths_get_a_plan_and_a_bound()
    {
        var pieces = Enumerable.Range(0, 1_000_000).Select(index => new UnitlessCutPiece($"p{index}", 100_000 + (index * 7), 1));
        var plan = Cutter.Solve(new UnitlessCutJob { Stock = [new("a", 20_000_000, 3)], Pieces = [.. pieces] }, CutEffort.Live);

        Assert.True(plan.Found && plan.LowerBound <= plan.Cost && plan.Cost <= plan.LowerBound * 1.05m, $"{plan.Cost} against {plan.LowerBound}");
    }

    internal static CutJob Job(CutStock[] stock, CutPiece[] pieces, Length kerf = default) =>
        new() { Stock = [.. stock], Pieces = [.. pieces], Kerf = kerf };
}
