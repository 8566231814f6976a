using System.Collections.Concurrent;
using Hoopwright.Cover;
using Hoopwright.Cuts;
using Hoopwright.Cuts.Film;
using Hoopwright.Cutting;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Plans;
using Hoopwright.Takeoff;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Orders;

/// <summary>A plan with everything up to its order.</summary>
internal sealed record WholeOrder(
    Tunnel Tunnel, CoverPlan Cover, TakeoffList Takeoff, CutSheets Cuts, FilmCutPlan Film, OrderList Order, Answers Answers)
{
    private static readonly ConcurrentDictionary<string, Lazy<WholeOrder>> Examples = [];

    public static WholeOrder Of(Plan plan)
    {
        Tunnel tunnel = SamplePlans.LayOut(plan);
        var answers = new Answers(tunnel.Units);
        CoverPlan cover = CoverPlanner.Plan(tunnel, answers).Plan;
        TakeoffList takeoff = TakeoffPlanner.Plan(tunnel, cover, answers);
        CutSheets cuts = CutPlanner.Plan(takeoff, plan, answers, CutEffort.Live);
        FilmCutPlan film = FilmCutter.Cut(cover, plan, answers).Plan;
        return new WholeOrder(tunnel, cover, takeoff, cuts, film, OrderPlanner.Plan(takeoff, cuts, film, plan, answers), answers);
    }

    /// <summary>A bundled example, worked out once for all tests.</summary>
    public static WholeOrder OfExample(string name) => Examples.GetOrAdd(name, each => new Lazy<WholeOrder>(() => Of(SamplePlans.Example(each)))).Value;
}
