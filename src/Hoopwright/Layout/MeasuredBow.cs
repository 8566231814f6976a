using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// A bow from measured heights, from the left ground line to the right one or to the middle. A table that begins above the
/// ground, or gives two heights at a ground line, has upright legs there. The curve between is <see cref="SmoothCurve"/>; at
/// the highest point it may come to a ridge.
/// </summary>
internal sealed class MeasuredBow(BowRequest request, UnitSystem units, Length leastRadius, List<Diagnostic> diagnostics)
{
    // A tape read to a sixteenth may miss the ground line by that much; it still stands there.
    private static readonly Length ReadingSlack = Length.FromInches(1 / 16.0);

    // More than any bow has stations, so that a slipped file cannot stall a browser.
    private const int MostPoints = 1000;

    private readonly Length span = request.Span;

    internal BowShape? Shape()
    {
        if (Whole() is not { } whole) return null;
        PlaneVector first = whole[0], last = whole[^1];
        int from = StandsOver(whole[1], first) ? 1 : 0, to = StandsOver(whole[^2], last) ? whole.Length - 1 : whole.Length;
        ImmutableArray<PlaneVector> curve = whole[from..to];
        if (curve.Length < 3)
        {
            Error("bow.offsets.too-few", "offsets", "A curve needs at least three heights besides the ground.", Count(request.Offsets.Length), "3 or more");
            return null;
        }

        IEnumerable<PathSegment> segments = SmoothCurve.Through(curve).Segments;
        if (curve[0].YM > Tolerances.PlaceM) segments = segments.Prepend(new LineSegment(new PlaneVector(0, 0), curve[0]));
        if (curve[^1].YM > Tolerances.PlaceM) segments = segments.Append(new LineSegment(curve[^1], new PlaneVector(span.Metres, 0)));
        PlanePath film = PlanePath.Of(segments);
        if (!CanBeBent(film)) return null;

        // The lower of two uneven legs: up to there both are straight, from whichever side one looks.
        double legsM = Math.Min(curve[0].YM, curve[^1].YM);
        BowShape? shape = BowShape.Over(request with { SideHeight = legsM > Tolerances.PlaceM ? Length.FromMetres(legsM) : Length.Zero }, film);
        if (shape is null)
            Error("bow.tube-too-wide", "offsets", "The tube is too wide for a bend of this bow.", Tape(request.TubeOutside), "a narrower tube or wider bends");
        else if (request.PeakHeight is { } peak && (peak - shape.PeakHeight).Abs() > Length.FromInches(1))
            diagnostics.Add(new Diagnostic("bow.offsets.peak-differs", Severity.Warning, "peakHeight", "The measured heights come to another peak than the one given; the measured one is used.",
                Tape(peak), Tape(shape.PeakHeight)));
        return shape;
    }

    /// <summary>The points from the left ground line to the right one; null with everything that is wrong with them.</summary>
    private ImmutableArray<PlaneVector>? Whole()
    {
        ImmutableArray<PlanePoint> points = request.Offsets;
        if (points.Length < 3)
        {
            Error("bow.offsets.too-few", "offsets", "A curve needs at least three heights.", Count(points.Length), "3 or more");
            return null;
        }
        if (points.Length > MostPoints)
        {
            Error("bow.offsets.too-many", "offsets", "That is more heights than a bow has room for.", Count(points.Length), $"up to {Count(MostPoints)}");
            return null;
        }

        int before = diagnostics.Count;
        Length end = points[^1].Across;
        bool halfOnly = (end - (span / 2)).Abs() <= ReadingSlack;
        if (points[0].Across.Abs() > ReadingSlack)
            Error("bow.offsets.start", "offsets[0].across", "The first height stands at the left ground line.", Tape(points[0].Across), "0 in");
        for (int i = 0; i < points.Length; i++)
        {
            if (points[i].Up < Length.Zero)
                Error("bow.offsets.below-ground", At(i, "height"), "The bow goes below the ground line.", Tape(points[i].Up), "0 in or more");
            if (i > 0 && points[i].Across - points[i - 1].Across < ReadingSlack && !IsLeg(i, halfOnly))
                Error("bow.offsets.order", At(i, "across"), "Heights are given from left to right, one at each place.", Tape(points[i].Across), $"over {Tape(points[i - 1].Across)}");
        }
        if (!halfOnly && (end - span).Abs() > ReadingSlack)
            Error("bow.offsets.width", At(points.Length - 1, "across"), "The last height stands neither at the right ground line nor at the middle.",
                Tape(end), $"{Tape(span)} or {Tape(span / 2)}");
        if (diagnostics.Count > before) return null;

        double endM = (halfOnly ? span / 2 : span).Metres;
        IEnumerable<PlaneVector> given = points.Select((point, i) => PlaneVector.Of(point) with { XM = Snapped(point.Across.Metres, endM) });
        if (!halfOnly) return [.. given];
        return [.. given, .. given.Reverse().Skip(1).Select(point => point with { XM = span.Metres - point.XM })];
    }

    /// <summary>Two heights at one ground line, the outer one on the ground, are a leg.</summary>
    private bool IsLeg(int i, bool halfOnly)
    {
        ImmutableArray<PlanePoint> points = request.Offsets;
        bool together = (points[i].Across - points[i - 1].Across).Abs() < ReadingSlack;
        bool left = i == 1 && points[0].Up == Length.Zero && points[1].Up > Length.Zero;
        bool right = i == points.Length - 1 && !halfOnly && points[i].Up == Length.Zero && points[i - 1].Up > Length.Zero;
        return together && (left || right);
    }

    private static double Snapped(double acrossM, double endM)
    {
        if (Math.Abs(acrossM) < ReadingSlack.Metres) return 0;
        return Math.Abs(acrossM - endM) < ReadingSlack.Metres ? endM : acrossM;
    }

    private static bool StandsOver(PlaneVector inner, PlaneVector outer) => inner.XM == outer.XM;

    /// <summary>Whether the tube can follow the curve; the height at fault is named with the one its neighbours would give.</summary>
    private bool CanBeBent(PlanePath film)
    {
        for (int i = 1; i < film.Segments.Length; i++)
        {
            double cornerRad = Math.Abs(Math.IEEERemainder(film.Segments[i].StartDirectionRad - film.Segments[i - 1].EndDirectionRad, Math.Tau));
            double acrossM = film.Segments[i].StartM.XM;
            bool atLeg = Math.Min(Math.Abs(acrossM), Math.Abs(span.Metres - acrossM)) < Tolerances.PlaceM, atRidge = film.Segments[i].Start.Up >= film.Highest() - ReadingSlack;
            if (cornerRad > BowShaper.JointPlayRad && !atLeg && !atRidge) return Refused(film.Segments[i].Start, $"a corner of {TapeText.Of(Angle.FromRadians(cornerRad))}");
        }

        PathBend? tightest = null;
        foreach (PathBend bend in film.Bends())
            if (bend.Radius < leastRadius - Length.FromMetres(Tolerances.PlaceM) && (tightest is null || bend.Radius < tightest.Value.Radius))
                tightest = bend;
        if (tightest is not { } found)
        {
            WarnOfTurningBack(film);
            return true;
        }

        return Refused(film.PointAt((found.From + found.To) / 2), $"bent to {Tape(found.Radius)} outside radius");
    }

    /// <summary>A bow that bends inwards somewhere was hardly built so; a tape was misread.</summary>
    private void WarnOfTurningBack(PlanePath film)
    {
        foreach (PathBend bend in film.Bends())
        {
            if (bend.Turned.Radians <= BowShaper.JointPlayRad) continue;
            (int at, Length? height) = Blamed(film.PointAt((bend.From + bend.To) / 2));
            diagnostics.Add(new Diagnostic("bow.offsets.turns-back", Severity.Warning, At(at, "height"), "Beside this height the bow would bend inwards; measure it again.",
                Tape(request.Offsets[at].Up), height is { } named ? $"about {Tape(named)} by the heights beside it" : null));
            return;
        }
    }

    private bool Refused(PlanePoint place, string how)
    {
        (int at, Length? height) = Blamed(place);
        string accepted = $"bends of at least {Tape(TapeText.RoundUpForLimit(leastRadius, units))} outside radius, or a narrower tube";
        if (height is { } named) accepted = $"about {Tape(named)} by the heights beside it; {accepted}";
        Error("bow.bend-too-tight", At(at, "height"), "At this height the bend is tighter than the tube can take without buckling (five diameters at its middle line, from memory).",
            $"{Tape(request.Offsets[at].Up)}, {how}", accepted);
        return false;
    }

    /// <summary>Of the heights around a place the one without which the rest turns least to and fro, and the height of the rest there.</summary>
    private (int At, Length? Height) Blamed(PlanePoint place)
    {
        ImmutableArray<PlanePoint> points = request.Offsets;
        // A table to the middle stands for both halves.
        Length across = points[^1].Across < span * 0.75 ? Length.Min(place.Across, span - place.Across) : place.Across;
        int nearest = Enumerable.Range(0, points.Length).MinBy(i => (points[i].Across - across).Abs());
        int worst = nearest;
        double leastRad = double.PositiveInfinity;
        for (int i = Math.Max(1, nearest - 2); i <= Math.Min(points.Length - 2, nearest + 2); i++)
        {
            if (Without(i) is not { } rest || SmoothCurve.TurnedRad(rest) is var turnedRad && turnedRad >= leastRad) continue;
            (worst, leastRad) = (i, turnedRad);
        }
        return (worst, Without(worst) is { } others ? SmoothCurve.Through(others).HeightAt(points[worst].Across) : null);
    }

    /// <summary>The curve's points but one; null when too few are left or that one is an end.</summary>
    private ImmutableArray<PlaneVector>? Without(int at)
    {
        ImmutableArray<PlanePoint> points = request.Offsets;
        bool inside = at > 0 && at < points.Length - 1 && points[at - 1].Across < points[at].Across && points[at + 1].Across > points[at].Across;
        if (!inside) return null;
        ImmutableArray<PlanePoint> others = points.RemoveAt(at);
        if (others[0].Across >= others[1].Across) others = others.RemoveAt(0);
        if (others[^2].Across >= others[^1].Across) others = others.RemoveAt(others.Length - 1);
        return others.Length < 3 ? null : [.. others.Select(PlaneVector.Of)];
    }

    private string Tape(Length length) => TapeText.Of(length, units);

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string At(int index, string field) => FormattableString.Invariant($"offsets[{index}].{field}");

    private void Error(string code, string path, string message, string? seen, string? accepted) =>
        diagnostics.Add(new Diagnostic(code, Severity.Error, path, message, seen, accepted));
}
