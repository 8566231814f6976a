using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A line added to the order by hand.</summary>
public sealed record ExtraLine : PlanSection
{
    /// <summary>What it is.</summary>
    [Description("What it is.")]
    public string? Item { get; init; }

    /// <summary>How many.</summary>
    [Description("How many.")]
    public Written<Ratio>? Quantity { get; init; }

    /// <summary>The unit it is sold in.</summary>
    [Description("The unit it is sold in.")]
    public string? Unit { get; init; }

    /// <summary>Price of one.</summary>
    [Description("Price of one.")]
    public Written<Money>? Price { get; init; }

    /// <summary>The stage it belongs to: site, frame, ground, ends, cover.</summary>
    [Description("The stage it belongs to: site, frame, ground, ends, cover.")]
    public string? Stage { get; init; }
}
