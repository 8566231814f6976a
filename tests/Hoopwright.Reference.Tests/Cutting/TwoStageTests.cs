using System.Globalization;
using Hoopwright.Cutting;
using Hoopwright.Cutting.TwoStage;
using Hoopwright.Testing;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>Rectangles in two stages against what is published of them; see <see cref="TwoStageData"/> for the sources.</summary>
public sealed class TwoStageTests
{
    private static readonly CutEffort Effort = new(2_500_000_000);

    // Recorded bests that are no whole multiple of what the sheets' prices have in common, so that no plan costs just that.
    private const string NotWhole = "gcut3d";

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void High_demands_stay_within_the_recorded_bounds_and_reach_every_proven_optimum()
    {
        var proven = new List<string>();
        foreach (CsvRows row in TwoStageData.SeveralSheets())
        {
            foreach (string way in (string[])["oriented", "rotatable"])
            {
                string name = $"{row.Text("instance")} {way}";
                TwoStagePlan plan = TwoStageCutter.Solve(TwoStageData.ReadSeveralSheets(row.Text("instance"), turn: way == "rotatable"), Effort)!;
                double best = row.Number(way + "_best_known_cost");
                Assert.True(plan.Cost >= row.Number(way + "_lower_bound"), $"{name}: {plan.Cost} is below the recorded bound");
                Assert.True(plan.Bound <= best || row.Text("instance") == NotWhole, $"{name}: the bound {plan.Bound} is above the recorded best {best}");
                Assert.True(plan.Cost <= best * 1.0025, $"{name}: {plan.Cost} against {best}");
                if (row.Text(way + "_proven_optimum") is { Length: > 0 } optimum)
                {
                    Assert.True(plan.Bound <= long.Parse(optimum, CultureInfo.InvariantCulture) && plan.Cost >= long.Parse(optimum, CultureInfo.InvariantCulture), $"{name}: {plan.Cost} with bound {plan.Bound} against {optimum}");
                }

                if (plan.Proven) proven.Add(name);
            }
        }

        // All that the outside solver proved, and more.
        Assert.Empty(((string[])["gcut2d oriented", "gcut5d oriented", "gcut6d oriented", "gcut1d rotatable", "gcut5d rotatable", "gcut1d oriented", "gcut6d rotatable", "gcut9d oriented"]).Except(proven));
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void One_sheet_gives_the_published_profit_whichever_way_the_first_cuts_run()
    {
        var open = new List<string>();
        foreach (CsvRows row in TwoStageData.OneSheet())
        {
            foreach (var (across, column) in ((bool, string)[])[(true, "first_cut_horizontal_optimum_profit"), (false, "first_cut_vertical_optimum_profit")])
            {
                string name = $"{row.Text("instance")}, {column}";
                TwoStageJob job = TwoStageData.ReadOneSheet(row.Text("instance"), across);
                TwoStagePlan plan = TwoStageCutter.Solve(job, Effort)!;
                long everything = job.Pieces.Sum(piece => piece.Count * piece.LeftOut!.Value);
                var profit = (long)row.Number(column);
                Assert.True(everything - plan.Cost <= profit && everything - plan.Bound >= profit, $"{name}: {everything - plan.Cost}, bound {everything - plan.Bound}, against {profit}");
                if (!plan.Proven) open.Add(name);
            }
        }

        Assert.Empty(open.Except(["cung2000_Hchl6s, first_cut_horizontal_optimum_profit"]));
    }
}
