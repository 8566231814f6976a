using System.Globalization;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>Makes a place of numbers in a file.</summary>
internal static class PlaceCheck
{
    /// <summary>The place; null, and said why, where there is none such.</summary>
    /// <param name="north">Latitude, degrees.</param>
    /// <param name="east">Longitude, degrees.</param>
    /// <param name="heightM">Height above the sea, m.</param>
    /// <param name="path">Where in the file.</param>
    /// <param name="problems">What is told.</param>
    internal static Place? Of(double north, double east, double heightM, string path, WeatherProblems problems)
    {
        if (north is >= -90 and <= 90 && east is >= -180 and <= 180 && heightM is >= -500 and <= 9000)
            return new Place(Angle.FromDegrees(north), Angle.FromDegrees(east), Length.FromMetres(heightM));
        problems.Error(
            "weather.place", path, "There is no such place.", string.Create(CultureInfo.InvariantCulture, $"{north}, {east}, {heightM} m"),
            "latitude -90 to 90, longitude -180 to 180 with west negative, elevation -500 to 9000 m");
        return null;
    }
}
