using System.Collections.Immutable;
using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Waste, spares and extra lines of the order.</summary>
public sealed record OrderRules : PlanSection
{
    /// <summary>Concrete bought beyond the computed volume.</summary>
    [Description("Concrete bought beyond the computed volume.")]
    public Written<Ratio>? ConcreteWaste { get; init; }

    /// <summary>Screws, nails and staples bought beyond the count.</summary>
    [Description("Screws, nails and staples bought beyond the count.")]
    public Written<Ratio>? FastenerSpare { get; init; }

    /// <summary>Lines to add to the order as they stand.</summary>
    [Description("Lines to add to the order as they stand.")]
    public ImmutableArray<ExtraLine> Extras { get; init; } = [];
}
