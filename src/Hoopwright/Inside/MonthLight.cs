using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>Light of a mean day of a month.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Outside">On open level ground.</param>
/// <param name="Floor">On the floor, mean over the width.</param>
/// <param name="Across">At each point across, from the left.</param>
/// <param name="LostToShade">Part of the light on the floor that trees, hills and neighbours take.</param>
public sealed record MonthLight(int Month, LightSum Outside, LightSum Floor, ImmutableArray<LightSum> Across, Ratio LostToShade);
