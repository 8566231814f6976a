using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>The wind cases of a covered tunnel, each for 1 Pa of ½·ρ·V².</summary>
internal static class WindCases
{
    // Wind on a corner: three quarters of the wind of both directions at once, ASCE 7 figure 27.3-8, case 3.
    private const double Corner = 0.75;

    // EN 1991-1-4, 7.2.9(6): cpi where the openings are not known.
    private const double EnPlus = 0.2, EnMinus = -0.3;

    private static readonly Sources.Formula CornerRule = new(
        "case 3", "0.75 of the wind across on roof and sides, and 0.75 of the wind along on the ends, at once", "", LoadSources.Asce7("Fig. 27.3-8"));

    public static IEnumerable<LoadCase> Of(Tunnel tunnel, LoadSite site)
    {
        List<LoadCase> cases = [];
        ImmutableArray<OpenState> states = OpenState.Of(tunnel);
        foreach (WindFrom from in Enum.GetValues<WindFrom>()) cases.AddRange(From(tunnel, site, states, from));
        cases.AddRange(OnCorners(tunnel, site, states[0]));
        Pressure? reference = site.WindPa is { } pa ? Pressure.FromPascals(pa) : null;
        foreach (LoadCase each in cases) yield return each with { Scale = LoadScale.WindSpeedSquared, SiteReference = reference };
        if (site.IsAsce)
            foreach (LoadCase least in Least(tunnel, site))
                yield return least;
    }

    /// <summary>States that come to the same loads are one case, named after the first. By ASCE 7 those of two classes of enclosure stay apart.</summary>
    private static IEnumerable<LoadCase> From(Tunnel tunnel, LoadSite site, ImmutableArray<OpenState> states, WindFrom from)
    {
        ImmutableArray<WindShape> shapes = Outside(tunnel, site, from);
        var all = from state in states
                  let enclosure = state.Class(tunnel, @from)
                  from shape in shapes
                  from inside in Inside(site, tunnel, @from, state, enclosure, shape)
                  select (State: state, Enclosure: enclosure, Shape: shape, Inside: inside);
        foreach (var group in all.GroupBy(each => (site.IsAsce ? each.Enclosure : (EnclosureClass?)null, each.State.LeftUp, each.State.RightUp, each.Shape.Suffix, each.Inside.Sign, each.Inside.Inside)))
        {
            (OpenState state, EnclosureClass enclosure, WindShape shape, (string sign, string says, double inside, Coefficient value)) = group.First();
            string words = string.Join(", or ", group.Select(each => each.State.Words));
            string code = $"wind-{Name(from)}-{state.Code}{shape.Suffix}{sign}";
            yield return new LoadCase
            {
                Code = code,
                Words = $"Wind from the {Name(from)}, {words}{(says.Length > 0 ? ", " + says : "")}{Suffix(shape.Suffix)}",
                Kind = LoadKind.Wind,
                TwinCode = $"wind-{Name(Mirror(from))}-{state.Twin}{shape.Suffix}{sign}",
                Enclosure = enclosure,
                IsShut = state.IsShut,
                Counts = state.IsShut || !site.ShutBeforeStorms,
                Surfaces = Surfaces(tunnel, site, from, shape, state, inside, 1),
                Ends = EndPressures(tunnel, site, from, inside, 1),
                FilmPull = Pull(tunnel, site, shape, inside),
                Coefficients = [.. shape.Coefficients, value],
                Note = Note(tunnel, site, from),
            };
        }
    }

    private static IEnumerable<LoadCase> OnCorners(Tunnel tunnel, LoadSite site, OpenState shut)
    {
        foreach (WindFrom end in (WindFrom[])[WindFrom.Front, WindFrom.Back])
        {
            foreach (WindFrom side in (WindFrom[])[WindFrom.Left, WindFrom.Right])
            {
                EnclosureClass enclosure = shut.Class(tunnel, side);
                foreach (WindShape shape in Outside(tunnel, site, side))
                {
                    foreach ((string sign, string says, double inside, Coefficient value) in Inside(site, tunnel, side, shut, enclosure, shape))
                    {
                        yield return new LoadCase
                        {
                            Code = $"wind-{Name(end)}-{Name(side)}-shut{shape.Suffix}{sign}",
                            Words = $"Wind on the {Name(end)} {Name(side)} corner, shut{(says.Length > 0 ? ", " + says : "")}{Suffix(shape.Suffix)}",
                            Kind = LoadKind.Wind,
                            TwinCode = $"wind-{Name(end)}-{Name(Mirror(side))}-shut{shape.Suffix}{sign}",
                            Enclosure = enclosure,
                            Surfaces = Surfaces(tunnel, site, side, shape, shut, inside, Corner),
                            Ends = EndPressures(tunnel, site, end, inside, Corner),
                            FilmPull = Pull(tunnel, site, shape, inside),
                            Note = Note(tunnel, site, side),
                            Coefficients = [.. shape.Coefficients, value, LoadSite.Value(CornerRule, Corner, "wind on a corner; the pressure inside in full")],
                        };
                    }
                }
            }
        }
    }

    /// <summary>The least wind of the code, at strength level.</summary>
    private static IEnumerable<LoadCase> Least(Tunnel tunnel, LoadSite site)
    {
        Coefficient value = LoadSite.Value(AsceWind.LeastWall, AsceWind.LeastWallPa, "least wind on walls");
        LoadProfile fromLeft = LeastFrom(site.Line), fromRight = LeastFrom(site.Behind).Mirrored(Length.FromMetres(site.Line.LengthM)).Times(Ratio.FromValue(-1));
        foreach (bool left in (bool[])[true, false])
        {
            string side = left ? "left" : "right", other = left ? "right" : "left";
            yield return new LoadCase
            {
                Code = "wind-least-" + side,
                Words = $"Least wind of the code from the {side}",
                Kind = LoadKind.Wind,
                TwinCode = "wind-least-" + other,
                Surfaces = [new() { Sideways = left ? fromLeft : fromRight }],
                Coefficients = [value],
            };
        }
        foreach (bool front in (bool[])[true, false])
        {
            string code = "wind-least-" + (front ? "front" : "back");
            yield return new LoadCase
            {
                Code = code,
                Words = $"Least wind of the code from the {(front ? "front" : "back")}",
                Kind = LoadKind.Wind,
                TwinCode = code,
                Ends = [new(front, Pressure.FromPascals(AsceWind.LeastWallPa))],
                Coefficients = [value],
            };
        }
    }

    private static LoadProfile LeastFrom(FilmLine line) => line.Zones((line.LeftEaveM, AsceWind.LeastWallPa), (line.Crown.SM, AsceWind.LeastRoofPa));

    // Neither standard knows pointed arches; EN's values for pitched roofs are not held here.
    private static string Note(Tunnel tunnel, LoadSite site, WindFrom from) =>
        from is WindFrom.Front or WindFrom.Back || tunnel.Bow.Kind == BowKind.Round || (tunnel.Bow.Kind == BowKind.Peaked && site.IsAsce)
            ? ""
            : "The roof is taken as a round arch of its rise.";

    private static ImmutableArray<WindShape> Outside(Tunnel tunnel, LoadSite site, WindFrom from) => from switch
    {
        WindFrom.Left => WindShape.Across(tunnel, site, site.Line),
        WindFrom.Right => WindShape.Across(tunnel, site, site.Behind),
        WindFrom.Front or WindFrom.Back => [new WindShape(LoadProfile.None, "", WindShape.Along(tunnel, site).Coefficients)],
    };

    /// <summary>Pressures inside, as parts of the velocity pressure; positive blows the tunnel up.</summary>
    private static IEnumerable<(string Sign, string Says, double Inside, Coefficient Value)> Inside(
        LoadSite site, Tunnel tunnel, WindFrom from, OpenState state, EnclosureClass enclosure, WindShape shape)
    {
        const string plus = "-plus", minus = "-minus", blown = "pressure inside", drawn = "suction inside";
        if (site.IsAsce)
        {
            double gcpi = AsceWind.GCpi(enclosure);
            if (gcpi == 0)
            {
                yield return ("", "", 0, LoadSite.Value(AsceWind.InsidePressure(enclosure), 0, "inside"));
                yield break;
            }
            yield return (plus, blown, gcpi, LoadSite.Value(AsceWind.InsidePressure(enclosure), gcpi, blown));
            yield return (minus, drawn, -gcpi, LoadSite.Value(AsceWind.InsidePressure(enclosure), -gcpi, drawn));
            yield break;
        }
        (double atMost, double atLeast) = EnInside(tunnel, site, from, state, shape);
        yield return (plus, blown, atMost, En(atMost, EnPlus, blown));
        yield return (minus, drawn, atLeast, En(atLeast, EnMinus, drawn));

        Coefficient En(double cpi, double usual, string says) =>
            cpi == usual ? LoadSite.Value(EnWind.Inside, cpi, says) : LoadSite.Value(EnWind.InsideDominant, cpi, state.Words);
    }

    /// <summary>
    /// The most and the least cpi of EN 1991-1-4: what is not known for sure, and where the openings of one face are at least twice those of
    /// all others, what the wind does outside of them, pressing or sucking.
    /// </summary>
    private static (double AtMost, double AtLeast) EnInside(Tunnel tunnel, LoadSite site, WindFrom from, OpenState state, WindShape shape)
    {
        if (state.Dominant(tunnel) is not var (face, ratio)) return (EnPlus, EnMinus);
        double cpi = EnWind.DominantPart(ratio) * WindShape.EnAt(tunnel, site, face, from, shape);
        return (Math.Max(EnPlus, cpi), Math.Min(EnMinus, cpi));
    }

    /// <summary>Loads on roof and sides. Where a side is open there is no film, so nothing presses there.</summary>
    private static ImmutableArray<SurfaceLoad> Surfaces(Tunnel tunnel, LoadSite site, WindFrom from, WindShape shape, OpenState state, double inside, double part)
    {
        FilmLine line = site.Line;
        var whole = Length.FromMetres(line.LengthM);
        double filmFromM = state.LeftUp ? tunnel.Left.ArcToHip.Metres : 0, filmToM = line.LengthM - (state.RightUp ? tunnel.Right.ArcToHip.Metres : 0);
        double q = site.WindFactor;
        LoadProfile blown = line.Zones((filmFromM, 0), (filmToM, -inside * q));
        switch (from)
        {
            case WindFrom.Left or WindFrom.Right:
                LoadProfile outside = from == WindFrom.Left ? shape.Roof : shape.Roof.Mirrored(whole);
                return [new() { Normal = Sum(Cut(outside.Times(Ratio.FromValue(q * part)), filmFromM, filmToM), blown) }];
            case WindFrom.Front or WindFrom.Back:
                return
                [
                    .. WindShape.Along(tunnel, site).Loads.Select(load => new SurfaceLoad
                    {
                        Normal = Cut(load.Normal.Times(Ratio.FromValue(q * part)), filmFromM, filmToM),
                        ByLength = from == WindFrom.Front ? load.ByLength
                            : [.. load.ByLength.Reverse().Select(point => point with { Along = tunnel.Length - point.Along })],
                    }).Where(load => !load.Normal.IsNone),
                    .. blown.IsNone ? (ReadOnlySpan<SurfaceLoad>)[] : [new SurfaceLoad { Normal = blown }],
                ];
            default:
                throw new ArgumentOutOfRangeException(nameof(from));
        }
    }

    private static ImmutableArray<EndPressure> EndPressures(Tunnel tunnel, LoadSite site, WindFrom from, double inside, double part)
    {
        (double windward, double leeward) = WindShape.Ends(tunnel, site);
        double side = WindShape.SideEnd(tunnel, site);
        (double front, double back) = from switch
        {
            WindFrom.Left or WindFrom.Right => (side, side),
            WindFrom.Front => (windward, leeward),
            WindFrom.Back => (leeward, windward),
        };
        return
        [
            .. End(tunnel.Front, true, front), .. End(tunnel.Back, false, back),
        ];

        IEnumerable<EndPressure> End(EndWall end, bool isFront, double outside) => end.Closing == EndClosing.Open
            ? []
            : [new(isFront, Pressure.FromPascals(((part * outside) - inside) * site.WindFactor))];
    }

    /// <summary>The film bulges between the bows at the greatest pressure of the case.</summary>
    private static EndFilmPull Pull(Tunnel tunnel, LoadSite site, WindShape shape, double inside)
    {
        double greatest = Math.Max(0.9, shape.Roof.IsNone ? 0 : shape.Roof.Greatest.Pascals) + Math.Abs(inside);
        return FilmOf.PullUnder(tunnel, site.WindPa is { } wind and > 0 ? greatest * site.WindFactor * wind : null);
    }

    /// <summary>Part of a profile between two places.</summary>
    private static LoadProfile Cut(LoadProfile profile, double fromM, double toM)
    {
        if (profile.Points.IsEmpty) return profile;
        List<(double, double)> points = [(fromM, profile.AtPa(fromM, after: true))];
        points.AddRange(profile.Points.Where(point => point.Distance.Metres > fromM && point.Distance.Metres < toM).Select(point => (point.Distance.Metres, point.Value.Pascals)));
        points.Add((toM, profile.AtPa(toM, after: false)));
        return LoadProfile.Of(points);
    }

    /// <summary>Two profiles together.</summary>
    internal static LoadProfile Sum(LoadProfile one, LoadProfile other)
    {
        double[] places = [.. one.Points.Concat(other.Points).Select(point => point.Distance.Metres).Distinct().Order()];
        List<(double, double)> points = [];
        foreach (double atM in places)
        {
            if (atM > places[0]) points.Add((atM, one.AtPa(atM, after: false) + other.AtPa(atM, after: false)));
            if (atM < places[^1]) points.Add((atM, After(one, atM) + After(other, atM)));
        }
        return LoadProfile.Of(points);

        static double After(LoadProfile profile, double atM) =>
            profile.Points.IsEmpty || profile.Points[^1].Distance.Metres <= atM ? 0 : profile.AtPa(atM, after: true);
    }

    internal static string Name(WindFrom from) => from switch { WindFrom.Left => "left", WindFrom.Right => "right", WindFrom.Front => "front", WindFrom.Back => "back" };

    private static WindFrom Mirror(WindFrom from) => from switch { WindFrom.Left => WindFrom.Right, WindFrom.Right => WindFrom.Left, WindFrom.Front => WindFrom.Front, WindFrom.Back => WindFrom.Back };

    private static string Suffix(string suffix) => suffix switch { "-a" => ", first value windward", "-b" => ", second value windward", _ => "" };
}
