using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts.Film;
using Hoopwright.Cutting;
using Hoopwright.Cutting.TwoStage;
using Hoopwright.Reference.Tests.Cutting;

namespace Hoopwright.Reference.Tests.Cuts;

/// <summary>
/// Orders of film with two-stage cuts: straight across the roll, then lengthwise, pieces turned at will. Made for this purpose;
/// optima worked out with CP-SAT (OR-Tools 9.15), most of them by a second model as well.
/// </summary>
public sealed class FilmOrderTests
{
    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Every_order_of_film_costs_what_the_outside_solver_proved()
    {
        int orders = 0;
        foreach (var (file, row) in CuttingData.Optima(Path.Combine("film2stage", "orders")))
        {
            (ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers) = TwoStageData.ForSets(TwoStageData.ReadFilmOrder(file));
            (ImmutableArray<RollChoice> rolls, ImmutableArray<int> leftOut) = FilmSearch.Best(sizes, offers, slit: true);

            Assert.All(leftOut, count => Assert.Equal(0, count));
            Assert.Equal(decimal.Parse(row["optimum_cents"], CultureInfo.InvariantCulture), rolls.Sum(roll => offers[roll.Offer].Cost));
            Assert.All(rolls, roll => Assert.All(roll.Levels, level => Assert.True(level.Sum(size => size.Across) <= offers[roll.Offer].Width)));
            Assert.All(rolls, roll => Assert.True(roll.Levels.Sum(level => level.Max(size => size.Along)) <= offers[roll.Offer].Length));
            Assert.Equal(
                sizes.SelectMany(size => Enumerable.Repeat(Sides(size), size.Count)).Order(),
                rolls.SelectMany(roll => roll.Levels).SelectMany(level => level).Select(Sides).Order());
            orders++;
        }
        Assert.Equal(11, orders);

        static (long, long) Sides(FilmSize size) => (Math.Min(size.Across, size.Along), Math.Max(size.Across, size.Along));
    }

    // What cuts hundreds of pieces, held against the same orders.
    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void The_engine_for_many_pieces_claims_nothing_that_the_outside_solver_did_not_prove_and_proves_most_orders()
    {
        int proven = 0;
        foreach (var (file, row) in CuttingData.Optima(Path.Combine("film2stage", "orders")))
        {
            TwoStagePlan plan = TwoStageCutter.Solve(TwoStageData.ReadFilmOrder(file), CutEffort.Usual)!;
            decimal optimum = decimal.Parse(row["optimum_cents"], CultureInfo.InvariantCulture);
            Assert.True(plan.Cost >= optimum && plan.Bound <= optimum, $"{row["file"]}: {plan.Cost} with bound {plan.Bound} against {optimum}");
            if (plan.Proven) proven++;
        }
        Assert.InRange(proven, 6, 11);
    }
}
