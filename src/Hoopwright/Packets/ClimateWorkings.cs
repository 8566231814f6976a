using System.Collections.Immutable;
using Hoopwright.Days;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Inside.Light;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>Workings of covering days and of the climate inside, as far as the plan alone tells of them.</summary>
internal static class ClimateWorkings
{
    private static readonly Citation Geometry = Citation.Geometry;
    private static readonly ImmutableArray<string> Sited = ["site.latitude", "site.longitude", "site.elevation"];
    private static readonly ImmutableArray<string> Film = ["cover.layers", "inside.filmLight"];

    public static ImmutableArray<Working> All { get; } =
    [
        .. Needs("days.cover"),
        Workings.Of("days.cover.work", CoverHours.Rule.Text, CoverHours.Rule.Source, ["days.cover.film", "days.cover.planPeople"], ["crew.people", "crew.skill", "coverDay.hours"]),
        Workings.Of("days.cover.film", "roof film as cut, all layers", Geometry, ["cover.pieces[0].alongRoll", "cover.pieces[0].acrossRoll"], ["cover.layers"]),
        .. new[] { "windAtBows", "gustAtBows" }.Select(name => Workings.Of("days.cover." + name, SiteWind.Asce.Text + "; for EN 1991 " + SiteWind.En.Text, SiteWind.Asce.Source, ["frame.peakHeight"], ["loads.standard", "loads.exposure", "loads.terrain", "coverDay.shelter"])),
        Workings.Of("days.cover.mastWind", "wind at the bows ÷ its part of the wind at a mast of 10 m in open country", Geometry, ["days.cover.wind", "days.cover.windAtBows"], []),
        Workings.Of("days.cover.mastGust", "gust at the bows ÷ its part of the gust at a mast of 10 m in open country", Geometry, ["days.cover.gust", "days.cover.gustAtBows"], []),

        Workings.Of("inside.floor", "span × length", Geometry, ["frame.span", "frame.length"], []),
        Workings.Of("inside.cover", "film line × length, and both ends", Geometry, ["frame.bow.filmLine", "frame.length", "frame.bow.endArea"], []),
        Workings.Of("inside.volume", "area of an end × length", Geometry, ["frame.bow.endArea", "frame.length"], []),
        Of("inside.filmSquare", FilmOptics.Transmission, [], Film),
        Of("inside.filmDiffuse", FilmOptics.Transmission, ["inside.filmSquare"], Film),
        Workings.Of("inside.frameShade", "1 - (1 - tube ÷ bay) · (1 - lengthwise tubes ÷ film line)", Geometry, ["frame.bay", "frame.bow.filmLine"], ["frame.bowTube"]),
        Workings.Of("inside.light[*].month", "1 for January", Geometry, [], []),
        Workings.Of("inside.light[*].day", "from sunrise to sunset on the 15th", Sun.SunAlmanac.RiseAndSet.Source, [], Sited),
        Of("inside.light[*].outside", ClearYear.Rule, [], Sited),
        Of("inside.light[*].floor", FloorLight.Rule, ["inside.light[*].outside", "inside.filmDiffuse", "inside.frameShade"], [.. Sited, "inside.dirt", "site.frontFaces", .. Film]),
        Workings.Of("inside.light[*].lostToShade", "1 - light on the floor ÷ light if nothing stood around", Geometry, ["inside.light[*].floor"], ["site"]),
        Workings.Of("inside.openings[*].facing", "where the side or end faces by the compass", Geometry, [], ["site.frontFaces"]),
        .. new[] { "width", "low", "high" }.Select(name => Workings.Of($"inside.openings[*].{name}", "of the side between baseboard and hip board, the door or the vent, over the ground line", Geometry, [], ["sides", "ends", "inside.doorsOpen"])),
        Workings.Of("inside.air[*].free", "widths × heights; half of each side, door and vent when half open", Geometry, ["inside.openings[*].width"], ["inside.doorsOpen"]),
        Of("inside.air[*].byWarmth", AirExchange.Rule, ["inside.air[*].free", "inside.volume"], ["inside.leak"]),
        Of("inside.air[*].riseInSun", FanSize.Rule, ["inside.air[*].free", "inside.floor", "inside.cover"], ["inside.cropCover", "inside.film", "inside.leak", .. Sited]),
        Workings.Of("inside.heater.inside", "what the heater holds, or the coldest that the crop takes", Citation.CommonPractice, [], ["inside.heatTo", "inside.coldest"]),
        Workings.Of("inside.heater.outside", "as planned", Citation.CommonPractice, [], ["loads.coldest"]),
        .. new[] { "throughFilm", "withAir", "whole" }.Select(name => Of("inside.heater." + name, HeaterSize.Rule, ["inside.heater.inside", "inside.heater.outside", "inside.cover", "inside.volume"], ["inside.film", "inside.leak", "cover.layers"])),
        Of("inside.fan.byRule", FanSize.Thumb, ["inside.floor"], []),
        Of("inside.fan.byBalance", FanSize.Rule, ["inside.floor", "inside.cover"], ["inside.cropCover", "inside.film", .. Sited]),
    ];

    /// <summary>What a covering day must be like, wherever it is told.</summary>
    public static IEnumerable<Working> Needs(string group) =>
    [
        Workings.Of(group + ".wind", "leaves just rustle, as far as the plan does not say", Citation.CommonPractice, [], ["coverDay.wind"]),
        Workings.Of(group + ".gust", "small twigs would move all the time, as far as the plan does not say", Citation.CommonPractice, [], ["coverDay.gust"]),
        Workings.Of(group + ".coldest", "air from which on hands can pull the film midway between both limits", Geometry, ["cover.pull.best", "cover.pull.hands", "cover.pull.oneHand"], ["coverDay.coldest"]),
        Workings.Of(group + ".warmest", "air in full sun up to which film can be laid evenly midway between both limits", Geometry, ["cover.pull.best"], ["coverDay.warmest", "cover.looseSag"]),
        Workings.Of(group + ".rainChance", "as planned", Citation.CommonPractice, [], ["coverDay.rainChance"]),
        Workings.Of(group + ".neededHours", CoverHours.Rule.Text, CoverHours.Rule.Source, ["cover.pieces[0].alongRoll", "cover.pieces[0].acrossRoll"], ["crew.people", "crew.skill", "coverDay.hours", "coverDay.reserve"]),
        Workings.Of(group + ".planPeople", "as planned", Citation.CommonPractice, [], ["crew.people"]),
    ];

    private static Working Of(string pattern, Formula formula, ImmutableArray<string> inputs, ImmutableArray<string> rules) => Workings.Of(pattern, formula.Text, formula.Source, inputs, rules);
}
