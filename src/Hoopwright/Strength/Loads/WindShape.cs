using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>What the wind does on the outside of the tunnel, as parts of the velocity pressure at the roof, gust factor included.</summary>
/// <param name="Roof">Profile over roof and sides for wind from the left, or along the tunnel, for 1 Pa of velocity pressure.</param>
/// <param name="Suffix">Set apart where a standard asks for two values: <c>""</c>, <c>"-a"</c>, <c>"-b"</c>.</param>
/// <param name="Coefficients">The values used.</param>
internal sealed record WindShape(LoadProfile Roof, string Suffix, ImmutableArray<Coefficient> Coefficients)
{
    private const string Windward = "windward", Lee = "in the lee";

    /// <summary>Wind from the left; one shape, or two to be tried.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="site">The site.</param>
    /// <param name="line">The bow, or the bow seen from behind for wind from the right.</param>
    public static ImmutableArray<WindShape> Across(Tunnel tunnel, LoadSite site, FilmLine line) =>
        !site.IsAsce ? [En(tunnel, line)] : tunnel.Bow.Kind == BowKind.Peaked ? Gable(tunnel, line) : Arch(tunnel, line);

    /// <summary>Pressure on the ends for wind from the left: they stand along it.</summary>
    public static double SideEnd(Tunnel tunnel, LoadSite site) =>
        // By EN the corner sucks more than the rest; the end is taken as a whole at its middle value.
        site.IsAsce ? AsceWind.Gust * AsceWindShapes.SideWall : EnWind.SideWall(0.5);

    /// <summary>Pressure on the end in the wind and on that in the lee, for wind along the tunnel.</summary>
    public static (double Windward, double Leeward) Ends(Tunnel tunnel, LoadSite site) => site.IsAsce
        ? (AsceWind.Gust * AsceWindShapes.WindwardWall, AsceWind.Gust * AsceWindShapes.LeewardWall(tunnel.Length / tunnel.Span))
        : (EnWind.WindwardWall(site.Line.Crown.ZM / tunnel.Length.Metres), EnWind.LeewardWall(site.Line.Crown.ZM / tunnel.Length.Metres));

    /// <summary>cpe by EN outside of the openings of a wall: over a side along the wind, the mean of its length.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="site">The site.</param>
    /// <param name="face">The wall, by the wind that meets it.</param>
    /// <param name="from">Where the wind comes from.</param>
    /// <param name="shape">What it does to the roof.</param>
    public static double EnAt(Tunnel tunnel, LoadSite site, WindFrom face, WindFrom from, WindShape shape)
    {
        bool isEnd = IsAlong(face);
        if (isEnd != IsAlong(from)) return isEnd ? SideEnd(tunnel, site) : SideAlong();
        if (isEnd) return face == from ? Ends(tunnel, site).Windward : Ends(tunnel, site).Leeward;
        // The shape is that of wind from the left, on the bow as the wind meets it.
        return face == from ? shape.Roof.AtPa(0, after: true) : shape.Roof.AtPa(site.Line.LengthM, after: false);

        // The lowest of the surfaces along the wind: legs, or the arch that springs from the ground.
        double SideAlong() => Along(tunnel, site).Loads[^1].FactorBetween(Length.Zero, tunnel.Length).Value;

        static bool IsAlong(WindFrom wind) => wind is WindFrom.Front or WindFrom.Back;
    }

    /// <summary>Wind from the front along the tunnel: the loads on the outside, each with its factor by place.</summary>
    public static (ImmutableArray<SurfaceLoad> Loads, ImmutableArray<Coefficient> Coefficients) Along(Tunnel tunnel, LoadSite site)
    {
        FilmLine line = site.Line;
        double heightM = site.IsAsce ? line.MeanHeightM : line.Crown.ZM, lengthM = tunnel.Length.Metres;
        // Roof and sides are two profiles, since their factors fall off at different places.
        LoadProfile roof = line.Zones((line.LeftEaveM, 0), (line.RightEaveM, 1), (line.LengthM, 0));
        LoadProfile legs = line.Zones((line.LeftEaveM, 1), (line.RightEaveM, 0), (line.LengthM, 1));
        double Roof(double fromEdgeM) => site.IsAsce
            ? AsceWind.Gust * AsceWindShapes.RoofAlong(heightM / lengthM, fromEdgeM / heightM)
            : EnWind.RoofAlong(fromEdgeM / heightM);
        double edgeM = Math.Min(tunnel.Span.Metres, 2 * heightM);
        double Legs(double fromEdgeM) => site.IsAsce ? AsceWind.Gust * AsceWindShapes.SideWall : EnWind.SideWall(fromEdgeM / edgeM);
        List<SurfaceLoad> loads = [new() { Normal = roof, ByLength = Steps([0.5 * heightM, heightM, 2 * heightM], Roof) }];
        if (line.IsOnLegs) loads.Add(new() { Normal = legs, ByLength = Steps([0.2 * edgeM, edgeM], Legs) });
        (double windward, double leeward) = Ends(tunnel, site);
        return ([.. loads],
        [
            LoadSite.Value(site.IsAsce ? AsceWindShapes.Along : EnWind.Along, Part(Roof(0)), "roof at the windward end"),
            LoadSite.Value(site.IsAsce ? AsceWindShapes.Along : EnWind.Along, Part(Roof(lengthM)), "roof at the far end"),
            LoadSite.Value(site.IsAsce ? AsceWindShapes.Walls : EnWind.Walls, Part(windward), "end in the wind"),
            LoadSite.Value(site.IsAsce ? AsceWindShapes.Walls : EnWind.Walls, Part(leeward), "end in the lee"),
        ]);

        double Part(double withGust) => site.IsAsce ? withGust / AsceWind.Gust : withGust;

        ImmutableArray<LengthPoint> Steps(double[] edgesM, Func<double, double> value)
        {
            List<LengthPoint> points = [];
            double fromM = 0;
            foreach (double toM in edgesM.Append(double.PositiveInfinity))
            {
                double endM = Math.Min(toM, lengthM);
                if (endM <= fromM) break;
                double factor = value((fromM + endM) / 2);
                if (points.Count > 0 && points[^1].Factor.Value == factor) points.RemoveAt(points.Count - 1);
                else points.Add(new(Length.FromMetres(fromM), Ratio.FromValue(factor)));
                points.Add(new(Length.FromMetres(endM), Ratio.FromValue(factor)));
                fromM = endM;
            }
            return [.. points];
        }
    }

    private static ImmutableArray<WindShape> Arch(Tunnel tunnel, FilmLine line)
    {
        double centre = AsceWindShapes.CentreHalf(line.Rise), leeward = AsceWindShapes.LeewardQuarter;
        double[] windward = line.IsOnLegs ? AsceWindShapes.WindwardQuarterOnLegs(line.Rise) : [AsceWindShapes.WindwardQuarterOnGround(line.Rise)];
        (double wall, double leeWall) = Walls(tunnel, line);
        var formula = line.IsOnLegs ? AsceWindShapes.ArchOnLegs : AsceWindShapes.ArchOnGround;
        return
        [
            .. windward.Select((cp, index) => new WindShape(
                Quarters(line, AsceWind.Gust, wall, cp, centre, leeward, leeWall), windward.Length == 1 ? "" : index == 0 ? "-a" : "-b",
                [
                    LoadSite.Value(formula, cp, Windward + " quarter, rise over span " + FormattableString.Invariant($"{line.Rise:0.00}")),
                    LoadSite.Value(formula, centre, "centre half"), LoadSite.Value(formula, leeward, "quarter " + Lee),
                    .. WallValues(line, wall, leeWall),
                ])),
        ];
    }

    private static ImmutableArray<WindShape> Gable(Tunnel tunnel, FilmLine line)
    {
        double slopeDeg = SnowCases.RidgeDeg(line), depth = line.MeanHeightM / tunnel.Span.Metres;
        (double suction, double pressure) = AsceWindShapes.GableWindward(slopeDeg, depth);
        double leeward = AsceWindShapes.GableLeewardSlope(slopeDeg, depth);
        (double wall, double leeWall) = Walls(tunnel, line);
        double[] windward = suction == pressure ? [suction] : [suction, pressure];
        return
        [
            .. windward.Select((cp, index) => new WindShape(
                Quarters(line, AsceWind.Gust, wall, cp, cp, leeward, leeWall, atCrown: true), windward.Length == 1 ? "" : index == 0 ? "-a" : "-b",
                [
                    LoadSite.Value(AsceWindShapes.Gable, cp, Windward + " slope of " + FormattableString.Invariant($"{slopeDeg:0.0}°")),
                    LoadSite.Value(AsceWindShapes.Gable, leeward, "slope " + Lee), .. WallValues(line, wall, leeWall),
                ])),
        ];
    }

    private static WindShape En(Tunnel tunnel, FilmLine line)
    {
        double span = tunnel.Span.Metres, windward = EnWind.VaultWindward(line.Rise, line.LegM / span), centre = EnWind.VaultCentre(line.Rise), leeward = EnWind.VaultLeeward;
        double wall = EnWind.WindwardWall(line.Crown.ZM / span), leeWall = EnWind.LeewardWall(line.Crown.ZM / span);
        return new WindShape(Quarters(line, 1, wall, windward, centre, leeward, leeWall), "",
        [
            LoadSite.Value(EnWind.Vault, windward, Windward + " quarter, rise over span " + FormattableString.Invariant($"{line.Rise:0.00}")),
            LoadSite.Value(EnWind.Vault, centre, "centre half"), LoadSite.Value(EnWind.Vault, leeward, "quarter " + Lee),
            .. line.IsOnLegs ? (ReadOnlySpan<Coefficient>)[LoadSite.Value(EnWind.Walls, wall, "leg in the wind"), LoadSite.Value(EnWind.Walls, leeWall, "leg in the lee")] : [],
        ]);
    }

    private static (double Windward, double Leeward) Walls(Tunnel tunnel, FilmLine line) =>
        line.IsOnLegs ? (AsceWindShapes.WindwardWall, AsceWindShapes.LeewardWall(tunnel.Span / tunnel.Length)) : (0, 0);

    private static ImmutableArray<Coefficient> WallValues(FilmLine line, double wall, double leeWall) => line.IsOnLegs
        ? [LoadSite.Value(AsceWindShapes.Walls, wall, "leg in the wind"), LoadSite.Value(AsceWindShapes.Walls, leeWall, "leg in the lee")]
        : [];

    private static LoadProfile Quarters(FilmLine line, double gust, double wall, double windward, double centre, double leeward, double leeWall, bool atCrown = false)
    {
        double firstM = atCrown ? line.Crown.SM : line.AtPartOfSpanM(0.25), lastM = atCrown ? line.Crown.SM : line.AtPartOfSpanM(0.75);
        return line.Zones(
            (line.LeftEaveM, gust * wall), (Math.Max(line.LeftEaveM, firstM), gust * windward), (Math.Min(lastM, line.RightEaveM), gust * centre),
            (line.RightEaveM, gust * leeward), (line.LengthM, gust * leeWall));
    }
}
