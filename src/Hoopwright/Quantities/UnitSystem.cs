namespace Hoopwright.Quantities;

/// <summary>Which units results are shown in. It never changes a value.</summary>
public enum UnitSystem
{
    /// <summary>Feet, inches and sixteenths; pounds.</summary>
    UsCustomary,

    /// <summary>Millimetres and metres; kilograms.</summary>
    Metric,
}
