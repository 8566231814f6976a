using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.BuildSteps;
using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Cuts;
using Hoopwright.Cuts.Film;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Inside;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Takeoff;
using Hoopwright.Upkeep;

namespace Hoopwright.Packets;

/// <summary>Everything that was computed from a plan.</summary>
public sealed record PlannedTunnel
{
    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The units results are shown in.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>The exact tunnel, as it stands where something was measured; null when the plan has errors, and then everything below is null too.</summary>
    public Tunnel? Tunnel { get; init; }

    /// <summary>What was measured on site; null while nothing was.</summary>
    public AsBuiltTunnel? AsBuilt { get; init; }

    /// <summary>The same by the plan alone, as if nothing had been measured, down to the order; worked out when it is first asked for, null while nothing was.</summary>
    public PlannedTunnel? ByPlan => LazyByPlan?.Value;

    internal Lazy<PlannedTunnel>? LazyByPlan { get; init; }

    /// <summary>What it would stand by the plan alone; worked out when it is first asked for, null while nothing was measured or where it is not worked out what it stands.</summary>
    public StrengthReport? StrengthByPlan => LazyStrengthByPlan?.Value;

    internal Lazy<StrengthReport>? LazyStrengthByPlan { get; init; }

    /// <summary>What to look at before film, posts, channel and boards are cut and concrete is poured; worked out when it is first asked for.</summary>
    public CutChecks? Checks => LazyChecks?.Value;

    internal Lazy<CutChecks>? LazyChecks { get; init; }

    /// <summary>What it stands.</summary>
    public StrengthReport? Strength { get; init; }

    /// <summary>Film pieces and how they are held.</summary>
    public CoverPlan? Cover { get; init; }

    /// <summary>How the film is put on, step by step; worked out when it is first asked for.</summary>
    public FasteningPlan? Fastening => LazyFastening?.Value;

    internal Lazy<FasteningPlan>? LazyFastening { get; init; }

    /// <summary>The whole build as steps; worked out when it is first asked for.</summary>
    public BuildPlan? Steps => LazySteps?.Value;

    internal Lazy<BuildPlan>? LazySteps { get; init; }

    /// <summary>The steps of putting new film on later; worked out when it is first asked for.</summary>
    public BuildPlan? RecoverSteps => LazyRecover?.Value;

    internal Lazy<BuildPlan>? LazyRecover { get; init; }

    /// <summary>What the day of pulling the film must be like; worked out when it is first asked for.</summary>
    public CoverDayOutlook? CoverDay => LazyCoverDay?.Value;

    internal Lazy<CoverDayOutlook>? LazyCoverDay { get; init; }

    /// <summary>What can be told of the climate inside without any weather; worked out when it is first asked for.</summary>
    public InsideOutlook? Inside => LazyInside?.Value;

    internal Lazy<InsideOutlook>? LazyInside { get; init; }

    /// <summary>What it asks for once it stands: storms, rounds, the next cover; worked out when it is first asked for, null where it is not worked out what it stands.</summary>
    public UpkeepReport? Upkeep => LazyUpkeep?.Value;

    internal Lazy<UpkeepReport>? LazyUpkeep { get; init; }

    /// <summary>Rolls of film and their cuts.</summary>
    public FilmCutPlan? Film { get; init; }

    /// <summary>What it is made of.</summary>
    public TakeoffList? Takeoff { get; init; }

    /// <summary>How boards, tubes and channel are cut.</summary>
    public CutSheets? Cuts { get; init; }

    /// <summary>What to buy.</summary>
    public OrderList? Orders { get; init; }

    /// <summary>Every answer of the plan, and every usual value taken where it is silent.</summary>
    public required ImmutableArray<RuleUsed> Rules { get; init; }

    /// <summary>Everything found: errors, what to look at again, assumptions, in that order.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>The assumptions alone.</summary>
    public ImmutableArray<Diagnostic> Assumptions => [.. Diagnostics.Where(each => each.Severity == Severity.Assumption)];
}
