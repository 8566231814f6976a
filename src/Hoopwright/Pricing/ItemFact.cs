using Hoopwright.Quantities;

namespace Hoopwright.Pricing;

/// <summary>How an item is usually sold. Packs and rolls from memory; the price book of the plan overrides them.</summary>
/// <param name="Item">The item.</param>
/// <param name="Supplier">Who sells it.</param>
/// <param name="Package">What one package is called.</param>
/// <param name="Pack">How many are in a package.</param>
/// <param name="Length">Length of a roll, for what is bought by the length.</param>
/// <param name="MetricM">The same where it is sold by the metre, m.</param>
/// <param name="TakesSpare">True for screws, nails and staples, of which some are lost.</param>
/// <param name="ExamplePrice">Invented price of one package; null where the price follows from the section.</param>
internal sealed record ItemFact(
    string Item, Supplier Supplier, string Package, int Pack = 1, Length? Length = null, double? MetricM = null, bool TakesSpare = false, decimal? ExamplePrice = null)
{
    /// <summary>Length of a roll where it is sold in these units.</summary>
    public Length? LengthIn(UnitSystem units) => units == UnitSystem.Metric && MetricM is { } metres ? Quantities.Length.FromMetres(metres) : Length;
}
