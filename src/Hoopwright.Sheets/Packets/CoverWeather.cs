using Hoopwright.Days;
using Hoopwright.Inside;
using Hoopwright.Weather;

namespace Hoopwright.Sheets.Packets;

/// <summary>Weather that goes into a packet: when the film can be pulled, what that was found in, and of a whole year what it is like inside.</summary>
/// <param name="Report">When the film of the plan can be pulled.</param>
/// <param name="Record">The weather.</param>
/// <param name="Inside">What a year inside is like with it; null where it is no year.</param>
public sealed record CoverWeather(CoverDayReport Report, WeatherRecord Record, InsideReport? Inside = null);
