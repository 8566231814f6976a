using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Inside.Air;

/// <summary>A record as plain numbers hour by hour, with the sun at the middle of each, nothing of it unknown.</summary>
internal sealed class HourlyWeather
{
    // Opaque cover of a sky of which nothing is known: neither clear nor overcast.
    private const double UsualCover = 0.5;

    // Sun lower than this over the horizon counts as sky: the hour's light comes from many heights, and little of it.
    private const double LeastElevationDeg = 1;

    private HourlyWeather(int count) => (Count, AirK, Water, WindMps, WindFromRad, BeamLevel, Diffuse, InfraredWPerM2, Anisotropy, SunAzimuthRad, SunElevationRad, Month)
        = (count, New(count), New(count), New(count), New(count), New(count), New(count), New(count), New(count), New(count), New(count), new byte[count]);

    internal int Count { get; }

    internal double[] AirK { get; }

    /// <summary>Water in the air outside, kg/kg.</summary>
    internal double[] Water { get; }

    /// <summary>At the height of the record.</summary>
    internal double[] WindMps { get; }

    internal double[] WindFromRad { get; }

    /// <summary>Light of the sun itself on level ground, W/m².</summary>
    internal double[] BeamLevel { get; }

    /// <summary>Light of the sky on level ground, W/m².</summary>
    internal double[] Diffuse { get; }

    /// <summary>From the sky on level ground, W/m².</summary>
    internal double[] InfraredWPerM2 { get; }

    /// <summary>A, part of the sky's light that comes from where the sun stands, after Hay and Davies.</summary>
    internal double[] Anisotropy { get; }

    internal double[] SunAzimuthRad { get; }

    internal double[] SunElevationRad { get; }

    /// <summary>From 1.</summary>
    internal byte[] Month { get; }

    /// <summary>Of the air, Pa, by the height of the place.</summary>
    internal double PressurePa { get; private init; }

    /// <summary>Hours in which something was not known and was taken from the day before.</summary>
    internal int Filled { get; private set; }

    /// <summary>True when light of sun and sky were told apart by a formula.</summary>
    internal bool Split { get; private set; }

    /// <summary>True when infrared from the sky was worked out.</summary>
    internal bool InfraredWorkedOut { get; private set; }

    /// <summary>Reads a record; null, and what it lacks, where a year inside cannot be worked out of it.</summary>
    internal static (HourlyWeather? Weather, WeatherElement? Missing) Of(WeatherRecord record, Place place)
    {
        var filler = new Filler(record);
        if (filler.Column(WeatherElement.AirTemperature) is not { } air) return (null, WeatherElement.AirTemperature);
        if (filler.Column(WeatherElement.Wind) is not { } wind) return (null, WeatherElement.Wind);
        double[]? global = filler.Column(WeatherElement.GlobalRadiation), beam = filler.Column(WeatherElement.BeamRadiation), diffuse = filler.Column(WeatherElement.DiffuseRadiation);
        if (global is null && (beam is null || diffuse is null)) return (null, WeatherElement.GlobalRadiation);
        double[]? dew = filler.Column(WeatherElement.DewPoint), humidity = dew is null ? filler.Column(WeatherElement.Humidity) : null;
        if (dew is null && humidity is null) return (null, WeatherElement.DewPoint);
        double[]? from = filler.Column(WeatherElement.WindDirection), infrared = filler.Column(WeatherElement.SkyInfrared);
        double[]? cover = filler.Column(WeatherElement.OpaqueSkyCover) ?? filler.Column(WeatherElement.SkyCover);
        var weather = new HourlyWeather(record.Count)
        {
            PressurePa = SunAlmanac.UsualPressure(place.Elevation).Pascals,
            Filled = filler.Filled,
            Split = beam is null && diffuse is null,
            InfraredWorkedOut = infrared is null,
        };
        ReadOnlySpan<int> hours = record.Hours;
        int day = int.MinValue;
        SunTrack? track = null;
        double outside = 0, middle = record.RowsLast ? 0.5 : 0;
        for (int row = 0; row < record.Count; row++)
        {
            if (hours[row] / 24 != day)
            {
                day = hours[row] / 24;
                var date = DateOnly.FromDayNumber(day);
                track = new SunTrack(place, date, record.UtcOffset);
                outside = SolarConstant / (track.RadiusAu * track.RadiusAu);
            }
            weather.Month[row] = (byte)DateOnly.FromDayNumber(day).Month;
            weather.AirK[row] = air[row] + 273.15;
            double dewC = dew?[row] ?? double.NaN;
            double vapour = humidity is null ? MoistAir.SaturationPa(Math.Min(dewC, air[row])) : MoistAir.SaturationPa(air[row]) * Math.Clamp(humidity[row], 0.01, 1);
            weather.Water[row] = MoistAir.Ratio(vapour, weather.PressurePa);
            weather.WindMps[row] = Math.Max(0, wind[row]);
            weather.WindFromRad[row] = GeocentricSun.Rad(from?[row] ?? double.NaN);
            if (humidity is not null)
            {
                double log = Math.Log(vapour / 610.8);
                dewC = 237.3 * log / (17.27 - log);
            }
            weather.InfraredWPerM2[row] = infrared is not null ? infrared[row] : SkyInfrared.WPerM2(weather.AirK[row], dewC + 273.15, cover?[row] ?? UsualCover);
            TopocentricSun sun = track!.At(((hours[row] % 24) + middle - 12) / 24);
            double elevation = sun.ElevationDeg + TopocentricSun.RefractionDeg(sun.ElevationDeg, weather.PressurePa, air[row]);
            weather.Light(row, outside, elevation, sun.AzimuthDeg, global?[row], beam?[row], diffuse?[row]);
        }
        return (weather, null);
    }

    // Total solar irradiance, W/m²: as the sources of the light models take it, from memory.
    internal const double SolarConstant = 1367;

    private void Light(int row, double outside, double elevationDeg, double azimuthDeg, double? global, double? beam, double? diffuse)
    {
        SunElevationRad[row] = GeocentricSun.Rad(elevationDeg);
        SunAzimuthRad[row] = GeocentricSun.Rad(azimuthDeg);
        double sine = Math.Sin(SunElevationRad[row]);
        double all = global ?? ((beam!.Value * Math.Max(0, sine)) + diffuse!.Value);
        double sky = diffuse ?? (beam is { } direct ? all - (direct * Math.Max(0, sine)) : all * DiffusePart.Of(sine > 0.02 ? all / (outside * sine) : 0));
        if (elevationDeg < LeastElevationDeg) sky = all;
        Diffuse[row] = Math.Clamp(sky, 0, Math.Max(0, all));
        BeamLevel[row] = Math.Max(0, all) - Diffuse[row];
        Anisotropy[row] = BeamLevel[row] > 0 ? Math.Min(1, BeamLevel[row] / sine / outside) : 0;
    }

    private static double[] New(int count) => new double[count];

    /// <summary>Takes what is not known from the same hour of the day before, or of the next day that knows it.</summary>
    private sealed class Filler(WeatherRecord record)
    {
        private readonly HashSet<int> _filled = [];

        internal int Filled => _filled.Count;

        internal double[]? Column(WeatherElement element)
        {
            // Of an element that is mostly unknown no year can be made.
            if (record.Column(element) is not { } column || record.KnownHours(element) < 0.8 * record.Count) return null;
            if (!column.Any(double.IsNaN)) return column;
            double[] filled = [.. column];
            for (int pass = 0; pass < 2; pass++)
            {
                for (int step = 0; step < filled.Length; step++)
                {
                    int row = pass == 0 ? step : filled.Length - 1 - step, other = pass == 0 ? row - 24 : row + 24;
                    if (!double.IsNaN(filled[row]) || other < 0 || other >= filled.Length) continue;
                    filled[row] = filled[other];
                    _filled.Add(row);
                }
            }
            return filled.Any(double.IsNaN) ? null : filled;
        }
    }
}
