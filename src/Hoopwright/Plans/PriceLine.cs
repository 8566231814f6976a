using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>The price of one item.</summary>
public sealed record PriceLine : PlanSection
{
    /// <summary>The item's name in the takeoff.</summary>
    [Description("The item's name in the takeoff.")]
    public string? Item { get; init; }

    /// <summary>Its size as the takeoff writes it; leave out where there is only one.</summary>
    [Description("Its size as the takeoff writes it; leave out where there is only one.")]
    public string? Size { get; init; }

    /// <summary>The stock length this price is for, for boards, tubes and channel.</summary>
    [Description("The stock length this price is for, for boards, tubes and channel.")]
    public Written<Length>? Length { get; init; }

    /// <summary>How many are in one package; 1 when sold singly.</summary>
    [Description("How many are in one package; 1 when sold singly.")]
    public int? Pack { get; init; }

    /// <summary>Price of one package.</summary>
    [Description("Price of one package.")]
    public Written<Money>? Price { get; init; }
}
