using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Inside.Air;

/// <summary>Cloudless days, one in the middle of each month, for what can be told of a place without its weather.</summary>
internal static class ClearYear
{
    /// <summary>TL of country air.</summary>
    internal const double Turbidity = 3;

    internal static readonly Formula Rule = new(
        "H", "a cloudless 15th of the month by Ineichen and Perez, with a turbidity of 3 for country air", "mol/m²", ClearSky.IneichenFormula.Source);

    // Any year will do: the sun is the same within a quarter of a day.
    private const int Year = 2025, Middle = 15;

    // What light does not hang on.
    private const double AirC = 15, SeaPa = 101_325;

    /// <summary>The day of a month.</summary>
    internal static DateOnly Day(int month) => new(Year, month, Middle);

    /// <summary>A clock that runs with the sun of the place, to the minute.</summary>
    internal static TimeSpan Clock(Place place) => TimeSpan.FromMinutes(Math.Round(place.Longitude.Degrees * 4));

    /// <summary>Twelve days of 24 hours.</summary>
    internal static HourlyWeather Of(Place place)
    {
        var hours = new int[12 * 24];
        var columns = new double[]?[Enum.GetValues<WeatherElement>().Length];
        foreach (WeatherElement element in (ReadOnlySpan<WeatherElement>)[WeatherElement.AirTemperature, WeatherElement.DewPoint, WeatherElement.Wind, WeatherElement.BeamRadiation, WeatherElement.DiffuseRadiation])
            columns[(int)element] = new double[hours.Length];
        Array.Fill(columns[(int)WeatherElement.AirTemperature]!, AirC);
        Array.Fill(columns[(int)WeatherElement.DewPoint]!, 0);
        double pressurePa = SunAlmanac.UsualPressure(place.Elevation).Pascals;
        for (int row = 0; row < hours.Length; row++)
        {
            DateOnly day = Day((row / 24) + 1);
            var track = new SunTrack(place, day, Clock(place));
            hours[row] = (day.DayNumber * 24) + (row % 24);
            double elevation = track.At(((row % 24) - 12) / 24.0).ElevationDeg;
            double zenith = 90 - elevation - TopocentricSun.RefractionDeg(elevation, pressurePa, AirC);
            SkyLight sky = ClearSky.Ineichen(zenith, ClearSky.AirMass(zenith) * pressurePa / SeaPa, Turbidity, place.Elevation.Metres, HourlyWeather.SolarConstant / (track.RadiusAu * track.RadiusAu));
            columns[(int)WeatherElement.BeamRadiation]![row] = zenith < 90 ? sky.BeamNormalWPerM2 : 0;
            columns[(int)WeatherElement.DiffuseRadiation]![row] = zenith < 90 ? sky.DiffuseWPerM2 : 0;
        }
        var record = new WeatherRecord(hours, columns)
        {
            Form = WeatherForm.Table,
            Name = "",
            Place = place,
            UtcOffset = Clock(place),
            Stamp = WeatherStamp.Reading,
            WindHeight = Length.FromMetres(10),
        };
        return HourlyWeather.Of(record, place).Weather!;
    }
}
