using System.Collections.Immutable;

namespace Hoopwright.Weather;

/// <summary>What was repaired in a weather file.</summary>
/// <param name="Kind">What sort of fault.</param>
/// <param name="Element">Of which value; null when it was whole rows.</param>
/// <param name="Count">How many rows or values.</param>
/// <param name="Lines">The first lines of the file where it was, at most ten.</param>
/// <param name="Seen">What stood at the first of them; null where there is nothing to show.</param>
public sealed record WeatherRepair(WeatherRepairKind Kind, WeatherElement? Element, int Count, ImmutableArray<int> Lines, string? Seen);
