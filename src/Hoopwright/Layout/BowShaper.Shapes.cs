using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <content>The three shapes in closed form.</content>
internal sealed partial class BowShaper
{
    private const string TooTight = "The bend is tighter than the tube can take without buckling (five diameters at its middle line, from memory).";

    private bool NeedsShoulder => request.Kind is BowKind.Gothic or BowKind.Peaked;

    /// <summary>The widest shoulder that still leaves some roof over it.</summary>
    private double MostShoulderM => Math.Min(wM, fM) - LeastRoofM;

    /// <summary>A rise under this is no roof.</summary>
    private double FlatM => Math.Max(LeastRisePerSpan * 2 * wM, 2 * request.TubeOutside.Metres);

    /// <summary>The least rise that leaves room for the tightest shoulder the tube takes.</summary>
    private double LeastRiseOverShoulderM => Up(LeastRadius.Metres).Metres + LeastRoofM;

    /// <summary>The least rise that this request can have: not flat, two tubes deep, and over the whole of its shoulder where it has one.</summary>
    private double LeastRiseM
    {
        get
        {
            bool hasShoulder = NeedsShoulder || request.ShoulderRadius > Length.Zero;
            double askedM = request.ShoulderRadius is { } asked && asked < request.Span / 2 ? asked.Metres + LeastRoofM : 0;
            return Math.Max(FlatM, hasShoulder ? Math.Max(askedM, LeastRiseOverShoulderM) : 0);
        }
    }

    /// <summary>
    /// Legs and one arc. Without a shoulder the arc runs through the tops of the legs: R = (w² + f²) / 2f. With one it is
    /// tangent to it and has its centre on the middle line: (w − r)² + (f − R)² = (R − r)², which is linear in R.
    /// </summary>
    private ImmutableArray<PathSegment>? Round()
    {
        if (fM > wM + Tolerances.PlaceM)
        {
            Error("bow.round.too-high", "peakHeight", "A round bow on upright legs rises at most half the span over them; a higher one would bulge past its legs.",
                Tape(request.PeakHeight!.Value), $"up to {Tape(Down(hM + wM))}, or legs of at least {Tape(Up(hM + fM - wM))}");
            return null;
        }
        double riseM = Math.Min(fM, wM);
        // At half the span the arc already leaves the legs upright: a shoulder of any radius would be a part of it.
        bool halfCircle = wM - riseM <= Tolerances.PlaceM;
        double rM = 0;
        if (request.ShoulderRadius is { } asked && asked != Length.Zero && !halfCircle)
        {
            if (!ShoulderFits(asked)) return null;
            rM = asked.Metres;
        }

        double archM = RoundRadiusM(rM, riseM);
        var centre = new PlaneVector(wM, hM + riseM - archM);
        // The arc begins on the ray from its centre through S; without a shoulder S is the top of the leg.
        double turnRad = Math.Atan2(Math.Max(0, hM - centre.YM), wM - rM);
        if (rM == 0) WarnOfCorner(turnRad);
        return Half(rM, turnRad, new ArcSegment(centre, archM, Math.PI - turnRad, turnRad - (Math.PI / 2)));
    }

    /// <summary>
    /// Legs, shoulder and two arcs of radius R that meet at the ridge. The centre C of the left arc lies R − r from S and R
    /// from K, below and right of the way from S to K: the intersection of two circles.
    /// </summary>
    private ImmutableArray<PathSegment>? Gothic()
    {
        if (Shoulder() is not { } rM) return null;
        double leastM = LeastArchM(rM);
        double archM;
        if (request.ArchRadius is { } given)
        {
            if (given.Metres < leastM - Tolerances.PlaceM && !request.TakesLeastArch)
            {
                Error("bow.gothic.arch-radius", "archRadius", "Arcs of this radius do not reach from the shoulders to a ridge at this peak.",
                    Tape(given), $"{Tape(Up(leastM))} or more");
                return null;
            }
            archM = Math.Max(given.Metres, leastM);
        }
        else
        {
            // As wide as the span where that rises to a ridge; else a quarter more than the least that does.
            archM = leastM <= 2 * wM ? 2 * wM : leastM * 1.25;
            if (units == UnitSystem.Metric) archM = MetricMarks.Of(Length.FromMetres(archM), MetricWay.Up).Metres;
            diagnostics.Add(new Diagnostic("assumed.frame.bow.arch-radius", Severity.Assumption, "archRadius",
                "The two long arcs have this outside radius; the maker's bend sheet tells the real one.", null, Tape(Length.FromMetres(archM))));
        }

        PlaneVector shoulder = new(rM, hM), ridge = new(wM, hM + fM);
        PlaneVector centre = Meeting.CircleAndCircle(shoulder, archM - rM, ridge, archM).First();
        double turnRad = Math.Max(0, Math.Atan2(hM - centre.YM, centre.XM - rM));
        double ridgeRad = Math.Min(Math.PI / 2, Math.Atan2(ridge.YM - centre.YM, centre.XM - wM));
        return Half(rM, turnRad, new ArcSegment(centre, archM, Math.PI - turnRad, turnRad - ridgeRad));
    }

    /// <summary>Legs, shoulder and a straight rafter, tangent to the shoulder, to the ridge.</summary>
    private ImmutableArray<PathSegment>? Peaked()
    {
        if (Shoulder() is not { } rM) return null;
        // Between the way from S to the ridge and the rafter lies asin(r / distance).
        var toRidge = new PlaneVector(wM - rM, fM);
        double slopeRad = toRidge.DirectionRad - Math.Asin(rM / toRidge.SizeM);
        double turnRad = (Math.PI / 2) - slopeRad;
        PlaneVector joint = new PlaneVector(rM, hM) + PlaneVector.Polar(rM, Math.PI - turnRad);
        return Half(rM, turnRad, new LineSegment(joint, new PlaneVector(wM, hM + fM)));
    }

    private double RoundRadiusM(double rM, double riseM) =>
        (((wM - rM) * (wM - rM)) + (riseM * riseM) - (rM * rM)) / (2 * (riseM - rM));

    /// <summary>
    /// The least radius whose arcs rise all the way. At f up to w that arc is level at the ridge, its centre on the middle line
    /// as for a round bow; at more it leaves the leg upright, its centre on the level of S. There is no greatest: wider
    /// arcs come ever nearer to straight rafters.
    /// </summary>
    private double LeastArchM(double rM) => fM <= wM ? RoundRadiusM(rM, fM) : ((wM * wM) + (fM * fM)) / (2 * wM);

    /// <summary>The shoulder radius as asked, or the usual one as an assumption; null when it does not fit.</summary>
    private double? Shoulder()
    {
        if (request.ShoulderRadius is { } asked) return ShoulderFits(asked) ? asked.Metres : null;
        Length usual = OnMark(Length.Max(LeastRadius, Length.Min(Length.FromFeet(2), Length.FromMetres(Math.Min(wM, fM) / 3))));
        if (!ShoulderFits(usual)) return null;
        diagnostics.Add(new Diagnostic("assumed.frame.bow.shoulder-radius", Severity.Assumption, "shoulderRadius",
            "The bend between leg and roof has this outside radius; the maker's bend sheet tells the real one.", null, Tape(usual)));
        return usual.Metres;
    }

    // To the mark below, or above where the tube takes no tighter bend; where neither fits it stays between them.
    private Length OnMark(Length usual)
    {
        if (units == UnitSystem.UsCustomary) return usual;
        Length below = MetricMarks.Of(usual, MetricWay.Down), above = MetricMarks.Of(usual, MetricWay.Up);
        return below >= LeastRadius ? below : above.Metres <= MostShoulderM ? above : usual;
    }

    private bool ShoulderFits(Length asked)
    {
        Length least = Up(LeastRadius.Metres), most = Down(MostShoulderM);
        bool tight = asked.Metres < LeastRadius.Metres - Tolerances.PlaceM, wide = asked.Metres > MostShoulderM + Tolerances.PlaceM;
        if (!tight && !wide) return true;
        if (least > most)
        {
            (string path, string seen, string accepted) = wM <= fM
                ? ("span", Tape(request.Span), $"at least {Tape(Up(2 * LeastRiseOverShoulderM))}")
                : ("peakHeight", Tape(request.PeakHeight!.Value), $"at least {Tape(Up(hM + LeastRiseOverShoulderM))}");
            Error("bow.no-room-for-shoulder", path, "No shoulder bend that this tube can take fits under this roof.", seen, accepted + ", or a narrower tube");
        }
        else if (tight)
        {
            Error("bow.bend-too-tight", "shoulderRadius", TooTight, $"{Tape(asked)} outside radius", $"from {Tape(least)} to {Tape(most)} outside radius, or a narrower tube");
        }
        else
        {
            Error("bow.shoulder-too-wide", "shoulderRadius", "The shoulder bend is wider than the roof over the legs.", Tape(asked), $"from {Tape(least)} to {Tape(most)}");
        }
        return false;
    }

    private void WarnOfCorner(double turnRad)
    {
        if (hM <= 0 || turnRad <= JointPlayRad) return;
        Length least = Up(LeastRadius.Metres), most = Down(MostShoulderM);
        string shoulder = least <= most ? $"a shoulder radius from {Tape(least)} to {Tape(most)}, or " : "";
        diagnostics.Add(new Diagnostic("bow.round.corner-at-legs", Severity.Warning, "shoulderRadius",
            "The arc meets the upright legs at a corner; a bent tube needs a shoulder bend there, a jointed one an angled fitting.",
            $"a corner of {TapeText.Of(Angle.FromRadians(turnRad))}", $"{shoulder}a peak of {Tape(Down(hM + wM))}"));
    }
}
