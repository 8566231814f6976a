using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cutting;

public sealed class CutDiagnosticsTests
{
    private static readonly UnitlessCutJob Good = new()
    {
        Stock = [new("a", 1000, 5)],
        Pieces = [new("p", 300, 4)],
        Kerf = 3,
    };

    public static TheoryData<string, string, UnitlessCutJob> Bad => new()
    {
        { "cut.kerf.negative", "kerf", Good with { Kerf = -1 } },
        { "cut.trim.negative", "trim", Good with { Trim = -0.5m } },
        { "cut.stock.none", "stock", Good with { Stock = [] } },
        { "cut.stock.none", "stock", Good with { Stock = default } },
        { "cut.stock.length-not-positive", "stock[0].length", Good with { Stock = [new("a", 0, 5)] } },
        { "cut.stock.price-negative", "stock[0].price", Good with { Stock = [new("a", 1000, -5)] } },
        { "cut.stock.limit-negative", "stock[0].limit", Good with { Stock = [new("a", 1000, 5, -1)] } },
        { "cut.id.repeated", "stock[1].id", Good with { Stock = [new("a", 1000, 5), new("a", 500, 3)] } },
        { "cut.id.repeated", "pieces[1].id", Good with { Pieces = [new("p", 300, 4), new("p", 200, 1)] } },
        { "cut.piece.length-not-positive", "pieces[0].length", Good with { Pieces = [new("p", -300, 4)] } },
        { "cut.piece.count-negative", "pieces[0].count", Good with { Pieces = [new("p", 300, -4)] } },
        { "cut.piece.too-long", "pieces[0].length", Good with { Pieces = [new("p", 1000, 1)], Trim = 1 } },
        { "cut.leftover.length-negative", "leftover.minLength", Good with { Leftover = new(-1, 5) } },
        { "cut.leftover.value-negative", "leftover.valuePer1000", Good with { Leftover = new(1, -5) } },
        { "cut.job.too-large", "", Good with { Stock = [new("a", 1000, 1e20m)] } },
        { "cut.job.too-fine", "", Good with { Kerf = 0.00000000000001m } },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_is_wrong_is_said_once_and_where(string code, string path, UnitlessCutJob job)
    {
        var plan = Cutter.Solve(job);

        Assert.Equal([(code, path, Severity.Error)], plan.Diagnostics.Select(found => (found.Code, found.Path, found.Severity)));
        Assert.False(plan.Found || plan.Proven);
        Assert.Empty(plan.Patterns);
    }

    [Fact]
    public void A_piece_too_long_is_told_the_longest_that_fits()
    {
        var plan = Cutter.Solve(Good with { Pieces = [new("p", 1200, 1)], Trim = 12.5m });

        Assert.Equal(("1200", "up to 987.5"), (plan.Diagnostics[0].Seen, plan.Diagnostics[0].Accepted));
    }

    [Fact]
    public void All_that_is_wrong_is_said_in_one_pass()
    {
        var plan = Cutter.Solve(Good with { Kerf = -1, Stock = [new("a", -1, -1)], Pieces = [new("p", 0, -1)] });

        Assert.Equal(
            ["kerf", "stock[0].length", "stock[0].price", "pieces[0].length", "pieces[0].count"],
            plan.Diagnostics.Select(found => found.Path));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e12)]
    public void A_length_that_is_no_length_is_an_error_and_not_an_exception(double metres)
    {
        var plan = Cutter.Solve(CutterTests.Job(
            [new("a", Length.FromMetres(metres), new Money(1))], [new("p", Length.FromMetres(1), 1)]));

        Assert.Equal(("cut.number.out-of-range", "stock[0].length"), (plan.Diagnostics[0].Code, plan.Diagnostics[0].Path));
    }

    [Fact]
    public void A_limit_that_is_too_low_names_the_pieces_left_over_and_the_fewest_bars_that_would_help()
    {
        // Ten of 400, two to a bar, from three bars: four are left over, which two more bars would serve.
        var plan = Cutter.Solve(Good with { Stock = [new("a", 1000, 5, 3)], Pieces = [new("p", 400, 10)] });

        var found = Assert.Single(plan.Diagnostics);
        Assert.Equal(("cut.stock.too-few", Severity.Error, "stock"), (found.Code, found.Severity, found.Path));
        Assert.Equal("The stock limits are too low: these pieces cannot be served: p × 4.", found.Message);
        Assert.Equal("this much more stock: a × 2", found.Accepted);
    }

    [Fact]
    public void Limits_that_only_an_exact_fit_keeps_are_kept()
    {
        // Longest first into the 10 leaves 5 + 4, and then 4 and 3 do not go into the 7 beside anything: only 6+4 and 4+3 fit.
        var plan = Cutter.Solve(new UnitlessCutJob
        {
            Stock = [new("ten", 10, 3, 1), new("seven", 7, 2, 1)],
            Pieces = [new("six", 6, 1), new("four", 4, 2), new("three", 3, 1)],
        });

        Assert.True(plan.Found && plan.Proven);
        Assert.Equal((2, 5m), (plan.Bars, plan.Cost));
    }

    [Fact]
    public void A_kerf_wider_than_a_piece_is_a_warning_and_still_reckoned()
    {
        // A bar of 31 serves seven pieces of 1 with kerf 4, since 7 × 5 ≤ 31 + 4.
        var plan = Cutter.Solve(new UnitlessCutJob { Stock = [new("a", 31, 1)], Pieces = [new("p", 1, 8)], Kerf = 4 });

        Assert.Equal("cut.kerf.longer-than-piece", Assert.Single(plan.Diagnostics).Code);
        Assert.Equal((2, true), (plan.Bars, plan.Proven));
    }

    [Fact]
    public void A_bar_worth_more_cut_than_whole_is_a_warning()
    {
        var plan = Cutter.Solve(new UnitlessCutJob
        {
            Stock = [new("onHand", 1000, 0, 2), new("bought", 1000, 9)],
            Pieces = [new("p", 400, 4)],
            Leftover = new(300, 4),
        });

        Assert.Contains(plan.Diagnostics, found => found.Code == "cut.leftover.dearer-than-stock" && found.Path == "stock[0].price");
        // Four pieces on the two bars on hand, two on each: no rest is long enough. One on one bar, one on the other, two on a
        // bought bar: 9 − 2 − 2. The first costs nothing and is cheapest.
        Assert.Equal(0, plan.Cost);
    }
}
