using System.Globalization;
using Hoopwright.Cutting;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>
/// Instances with known optima. One stock length: BPPLIB (Delorme, Iori, Martello, Optim. Lett. 12 (2018) 235-250), optima from
/// its published bounds and from da Silva, Schouery, INFORMS J. Comput. (2025), doi 10.1287/ijoc.2023.0399. Several stock
/// lengths: sets of Belov, Crainic and Hemmelmayr, optima worked out with OR-Tools 9.15. Orders: made for this purpose, optima
/// worked out with SCIP and HiGHS.
/// </summary>
public sealed class PublishedInstanceTests
{
    // Recorded as best known and not as optimal, by two methods that stopped at a gap.
    private static readonly string[] OpenInTheRecord = ["order-05", "order-25"];

    private static readonly CutEffort Effort = new(8_000_000_000);

    // Its optimum is one above the best mixture, whose gap of a whole bar leaves more patterns than are searched.
    private const string OpenHere = "Hard28_BPP175";

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Orders_reach_the_known_optimum_and_all_but_one_are_proven()
    {
        var open = new List<string>();
        foreach (var (file, row) in CuttingData.Optima("orders"))
        {
            var name = Path.GetFileNameWithoutExtension(file);
            var plan = Cutter.Solve(CuttingData.ReadOrder(file), new CutEffort(400_000_000));
            var best = Decimal(row["optimum_cents"]);
            if (OpenInTheRecord.Contains(name))
                Assert.InRange(plan.Cost, Decimal(row["lower_bound_cents"]), best);
            else
                Assert.True(plan.Cost == best, $"{name}: {plan.Cost} against {best}");
            Assert.True(plan.LowerBound <= best, $"{name}: the bound {plan.LowerBound} is above {best}");
            if (!plan.Proven)
                open.Add(name);
        }

        Assert.Empty(open.Except(["order-25"]));
    }

    [Theory(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    [InlineData("falkenauer_u")]
    [InlineData("falkenauer_t")]
    [InlineData("scholl_1")]
    [InlineData("scholl_2")]
    [InlineData("scholl_3")]
    [InlineData("waescher")]
    [InlineData("schwerin_1")]
    [InlineData("schwerin_2")]
    [InlineData("random")]
    public void Every_instance_of_a_set_is_proven_at_its_published_optimum(string family)
    {
        foreach (var (file, row) in CuttingData.Optima("csp").Where(entry => entry.Row["family"] == family))
            CheckProven(file, row);
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Every_very_hard_instance_reaches_its_published_optimum_and_all_but_one_are_proven()
    {
        foreach (var (file, row) in CuttingData.Optima("csp").Where(entry => entry.Row["family"] == "hard28"))
        {
            if (row["instance"] != OpenHere)
            {
                CheckProven(file, row);
                continue;
            }

            var plan = Cutter.Solve(CuttingData.ReadOneLength(file), CutEffort.Live);
            Assert.Equal(Decimal(row["optimum_bins"]), plan.Cost);
            Assert.Equal(plan.Cost - 1, plan.LowerBound);
        }
    }

    private static void CheckProven(string file, IReadOnlyDictionary<string, string> row)
    {
        var plan = Cutter.Solve(CuttingData.ReadOneLength(file), Effort);
        Assert.True(
            plan.Proven && plan.Cost == Decimal(row["optimum_bins"]),
            $"{row["instance"]}: {plan.Cost} with bound {plan.LowerBound} against {row["optimum_bins"]}");
    }

    private static decimal Decimal(string digits) => decimal.Parse(digits, CultureInfo.InvariantCulture);
}
