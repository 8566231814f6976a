using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>What to buy, in which packages, for how much.</summary>
public sealed record OrderList
{
    /// <summary>Lines by supplier, item and size.</summary>
    public required ImmutableArray<OrderLine> Lines { get; init; }

    /// <summary>The currency, as the price book names it.</summary>
    public required string Currency { get; init; }

    /// <summary>Where the prices come from.</summary>
    public required string PriceNote { get; init; }

    /// <summary>Cost of the lines that have a price.</summary>
    public required Money Total { get; init; }

    /// <summary>That cost by stage of the build; sums to <see cref="Total"/>.</summary>
    public required ImmutableArray<StageCost> Stages { get; init; }

    /// <summary>What was found wrong or assumed.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>How many lines have no price, so that the total is without them.</summary>
    public int Unpriced => Lines.Count(line => line.Packages > 0 && line.Extension is null);
}

/// <summary>A line of the order.</summary>
public sealed record OrderLine
{
    /// <summary>Who sells it.</summary>
    public required Supplier Supplier { get; init; }

    /// <summary>The item.</summary>
    public required string Item { get; init; }

    /// <summary>The size.</summary>
    public required string Size { get; init; }

    /// <summary>One package, in words: "10 ft", "box of 100", "roll of 300 ft", "80 lb bag".</summary>
    public required string Package { get; init; }

    /// <summary>What is needed, in <see cref="Unit"/>.</summary>
    public required decimal Needed { get; init; }

    /// <summary>What is bought beyond that on purpose, in <see cref="Unit"/>.</summary>
    public required decimal Spare { get; init; }

    /// <summary>What one package holds, in <see cref="Unit"/>.</summary>
    public required decimal PerPackage { get; init; }

    /// <summary>The unit of needed, spare and package.</summary>
    public required string Unit { get; init; }

    /// <summary>Packages that are taken from what is on hand.</summary>
    public required int FromStock { get; init; }

    /// <summary>Packages to buy.</summary>
    public required int Packages { get; init; }

    /// <summary>Price of a package; null when the book has none.</summary>
    public required Money? Price { get; init; }

    /// <summary>Packages times price, to the cent; null without a price.</summary>
    public Money? Extension => Price is { } price ? (price * Packages).RoundToCents() : null;

    /// <summary>The stages it serves, with their share of what is needed.</summary>
    public required ImmutableArray<StageShare> Shares { get; init; }
}

/// <summary>A stage's share of a line.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Share">How much of what is needed, in the line's unit.</param>
public sealed record StageShare(BuildStage Stage, decimal Share);

/// <summary>The cost of a stage.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Cost">Its cost.</param>
public sealed record StageCost(BuildStage Stage, Money Cost);

/// <summary>Who sells an item.</summary>
public enum Supplier
{
    /// <summary>Boards, posts, concrete.</summary>
    LumberYard,

    /// <summary>Tubes, sleeves and clamps.</summary>
    SteelMerchant,

    /// <summary>Film, channel, wire and what goes with them.</summary>
    FilmSupplier,

    /// <summary>Fasteners, rope, door hardware.</summary>
    HardwareShop,
}
