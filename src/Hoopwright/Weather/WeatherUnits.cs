using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Weather;

/// <summary>Units that weather tables and forecasts write, and how they become those that are kept.</summary>
internal static class WeatherUnits
{
    // Exact factors of NIST SP 811 (2008), B.8, from memory: 1 mi 1609.344 m, 1 nautical mile 1852 m, 1 in 25.4 mm, 1 inHg 3386.389 Pa.
    private static readonly ImmutableArray<(Kind Kind, string[] Names, double Times, double Plus)> Units =
    [
        (Kind.Temperature, ["°C", "C", "degC", "wmoUnit:degC", "unit:degC"], 1, 0),
        (Kind.Temperature, ["°F", "F", "degF", "wmoUnit:degF", "unit:degF"], 5.0 / 9, -160.0 / 9),
        (Kind.Temperature, ["K", "wmoUnit:K", "unit:K"], 1, -273.15),
        (Kind.Speed, ["m/s", "wmoUnit:m_s-1", "unit:m_s-1"], 1, 0),
        (Kind.Speed, ["mph", "mi/h"], 0.44704, 0),
        (Kind.Speed, ["km/h", "kph", "wmoUnit:km_h-1", "unit:km_h-1"], 1 / 3.6, 0),
        (Kind.Speed, ["kt", "kn", "knots", "wmoUnit:kt", "unit:kt"], 1852.0 / 3600, 0),
        (Kind.Part, ["%", "wmoUnit:percent", "unit:percent"], 0.01, 0),
        (Kind.Part, ["1"], 1, 0),
        (Kind.Pressure, ["Pa", "wmoUnit:Pa", "unit:Pa"], 1, 0),
        (Kind.Pressure, ["hPa", "mbar", "mb"], 100, 0),
        (Kind.Pressure, ["kPa"], 1000, 0),
        (Kind.Pressure, ["inHg"], 3386.389, 0),
        (Kind.Length, ["mm", "wmoUnit:mm", "unit:mm"], 0.001, 0),
        (Kind.Length, ["cm"], 0.01, 0),
        (Kind.Length, ["in", "inch"], 0.0254, 0),
        (Kind.Length, ["m", "wmoUnit:m", "unit:m"], 1, 0),
        (Kind.Length, ["ft"], 0.3048, 0),
        (Kind.Direction, ["°", "deg", "wmoUnit:degree_(angle)", "unit:degree_(angle)"], 1, 0),
        (Kind.Light, ["W/m²", "W/m2", "Wh/m²", "Wh/m2"], 1, 0),
    ];

    /// <summary>What sort of unit an element takes; null where neither a table nor a forecast has it.</summary>
    internal static Kind? KindOf(WeatherElement element) => element switch
    {
        WeatherElement.AirTemperature or WeatherElement.DewPoint => Kind.Temperature,
        WeatherElement.Wind or WeatherElement.Gust => Kind.Speed,
        WeatherElement.Humidity or WeatherElement.SkyCover or WeatherElement.PrecipitationChance => Kind.Part,
        WeatherElement.Pressure => Kind.Pressure,
        WeatherElement.Precipitation or WeatherElement.SnowDepth => Kind.Length,
        WeatherElement.WindDirection => Kind.Direction,
        WeatherElement.GlobalRadiation or WeatherElement.BeamRadiation or WeatherElement.DiffuseRadiation or WeatherElement.SkyInfrared => Kind.Light,
        _ => null,
    };

    /// <summary>How a unit becomes the one kept: times, then plus; null when it is none of its kind.</summary>
    internal static (double Times, double Plus)? Find(Kind kind, string unit)
    {
        foreach (var known in Units)
        {
            if (known.Kind == kind && known.Names.Any(name => name.Equals(unit, kind == Kind.Pressure ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase))) return (known.Times, known.Plus);
        }
        return null;
    }

    /// <summary>The units of a kind, for a diagnostic.</summary>
    internal static string Accepted(Kind kind, string seen) => NearestWord.Accepted(seen, [.. Units.Where(unit => unit.Kind == kind).Select(unit => unit.Names[0])]);

    /// <summary>What is measured.</summary>
    internal enum Kind
    {
        Temperature,
        Speed,
        Part,
        Pressure,
        Length,
        Direction,
        Light,
    }
}
