using System.Text.Json;
using CsCheck;
using Hoopwright.Cutting;
using Hoopwright.Testing;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>Random orders against Google OR-Tools 9.15 (SCIP 10).</summary>
public sealed class OutsideSolverTests
{
    private const int OutsideMilliseconds = 3_000;

    // Boards and tube: lengths in millimetres, prices in cents with the usual scatter per length, saw or snips.
    private static readonly Gen<UnitlessCutJob> Orders =
        from lengths in Gen.Int[60, 420].Array[8, 13]
        from counts in Gen.Int[1, 14].Array[lengths.Length]
        from bars in Gen.Select(Gen.Int[0, 4], Gen.Int[85, 115]).Array[1, 3]
        from onHand in Gen.Int[-4, 5]
        from kerf in Gen.Int[0, 3]
        from trim in Gen.Int[0, 1]
        from worth in Gen.Int[-80, 60]
        select new UnitlessCutJob
        {
            Stock =
            [
                new("s0", 4200, 903),
                .. bars.Select((bar, index) => new UnitlessCutStock($"b{index}", 2400 + (600 * bar.Item1), (2400 + (600 * bar.Item1)) * bar.Item2 / 500)),
                .. onHand > 0 ? [new UnitlessCutStock("barn", 3000, worth > 0 ? 200 : 0, onHand)] : Array.Empty<UnitlessCutStock>(),
            ],
            Pieces = [.. lengths.Zip(counts).Select((piece, index) => new UnitlessCutPiece($"p{index}", piece.First * 9.5m, piece.Second))],
            Kerf = kerf,
            Trim = trim * 10,
            Leftover = worth > 0 ? new(600, worth) : null,
        };

    // It came up once among the random orders: the search stayed in a poor branch and left 30705 with a bound of 30577.
    private static readonly UnitlessCutJob PoorBranch = new()
    {
        Stock = [new("s0", 4200, 903), new("b0", 3000, 618)],
        Pieces =
        [
            new("p0", 1168.5m, 13), new("p1", 950, 13), new("p2", 741, 7), new("p3", 2099.5m, 1), new("p4", 684, 1), new("p5", 3049.5m, 2), new("p6", 579.5m, 9),
            new("p7", 855, 14), new("p8", 3391.5m, 7), new("p9", 3676.5m, 8), new("p10", 1862, 1), new("p11", 769.5m, 13), new("p12", 1168.5m, 13),
        ],
        Leftover = new(600, 23),
    };

    [Fact]
    public void Order_whose_search_starts_in_a_poor_branch_is_proven_at_the_cost_an_outside_solver_proves()
    {
        var plan = Cutter.Solve(PoorBranch);

        Assert.Equal(30_657, plan.Cost);
        Assert.True(plan.Proven);
        Assert.Equal(30_657, OutsidePatternModel.LeastCost(PoorBranch, mostPatterns: 20_000));
    }

    [Fact]
    public void Random_orders_cost_what_an_outside_solver_proves()
    {
        int compared = 0, reached = 0, proven = 0;
        Orders.Sample(
            order =>
            {
                if (OutsidePatternModel.LeastCost(order, mostPatterns: 4_000) is not { } least)
                    return;
                var plan = Cutter.Solve(order);
                CheckHonest(plan, least, JsonSerializer.Serialize(order));
                compared++;
                reached += plan.Cost == least ? 1 : 0;
                proven += plan.Proven ? 1 : 0;
            },
            iter: 100,
            threads: 1);
        Assert.True(compared >= 60, $"Only {compared} orders were compared.");
        Assert.True(reached >= 0.98 * compared && proven >= 0.98 * compared, $"Of {compared}, {reached} cost the least and {proven} were proven.");
    }

    /// <summary>The orders are the same at every run; the outside solver's clock only says how many of them it proves.</summary>
    [Fact]
    public void Five_hundred_practical_orders_cost_what_an_outside_solver_proves()
    {
        var compared = 0;
        for (var seed = 0; seed < 500; seed++)
        {
            var order = PracticalOrders.Of(seed, leftovers: false);
            if (GapPatternModel.LeastCost(order, OutsideMilliseconds) is not { } least)
                continue;
            var plan = Cutter.Solve(order);
            CheckHonest(plan, least, $"order {seed}");
            Assert.True(plan.Cost == least, $"order {seed}: {plan.Cost}, bound {plan.LowerBound}, against {least}");
            compared++;
        }

        Assert.True(compared >= 400, $"Only {compared} orders were compared.");
    }

    /// <summary>A plan never costs less than the least, its bound is never above it, and it is called proven only where it costs the least.</summary>
    private static void CheckHonest(UnitlessCutPlan plan, decimal least, string order) => Assert.True(
        plan.LowerBound <= least && least <= plan.Cost && (!plan.Proven || plan.Cost == least),
        $"{plan.Cost}, bound {plan.LowerBound}, proven {plan.Proven}, against {least}: {order}");
}
