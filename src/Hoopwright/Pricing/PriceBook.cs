using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Pricing;

/// <summary>
/// The prices of a plan. A plan that names its currency has a price book of its own, and only that one is used. Otherwise the
/// lines of the plan stand in the place of the invented example prices, item by item.
/// </summary>
public sealed class PriceBook
{
    // Stock lengths this near to one another are one.
    private const double SameLengthM = 0.001;

    private readonly ImmutableArray<PriceLine> lines;

    private PriceBook(Prices prices)
    {
        lines = [.. prices.Items.Where(line => !string.IsNullOrWhiteSpace(line.Item))];
        IsOwn = !string.IsNullOrWhiteSpace(prices.Currency);
        Currency = IsOwn ? prices.Currency!.Trim() : ExamplePrices.Currency;
        Note = prices.Note ?? (IsOwn ? "" : ExamplePrices.Note);
    }

    /// <summary>True when the plan names its currency, so that no example price is used.</summary>
    public bool IsOwn { get; }

    /// <summary>The currency of every price.</summary>
    public string Currency { get; }

    /// <summary>Where the prices come from, in words; empty when the plan's own book does not say.</summary>
    public string Note { get; }

    /// <summary>The price book of a plan.</summary>
    public static PriceBook Of(Plan plan) => new(plan.Prices);

    /// <summary>The lengths that the plan's price book lists for an item that is cut; shortest first, none when it lists none.</summary>
    public ImmutableArray<Length> LengthsOf(string item, string size) =>
        [.. Matching(item, size).Where(line => line.Length is not null).Select(line => line.Length!.Value.Value).Where(length => length > Length.Zero).Distinct().Order()];

    /// <summary>How one stock length of an item that is cut is sold.</summary>
    /// <param name="item">The item.</param>
    /// <param name="size">Its size.</param>
    /// <param name="section">Its section, for the example price.</param>
    /// <param name="length">The stock length.</param>
    /// <param name="onlyLength">True when it is sold in this length alone: then a price line need not name it.</param>
    public PackPrice OfStick(string item, string size, MemberSection? section, Length length, bool onlyLength)
    {
        PriceLine? own = Matching(item, size).FirstOrDefault(line => line.Length is { } named
            ? Math.Abs(named.Value.Metres - length.Metres) <= SameLengthM
            : onlyLength);
        return Chosen(own, 1, length, (pack, _) => ExamplePrices.OfStick(item, section, length) is { } each ? each * pack : null);
    }

    /// <summary>How a counted item, or one bought by the roll, is sold.</summary>
    /// <param name="item">The item.</param>
    /// <param name="size">Its size.</param>
    /// <param name="rollLength">For what is bought by the length: the usual roll, unless the price book names another; else null.</param>
    public PackPrice OfPackage(string item, string size, Length? rollLength)
    {
        ItemFact fact = ItemFacts.Of(item);
        PriceLine? own = Matching(item, size).FirstOrDefault();
        Length? usual = rollLength ?? fact.Length;
        return Chosen(own, fact.Pack, usual, (pack, roll) => ExamplePrices.OfPackage(item) is not { } example ? null
            : new Money(example.Amount * pack / fact.Pack * (fact.Length is { } known && roll is { } asked ? (decimal)(asked / known) : 1)).RoundToCents());
    }

    /// <summary>How dry concrete is sold.</summary>
    public PackPrice OfConcrete(string item, string size, Mass bag) =>
        Chosen(Matching(item, size).FirstOrDefault(), 1, null, (pack, _) => ExamplePrices.OfConcrete(bag) * pack);

    /// <summary>The price of a roll of film: the plan's, or else the example price unless the price book is the plan's own.</summary>
    public PackPrice OfFilmRoll(Money? given, Area area) => given is not null
        ? new PackPrice(1, null, given, PriceOrigin.Plan)
        : IsOwn ? new PackPrice(1, null, null, PriceOrigin.None) : new PackPrice(1, null, ExamplePrices.OfFilm(area), PriceOrigin.Example);

    /// <summary>The lines of an item, those of exactly this size before those without a size.</summary>
    private IEnumerable<PriceLine> Matching(string item, string size) => lines
        .Where(line => string.Equals(line.Item!.Trim(), item, StringComparison.OrdinalIgnoreCase))
        .Where(line => string.IsNullOrWhiteSpace(line.Size) || SizeKey.Same(line.Size, size))
        .OrderBy(line => string.IsNullOrWhiteSpace(line.Size) ? 1 : 0);

    private PackPrice Chosen(PriceLine? own, int usualPack, Length? usualLength, Func<int, Length?, Money?> example)
    {
        // A price with no pack beside it is the price of one.
        int pack = own?.Pack is > 0 and { } given ? given : own?.Price is not null ? 1 : usualPack;
        Length? length = usualLength is null ? null : own?.Length?.Value is { } roll && roll > Length.Zero ? roll : usualLength;
        if (own?.Price is { } price) return new PackPrice(pack, length, price.Value, PriceOrigin.Plan);
        if (IsOwn || example(pack, length) is not { } invented) return new PackPrice(pack, length, null, PriceOrigin.None);
        return new PackPrice(pack, length, invented, PriceOrigin.Example);
    }
}
