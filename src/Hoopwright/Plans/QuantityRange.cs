using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A kind of quantity with what a field accepts of it, both ends included.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Kind">The kind.</param>
/// <param name="Least">The least accepted.</param>
/// <param name="Most">The most accepted.</param>
/// <param name="LeastMetric">The least accepted as a metric plan writes it.</param>
/// <param name="MostMetric">The most accepted as a metric plan writes it.</param>
internal sealed record QuantityRange<T>(
    QuantityKind<T> Kind, Written<T> Least, Written<T> Most, Written<T> LeastMetric, Written<T> MostMetric)
    where T : struct, IComparable<T>
{
    /// <summary>A value that a field of this kind often has, as a plan in feet and inches writes it.</summary>
    public string Example { get; private init; } = Most.Text;

    /// <summary>The same as a metric plan writes it.</summary>
    public string ExampleMetric { get; private init; } = MostMetric.Text;

    /// <summary>The same with a value to show to someone who asks how it is written.</summary>
    public QuantityRange<T> Like(string example, string exampleMetric) => this with { Example = example, ExampleMetric = exampleMetric };

    /// <summary>The example, as a plan in these units writes it.</summary>
    public string ExampleIn(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Example,
        UnitSystem.Metric => ExampleMetric,
    };

    /// <summary>The range in words.</summary>
    public string In(UnitSystem units) => $"{LeastIn(units).Text} to {MostIn(units).Text}";

    /// <summary>The least accepted, as a plan in these units writes it.</summary>
    public Written<T> LeastIn(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Least,
        UnitSystem.Metric => LeastMetric,
    };

    /// <summary>The most accepted, as a plan in these units writes it.</summary>
    public Written<T> MostIn(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Most,
        UnitSystem.Metric => MostMetric,
    };

    /// <summary>The unit that a plan in these units would usually write, as it stands after the number.</summary>
    public string UsualUnit(UnitSystem units) => MostIn(units).Text.TrimStart(' ', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '-');

    /// <summary>The accepted value nearest to one, when that is outside.</summary>
    public Written<T>? NearestTo(T value, UnitSystem units) =>
        value.CompareTo(Least.Value) < 0 ? LeastIn(units)
        : value.CompareTo(Most.Value) > 0 ? MostIn(units)
        : null;
}
