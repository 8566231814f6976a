using System.Collections.Immutable;
using Hoopwright.Pricing;
using Hoopwright.Quantities;

namespace Hoopwright.Orders;

/// <summary>One line of an order: what is needed, what of it is there, and which packages make up the rest.</summary>
public sealed record OrderLine
{
    /// <summary>The item, as in the price book.</summary>
    public required string Item { get; init; }

    /// <summary>Its size; empty where there is only one.</summary>
    public required string Size { get; init; }

    /// <summary>For what is sold by the length: the length of one stick, board, roll or reel; null for things that are counted.</summary>
    public Length? Length { get; init; }

    /// <summary>For rolls of film: the unfolded width; null otherwise.</summary>
    public Length? Width { get; init; }

    /// <summary>Who sells it.</summary>
    public required Supplier Supplier { get; init; }

    /// <summary>What quantities are counted in: each, m, bag, or what a whole package is called.</summary>
    public required string Unit { get; init; }

    /// <summary>What the tunnel takes, in the unit; exact.</summary>
    public required decimal Needed { get; init; }

    /// <summary>Bought beyond that because some is lost in use; in the unit.</summary>
    public decimal Waste { get; init; }

    /// <summary>Bought beyond that to have some over; in the unit.</summary>
    public decimal Spare { get; init; }

    /// <summary>Taken from what already lies in the barn; in the unit.</summary>
    public decimal FromStock { get; init; }

    /// <summary>What must be bought: needed, waste and spare, less what is on hand; in the unit, 0 or more.</summary>
    public decimal ToBuy => Math.Max(0, Needed + Waste + Spare - FromStock);

    /// <summary>What one package is called.</summary>
    public required string Package { get; init; }

    /// <summary>How much of the unit one package holds; above 0.</summary>
    public required decimal PerPackage { get; init; }

    /// <summary>Whole packages to buy.</summary>
    public required int Packages { get; init; }

    /// <summary>What is left of the packages when all that is bought for is used; in the unit.</summary>
    public decimal Over => (Packages * PerPackage) - ToBuy;

    /// <summary>Price of one package; null when there is none.</summary>
    public required Money? Price { get; init; }

    /// <summary>Where the price comes from.</summary>
    public required PriceOrigin Origin { get; init; }

    /// <summary>
    /// Packages times price, to the cent; null when there is no price and something must be bought. A line added by hand is
    /// charged for what it asks, whole or not.
    /// </summary>
    public Money? Extension => Packages == 0 ? Money.Zero : Price is { } price ? (price * (IsExtra ? Needed : Packages)).RoundToCents() : null;

    /// <summary>The extension by stage, in proportion to what each stage needs; empty without a price. Adds up to the cent.</summary>
    public required ImmutableArray<StageCost> Stages { get; init; }

    /// <summary>The takeoff lines it serves; empty for a line added by hand.</summary>
    public required ImmutableArray<string> TakeoffIds { get; init; }

    /// <summary>True for a line that the plan adds by hand.</summary>
    public bool IsExtra { get; init; }

    /// <summary>Item and size as people say them together.</summary>
    public string Name => Size.Length == 0 ? Item : $"{Item} {Size}";
}
