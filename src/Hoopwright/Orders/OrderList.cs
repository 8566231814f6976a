using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Pricing;
using Hoopwright.Quantities;

namespace Hoopwright.Orders;

/// <summary>What to buy, in whole packages, and what it costs.</summary>
public sealed record OrderList
{
    /// <summary>The lines by item, size and length; lines added by hand last, in the plan's order.</summary>
    public required ImmutableArray<OrderLine> Lines { get; init; }

    /// <summary>The currency of every price.</summary>
    public required string Currency { get; init; }

    /// <summary>Where the prices come from; says so where they are invented. Empty when the plan's own book does not say.</summary>
    public required string PriceNote { get; init; }

    /// <summary>What was found wrong or had to be assumed.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>Lines that must be bought and have no price.</summary>
    public ImmutableArray<OrderLine> WithoutPrice => [.. Lines.Where(line => line.Extension is null)];

    /// <summary>How many lines must be bought and have no price.</summary>
    public int Unpriced => WithoutPrice.Length;

    /// <summary>What the lines with a price come to.</summary>
    public Money Total => Sum(Lines);

    /// <summary>The total in words, with what it leaves out.</summary>
    public string TotalText => WithoutPrice.Length switch
    {
        0 => $"{Total} {Currency}",
        1 => $"{Total} {Currency} without 1 line that has no price",
        var count => string.Create(CultureInfo.InvariantCulture, $"{Total} {Currency} without {count} lines that have no price"),
    };

    /// <summary>Cost by stage, in the order of building; lines without a stage last. Adds up to the total.</summary>
    public ImmutableArray<StageCost> Stages =>
    [
        .. Lines.SelectMany(line => line.Stages).GroupBy(share => share.Stage)
            .OrderBy(group => group.Key is { } stage ? (int)stage : int.MaxValue)
            .Select(group => new StageCost(group.Key, group.Aggregate(Money.Zero, (sum, share) => sum + share.Cost))),
    ];

    /// <summary>The kinds of seller that something must be bought from.</summary>
    public ImmutableArray<Supplier> Suppliers => [.. Lines.Where(line => line.Packages > 0).Select(line => line.Supplier).Distinct().Order()];

    /// <summary>The list for one kind of seller: what must be bought there.</summary>
    public ImmutableArray<OrderLine> LinesFor(Supplier supplier) => [.. Lines.Where(line => line.Supplier == supplier && line.Packages > 0)];

    /// <summary>What the lines of one kind of seller come to, those without a price left out.</summary>
    public Money TotalFor(Supplier supplier) => Sum(LinesFor(supplier));

    private static Money Sum(IEnumerable<OrderLine> lines) => lines.Aggregate(Money.Zero, (sum, line) => sum + (line.Extension ?? Money.Zero));
}
