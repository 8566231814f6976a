using System.Collections.Immutable;
using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A board by its size.</summary>
public sealed record Board : PlanSection
{
    /// <summary>Nominal size, such as 2x6.</summary>
    [Description("Nominal size, such as 2x6.")]
    public string? Size { get; init; }

    /// <summary>True for lumber treated for ground contact.</summary>
    [Description("True for lumber treated for ground contact.")]
    public bool? Treated { get; init; }

    /// <summary>The lengths the yard sells.</summary>
    [Description("The lengths the yard sells.")]
    public ImmutableArray<Written<Length>> StockLengths { get; init; } = [];

    /// <summary>True when a run may be made of several boards joined end to end off the bows.</summary>
    [Description("True when a run may be made of several boards joined end to end off the bows.")]
    public bool? Splice { get; init; }
}
