using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>
/// Shapes a bow from its request. Round, gothic and peaked bows are made as the left half in closed form and mirrored.
/// With w half the span, p the peak, h the legs and r the shoulder radius, the shoulder arc has its centre S at (r, h).
/// </summary>
internal sealed class BowShaper(BowRequest request, UnitSystem units)
{
    /// <summary>The tightest bend of a tube's middle line as a multiple of its outside diameter.</summary>
    internal const double TightestBend = 5;

    /// <summary>Where <see cref="TightestBend"/> comes from.</summary>
    internal static Citation TightestBendSource { get; } = Citation.FromMemory;

    private readonly List<Diagnostic> diagnostics = [];
    private readonly double wM = request.Span.Metres / 2;
    private readonly double hM = request.SideHeight.Metres;

    private double PeakM => request.PeakHeight?.Metres ?? 0;

    public BowOutcome Shape()
    {
        PlanePath? film = Film();
        if (film is null) return new BowOutcome(null, [.. diagnostics]);
        if (!BendsAreWideEnough(film)) return new BowOutcome(null, [.. diagnostics]);
        BowShape? shape = BowShape.Over(request, film);
        if (shape is null) Error("bow.tube-too-wide", "shape", "The tube is too wide for a bend of this bow.", Tape(request.TubeOutside), "a narrower tube or wider bends");
        return new BowOutcome(shape, [.. diagnostics]);
    }

    private PlanePath? Film()
    {
        if (request.Kind == BowKind.Offsets) return Offsets();
        if (request.PeakHeight is null)
        {
            Error("plan.missing", "peakHeight", "The height of the bow is not given.", null, "12 ft 6 in");
            return null;
        }
        if (request.SideHeight < Length.Zero)
        {
            Error("bow.side-height", "sideHeight", "The legs cannot go below the ground line.", Tape(request.SideHeight), "0 in or more");
            return null;
        }
        if (request.PeakHeight <= request.SideHeight)
        {
            Error("bow.peak-below-shoulder", "peakHeight", "The peak is no higher than the legs.", Tape(request.PeakHeight.Value), $"over {Tape(request.SideHeight)}");
            return null;
        }
        ImmutableArray<PathSegment> half = request.Kind switch
        {
            BowKind.Round => Round(),
            BowKind.Gothic => Gothic(),
            BowKind.Peaked => Peaked(),
            BowKind.Offsets => [],
        };
        if (half.IsDefaultOrEmpty) return null;
        PlanePath left = PlanePath.Of(half);
        return left.Then(left.Mirrored(Length.FromMetres(wM)));
    }

    /// <summary>
    /// Legs and one arc. Without a shoulder the arc runs through the tops of the legs: R = (w² + (p−h)²) / 2(p−h). With one it
    /// is tangent to it, its centre on the middle line: (w−r)² + (p−R−h)² = (R−r)², which is linear in R.
    /// </summary>
    private ImmutableArray<PathSegment> Round()
    {
        double rM = request.ShoulderRadius?.Metres ?? 0;
        double riseM = PeakM - hM;
        if (riseM > wM + Tolerances.PlaceM)
        {
            Error("bow.round.too-high", "peakHeight", "A round bow on upright legs rises at most half the span over them; a higher one would bulge past its legs.",
                Tape(request.PeakHeight!.Value), $"up to {Tape(Down(hM + wM))}, or legs of at least {Tape(Up(PeakM - wM))}");
            return [];
        }
        riseM = Math.Min(riseM, wM);
        if (rM >= wM || rM >= riseM)
        {
            if (rM > riseM + Tolerances.PlaceM || rM > wM + Tolerances.PlaceM)
            {
                Error("bow.shoulder-too-wide", "shoulderRadius", "The shoulder bend is wider than the roof over the legs.",
                    Tape(request.ShoulderRadius!.Value), $"up to {Tape(Down(Math.Min(riseM, wM)))}");
                return [];
            }
            rM = 0;
        }
        double archM = (((wM - rM) * (wM - rM)) + (riseM * riseM) - (rM * rM)) / (2 * (riseM - rM));
        var centre = new PlaneVector(wM, PeakM - archM);
        // The outward direction of the joint between shoulder and arc, from the arc's centre.
        PlaneVector joint = rM > 0 ? new PlaneVector(rM - wM, hM - centre.YM) : new PlaneVector(-wM, hM - centre.YM);
        double jointRad = joint.DirectionRad;
        return Half(rM, jointRad, new ArcSegment(centre, archM, jointRad, (Math.PI / 2) - jointRad));
    }

    /// <summary>
    /// Legs, shoulder and two arcs of radius R that meet at the ridge K = (w, p). The centre C of the left arc lies R − r from
    /// S and R from K: the intersection of two circles, on the side that makes the arc rise all the way.
    /// </summary>
    private ImmutableArray<PathSegment> Gothic()
    {
        double rM = Shoulder(BowKind.Gothic);
        if (double.IsNaN(rM)) return [];
        (double leastM, double mostM) = ArchRange(rM);
        if (leastM > mostM)
        {
            Error("bow.gothic.no-arch", "peakHeight", "No gothic bow of this span, side height and shoulder has this peak.",
                Tape(request.PeakHeight!.Value), $"over {Tape(Up(hM + rM + (0.05 * wM)))} and under {Tape(Down(hM + (4 * wM)))}, or another shoulder radius");
            return [];
        }
        double archM;
        if (request.ArchRadius is { } given)
        {
            archM = given.Metres;
            if (archM < leastM - Tolerances.PlaceM || archM > mostM + Tolerances.PlaceM)
            {
                Error("bow.gothic.arch-radius", "archRadius", "Arcs of this radius do not reach from the shoulders to a ridge at this peak.",
                    Tape(given), mostM > 1000 ? $"{Tape(Up(leastM))} or more" : $"{Tape(Up(leastM))} to {Tape(Down(mostM))}");
                return [];
            }
            archM = Math.Clamp(archM, leastM, mostM);
        }
        else
        {
            // As wide as the span where that rises to a ridge; else the middle of what does.
            double wishM = 2 * wM;
            archM = wishM >= leastM && wishM <= mostM ? wishM : mostM > 1000 ? leastM * 1.25 : (leastM + mostM) / 2;
            diagnostics.Add(new Diagnostic("assumed.frame.bow.arch-radius", Severity.Assumption, "archRadius",
                "The two long arcs have this outside radius; the maker's bend sheet tells the real one.", null, Tape(Length.FromMetres(archM))));
        }
        if (CentreOfArch(rM, archM) is not { } centre) return [];
        double jointRad = new PlaneVector(rM - centre.XM, hM - centre.YM).DirectionRad;
        if (archM - rM < Tolerances.PlaceM) jointRad = Math.PI;
        double ridgeRad = new PlaneVector(wM - centre.XM, PeakM - centre.YM).DirectionRad;
        return Half(rM, jointRad, new ArcSegment(centre, archM, jointRad, ridgeRad - jointRad));
    }

    /// <summary>Legs, shoulder and a straight rafter, tangent to the shoulder, to the ridge.</summary>
    private ImmutableArray<PathSegment> Peaked()
    {
        double rM = Shoulder(BowKind.Peaked);
        if (double.IsNaN(rM)) return [];
        var toRidge = new PlaneVector(wM - rM, PeakM - hM);
        double distanceM = toRidge.SizeM;
        if (distanceM <= rM)
        {
            Error("bow.shoulder-too-wide", "shoulderRadius", "The shoulder bend reaches past the ridge.", Tape(Length.FromMetres(rM)), $"under {Tape(Down(Math.Min(wM, PeakM - hM)))}");
            return [];
        }
        // Between the way to the ridge and the rafter lies asin(r / distance); the outward normal is a quarter turn left of the rafter.
        double rafterRad = toRidge.DirectionRad - Math.Asin(rM / distanceM);
        if (rafterRad <= 0)
        {
            Error("bow.peaked.no-rise", "peakHeight", "The rafters would not rise to the ridge.", Tape(request.PeakHeight!.Value), $"over {Tape(Up(hM + rM))}");
            return [];
        }
        double jointRad = rafterRad + (Math.PI / 2);
        PlaneVector joint = new PlaneVector(rM, hM) + PlaneVector.Polar(rM, jointRad);
        return Half(rM, jointRad, new LineSegment(joint, new PlaneVector(wM, PeakM)));
    }

    private PlanePath? Offsets()
    {
        ImmutableArray<PlanePoint> points = request.Offsets;
        if (points.Length < 3)
        {
            Error("bow.offsets.too-few", "offsets", "A curve needs at least three heights.", points.Length.ToString(CultureInfo.InvariantCulture), "3 or more");
            return null;
        }
        double lastM = points[^1].Across.Metres;
        bool halfOnly = Math.Abs(lastM - wM) <= Tolerances.PlaceM;
        if (!halfOnly && Math.Abs(lastM - (2 * wM)) > Tolerances.PlaceM)
        {
            Error("bow.offsets.width", FormattableString.Invariant($"offsets[{points.Length - 1}].across"), "The last height stands neither at the right ground line nor at the middle.",
                Tape(points[^1].Across), $"{Tape(request.Span)} or {Tape(request.Span / 2)}");
            return null;
        }
        for (int index = 0; index < points.Length; index++)
        {
            if (index == 0 && Math.Abs(points[0].Across.Metres) > Tolerances.PlaceM)
            {
                Error("bow.offsets.start", "offsets[0].across", "The first height stands at the left ground line.", Tape(points[0].Across), "0 in");
                return null;
            }
            if (points[index].Up < Length.Zero)
            {
                Error("bow.offsets.below-ground", FormattableString.Invariant($"offsets[{index}].height"), "The bow goes below the ground line.", Tape(points[index].Up), "0 in or more");
                return null;
            }
            if (index > 0 && points[index].Across.Metres - points[index - 1].Across.Metres <= Tolerances.PlaceM)
            {
                Error("bow.offsets.order", FormattableString.Invariant($"offsets[{index}].across"), "Heights are given from left to right, one at each place.", Tape(points[index].Across), $"over {Tape(points[index - 1].Across)}");
                return null;
            }
        }
        IEnumerable<PlaneVector> left = points.Select(PlaneVector.Of);
        // Posts and films begin on the ground, so a table that starts in the air gains upright legs.
        if (points[0].Up.Metres > Tolerances.PlaceM) left = left.Prepend(new PlaneVector(0, 0));
        if (!halfOnly && points[^1].Up.Metres > Tolerances.PlaceM) left = left.Append(new PlaneVector(lastM, 0));
        IEnumerable<PlaneVector> whole = halfOnly ? left.Concat(left.Reverse().Skip(1).Select(point => new PlaneVector((2 * wM) - point.XM, point.YM))) : left;
        return SmoothCurve.Through([.. whole]);
    }

    private ImmutableArray<PathSegment> Half(double rM, double jointRad, PathSegment roof)
    {
        var half = ImmutableArray.CreateBuilder<PathSegment>(3);
        if (hM > 0) half.Add(new LineSegment(new PlaneVector(0, 0), new PlaneVector(0, hM)));
        if (rM > 0 && Math.PI - jointRad > 1e-12) half.Add(new ArcSegment(new PlaneVector(rM, hM), rM, Math.PI, jointRad - Math.PI));
        half.Add(roof);
        return half.ToImmutable();
    }

    private double Shoulder(BowKind kind)
    {
        double usualM = Math.Min(Length.FromFeet(2).Metres, Math.Min(wM, PeakM - hM) / 3);
        double rM = request.ShoulderRadius?.Metres ?? usualM;
        double mostM = kind == BowKind.Gothic ? Math.Min(wM, PeakM - hM) : Math.Min(wM, PeakM - hM);
        if (rM < 0 || rM >= mostM)
        {
            Error("bow.shoulder-too-wide", "shoulderRadius", "The shoulder bend is wider than the roof over the legs.",
                Tape(Length.FromMetres(rM)), $"under {Tape(Down(mostM))}");
            return double.NaN;
        }
        if (request.ShoulderRadius is null)
        {
            diagnostics.Add(new Diagnostic("assumed.frame.bow.shoulder-radius", Severity.Assumption, "shoulderRadius",
                "The bend between leg and roof has this outside radius; the maker's bend sheet tells the real one.", null, Tape(Length.FromMetres(rM))));
        }
        return rM;
    }

    /// <summary>
    /// Radii for which the arc rises from the shoulder to the ridge. The least is tangent to the level at the ridge (a round
    /// crown) or leaves the leg without a shoulder; the most is the straight rafter, without bound.
    /// </summary>
    private (double LeastM, double MostM) ArchRange(double rM)
    {
        double acrossM = wM - rM, upM = PeakM - hM;
        // Crown level at the ridge: centre on the middle line, as for a round bow.
        double roundM = upM > rM ? ((acrossM * acrossM) + (upM * upM) - (rM * rM)) / (2 * (upM - rM)) : double.PositiveInfinity;
        // No turn at the shoulder: centre level with S, (w−R)² + (p−h)² = R².
        double uprightM = ((wM * wM) + (upM * upM)) / (2 * wM);
        bool roundRises = upM - roundM <= 0 && roundM > rM;
        // A bow higher than half its span has its centre on the shoulder's level at least; a lower one has it on the middle line.
        double leastM = upM > wM ? uprightM : roundRises ? roundM : uprightM;
        double straightM = Math.Sqrt((acrossM * acrossM) + (upM * upM));
        return leastM > 0 && !double.IsInfinity(leastM) && straightM > rM && Math.Atan2(upM, acrossM) > Math.Asin(Math.Min(1, rM / straightM))
            ? (leastM, double.MaxValue)
            : (1, 0);
    }

    private PlaneVector? CentreOfArch(double rM, double archM)
    {
        var shoulder = new PlaneVector(rM, hM);
        var ridge = new PlaneVector(wM, PeakM);
        if (archM - rM < Tolerances.PlaceM) return shoulder;
        PlaneVector? best = null;
        foreach (PlaneVector centre in Meeting.CircleAndCircle(shoulder, archM - rM, ridge, archM))
        {
            // The centre of an arc that rises to the right over the tunnel lies right of and below the film.
            if (centre.YM <= hM + Tolerances.PlaceM && centre.XM >= rM - Tolerances.PlaceM && (best is null || centre.YM < best.Value.YM)) best = centre;
        }
        return best;
    }

    private bool BendsAreWideEnough(PlanePath film)
    {
        Length half = request.TubeOutside / 2;
        Length least = request.TubeOutside * TightestBend;
        PathBend? tightest = null;
        foreach (PathBend bend in film.Bends())
        {
            if (bend.Radius - half < least - Length.FromMetres(Tolerances.PlaceM) && (tightest is null || bend.Radius < tightest.Value.Radius)) tightest = bend;
        }
        if (tightest is not { } found) return true;
        string field = request.Kind switch
        {
            BowKind.Round => request.ShoulderRadius is null ? "peakHeight" : "shoulderRadius",
            BowKind.Gothic or BowKind.Peaked => "shoulderRadius",
            BowKind.Offsets => "offsets",
        };
        Error("bow.bend-too-tight", field, "The bend is tighter than the tube can take without buckling (five diameters at its middle line, from memory).",
            $"{Tape(found.Radius)} outside", $"at least {Tape(TapeText.RoundUpForLimit(least + half, units))} outside, or a narrower tube");
        return false;
    }

    private Length Up(double metres) => TapeText.RoundUpForLimit(Length.FromMetres(metres), units);

    private Length Down(double metres) => TapeText.RoundDownForLimit(Length.FromMetres(metres), units);

    private string Tape(Length length) => TapeText.Of(length, units);

    private void Error(string code, string path, string message, string? seen, string? accepted) =>
        diagnostics.Add(new Diagnostic(code, Severity.Error, path, message, seen, accepted));
}
