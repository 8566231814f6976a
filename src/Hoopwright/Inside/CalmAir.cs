using Hoopwright.Inside.Air;
using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>Air without any wind, which every tunnel meets on its hottest day.</summary>
/// <param name="Wide">How far the tunnel is open.</param>
/// <param name="Free">Area free to the air.</param>
/// <param name="ByWarmth">Air by its own warmth, 5 K warmer than outside, cracks included.</param>
/// <param name="RiseInSun">How much warmer than outside it gets in the brightest hour of a cloudless year; null where the plan does not say where it stands.</param>
public sealed record CalmAir(OpenWide Wide, Area Free, AirFlow ByWarmth, TemperatureDifference? RiseInSun);
