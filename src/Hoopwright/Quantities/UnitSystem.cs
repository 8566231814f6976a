namespace Hoopwright.Quantities;

/// <summary>Which units results are shown in, and to the marks of which tape pieces are cut. It changes no other value.</summary>
public enum UnitSystem
{
    /// <summary>Feet, inches and sixteenths; pounds.</summary>
    UsCustomary,

    /// <summary>Millimetres and metres; kilograms.</summary>
    Metric,
}
