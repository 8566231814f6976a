using System.Collections.Immutable;
using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>The price book.</summary>
public sealed record Prices : PlanSection
{
    /// <summary>The currency in words or its three-letter code.</summary>
    [Description("The currency in words or its three-letter code.")]
    public string? Currency { get; init; }

    /// <summary>Where the prices come from and of what date.</summary>
    [Description("Where the prices come from and of what date.")]
    public string? Note { get; init; }

    /// <summary>Prices by item and size.</summary>
    [Description("Prices by item and size.")]
    public ImmutableArray<PriceLine> Items { get; init; } = [];
}
