using System.Text.Json;
using CsCheck;
using Hoopwright.Cutting;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>Random orders against Google OR-Tools 9.15 (SCIP 10).</summary>
public sealed class OutsideSolverTests
{
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

    [Fact]
    public void Random_orders_cost_what_an_outside_solver_proves()
    {
        int compared = 0, proven = 0;
        Orders.Sample(
            order =>
            {
                if (OutsidePatternModel.LeastCost(order, mostPatterns: 4_000) is not { } least)
                    return;
                var plan = Cutter.Solve(order);
                // Now and then the effort ends at the least cost with its proof still open; then the bound says so and is never above it.
                Assert.True(plan.Cost == least && plan.LowerBound <= least && (!plan.Proven || plan.LowerBound == least), $"{plan.Cost}, bound {plan.LowerBound}, against {least}: {JsonSerializer.Serialize(order)}");
                compared++;
                proven += plan.Proven ? 1 : 0;
            },
            iter: 300,
            threads: 1);
        Assert.True(compared >= 200, $"Only {compared} orders were compared.");
        Assert.True(proven >= 0.99 * compared, $"Only {proven} of {compared} were proven.");
    }
}
