using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Weather;

/// <summary>What came of reading a weather file.</summary>
/// <param name="Record">The weather; null when the file was refused.</param>
/// <param name="Repairs">What was repaired, by kind.</param>
/// <param name="Diagnostics">Everything found: why it was refused, what was repaired, what was assumed.</param>
public sealed record WeatherReading(WeatherRecord? Record, ImmutableArray<WeatherRepair> Repairs, ImmutableArray<Diagnostic> Diagnostics);
