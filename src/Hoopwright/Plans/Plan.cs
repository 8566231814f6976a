using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>What the grower wants, as typed. Everything else is computed from it.</summary>
public sealed record Plan : PlanSection
{
    /// <summary>Version of the plan format. A plan of a newer minor version keeps it, and the fields that came with it.</summary>
    [Description("Version of the plan format.")]
    [JsonPropertyName("hoopwright")]
    public PlanVersion Version { get; init; } = PlanVersion.Current;

    /// <summary>What this tunnel is called.</summary>
    [Description("What this tunnel is called.")]
    public string? Name { get; init; }

    /// <summary>Anything worth saying about the plan.</summary>
    [Description("Anything worth saying about the plan.")]
    public string? Note { get; init; }

    /// <summary>Which units the results are shown in, and whether what is left out is taken in sizes of feet and inches or of metres: us or metric. Cut lengths go to the nearest mark of that tape; no value that the plan gives changes.</summary>
    [Description("Which units the results are shown in, and whether what is left out is taken in sizes of feet and inches or of metres: us or metric. Cut lengths go to the nearest mark of that tape; no value that the plan gives changes.")]
    public UnitSystem? Units { get; init; }

    /// <summary>Where the tunnel stands.</summary>
    [Description("Where the tunnel stands.")]
    public Site Site { get; init; } = new();

    /// <summary>Bows, purlins, ties and braces.</summary>
    [Description("Bows, purlins, ties and braces.")]
    public Frame Frame { get; init; } = new();

    /// <summary>What the bows stand in or on.</summary>
    [Description("What the bows stand in or on.")]
    public Ground Ground { get; init; } = new();

    /// <summary>The two end walls.</summary>
    [Description("The two end walls.")]
    public Ends Ends { get; init; } = new();

    /// <summary>The two long sides.</summary>
    [Description("The two long sides.")]
    public Sides Sides { get; init; } = new();

    /// <summary>Film and how it is held.</summary>
    [Description("Film and how it is held.")]
    public Cover Cover { get; init; } = new();

    /// <summary>How many screws, bolts, clamps and plates hold what.</summary>
    [Description("How many screws, bolts, clamps and plates hold what.")]
    public FastenerRules Fasteners { get; init; } = new();

    /// <summary>How snow, wind and other loads are worked out.</summary>
    [Description("How snow, wind and other loads are worked out.")]
    public LoadRules Loads { get; init; } = new();

    /// <summary>Who builds it.</summary>
    [Description("Who builds it.")]
    public Crew Crew { get; init; } = new();

    /// <summary>When it is built.</summary>
    [Description("When it is built.")]
    public Build Build { get; init; } = new();

    /// <summary>What a day must be like to pull the roof film.</summary>
    [Description("What a day must be like to pull the roof film.")]
    public CoverDay CoverDay { get; init; } = new();

    /// <summary>What the climate inside is worked out with.</summary>
    [Description("What the climate inside is worked out with.")]
    public InsideRules Inside { get; init; } = new();

    /// <summary>How near to the plan is near enough where something was measured on site.</summary>
    [Description("How near to the plan is near enough where something was measured on site.")]
    public BuildTolerances Tolerances { get; init; } = new();

    /// <summary>Storms, inspections and the next cover.</summary>
    [Description("Storms, inspections and the next cover.")]
    public UpkeepRules Upkeep { get; init; } = new();

    /// <summary>Saw and leftovers.</summary>
    [Description("Saw and leftovers.")]
    public CutRules Cuts { get; init; } = new();

    /// <summary>Waste, spares and extra lines of the order.</summary>
    [Description("Waste, spares and extra lines of the order.")]
    public OrderRules Orders { get; init; } = new();

    /// <summary>The price book.</summary>
    [Description("The price book.")]
    public Prices Prices { get; init; } = new();

    /// <summary>What already lies in the barn; used first.</summary>
    [Description("What already lies in the barn; used first.")]
    public ImmutableArray<StockOnHand> Stock { get; init; } = [];

    /// <summary>What was measured, done and decided on site; entries are only ever added.</summary>
    [Description("What was measured, done and decided on site; entries are only ever added.")]
    public ImmutableArray<SiteBookEntry> SiteBook { get; init; } = [];

    /// <summary>What was last written into which field where copies of the plan are shared; the program writes it.</summary>
    [Description("What was last written into which field where copies of the plan are shared; the program writes it.")]
    public ImmutableArray<PlanEdit> Edits { get; init; } = [];
}
