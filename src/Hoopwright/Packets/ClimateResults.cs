using Hoopwright.Days;
using Hoopwright.Inside;
using Hoopwright.Quantities;

namespace Hoopwright.Packets;

/// <summary>Writes what the plan alone tells of covering days and of the climate inside.</summary>
internal static class ClimateResults
{
    public static void Days(ResultWriter json, CoverDayOutlook day) => json.Group("cover", () =>
    {
        Needs(json, day.Needs);
        json.Hours("work", day.Needs.Hours.Work);
        json.Area("film", day.Needs.Hours.Film);
        json.Ratio("windAtBows", day.Wind.Mean);
        json.Ratio("gustAtBows", day.Wind.Gust);
        json.Speed("mastWind", day.MastWind);
        json.Speed("mastGust", day.MastGust);
    });

    public static void Needs(ResultWriter json, CoverDayNeeds day)
    {
        json.Speed("wind", day.Wind);
        json.Speed("gust", day.Gust);
        json.Temperature("coldest", day.Coldest);
        json.Temperature("warmest", day.Warmest);
        json.Ratio("rainChance", day.RainChance);
        json.Count("neededHours", day.Hours.Needed);
        json.Count("planPeople", day.Hours.People);
    }

    public static void Inside(ResultWriter json, InsideOutlook inside)
    {
        json.Area("floor", inside.Floor);
        json.Area("cover", inside.Cover);
        json.Volume("volume", inside.Volume);
        json.Ratio("filmSquare", inside.FilmSquare);
        json.Ratio("filmDiffuse", inside.FilmDiffuse);
        json.Ratio("frameShade", inside.FrameShade);
        json.Text("lacks", inside.Place is null ? "site.latitude and site.longitude: without them nothing is told of the sun" : null);
        json.List("light", inside.Light, month =>
        {
            json.Count("month", month.Month);
            json.Hours("day", month.DayLength);
            Light(json, "outside", month.Outside);
            Light(json, "floor", month.Floor);
            json.Ratio("lostToShade", month.LostToShade);
        });
        json.List("openings", inside.Openings, opening =>
        {
            json.Text("name", opening.Name);
            json.Angle("facing", opening.Facing);
            json.Length("width", opening.Width);
            json.Length("low", opening.Low);
            json.Length("high", opening.High);
        });
        json.List("air", inside.Air, air =>
        {
            json.Text("open", TunnelResults.Word(air.Wide));
            json.Area("free", air.Free);
            json.Flow("byWarmth", air.ByWarmth);
            if (air.RiseInSun is { } rise) json.Difference("riseInSun", rise);
        });
        json.Group("heater", () =>
        {
            json.Temperature("inside", inside.Heater.Inside);
            json.Temperature("outside", inside.Heater.Outside);
            json.Power("throughFilm", inside.Heater.ThroughFilm);
            json.Power("withAir", inside.Heater.WithAir);
            json.Power("whole", inside.Heater.Whole);
        });
        json.Group("fan", () =>
        {
            json.Flow("byRule", inside.FanByRule);
            if (inside.FanByBalance is { } flow) json.Flow("byBalance", flow);
        });
        json.List("rules", inside.Rules, rule => ResultsJson.Rule(json, rule));
        json.List("assumptions", inside.Assumptions, each => ResultsJson.Found(json, each));
        json.Text("caution", InsideSheet.Caution);
    }

    private static void Light(ResultWriter json, string name, LightSum light) => json.Number(name + "MolPerM2", decimal.Round((decimal)light.MolesPerSquareMetre, 2));
}
