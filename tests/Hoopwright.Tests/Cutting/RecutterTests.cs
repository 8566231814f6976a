using System.Collections.Immutable;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Cutting;

public sealed class RecutterTests
{
    private static readonly UnitlessCutJob Job = new()
    {
        Stock = [new("long", 100, 9), new("short", 60, 5, 6)],
        Pieces = [new("p", 40, 5), new("q", 30, 4), new("r", 20, 3)],
        Kerf = 1,
    };

    // A job, and for each pattern of its plan two numbers that say how many of its bars are cut and bad.
    private static readonly Gen<(UnitlessCutJob Job, ImmutableArray<CutProgress> Earlier)> Stopped =
        Gen.Select(CutJobs.Tiny, Gen.Int[0, 3].Array[12], Gen.Int[0, 3].Array[12]).Select((job, done, bad) =>
        {
            // Without a worth of leftovers, which has a test of its own.
            var plain = job with { Leftover = null };
            ImmutableArray<CutProgress> earlier = [.. Cutter.Solve(plain).Patterns.Select((pattern, index) =>
            {
                var cut = Math.Min(pattern.Times, done[index % 12]);
                return new CutProgress(pattern.StockId, pattern.Times, pattern.Pieces, cut, Math.Min(pattern.Times - cut, bad[index % 12] / 3));
            })];
            return (plain, earlier);
        });

    [Fact]
    public void Nothing_cut_and_nothing_bad_changes_nothing_and_costs_nothing_more() =>
        CutJobs.Tiny.Sample(
            job =>
            {
                var plan = Cutter.Solve(job with { Leftover = null });
                var again = Recutter.Solve(job with { Leftover = null }, [.. plan.Patterns.Select(bars => new CutProgress(bars.StockId, bars.Times, bars.Pieces, 0, 0))]);
                Assert.Equal((0m, plan.Bars, plan.Bars, true), (again.Plan.Cost, again.Kept.Sum(), again.Waiting, again.FewestChanged));
            },
            iter: 300);

    [Fact]
    public void What_is_left_is_cut_once_within_its_bars_and_from_no_more_of_them_than_there_are() =>
        Stopped.Sample(
            stopped =>
            {
                var (job, earlier) = stopped;
                var again = Recutter.Solve(job, earlier);
                Assert.True(again.Plan.Found && again.Plan.Proven);
                foreach (var piece in job.Pieces)
                {
                    var made = earlier.Sum(bars => bars.Done * bars.Pieces.Count(id => id == piece.Id)) + again.Plan.Patterns.Sum(bars => bars.Times * bars.Pieces.Count(id => id == piece.Id));
                    Assert.Equal(piece.Count, made);
                }

                for (var index = 0; index < again.Plan.Patterns.Length; index++)
                {
                    var bars = again.Plan.Patterns[index];
                    var bar = job.Stock.Single(each => each.Id == bars.StockId);
                    Assert.True(bars.Pieces.Sum(id => job.Pieces.Single(piece => piece.Id == id).Length + job.Kerf) <= bar.Length - job.Trim + job.Kerf);
                    var pieces = bars.Pieces.Sum(id => job.Pieces.Single(piece => piece.Id == id).Length);
                    Assert.Equal(bar.Length, job.Trim + pieces + bars.KerfLost + bars.Leftover);
                    Assert.InRange(bars.KerfLost, job.Kerf * (bars.Pieces.Length - 1), job.Kerf * bars.Pieces.Length);
                    Assert.InRange(again.Kept[index] + again.Further[index], 0, bars.Times);
                    if (again.Kept[index] > 0)
                        Assert.Contains(earlier, before => before.StockId == bars.StockId && before.Pieces.Order().SequenceEqual(bars.Pieces.Order()));
                }

                foreach (var bar in job.Stock)
                {
                    var further = again.Plan.Patterns.Zip(again.Further).Where(entry => entry.First.StockId == bar.Id).Sum(entry => entry.Second);
                    var used = again.Plan.Patterns.Where(bars => bars.StockId == bar.Id).Sum(bars => bars.Times);
                    Assert.True(used - further <= earlier.Where(bars => bars.StockId == bar.Id).Sum(bars => bars.Left));
                    Assert.True(further + earlier.Where(bars => bars.StockId == bar.Id).Sum(bars => bars.Times) <= (bar.Limit ?? int.MaxValue));
                }

                Assert.Equal(again.Plan.Cost, again.Plan.Patterns.Zip(again.Further).Sum(entry => entry.Second * job.Stock.Single(bar => bar.Id == entry.First.StockId).Price));
            },
            iter: 400);

    [Fact]
    public void No_choice_of_bars_to_keep_keeps_more_at_the_least_cost_that_trying_everything_finds() =>
        Stopped.Where(stopped => stopped.Job.Stock.All(bar => bar.Limit is null) && stopped.Earlier.Sum(bars => bars.Left) <= 5).Sample(
            stopped =>
            {
                var (job, earlier) = stopped;
                var again = Recutter.Solve(job, earlier);
                decimal? least = null;
                var most = 0;
                foreach (var kept in Choices([.. earlier.Select(bars => bars.Left)]))
                {
                    if (LeastBeside(job, earlier, kept) is not { } cost)
                        continue;
                    (least, most) = least is null || cost < least ? (cost, kept.Sum()) : cost == least ? (least, Math.Max(most, kept.Sum())) : (least, most);
                }

                Assert.Equal((least, most, true), (again.Plan.Cost, again.Kept.Sum(), again.FewestChanged));
            },
            iter: 150);

    [Fact]
    public void Where_many_bars_must_go_most_of_the_others_are_still_cut_as_planned()
    {
        // Eight more of every ninth length: too many to fit beside what is planned, so that bars have to be let go of.
        for (var number = 0; number < 6; number++)
        {
            var order = PracticalOrders.Of(number, leftovers: true);
            var first = Cutter.Solve(order);
            var now = order with { Pieces = [.. order.Pieces.Select((piece, index) => index % 9 == number ? piece with { Count = piece.Count + 8 } : piece)] };
            var again = Recutter.Solve(now, [.. first.Patterns.Select(bars => new CutProgress(bars.StockId, bars.Times, bars.Pieces, 0, 0))]);

            Assert.True(again.Kept.Sum() > 0.75 * again.Waiting, $"{number}: {again.Kept.Sum()} of {again.Waiting} kept");
        }
    }

    [Fact]
    public void A_bad_board_is_made_up_for_and_the_others_are_cut_as_planned()
    {
        // Five bars of two pieces each; one of them is bad, so one more is bought for its two.
        var job = new UnitlessCutJob { Stock = [new("a", 1000, 7)], Pieces = [new("p", 480, 10)], Kerf = 3 };
        var again = Recutter.Solve(job, [new("a", 5, ["p", "p"], Done: 2, Bad: 1)]);

        Assert.Equal((7m, 3, 2, 2), (again.Plan.Cost, again.Plan.Bars, again.Waiting, again.Kept.Sum()));
        Assert.Equal(1, again.Further.Sum());
    }

    [Fact]
    public void A_bar_at_hand_counts_what_it_would_be_worth_whole()
    {
        // Whole it is worth floor(100 × 50 / 1000) = 5, its rest of 60 is worth 3: cutting it costs 2.
        var job = new UnitlessCutJob { Stock = [new("a", 100, 9)], Pieces = [new("p", 40, 1)], Leftover = new(10, 50) };
        var again = Recutter.Solve(job, [new("a", 1, ["p"], 0, 0)]);

        Assert.Equal((2m, true), (again.Plan.Cost, again.Plan.Proven));
    }

    public static TheoryData<string, CutProgress> Bad => new()
    {
        { "cut.earlier.stock-unknown", new("lomg", 1, ["p"], 0, 0) },
        { "cut.earlier.piece-unknown", new("long", 1, ["s"], 0, 0) },
        { "cut.earlier.too-many", new("long", 1, ["p"], 1, 1) },
        { "cut.earlier.does-not-fit", new("short", 1, ["p", "q"], 0, 0) },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_is_wrong_with_an_earlier_plan_is_said(string code, CutProgress bars)
    {
        var again = Recutter.Solve(Job, [bars]);

        Assert.Equal([code], again.Diagnostics.Select(found => found.Code));
        Assert.Empty(again.Plan.Patterns);
    }

    [Fact]
    public void More_cut_than_wanted_is_a_warning_and_the_rest_is_planned()
    {
        var again = Recutter.Solve(Job, [new("long", 3, ["p", "p"], 3, 0)]);

        Assert.Equal(("cut.earlier.more-than-wanted", Severity.Warning), (again.Diagnostics.Single().Code, again.Diagnostics.Single().Severity));
        Assert.Equal(7, again.Plan.Patterns.Sum(bars => bars.Times * bars.Pieces.Length));
    }

    [Fact]
    public void A_file_goes_on_from_its_earlier_answer()
    {
        var job = """{ "kerf": 3, "stock": [{ "id": "a", "length": 1000, "price": 7 }], "pieces": [{ "id": "p", "length": 480, "count": 10 }] }"""u8.ToArray();
        var answer = JsonNode.Parse(CutFileJson.Of(CutFile.Solve(job), TimeSpan.Zero))!;
        answer["patterns"]![0]!["done"] = 3;
        answer["patterns"]![0]!["bad"] = 1;
        answer["again"] = new JsonObject { ["p"] = 1 };
        var again = CutFile.Solve(job, earlier: Encoding.UTF8.GetBytes(answer.ToJsonString()));
        var said = JsonNode.Parse(CutFileJson.Of(again, TimeSpan.Zero))!;

        // Six are cut, one of them wrong: five are left, of which one bar at hand gives two and two further bars three.
        Assert.Equal((14m, 1, 1, true), (said["cost"]!.GetValue<decimal>(), said["waiting"]!.GetValue<int>(), said["keptBars"]!.GetValue<int>(), said["fewestChanged"]!.GetValue<bool>()));
        Assert.Contains("1 of the 1 bars still to be cut are cut as planned before", CutFileSheet.Of(again), StringComparison.Ordinal);
        Assert.Contains("earlier file", CutFile.Solve(job, earlier: "[]"u8.ToArray()).Diagnostics.Single().Path, StringComparison.Ordinal);
    }

    private static IEnumerable<int[]> Choices(int[] most) => most.Aggregate(
        (IEnumerable<int[]>)[[]], (all, count) => all.SelectMany(before => Enumerable.Range(0, count + 1).Select(more => (int[])[.. before, more])));

    /// <summary>The least further cost beside some bars kept, by trying everything: each bar at hand is bought or not, as a line of its own without price.</summary>
    private static decimal? LeastBeside(UnitlessCutJob job, ImmutableArray<CutProgress> earlier, int[] kept)
    {
        var made = earlier.Zip(kept).SelectMany(entry => entry.First.Pieces.Select(piece => (piece, times: entry.First.Done + entry.Second))).ToLookup(entry => entry.piece, entry => entry.times);
        var atHand = job.Stock.ToDictionary(bar => bar.Id, bar => earlier.Zip(kept).Where(entry => entry.First.StockId == bar.Id).Sum(entry => entry.First.Left - entry.Second));
        if (job.Pieces.Any(piece => piece.Count < made[piece.Id].Sum()))
            return null;
        decimal[] pieces = [.. job.Pieces.SelectMany(piece => Enumerable.Repeat(piece.Length, piece.Count - made[piece.Id].Sum()))];
        decimal? least = null;
        Try(0, [], 0);
        return least;

        void Try(int next, List<(string Stock, decimal Used)> open, decimal cost)
        {
            if (cost >= least)
                return;
            if (next == pieces.Length)
            {
                least = cost;
                return;
            }

            var taken = pieces[next] + job.Kerf;
            for (var index = 0; index < open.Count; index++)
            {
                var before = open[index];
                if (before.Used + taken > Room(before.Stock))
                    continue;
                open[index] = (before.Stock, before.Used + taken);
                Try(next + 1, open, cost);
                open[index] = before;
            }

            foreach (var bar in job.Stock)
            {
                if (taken > Room(bar.Id))
                    continue;
                var further = open.Count(each => each.Stock == bar.Id) < atHand[bar.Id] ? 0 : bar.Price;
                open.Add((bar.Id, taken));
                Try(next + 1, open, cost + further);
                open.RemoveAt(open.Count - 1);
            }
        }

        decimal Room(string id) => job.Stock.Single(bar => bar.Id == id).Length - job.Trim + job.Kerf;
    }
}
