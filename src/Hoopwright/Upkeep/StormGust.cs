using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Upkeep;

/// <summary>What to do before gusts of a strength.</summary>
/// <param name="Action">What it calls for.</param>
/// <param name="Gust">Forecast gust, at 10 m in open country.</param>
/// <param name="Does">What to do.</param>
/// <param name="Why">Why at this gust.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record StormGust(StormAction Action, Speed Gust, Phrase Does, Phrase Why, Citation Source);
