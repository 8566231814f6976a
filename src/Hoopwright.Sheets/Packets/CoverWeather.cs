using Hoopwright.Days;
using Hoopwright.Weather;

namespace Hoopwright.Sheets.Packets;

/// <summary>Weather that goes into a packet: when the film can be pulled, and what that was found in.</summary>
/// <param name="Report">When the film of the plan can be pulled.</param>
/// <param name="Record">The weather.</param>
public sealed record CoverWeather(CoverDayReport Report, WeatherRecord Record);
