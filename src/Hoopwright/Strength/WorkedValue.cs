namespace Hoopwright.Strength;

/// <summary>A value that a check passed through.</summary>
/// <param name="Symbol">As the standard writes it.</param>
/// <param name="Value">In <paramref name="Unit"/>.</param>
/// <param name="Unit">SI unit; empty for a pure number.</param>
/// <param name="Says">What it is.</param>
internal readonly record struct WorkedValue(string Symbol, double Value, string Unit, string Says);
