using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>A day inside.</summary>
/// <param name="Date">Which.</param>
/// <param name="OutsideLow">Coldest hour outside.</param>
/// <param name="OutsideHigh">Hottest hour outside.</param>
/// <param name="Low">Coldest hour inside, as kept by hand.</param>
/// <param name="High">Hottest hour inside, as kept by hand.</param>
/// <param name="ShutLow">Coldest hour inside, shut all year.</param>
/// <param name="ShutHigh">Hottest hour inside, shut all year.</param>
/// <param name="Light">Light on each point across the floor, from the left, over the day.</param>
public sealed record InsideDay(DateOnly Date, Temperature OutsideLow, Temperature OutsideHigh, Temperature Low, Temperature High, Temperature ShutLow, Temperature ShutHigh, ImmutableArray<LightSum> Light);
