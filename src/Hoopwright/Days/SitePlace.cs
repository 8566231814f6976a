using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Days;

/// <summary>Where on the earth a tunnel stands, and whether its weather is from there.</summary>
internal static class SitePlace
{
    // A station farther away, or this much higher or lower, may have other weather: common practice, no source.
    private static readonly Length FarAway = Length.FromMetres(80_000);
    private static readonly Length FarUp = Length.FromMetres(300);

    /// <summary>Where the tunnel is: as the plan says, or as the weather says; null, and why, where neither does.</summary>
    internal static Place? Of(Plan plan, WeatherRecord record, List<Diagnostic> found)
    {
        Place? given = plan.Site is { Latitude: { } north, Longitude: { } east } ? new Place(north.Value, east.Value, plan.Site.Elevation?.Value ?? record.Place?.Elevation ?? Length.Zero) : null;
        if (given is null && record.Place is null)
        {
            found.Add(new Diagnostic("days.no-place", Severity.Error, "site.latitude", "Neither the plan nor the weather says where the place is, so sunrise and sunset are not known.", null, "site.latitude and site.longitude"));
            return null;
        }
        if (given is null || record.Place is null) return given ?? record.Place;
        Length away = given.DistanceTo(record.Place), up = (given.Elevation - record.Place.Elevation).Abs();
        UnitSystem units = plan.Units ?? UnitSystem.UsCustomary;
        if (away > FarAway)
            found.Add(new Diagnostic("days.far", Severity.Warning, "site.latitude", "The weather is from far away: it may be another there.", Far(away, units), "within " + Far(FarAway, units)));
        if (plan.Site.Elevation is not null && up > FarUp)
            found.Add(new Diagnostic("days.height", Severity.Warning, "site.elevation", "The weather is from a place much higher or lower: it may be another there.", TapeText.OfRun(up, units), "within " + TapeText.OfRun(FarUp, units)));
        return given;
    }

    private static string Far(Length length, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => string.Create(CultureInfo.InvariantCulture, $"{length.Metres / 1609.344:0} mi"),
        UnitSystem.Metric => string.Create(CultureInfo.InvariantCulture, $"{length.Metres / 1000:0} km"),
    };
}
