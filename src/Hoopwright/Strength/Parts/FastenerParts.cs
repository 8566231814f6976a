using Hoopwright.Cover.Pull;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sources;
using Hoopwright.Strength.Fasteners;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Wood;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Parts;

/// <summary>Screws of channels and nails of battens under the pull of the film's edges.</summary>
internal static class FastenerParts
{
    // Of #8 and #12, NDS appendix L and the trade, from memory: others are taken to be alike in shape.
    private const double RootShare = 0.131 / 0.164, HeadShare = 0.41 / 0.216;

    // From memory: channel is rolled of sheet about this thick, of steel to ASTM A653 grade 33; a batten is a strip about this thick.
    private const double ChannelM = 0.75e-3, ChannelUltimatePa = 45 * KsiPa, BattenM = 3e-3;

    private static readonly Usual<string> Sheet = new(
        "channel of 0.75 mm steel, battens 3 mm thick",
        "What the film's screws and nails go through; hold it against what you bought.", Citation.FromMemory, Matters: true);

    /// <summary>What holds the film's edges, in metres.</summary>
    private sealed record Sizes(double ScrewM, double ScrewLengthM, double NailM, double NailLengthM, double TubeScrewM)
    {
        internal Fastener Screw => new(FastenerKind.WoodScrew, ScrewM, ScrewM * RootShare);

        internal Fastener Nail => Fastener.Nail(NailM);
    }

    /// <summary>A line for the sides, one for the end bows, and one for the battens of each framed end.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="lift">The roof film lifted; null where nothing lifts it.</param>
    /// <param name="cold">The roof film in the cold; null where that does not stretch it.</param>
    /// <param name="ends">Framed ends with the worst wind on each and their wood.</param>
    /// <param name="bows">The tube of the bows.</param>
    /// <param name="method">At which level the loads are.</param>
    /// <param name="answers">Collects what was taken.</param>
    internal static IEnumerable<PartStrength> Of(
        Tunnel tunnel, FilmLift? lift, ColdFilm? cold, IEnumerable<(EndWall End, EndWood Wood, EndWind Wind)> ends, BowSteel bows, DesignMethod method, Answers answers)
    {
        Plans.Cover cover = tunnel.Plan.Cover;
        double screwsM = answers.Take("cover.channelScrewSpacing", FilmFasteners.ChannelScrewSpacing, cover.ChannelScrewSpacing).Metres;
        double nailsM = answers.Take("cover.battenSpacing", FilmFasteners.BattenSpacing, cover.BattenSpacing).Metres;
        var sizes = new Sizes(
            answers.Take("cover.channelScrewDiameter", FilmFasteners.ChannelScrewDiameter(tunnel.Units), cover.ChannelScrewDiameter).Metres,
            answers.Take("cover.channelScrewLength", FilmFasteners.ChannelScrewLength, cover.ChannelScrewLength).Metres,
            answers.Take("cover.battenNailDiameter", FilmFasteners.BattenNailDiameter, cover.BattenNailDiameter).Metres,
            answers.Take("cover.battenNailLength", FilmFasteners.BattenNailLength, cover.BattenNailLength).Metres,
            answers.Take("cover.tubeScrewDiameter", FilmFasteners.TubeScrewDiameter(tunnel.Units), cover.TubeScrewDiameter).Metres);
        answers.Take("strength.filmFasteners", Sheet, null);
        bool sidesInChannel = answers.Take("cover.sidesInChannel", FilmFasteners.SidesInChannel, cover.SidesInChannel);
        bool InChannel(SideWall side) => side.Kind != SideKind.Fixed || sidesInChannel;
        double? onBowsM = tunnel.Ends.All(end => end.Closing == EndClosing.RoofSheet) ? null
            : answers.Take("cover.endsOnBow", FilmFasteners.EndsOnBow, cover.EndsOnBow) ? screwsM : nailsM;
        if (lift is not null)
        {
            yield return Worst(tunnel.Sides.Select(side => Side(side, lift, sizes, InChannel(side), screwsM, nailsM)));
            if (onBowsM is { } spacingM) yield return EndBows(tunnel, lift, sizes.TubeScrewM, spacingM, bows, method);
        }
        if (cold is not null)
        {
            yield return Worst(tunnel.Sides.Select(side => SideInCold(side, cold, sizes, InChannel(side), screwsM, nailsM)));
            if (onBowsM is { } spacingM) yield return EndBowsInCold(tunnel, cold, sizes.TubeScrewM, spacingM, bows, method);
        }
        foreach ((EndWall end, EndWood wood, EndWind wind) in ends)
            yield return Battens(tunnel, end, wood, wind, sizes, nailsM);
    }

    // The lifted film pulls on the board along the side as hard as it pulls anywhere.
    private static PartStrength Side(SideWall side, FilmLift lift, Sizes sizes, bool inChannel, double screwsM, double nailsM)
    {
        double fromFaceRad = side.IsLeft ? lift.FromFacesRad.Left : lift.FromFacesRad.Right, spacingM = inChannel ? screwsM : nailsM;
        FastenerCheck Check(double pressurePa, WoodSpecies species, bool isWet)
        {
            double pullNPerM = FilmTension.HoopNPerM(pressurePa, lift.RadiusM);
            return OnWood(sizes, inChannel, species, isWet, ChannelScrews.PullN(pullNPerM, spacingM, fromFaceRad), ChannelScrews.SlideN(pullNPerM, spacingM, fromFaceRad));
        }
        FastenerCheck weak = Check(lift.GreatestPa, WoodSpecies.SprucePineFir, isWet: true), strong = Check(lift.MeanPa, WoodSpecies.SouthernPine, isWet: false);
        return Line("film-sides", $"{Named(inChannel)} along the sides, pulled by the roof film", $"{side.Name} {BoardOf(side)}", weak, weak.Utilisation, strong.Utilisation, lift.Combination);
    }

    // Between the end bow and the next the film bulges as a band of its own; the end bow's channel holds the edge of it.
    private static PartStrength EndBows(Tunnel tunnel, FilmLift lift, double screwM, double spacingM, BowSteel bows, DesignMethod method)
    {
        double bayM = Math.Max((tunnel.Stations[1].Along - tunnel.Stations[0].Along).Metres, (tunnel.Stations[^1].Along - tunnel.Stations[^2].Along).Metres);
        ThinSteelScrew Check(double pressurePa)
        {
            (double pullN, double slideN) = Band(FilmMaterial.YoungPa * RoofFilm.ThicknessM(tunnel), pressurePa, bayM, spacingM);
            return OnTube(tunnel, screwM, bows, method, pullN, slideN);
        }
        ThinSteelScrew weak = Check(lift.GreatestPa);
        return Line("film-end-bows", "screws of the film on the end bows, pulled along the tunnel by the roof film", "end bows", weak, weak.Utilisation, Check(lift.MeanPa).Utilisation, lift.Combination);
    }

    // Film that lies on the bow pulls in the face of the board: whole for a cold spell, what does not creep away for the winter.
    private static PartStrength SideInCold(SideWall side, ColdFilm cold, Sizes sizes, bool inChannel, double screwsM, double nailsM)
    {
        double spacingM = inChannel ? screwsM : nailsM;
        FastenerCheck Check(double pullNPerM, WoodSpecies species, bool isWet, LoadDuration duration) =>
            OnWood(sizes, inChannel, species, isWet, 0, ChannelScrews.SlideN(pullNPerM, spacingM, 0), duration);
        FastenerCheck weak = Check(cold.WholeNPerM, WoodSpecies.SprucePineFir, isWet: true, LoadDuration.SevenDays);
        FastenerCheck strong = Check(cold.CreptNPerM, WoodSpecies.SouthernPine, isWet: false, LoadDuration.TwoMonths);
        return Line("film-sides-cold", $"{Named(inChannel)} along the sides, pulled by the roof film in the cold", $"{side.Name} {BoardOf(side)}", weak, weak.Utilisation, strong.Utilisation, cold.Combination);
    }

    private static PartStrength EndBowsInCold(Tunnel tunnel, ColdFilm cold, double screwM, double spacingM, BowSteel bows, DesignMethod method)
    {
        ThinSteelScrew Check(double pullNPerM) => OnTube(tunnel, screwM, bows, method, 0, ChannelScrews.SlideN(pullNPerM, spacingM, 0));
        ThinSteelScrew weak = Check(cold.WholeNPerM);
        return Line("film-end-bows-cold", "screws of the film on the end bows, pulled along the tunnel by the roof film in the cold", "end bows", weak, weak.Utilisation, Check(cold.CreptNPerM).Utilisation, cold.Combination);
    }

    private static ThinSteelScrew OnTube(Tunnel tunnel, double screwM, BowSteel bows, DesignMethod method, double pullN, double slideN)
    {
        var joint = new ThinSteelJoint
        {
            ScrewM = screwM,
            HeadM = screwM * HeadShare,
            HeadSideM = ChannelM,
            HeadSideUltimatePa = ChannelUltimatePa,
            PointSideM = tunnel.BowTube.Wall.Metres,
            PointSideUltimatePa = bows.Grade.UltimatePa,
        };
        return ThinSteelScrew.Of(joint, method, pullN, slideN);
    }

    private static PartStrength Worst(IEnumerable<PartStrength> parts) => parts.MaxBy(part => part.AtWeakest?.Value ?? double.PositiveInfinity)!;

    private static string Named(bool inChannel) => inChannel ? "channel screws" : "batten nails";

    private static string BoardOf(SideWall side) => side.Kind == SideKind.Fixed ? "baseboard" : "hip board";

    // The film of an end bulges between its uprights; battens on posts hold the edges of each band.
    private static PartStrength Battens(Tunnel tunnel, EndWall end, EndWood wood, EndWind wind, Sizes sizes, double nailsM)
    {
        double layerM = RoofFilm.ThicknessM(tunnel) / (tunnel.Plan.Cover.Layers ?? LayoutDefaults.FilmLayers.Value);
        (double pullN, double slideN) = Band(FilmMaterial.YoungPa * layerM, Math.Abs(wind.PressurePa), WidestM(tunnel, end), nailsM);
        FastenerCheck[] weak = [.. wood.Species.Select(species => OnWood(sizes, false, species, isWet: true, pullN, slideN))];
        double strong = wood.Species.Min(species => OnWood(sizes, false, species, isWet: false, pullN, slideN).Utilisation);
        FastenerCheck worst = weak.MaxBy(check => check.Utilisation)!;
        return Line($"film-{end.Name}-battens", $"batten nails of the {end.Name} end, pulled by its film", $"{end.Name} end, beside the widest gap between posts", worst, worst.Utilisation, strong, wind.Combination);
    }

    /// <summary>What an elastic band of film, laid without pull, puts on a fastener of its edge: off the face, and in it.</summary>
    private static (double PullN, double SlideN) Band(double stiffnessNPerM, double pressurePa, double bayM, double spacingM)
    {
        double alongNPerM = FilmTension.ElasticNPerM(stiffnessNPerM, pressurePa, bayM), offNPerM = pressurePa * bayM / 2;
        double fromFaceRad = alongNPerM <= 0 ? 0 : Math.Asin(Math.Min(1, offNPerM / alongNPerM));
        return (ChannelScrews.PullN(alongNPerM, spacingM, fromFaceRad), ChannelScrews.SlideN(alongNPerM, spacingM, fromFaceRad));
    }

    // A nail driven in dry wood that gets wet keeps a quarter of its hold: at the lower end that is taken.
    private static FastenerCheck OnWood(Sizes sizes, bool inChannel, WoodSpecies species, bool isWet, double pullN, double slideN, LoadDuration duration = LoadDuration.TenMinutes)
    {
        double gravity = WoodTable.SpecificGravity(species);
        Fastener fastener = inChannel ? sizes.Screw : sizes.Nail;
        double sideM = inChannel ? ChannelM : BattenM, intoM = Math.Max(0, (inChannel ? sizes.ScrewLengthM : sizes.NailLengthM) - sideM), woodPa = DowelBearing.WoodPa(gravity, fastener.DiameterM, 0);
        // Nothing is published for battens of plastic: a strip of the same wood stands in.
        YieldLimit limit = YieldLimit.Of(fastener, intoM, sideM, woodPa, inChannel ? DowelBearing.LightSteelPa : woodPa, 0);
        return FastenerCheck.Of(fastener, gravity, intoM, limit, new JointConditions(duration, isWet), pullN, slideN);
    }

    private static double WidestM(Tunnel tunnel, EndWall end)
    {
        double[] uprightsM = [0, .. end.Posts.Select(post => post.Centre.Metres), tunnel.Span.Metres];
        string?[] doors = [null, .. end.Posts.Select(post => post.DoorId), null];
        // Over a door the film ends at its posts.
        return Enumerable.Range(1, uprightsM.Length - 1).Where(at => doors[at] is null || doors[at] != doors[at - 1]).Max(at => uprightsM[at] - uprightsM[at - 1]);
    }

    private static PartStrength Line(string code, string words, string where, ICheck check, double weakest, double strongest, LoadCombination combination) => new()
    {
        Kind = PartKind.Fastener,
        Code = code,
        Words = words,
        Where = where,
        AtWeakest = PartStrength.Shown(weakest),
        AtStrongest = PartStrength.Shown(strongest),
        Governs = check.Governs,
        LoadCode = combination.Code,
        LoadWords = combination.Words,
        Checks = [check],
    };
}
