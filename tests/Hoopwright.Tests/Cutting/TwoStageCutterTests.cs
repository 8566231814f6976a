using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Cuts.Film;
using Hoopwright.Cutting;
using Hoopwright.Cutting.TwoStage;

namespace Hoopwright.Tests.Cutting;

public sealed class TwoStageCutterTests
{
    private static readonly CutEffort Effort = new(20_000_000);

    private static readonly Gen<TwoStageJob> Jobs = Gen.Select(
        Gen.Select(Gen.Int[2, 24], Gen.Int[5, 60], Gen.Int[1, 3]).Array[1, 4],
        Gen.Select(Gen.Int[24, 40], Gen.Int[60, 110], Gen.Int[20, 200], Gen.Int[0, 3]).Array[1, 3],
        Gen.Bool, Gen.Bool, (sizes, sheets, slit, turn) => new TwoStageJob(
            [.. sizes.Select(size => new TwoStagePiece(size.Item1, size.Item2, size.Item3, turn))],
            // A limit of 0 stands for any number.
            [.. sheets.Select(sheet => new TwoStageStock(sheet.Item1, sheet.Item2, sheet.Item3, sheet.Item4 == 0 ? null : sheet.Item4))],
            slit));

    // The other side tries every set of pieces, and is itself held against trying every level of every roll.
    [Fact]
    public void The_cost_is_never_below_the_least_and_the_bound_never_above_it_and_most_are_proven()
    {
        int proven = 0, all = 0;
        Jobs.Sample(
            job =>
            {
                long? least = LeastByTryingSets(job);
                TwoStagePlan? plan = TwoStageCutter.Solve(job, Effort);
                if (plan is null) return;
                Assert.True(plan.Cost >= least && plan.Bound <= least, $"{plan.Cost} with bound {plan.Bound} against {least}");
                Interlocked.Increment(ref all);
                if (plan.Proven) Interlocked.Increment(ref proven);
            },
            iter: 600, threads: 1);
        Assert.True(proven > 0.95 * all && all > 300, $"{proven} of {all} proven");
    }

    [Fact]
    public void Without_work_there_is_a_plan_that_is_not_called_proven_below_the_least() => Jobs.Sample(
        job => TwoStageCutter.Solve(job, CutEffort.Least) is not { } plan || (plan.Cost >= LeastByTryingSets(job) && plan.Bound <= LeastByTryingSets(job)), iter: 200);

    [Fact]
    public void Sizes_without_a_common_measure_have_the_same_cost_as_in_a_common_one()
    {
        // Every size a little below the whole one, every sheet a little above: what fits in whole units fits, and nothing more does.
        Jobs.Sample(
            job =>
            {
                const long Fine = 1_000_003;
                var fine = job with
                {
                    Pieces = [.. job.Pieces.Select((piece, index) => piece with { Across = (piece.Across * Fine) - 1 - index, Along = (piece.Along * Fine) - 3 - index })],
                    Stock = [.. job.Stock.Select(sheet => sheet with { Width = (sheet.Width * Fine) + 1, Length = (sheet.Length * Fine) + 2 })],
                };
                long? least = LeastByTryingSets(job);
                if (TwoStageCutter.Solve(fine, Effort) is not { } plan) return;
                Assert.True(plan.Cost >= least && plan.Bound <= least, $"{plan.Cost} with bound {plan.Bound} against {least}");
                // All the film at the best price per area that any sheet gives.
                var area = fine.Pieces.Sum(piece => piece.Count * (double)piece.Across * piece.Along);
                Assert.True(plan.Bound >= (area * fine.Stock.Min(sheet => sheet.Price / ((double)sheet.Width * sheet.Length))) - 1e-6);
            },
            iter: 150, threads: 1);
    }

    [Fact]
    public void What_is_dearer_to_cut_than_to_leave_out_is_left_out()
    {
        var plan = TwoStageCutter.Solve(new TwoStageJob([new(6, 5, 1, LeftOut: 9), new(4, 5, 2, LeftOut: 20)], [new(10, 10, 30)]), Effort)!;

        // One sheet holds both small ones and the large one beside one of them.
        Assert.Equal((30, "0 0"), (plan.Cost, string.Join(' ', plan.LeftOut)));
        plan = TwoStageCutter.Solve(new TwoStageJob([new(6, 5, 1, LeftOut: 9), new(4, 5, 2, LeftOut: 10)], [new(10, 10, 30)]), Effort)!;
        Assert.Equal((29, "1 2"), (plan.Cost, string.Join(' ', plan.LeftOut)));
        Assert.True(plan.Proven);
    }

    [Fact]
    public void Hundreds_of_pieces_come_out_the_same_every_time()
    {
        var job = new TwoStageJob(
            [.. Enumerable.Range(0, 10).Select(index => new TwoStagePiece(66 + (11 * index), 190 - (9 * index), 30 + index, MayTurn: true))],
            [new(250, 250, 625), new(275, 225, 618), new(300, 200, 600)]);
        var (one, two) = (TwoStageCutter.Solve(job, Effort)!, TwoStageCutter.Solve(job, Effort)!);

        Assert.Equal(one.Sheets.Select(Text), two.Sheets.Select(Text));
        Assert.InRange(one.Bound, one.Cost * 0.98, one.Cost);

        static string Text(TwoStageSheet sheet) => $"{sheet.Stock}: {string.Join(" | ", sheet.Levels.Select(level => string.Join(' ', level)))}";
    }

    private static long? LeastByTryingSets(TwoStageJob job)
    {
        ImmutableArray<SearchOffer> offers = [.. job.Stock.Select(sheet => new SearchOffer(sheet.Width, sheet.Length, sheet.Price, OnHand: false, sheet.Limit))];
        var (rolls, leftOut) = FilmSearch.Best([.. job.Pieces.Select((piece, order) => new FilmSize(piece.Across, piece.Along, order, piece.Count, piece.MayTurn))], offers, job.Slit);
        return leftOut.Any(count => count > 0) ? null : (long)rolls.Sum(roll => offers[roll.Offer].Cost);
    }
}
