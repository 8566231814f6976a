using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A kind of quantity as it stands in a plan.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Noun">Its name with the article, such as "a length".</param>
/// <param name="Read">Reads it as people write it.</param>
/// <param name="Pattern">
/// A regular expression for editors, loose: it asks for a number, a unit where one is needed, and no comma. The reader decides.
/// </param>
internal sealed record QuantityKind<T>(string Noun, Func<string?, Reading<T>> Read, string Pattern)
    where T : struct, IComparable<T>
{
    /// <summary>False for pure numbers and money, which are complete without a unit.</summary>
    public bool HasUnit { get; init; } = true;

    /// <summary>A field of this kind with bounds, written once for each system of units; the first pair decides.</summary>
    /// <param name="least">The least accepted.</param>
    /// <param name="most">The most accepted.</param>
    /// <param name="leastMetric">The least accepted as a metric plan writes it, rounded inwards.</param>
    /// <param name="mostMetric">The most accepted as a metric plan writes it, rounded inwards.</param>
    public QuantityRange<T> Within(string least, string most, string leastMetric, string mostMetric) => new(
        this, new Written<T>(least, ValueOf(least)), new Written<T>(most, ValueOf(most)),
        new Written<T>(leastMetric, ValueOf(leastMetric)), new Written<T>(mostMetric, ValueOf(mostMetric)));

    /// <summary>A field of this kind with bounds that are written alike in both systems of units.</summary>
    public QuantityRange<T> Within(string least, string most) => Within(least, most, least, most);

    private T ValueOf(string text)
    {
        var reading = Read(text);
        return reading.IsRead ? reading.Value : throw new InvalidOperationException($"A bound cannot be read: {text}");
    }
}
