using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.BuildSteps;
using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Cuts;
using Hoopwright.Cuts.Film;
using Hoopwright.Cutting;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Inside;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Running;
using Hoopwright.Strength;
using Hoopwright.Takeoff;
using Hoopwright.Upkeep;

namespace Hoopwright.Packets;

/// <summary>Works a plan out, stage after stage.</summary>
public static class TunnelWorks
{
    /// <summary>Works out a plan made in code or read before.</summary>
    public static PlannedTunnel Plan(Plan plan) => Plan(new PlanReading(plan, false, []));

    /// <summary>
    /// Works out a plan that was read. With errors in the plan there are diagnostics, all that can be found in one pass, and
    /// no tunnel.
    /// </summary>
    /// <param name="reading">What came of reading it.</param>
    /// <param name="book">A price book whose prices come after those of the plan; null for none.</param>
    /// <param name="effort">How much work each cut list may take; null for as much as there is time for while someone is typing.</param>
    /// <param name="depth">How far to go; what lies beyond stays null.</param>
    /// <param name="memory">Cutting jobs worked out before, for someone who asks again and again; null for none.</param>
    /// <param name="sideBySide">How to run stages that need nothing of each other; null for one after the other.</param>
    public static PlannedTunnel Plan(
        PlanReading reading, Prices? book = null, CutEffort? effort = null, WorkDepth depth = WorkDepth.Whole, CutMemory? memory = null, SideBySide? sideBySide = null)
    {
        Plan plan = book is null ? reading.Plan : reading.Plan with { Prices = Joined(reading.Plan.Prices, book) };
        UnitSystem units = plan.Units ?? UnitSystem.UsCustomary;
        var answers = new Answers(units);
        answers.Take("units", LayoutDefaults.Units, plan.Units);
        var planned = new PlannedTunnel { Plan = plan, Units = units, Rules = [], Diagnostics = [] };
        if (reading.TooNew) return planned with { Diagnostics = reading.Diagnostics };

        AsBuiltOutcome layout = AsBuiltPlanner.LayOut(plan, answers);
        planned = planned with { AsBuilt = layout.AsBuilt };
        // What was wrong already when it was read is not said twice.
        HashSet<string> said = [.. reading.Diagnostics.Where(each => each.Severity == Severity.Error).Select(each => each.Path)];
        List<Diagnostic> found = [.. reading.Diagnostics, .. layout.Diagnostics.Where(each => !said.Any(path => Covers(path, each.Path)))];
        if (layout.AsBuilt is not null)
            planned = planned with { LazyByPlan = new(() => Plan(reading with { Plan = reading.Plan with { SiteBook = [] } }, book, effort, WorkDepth.Orders, memory)) };
        if (layout.Tunnel is not { } tunnel || !reading.IsUsable)
            return planned with { Rules = answers.Rules, Diagnostics = InOrder(found, reading.IsUsable ? answers.Assumptions : []) };

        if (depth == WorkDepth.Layout)
            return planned with { Tunnel = tunnel, Rules = answers.Rules, Diagnostics = InOrder(found, [.. SiteAssumptions(plan), .. answers.Assumptions]) };

        sideBySide ??= InTurn.Run;
        // What it stands and what it takes need nothing of each other; each asks the plan for itself, and is told in this order.
        StrengthReport? strength = null;
        PlannedTunnel supplied = planned;
        ImmutableArray<Diagnostic> wanting = [];
        Answers forStrength = new(units), forSupply = new(units);
        sideBySide(
            () => strength = depth == WorkDepth.Whole ? StrengthPlanner.Plan(tunnel, forStrength, sideBySide) : null,
            () => (supplied, wanting) = Supply(planned with { Tunnel = tunnel }, forSupply, effort ?? CutEffort.Live, memory, reading.Plan.Prices.Items.Length));
        answers.Add(forStrength);
        answers.Add(forSupply);
        found.AddRange([.. strength?.Diagnostics ?? [], .. wanting]);
        return supplied with
        {
            Strength = strength,
            LazyStrengthByPlan = strength is null || layout.AsBuilt is not { } built ? null : new(() => StrengthPlanner.Plan(built.Planned, new Answers(units), sideBySide)),
            LazyUpkeep = strength is null ? null : new(() => UpkeepPlanner.Plan(tunnel, supplied.Cover!, supplied.RecoverSteps!, strength)),
            Rules = answers.Rules,
            Diagnostics = InOrder(found, [.. SiteAssumptions(plan), .. answers.Assumptions]),
        };
    }

    /// <summary>What a tunnel takes: film, materials, cut lists and orders.</summary>
    private static (PlannedTunnel Supplied, ImmutableArray<Diagnostic> Found) Supply(PlannedTunnel planned, Answers answers, CutEffort effort, CutMemory? memory, int ownPrices)
    {
        Tunnel tunnel = planned.Tunnel!;
        CoverOutcome cover = CoverPlanner.Plan(tunnel, answers);
        FilmCutOutcome film = FilmCutter.Cut(cover.Plan, planned.Plan, answers);
        TakeoffList takeoff = TakeoffPlanner.Plan(tunnel, cover.Plan, answers);
        CutSheets cuts = CutPlanner.Plan(takeoff, planned.Plan, answers, effort, memory);
        OrderList orders = OrderPlanner.Plan(takeoff, cuts, film.Plan, planned.Plan, answers, ownPrices);
        CoverDayNeeds day = CoverDayNeeds.Of(tunnel, cover.Plan, answers);
        // Everything it asks was asked before.
        var fastening = new Lazy<FasteningPlan>(() => FasteningPlanner.Plan(tunnel, cover.Plan, day));
        var steps = new Lazy<BuildPlan>(() => BuildPlanner.Plan(tunnel, cover.Plan, fastening.Value));
        var recover = new Lazy<BuildPlan>(() => BuildPlanner.Plan(tunnel, cover.Plan, fastening.Value, BuildJob.Recover));
        return (
            planned with { LazyChecks = new(() => CutCheckPlanner.Plan(tunnel, cover.Plan, planned.AsBuilt)), LazyFastening = fastening, LazySteps = steps, LazyRecover = recover, LazyCoverDay = new(() => CoverDayOutlook.Of(tunnel, cover.Plan)), LazyInside = new(() => OutlookPlanner.Plan(tunnel)), Cover = cover.Plan, Film = film.Plan, Takeoff = takeoff, Cuts = cuts, Orders = orders },
            [.. cover.Diagnostics, .. film.Diagnostics, .. cuts.Diagnostics, .. orders.Diagnostics]);
    }

    private static Prices Joined(Prices own, Prices book) => own with
    {
        Currency = own.Currency ?? book.Currency,
        Note = own.Note ?? book.Note,
        Items = [.. own.Items, .. book.Items],
    };

    /// <summary>True when a fault at one path makes what is said of another pointless.</summary>
    private static bool Covers(string fault, string path) =>
        path == fault || path.StartsWith(fault + ".", StringComparison.Ordinal) || path.StartsWith(fault + "[", StringComparison.Ordinal);

    private static ImmutableArray<Diagnostic> InOrder(IEnumerable<Diagnostic> found, IEnumerable<Diagnostic> assumptions) =>
        [.. found.Concat(assumptions).Distinct().OrderBy(each => each.Severity switch { Severity.Error => 0, Severity.Warning => 1, Severity.Assumption => 2 })];

    /// <summary>What the site asks of the frame is not known until someone looks it up, and joints are not checked here.</summary>
    private static IEnumerable<Diagnostic> SiteAssumptions(Plan plan)
    {
        if (plan.Site.FrostDepth is null) yield return Ask("assumed.site.frost-depth", "site.frostDepth", "No frost depth is given, so no depth in the ground is held against it.", "none: ask the building office");
        yield return Ask("assumed.strength", "frame", "That joints, bolts, welds and what the maker delivers carry what the members do is assumed and not worked out here; the maker of the frame or a licensed engineer decides.", "not checked");

        static Diagnostic Ask(string code, string path, string message, string taken) => new(code, Severity.Assumption, path, message, null, taken);
    }
}
