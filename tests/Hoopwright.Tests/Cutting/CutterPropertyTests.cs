using CsCheck;
using Hoopwright.Cutting;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cutting;

public sealed class CutterPropertyTests
{
    [Fact]
    public void A_tiny_job_costs_what_trying_everything_finds_and_is_proven() =>
        CutJobs.Tiny.Sample(
            job =>
            {
                var plan = Cutter.Solve(job);
                Assert.Equal(BruteForceCutting.LeastCost(job), plan.Cost);
                Assert.True(plan.Proven);
            },
            iter: 3000);

    [Fact]
    public void A_tiny_job_with_limits_alone_is_refused_exactly_when_nothing_serves_it() =>
        CutJobs.Tiny.Sample(
            job =>
            {
                var limited = job with { Stock = [job.Stock[0] with { Limit = job.Stock[1].Limit ?? 2 }] };
                var plan = Cutter.Solve(limited);
                var least = BruteForceCutting.LeastCost(limited);
                Assert.Equal(least is null, !plan.Found);
                Assert.Equal(least ?? 0, plan.Cost);
            },
            iter: 1500);

    [Fact]
    public void Any_effort_gives_a_whole_plan_and_a_bound_that_the_least_cost_does_not_go_below() =>
        Gen.Select(CutJobs.Tiny, Gen.Int[0, 20_000]).Sample(
            (job, steps) =>
            {
                var plan = Cutter.Solve(job, new CutEffort(steps));
                var least = BruteForceCutting.LeastCost(job);
                Assert.True(plan.LowerBound <= least && least <= plan.Cost);
                Assert.Equal(plan.Cost == plan.LowerBound, plan.Proven);
            },
            iter: 1500);

    [Fact]
    public void Every_piece_is_cut_once_within_its_bar_and_the_material_adds_up() =>
        CutJobs.Real.Sample(
            job =>
            {
                var plan = Cutter.Solve(job, CutEffort.Live);
                var lengthOf = job.Pieces.ToDictionary(piece => piece.Id, piece => piece.Length);
                var barOf = job.Stock.ToDictionary(bar => bar.Id);
                var cost = 0m;
                foreach (var pattern in plan.Patterns)
                {
                    var pieces = pattern.Pieces.Sum(id => lengthOf[id]);
                    Assert.True(pieces + (job.Kerf * pattern.Pieces.Length) <= barOf[pattern.StockId].Length - job.Trim + job.Kerf);
                    Assert.Equal(barOf[pattern.StockId].Length, job.Trim + pieces + pattern.KerfLost + pattern.Leftover);
                    Assert.InRange(pattern.KerfLost, job.Kerf * (pattern.Pieces.Length - 1), job.Kerf * pattern.Pieces.Length);
                    Assert.Equal(pattern.Pieces.Select(id => lengthOf[id]).OrderDescending(), pattern.Pieces.Select(id => lengthOf[id]));
                    cost += barOf[pattern.StockId].Price * pattern.Times;
                }

                foreach (var piece in job.Pieces)
                    Assert.Equal(piece.Count, plan.Patterns.Sum(pattern => pattern.Times * pattern.Pieces.Count(id => id == piece.Id)));
                Assert.Equal((cost, plan.Patterns.Sum(pattern => pattern.Times)), (plan.Cost, plan.Bars));
            },
            iter: 60);

    [Fact]
    public void A_further_stock_length_never_raises_the_cost() =>
        CutJobs.Real.Sample(
            job =>
            {
                var fewer = Cutter.Solve(job with { Stock = [.. job.Stock.Skip(1)] }, CutEffort.Live);
                var more = Cutter.Solve(job, CutEffort.Live);
                // Where both are proven the costs compare; the bound of the larger choice holds for the smaller one in any case.
                Assert.True(more.LowerBound <= fewer.Cost);
                if (more.Proven && fewer.Proven)
                    Assert.True(more.Cost <= fewer.Cost);
            },
            iter: 30);

    [Fact]
    public void Scaling_every_length_changes_nothing() =>
        Gen.Select(CutJobs.Tiny, CutJobs.Among(2, 5, 16, 25, 100)).Sample(
            (job, factor) =>
            {
                var scaled = job with
                {
                    Stock = [.. job.Stock.Select(bar => bar with { Length = bar.Length * factor })],
                    Pieces = [.. job.Pieces.Select(piece => piece with { Length = piece.Length * factor })],
                    Kerf = job.Kerf * factor,
                    Trim = job.Trim * factor,
                    Leftover = job.Leftover is { } rule ? new(rule.MinLength * factor, rule.ValuePer1000 / factor) : null,
                };
                var (one, other) = (Cutter.Solve(job), Cutter.Solve(scaled));
                Assert.Equal(one.Cost, other.Cost);
                Assert.Equal(
                    one.Patterns.Select(pattern => $"{pattern.StockId} {pattern.Times} {string.Join(' ', pattern.Pieces)}"),
                    other.Patterns.Select(pattern => $"{pattern.StockId} {pattern.Times} {string.Join(' ', pattern.Pieces)}"));
            },
            iter: 500);

    [Fact]
    public void Lengths_without_a_common_measure_cost_what_they_cost_in_one()
    {
        // Every length a little below the whole one and every bar a little above: what fits in whole units fits, and nothing more does.
        const long Fine = 1_000_003;
        var (proven, all) = (0, 0);
        CutJobs.Tiny.Sample(
            job =>
            {
                var plain = job with { Leftover = null };
                var plan = Cutter.Solve(plain with
                {
                    Stock = [.. plain.Stock.Select(bar => bar with { Length = (bar.Length * Fine) + 7 })],
                    Pieces = [.. plain.Pieces.Select((piece, index) => piece with { Length = (piece.Length * Fine) - 1 - index })],
                    Kerf = plain.Kerf * Fine,
                    Trim = plain.Trim * Fine,
                });
                var least = BruteForceCutting.LeastCost(plain);
                Assert.Equal(least, plan.Cost);
                Assert.True(plan.LowerBound <= least);
                (proven, all) = (proven + (plan.Proven ? 1 : 0), all + 1);
            },
            iter: 300, threads: 1);
        Assert.True(proven > 0.9 * all, $"{proven} of {all} proven");
    }

    [Fact]
    public void The_same_job_in_feet_and_in_millimetres_gives_the_same_plan() =>
        Gen.Select(Gen.Int[1, 640].Array[1, 8], Gen.Int[1, 9]).Sample(
            (sixteenths, count) =>
            {
                var feet = Plan(Length.FromFeet(16), sixteenths.Select(mark => Length.FromFeet(mark / 192.0)), Length.FromInches(0.125));
                var metric = Plan(Length.FromMillimetres(4876.8), sixteenths.Select(mark => Length.FromMillimetres(mark * 1.5875)), Length.FromMillimetres(3.175));
                Assert.Equal(feet.Bars, metric.Bars);
                Assert.Equal(
                    feet.Patterns.Select(pattern => string.Join(' ', pattern.Pieces)), metric.Patterns.Select(pattern => string.Join(' ', pattern.Pieces)));

                CutPlan Plan(Length bar, IEnumerable<Length> lengths, Length kerf) => Cutter.Solve(new CutJob
                {
                    Stock = [new("board", bar, new Money(12.5m))],
                    Pieces = [.. lengths.Select((length, index) => new CutPiece($"p{index}", length, count))],
                    Kerf = kerf,
                });
            },
            iter: 200);
}
