using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>Light of a cloudless day in the middle of a month: the most there is.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="DayLength">From sunrise to sunset.</param>
/// <param name="Outside">On open level ground.</param>
/// <param name="Floor">On the floor, mean over the width.</param>
/// <param name="LostToShade">Part of the light on the floor that trees, hills and neighbours take.</param>
public sealed record ClearMonth(int Month, TimeSpan DayLength, LightSum Outside, LightSum Floor, Ratio LostToShade);
