using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Days;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Inside.Light;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Inside;

/// <summary>The tunnel and everything that was asked of its plan.</summary>
internal sealed record InsideSetup
{
    internal required Tunnel Tunnel { get; init; }

    internal required InsideShape Shape { get; init; }

    internal required Heading Heading { get; init; }

    internal required FilmOptics Roof { get; init; }

    /// <summary>Film of the ends, always one layer.</summary>
    internal required FilmOptics End { get; init; }

    internal required int Layers { get; init; }

    internal required FilmKind Film { get; init; }

    /// <summary>Part of the light that bows and purlins take.</summary>
    internal required double FrameShade { get; init; }

    internal required double Dirt { get; init; }

    internal required double LeakPerHour { get; init; }

    internal required double CropCover { get; init; }

    internal required bool InnerCover { get; init; }

    internal required Temperature VentAt { get; init; }

    internal required Temperature? HeatTo { get; init; }

    internal required Temperature Coldest { get; init; }

    internal required Temperature Warmest { get; init; }

    internal required Temperature GrowthFrom { get; init; }

    /// <summary>The coldest air that the plan counts with.</summary>
    internal required Temperature ColdestAir { get; init; }

    internal required ImmutableArray<AirOpening> Openings { get; init; }

    /// <summary>Roughness of the land around, m.</summary>
    internal required double RoughnessM { get; init; }

    /// <summary>Part of the wind that hedges and buildings leave.</summary>
    internal required double Shelter { get; init; }

    /// <summary>What a heater must give in the coldest air of the plan.</summary>
    internal HeaterSize HeaterSize => HeaterSize.Of(
        HeatTo ?? Coldest, ColdestAir, HeaterSize.LossWPerM2K(Layers, Film == FilmKind.Infrared), Shape.CoverM2, Shape.VolumeM3, LeakPerHour);

    /// <summary>Air through cracks, m³/s.</summary>
    internal double LeakM3PerS => LeakPerHour * Shape.VolumeM3 / 3600;

    /// <summary>What frame and dirt leave of the light.</summary>
    internal double Kept => (1 - FrameShade) * (1 - Dirt);

    internal CropLimits Limits => new(Coldest.Celsius, Warmest.Celsius, GrowthFrom.Celsius);

    internal HeatHouse House => new()
    {
        CoverOverFloor = Shape.CoverM2 / Shape.FloorM2,
        HeightM = Shape.VolumeM3 / Shape.FloorM2,
        FloorM2 = Shape.FloorM2,
        Layers = Layers,
        Film = FilmWarmthRays.Of(Film),
        CropCover = CropCover,
        LeakPerHour = LeakPerHour,
    };

    internal static InsideSetup Of(Tunnel tunnel, Answers answers)
    {
        InsideRules rules = tunnel.Plan.Inside;
        int layers = answers.Take("cover.layers", CoverDefaults.Layers, tunnel.Plan.Cover.Layers);
        double light = answers.Take("inside.filmLight", InsideDefaults.FilmLight, rules.FilmLight).Value;
        var heading = new Heading(answers.Take("site.frontFaces", InsideDefaults.FrontFaces, tunnel.Plan.Site.FrontFaces).Degrees);
        bool doors = answers.Take("inside.doorsOpen", InsideDefaults.DoorsOpen, rules.DoorsOpen);
        return new()
        {
            Tunnel = tunnel,
            Shape = InsideShape.Of(tunnel),
            Heading = heading,
            Roof = new FilmOptics(light, layers),
            End = new FilmOptics(light, 1),
            Layers = layers,
            Film = answers.Take("inside.film", InsideDefaults.Film, rules.Film),
            FrameShade = ShadeOfFrame(tunnel),
            Dirt = answers.Take("inside.dirt", InsideDefaults.Dirt, rules.Dirt).Value,
            LeakPerHour = answers.Take("inside.leak", layers == 1 ? InsideDefaults.LeakSingle : InsideDefaults.LeakDouble, rules.Leak).Value,
            CropCover = answers.Take("inside.cropCover", InsideDefaults.CropCover, rules.CropCover).Value,
            InnerCover = answers.Take("inside.innerCover", InsideDefaults.InnerCover, rules.InnerCover),
            VentAt = answers.Take("inside.ventAt", InsideDefaults.VentAt, rules.VentAt),
            HeatTo = rules.HeatTo?.Value,
            Coldest = answers.Take("inside.coldest", InsideDefaults.Coldest, rules.Coldest),
            Warmest = answers.Take("inside.warmest", InsideDefaults.Warmest, rules.Warmest),
            GrowthFrom = answers.Take("inside.growthFrom", InsideDefaults.GrowthFrom, rules.GrowthFrom),
            ColdestAir = answers.Take("loads.coldest", CoverDefaults.Coldest, tunnel.Plan.Loads.Coldest),
            Openings = Air.Openings.Of(tunnel, heading, doors),
            RoughnessM = answers.Take("loads.standard", LoadDefaults.Standard, tunnel.Plan.Loads.Standard) switch
            {
                LoadStandard.Asce7Of2016 or LoadStandard.Asce7Of2022 => LogWind.RoughnessM(answers.Take("loads.exposure", LoadDefaults.Exposure, tunnel.Plan.Loads.Exposure)),
                LoadStandard.En1991 => LogWind.RoughnessM(answers.Take("loads.terrain", LoadDefaults.Terrain, tunnel.Plan.Loads.Terrain)),
            },
            Shelter = answers.Take("coverDay.shelter", DayDefaults.Shelter, tunnel.Plan.CoverDay.Shelter).Value,
        };
    }

    /// <summary>Wind at the film and at what is open, half as high as the peak, over that at the mast of the record.</summary>
    internal double WindFactor(double mastM) => Shelter * LogWind.Factor(Tunnel.Bow.PeakHeight.Metres / 2, RoughnessM, mastM);

    /// <summary>Width of bows over their spacing, and of lengthwise tubes over the film line.</summary>
    private static double ShadeOfFrame(Tunnel tunnel)
    {
        double bows = tunnel.BowTube.Outside.Metres / (tunnel.Length.Metres / tunnel.Bays);
        double purlins = tunnel.Members.Where(member => member.Role is MemberRole.RidgePurlin or MemberRole.Purlin)
            .GroupBy(member => (Math.Round(member.Start.X.Metres, 3), Math.Round(member.Start.Z.Metres, 1)))
            .Sum(line => line.First().Section.Match(tube => tube.Outside.Metres, board => board.Thickness.Metres)) / tunnel.Bow.FilmLine.Length.Metres;
        return 1 - ((1 - bows) * (1 - purlins));
    }
}
