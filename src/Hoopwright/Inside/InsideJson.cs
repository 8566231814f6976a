using System.Globalization;
using System.Text.Json;
using Hoopwright.Inside.Air;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Weather;

namespace Hoopwright.Inside;

/// <summary>A year inside as JSON for machines. Numbers are SI with the unit at the end of their names; light is in moles of photons that plants use.</summary>
public static class InsideJson
{
    /// <summary>Writes the report as an object, without its hours: they are in the table.</summary>
    /// <param name="json">Where to; after a property's name, or where a value may stand.</param>
    /// <param name="report">The report.</param>
    public static void Write(Utf8JsonWriter json, InsideReport report)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(report);
        json.WriteStartObject();
        json.WriteString("weather", report.Weather);
        json.WriteBoolean("typicalYear", report.TypicalYear);
        json.WriteStartObject("place");
        WeatherJson.Number(json, "latitudeDeg", report.Place.Latitude.Degrees, 4);
        WeatherJson.Number(json, "longitudeDeg", report.Place.Longitude.Degrees, 4);
        WeatherJson.Number(json, "elevationM", report.Place.Elevation.Metres, 1);
        json.WriteEndObject();
        WeatherJson.Number(json, "floorM2", report.Floor.SquareMetres, 2);
        WeatherJson.Number(json, "coverM2", report.Cover.SquareMetres, 2);
        WeatherJson.Number(json, "volumeM3", report.Volume.CubicMetres, 2);
        Light(json, report);
        Air(json, report);
        json.WriteStartArray("ways");
        foreach (InsideStats way in report.Ways) Way(json, way);
        json.WriteEndArray();
        json.WriteStartObject("band");
        WeatherJson.Number(json, "highestFromC", report.Band.HighestFrom.Celsius, 2);
        WeatherJson.Number(json, "highestToC", report.Band.HighestTo.Celsius, 2);
        WeatherJson.Number(json, "lowestFromC", report.Band.LowestFrom.Celsius, 2);
        WeatherJson.Number(json, "lowestToC", report.Band.LowestTo.Celsius, 2);
        WeatherJson.Number(json, "nightLiftFromK", report.Band.NightLiftFrom.Kelvins, 2);
        WeatherJson.Number(json, "nightLiftToK", report.Band.NightLiftTo.Kelvins, 2);
        json.WriteString("measured", InsideSheet.Measured);
        json.WriteEndObject();
        Sizes(json, report);
        json.WriteStartObject("season");
        json.WriteString("shortFrom", report.Season.ShortFrom?.ToString("MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("shortTo", report.Season.ShortTo?.ToString("MM-dd", CultureInfo.InvariantCulture));
        json.WriteNumber("shortDays", report.Season.ShortDays);
        json.WriteNumber("hardyDays", report.Season.HardyDays);
        json.WriteNumber("coldGroundDays", report.Season.ColdGroundDays);
        json.WriteEndObject();
        json.WriteNumber("wetFilmHours", report.WetFilmHours);
        json.WriteStartArray("days");
        foreach (InsideDay day in report.Days)
        {
            json.WriteStartObject();
            json.WriteString("date", Date(day.Date));
            WeatherJson.Number(json, "outsideLowC", day.OutsideLow.Celsius, 2);
            WeatherJson.Number(json, "outsideHighC", day.OutsideHigh.Celsius, 2);
            WeatherJson.Number(json, "lowC", day.Low.Celsius, 2);
            WeatherJson.Number(json, "highC", day.High.Celsius, 2);
            WeatherJson.Number(json, "shutLowC", day.ShutLow.Celsius, 2);
            WeatherJson.Number(json, "shutHighC", day.ShutHigh.Celsius, 2);
            json.WriteStartArray("acrossMolPerM2");
            foreach (LightSum light in day.Light) json.WriteNumberValue(Math.Round((decimal)light.MolesPerSquareMetre, 2));
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
        RuleJson.Write(json, report.Rules);
        json.WriteStartArray("formulas");
        foreach (var formula in InsideSheet.Formulas)
        {
            json.WriteStartObject();
            json.WriteString("symbol", formula.Symbol);
            json.WriteString("text", formula.Text);
            json.WriteString("unit", formula.Unit);
            json.WriteString("source", formula.Source.ToString());
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteString("caution", InsideSheet.Caution);
        json.WriteEndObject();
    }

    private static void Light(Utf8JsonWriter json, InsideReport report)
    {
        json.WriteStartObject("light");
        WeatherJson.Number(json, "filmSquare", report.FilmSquare.Value, 4);
        WeatherJson.Number(json, "filmDiffuse", report.FilmDiffuse.Value, 4);
        WeatherJson.Number(json, "frameShade", report.FrameShade.Value, 4);
        json.WriteStartArray("acrossM");
        foreach (Length across in report.Across) json.WriteNumberValue(Math.Round((decimal)across.Metres, 3));
        json.WriteEndArray();
        json.WriteStartArray("months");
        foreach (MonthLight month in report.Light)
        {
            json.WriteStartObject();
            json.WriteNumber("month", month.Month);
            Mol(json, "outsideMolPerM2Day", month.Outside);
            Mol(json, "floorMolPerM2Day", month.Floor);
            json.WriteStartArray("acrossMolPerM2Day");
            foreach (LightSum light in month.Across) json.WriteNumberValue(Math.Round((decimal)light.MolesPerSquareMetre, 2));
            json.WriteEndArray();
            WeatherJson.Number(json, "lostToShade", month.LostToShade.Value, 4);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("film");
        foreach (FacetLight facet in report.Facets)
        {
            json.WriteStartObject();
            json.WriteString("name", facet.Name);
            WeatherJson.Number(json, "slopeDeg", facet.Slope.Degrees, 1);
            WeatherJson.Number(json, "facingDeg", facet.Facing.Degrees, 1);
            Mol(json, "yearMolPerM2Day", facet.Year);
            Mol(json, "winterMolPerM2Day", facet.Winter);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("headings");
        foreach (HeadingStudy heading in report.Headings)
        {
            json.WriteStartObject();
            WeatherJson.Number(json, "frontFacesDeg", heading.FrontFaces.Degrees, 1);
            Mol(json, "winterMolPerM2Day", heading.WinterLight);
            WeatherJson.Number(json, "darkestOverMean", heading.Darkest.Value, 3);
            WeatherJson.Number(json, "airAcrossMps", heading.AirAcross.MetresPerSecond, 2);
            WeatherJson.Number(json, "stormAcrossMps", heading.StormAcross.MetresPerSecond, 2);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Air(Utf8JsonWriter json, InsideReport report)
    {
        json.WriteStartObject("air");
        json.WriteStartArray("openings");
        foreach (AirOpening opening in report.Openings)
        {
            json.WriteStartObject();
            json.WriteString("name", opening.Name);
            WeatherJson.Number(json, "facingDeg", opening.Facing.Degrees, 1);
            WeatherJson.Number(json, "widthM", opening.Width.Metres, 3);
            WeatherJson.Number(json, "lowM", opening.Low.Metres, 3);
            WeatherJson.Number(json, "highM", opening.High.Metres, 3);
            WeatherJson.Number(json, "areaM2", opening.Free(OpenWide.Full).SquareMetres, 3);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("changes");
        foreach (AirChange air in report.Air)
        {
            json.WriteStartObject();
            json.WriteString("open", WeatherJson.Camel(air.Wide.ToString()));
            WeatherJson.Number(json, "freeM2", air.Free.SquareMetres, 2);
            WeatherJson.Number(json, "byWarmthM3PerS", air.ByWarmth.CubicMetresPerSecond, 3);
            WeatherJson.Number(json, "usualM3PerS", air.Usual.CubicMetresPerSecond, 3);
            WeatherJson.Number(json, "mostM3PerS", air.Most.CubicMetresPerSecond, 3);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Way(Utf8JsonWriter json, InsideStats way)
    {
        json.WriteStartObject();
        json.WriteString("kept", WeatherJson.Camel(way.Way.ToString()));
        WeatherJson.Number(json, "highestC", way.Highest.Celsius, 2);
        Time(json, "highestAt", way.HighestAt);
        WeatherJson.Number(json, "lowestC", way.Lowest.Celsius, 2);
        Time(json, "lowestAt", way.LowestAt);
        WeatherJson.Number(json, "nightLiftK", way.NightLift.Kelvins, 2);
        WeatherJson.Number(json, "leastNightLiftK", way.LeastNightLift.Kelvins, 2);
        WeatherJson.Number(json, "dayLiftK", way.DayLift.Kelvins, 2);
        json.WriteNumber("hoursTooHot", way.HoursTooHot);
        json.WriteNumber("hoursTooCold", way.HoursTooCold);
        json.WriteNumber("frostDays", way.FrostDays);
        json.WriteString("lastFrost", way.LastFrost?.ToString("MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("firstFrost", way.FirstFrost?.ToString("MM-dd", CultureInfo.InvariantCulture));
        WeatherJson.Number(json, "growthByMiddleKd", way.Growth.KelvinDays, 1);
        json.WriteEndObject();
    }

    private static void Sizes(Utf8JsonWriter json, InsideReport report)
    {
        json.WriteStartObject("heater");
        WeatherJson.Number(json, "insideC", report.Heater.Inside.Celsius, 2);
        WeatherJson.Number(json, "outsideC", report.Heater.Outside.Celsius, 2);
        WeatherJson.Number(json, "throughFilmW", report.Heater.ThroughFilm.Watts, 0);
        WeatherJson.Number(json, "withAirW", report.Heater.WithAir.Watts, 0);
        WeatherJson.Number(json, "wholeW", report.Heater.Whole.Watts, 0);
        WeatherJson.Number(json, "meanW", report.HeaterMean.Watts, 0);
        json.WriteEndObject();
        json.WriteStartObject("fan");
        WeatherJson.Number(json, "riseK", report.Fan.Rise.Kelvins, 1);
        WeatherJson.Number(json, "byBalanceM3PerS", report.Fan.ByBalance.CubicMetresPerSecond, 3);
        WeatherJson.Number(json, "byRuleM3PerS", report.Fan.ByRule.CubicMetresPerSecond, 3);
        json.WriteEndObject();
    }

    private static void Mol(Utf8JsonWriter json, string name, LightSum light) => WeatherJson.Number(json, name, light.MolesPerSquareMetre, 2);

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static void Time(Utf8JsonWriter json, string name, DateTimeOffset time) => json.WriteString(name, time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture));
}
