using Hoopwright.Inside.Air;
using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>Air that passes on a warm day.</summary>
/// <param name="Wide">How far the tunnel is open.</param>
/// <param name="Free">Area free to the air.</param>
/// <param name="ByWarmth">Air by its own warmth alone, 5 K warmer than outside, in a calm.</param>
/// <param name="Usual">Air in the mean wind of the year as well, by the form measured in film houses.</param>
/// <param name="Most">The same by the rule of thumb for wind that blows square through; the greater of both.</param>
public sealed record AirChange(OpenWide Wide, Area Free, AirFlow ByWarmth, AirFlow Usual, AirFlow Most);
