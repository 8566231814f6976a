using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>A change of temperature of the whole frame.</summary>
/// <param name="From">When it was put up.</param>
/// <param name="To">Now.</param>
public sealed record TemperatureChange(Temperature From, Temperature To);
