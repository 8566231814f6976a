using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Cuts;
using Hoopwright.Cutting;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Tests.Cuts;

public class CutPropertyTests
{
    private static readonly (double, decimal)[] Sold = [(8, 6.11m), (10, 7.93m), (12, 9.27m), (16, 13.41m)];

    private static readonly Gen<(int Runs, double RunFt, double BowsFt, double[] Single)> Needs =
        from runs in Gen.Int[0, 3]
        from runFt in Gen.Int[9 * 16, 60 * 16]
        from bows in Gen.Double[2.5, 6]
        from single in Gen.Int[8, 16 * 16].Array[1, 8]
        select (runs, runFt / 16.0, bows, single.Select(each => each / 16.0).ToArray());

    [Fact]
    public void Stock_on_hand_never_raises_the_cost() => Gen.Select(Needs, Gen.Int[4, 20], Gen.Int[1, 4]).Sample((needs, handFt, count) =>
    {
        TakeoffList takeoff = CutNeeds.Runs(needs.Runs, needs.RunFt, needs.BowsFt, needs.Single);
        CutSheet without = CutNeeds.Cut(takeoff, CutNeeds.Priced("1/8", Sold)).Sheets[0];
        CutSheet with = CutNeeds.Cut(takeoff, CutNeeds.Priced("1/8", Sold, (handFt, count))).Sheets[0];
        return with.CountsFor <= without.CountsFor && with.Bars.Count(bar => bar.OnHand) <= count;
    }, iter: 60);

    [Fact]
    public void Material_in_is_material_out_and_the_cost_is_that_of_the_bars() => Needs.Sample(needs =>
    {
        CutSheet sheet = CutNeeds.Cut(CutNeeds.Runs(needs.Runs, needs.RunFt, needs.BowsFt, needs.Single), CutNeeds.Priced("1/8", Sold)).Sheets[0];
        bool balanced = sheet.Bars.All(bar => Math.Abs(bar.Stock.Metres - bar.Trim.Metres - bar.KerfLost.Metres - bar.Leftover.Metres - bar.Pieces.Sum(piece => piece.Length.Metres)) < 1e-9);
        decimal paid = sheet.Bars.Sum(bar => Sold.Single(each => Math.Abs(each.Item1 - bar.Stock.Feet) < 1e-9).Item2);
        double wantedFt = (needs.Runs * needs.RunFt) + needs.Single.Sum();
        return balanced && paid == sheet.Cost!.Value.Amount && sheet.LowerBound <= sheet.Cost
            && Math.Abs(sheet.Bars.Sum(bar => bar.Pieces.Sum(piece => piece.Length.Feet)) - wantedFt) < 1e-6;
    }, iter: 60);

    /// <summary>The search skips ways of joining by their bounds; cutting every one of them must find nothing cheaper.</summary>
    [Fact]
    public void Cutting_every_way_of_joining_finds_nothing_cheaper() => Gen.Select(Gen.Int[12, 30], Gen.Double[2.5, 6], Gen.Int[1, 2]).Sample((runFt, bows, runs) =>
    {
        PieceNeed run = new("run", "run", Length.FromFeet(runFt));
        ImmutableArray<StockOffer> offers = [.. Sold.Select(each => new StockOffer(Length.FromFeet(each.Item1), false, null, null, new Money(each.Item2)))];
        ImmutableArray<JointLayout> layouts = JointLayouts.Of(run, CutNeeds.OffTheBows(runFt, bows), [.. offers.Select(offer => offer.Length).OrderDescending()]);
        Length kerf = Length.FromInches(0.125), single = Length.FromFeet(5.5);
        var rooms = new CutRooms(layouts.SelectMany(layout => layout.Pieces).Append(single), offers, kerf, Length.Zero);
        CutChoice found = new CutSearch(offers, rooms, Length.Zero, CutEffort.Live).Best([single], [.. Enumerable.Repeat(layouts, runs)]);

        // Every choice for each run, cut on its own.
        IEnumerable<Length[]> ways = layouts.Select(layout => layout.Pieces.ToArray());
        if (runs == 2) ways = layouts.SelectMany(one => layouts.Select(other => one.Pieces.Concat(other.Pieces).ToArray()));
        Money least = ways.Min(pieces => Cutter.Solve(new CutJob
        {
            Stock = [.. offers.Select((offer, index) => new CutStock($"{index}", offer.Length, offer.CostInPlan))],
            Pieces = [.. pieces.Append(single).Select((piece, index) => new CutPiece($"{index}", rooms.Of(piece), 1))],
            Kerf = kerf,
        }, CutEffort.Live).Cost);
        return !found.Whole || (found.Plan.Cost <= least && found.LowerBound <= least);
    }, iter: 12);
}
