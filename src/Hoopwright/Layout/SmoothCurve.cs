using System.Collections.Immutable;
using Hoopwright.Geometry;

namespace Hoopwright.Layout;

/// <summary>
/// A curve of circular arcs through measured points from left to right, which bends only where they do: between points that
/// turn one way it turns that way. The direction at a point is that of the circle through it and its neighbours, and two
/// arcs that are tangent where they join run from each point to the next. Points of one circle give that circle back
/// exactly. Biarcs: Bolton, Biarc curves, Computer-Aided Design 7 (1975), from memory; choice of the joint below is ours.
/// </summary>
internal static class SmoothCurve
{
    // Where one arc of a pair would turn more than three times as far as the other, equal tangent lengths make it turn back.
    private const double MostUneven = 3;

    // Rounds of evening out; each halves what is left or better, and a tape's own error is larger after four.
    private const int Rounds = 4;

    // A top that turns more than this, and far more than its neighbours, was built as a ridge.
    private const double RidgeRad = 10 * Math.PI / 180;

    // A curve that leaves the ground within this of upright was meant to: it is what a sixteenth makes over six inches.
    private const double UprightRad = Math.PI / 180;

    // Turns below this are straight; over ten metres it moves the end by a tenth of a micrometre.
    private const double StraightRad = 1e-8;

    /// <summary>The curve.</summary>
    /// <param name="points">At least three, each further to the right than the one before.</param>
    internal static PlanePath Through(ImmutableArray<PlaneVector> points)
    {
        int top = 0;
        for (int i = 1; i < points.Length; i++)
            if (points[i].YM > points[top].YM)
                top = i;
        // Two highest points have no ridge between them, and to take one of them would make a bow that leans.
        bool alone = points.Count(point => point.YM == points[top].YM) == 1;
        if (!alone || !IsRidge(points, top)) return PlanePath.Of(Fit(points));
        return PlanePath.Of([.. Fit(points[..(top + 1)]), .. Fit(points[top..])]);
    }

    /// <summary>How far the chords between points turn in all, to either side.</summary>
    internal static double TurnedRad(ImmutableArray<PlaneVector> points)
    {
        double sumRad = 0;
        for (int i = 1; i + 1 < points.Length; i++) sumRad += Math.Abs(TurnRad(points, i));
        return sumRad;
    }

    private static bool IsRidge(ImmutableArray<PlaneVector> points, int top)
    {
        if (top < 2 || top > points.Length - 3) return false;
        double turn = TurnRad(points, top), beside = Math.Max(Math.Abs(TurnRad(points, top - 1)), Math.Abs(TurnRad(points, top + 1)));
        double before = Reflected(points[top - 1], points[top], CircleDirectionRad(points[top - 2], points[top - 1], points[top]));
        double after = Reflected(points[top], points[top + 1], CircleDirectionRad(points[top], points[top + 1], points[top + 2]));
        return before - after > RidgeRad && -turn > 2 * beside;
    }

    /// <summary>Direction at the other end of the arc over a chord: the chord's mirror image of the one at this end.</summary>
    private static double Reflected(PlaneVector from, PlaneVector to, double directionRad) => (2 * (to - from).DirectionRad) - directionRad;

    private static double TurnRad(ImmutableArray<PlaneVector> points, int at) =>
        (points[at + 1] - points[at]).DirectionRad - (points[at] - points[at - 1]).DirectionRad;

    /// <summary>
    /// Direction at the middle one of three points of the circle through them. The angle between chord and tangent is half the
    /// arc over the chord; the two halves share the turn so that their sines go as the chords.
    /// </summary>
    private static double CircleDirectionRad(PlaneVector before, PlaneVector at, PlaneVector after)
    {
        double inRad = (at - before).DirectionRad, turnRad = (after - at).DirectionRad - inRad;
        double inM = (at - before).SizeM, outM = (after - at).SizeM;
        return inRad + Math.Atan2(inM * Math.Sin(turnRad), outM + (inM * Math.Cos(turnRad)));
    }

    private static List<PathSegment> Fit(ImmutableArray<PlaneVector> points)
    {
        double[] directions = Directions(points);
        var segments = new List<PathSegment>();
        for (int i = 0; i + 1 < points.Length; i++) AddPair(segments, points[i], directions[i], points[i + 1], directions[i + 1]);
        return segments;
    }

    private static double[] Directions(ImmutableArray<PlaneVector> points)
    {
        int last = points.Length - 1;
        var chords = new double[last];
        for (int i = 0; i < last; i++) chords[i] = (points[i + 1] - points[i]).DirectionRad;
        var directions = new double[points.Length];
        if (last == 1) return [chords[0], chords[0]];
        for (int i = 1; i < last; i++) directions[i] = CircleDirectionRad(points[i - 1], points[i], points[i + 1]);

        for (int round = 0; round < Rounds; round++)
        {
            Reflect();
            var before = (double[])directions.Clone();
            for (int i = 1; i < last; i++) directions[i] = Evened(i, before);
        }

        Reflect();
        return directions;

        void Reflect()
        {
            directions[0] = Leaving((2 * chords[0]) - directions[1]);
            directions[last] = -Leaving(directions[last - 1] - (2 * chords[last - 1]));
        }

        // Shares the turn at a point so that neither pair beside it is too uneven, where both can be had.
        double Evened(int i, double[] before)
        {
            double turn = chords[i] - chords[i - 1];
            if (Math.Abs(turn) <= StraightRad) return before[i];
            double most = i == 1 ? 1 : ShareUpTo(chords[i - 1] - before[i - 1], turn);
            double least = i == last - 1 ? 0 : 1 - ShareUpTo(before[i + 1] - chords[i], turn);
            double share = (before[i] - chords[i - 1]) / turn;
            return least > most ? before[i] : chords[i - 1] + (turn * Math.Clamp(share, least, most));
        }
    }

    /// <summary>An end's rise is at most upright, and upright when it is nearly so.</summary>
    private static double Leaving(double riseRad) => riseRad > (Math.PI / 2) - UprightRad ? Math.PI / 2 : riseRad;

    /// <summary>The part of a turn that one pair may have, from the other end's part of it; all of it where the curve turns back.</summary>
    private static double ShareUpTo(double otherRad, double turnRad)
    {
        // Three points in a line leave a last digit of either sign here; only a real turn back is one.
        double part = Math.Abs(otherRad) <= StraightRad ? 0 : otherRad / turnRad;
        return part < 0 ? 1 : Math.Min(1, MostUneven * part);
    }

    /// <summary>
    /// Two arcs with given directions at their ends. With a and b the angles from the start's direction to the chord and from
    /// it to the end's, the joint's direction lies g from the chord; g = (a − b)/2 gives equal tangent lengths and the most even
    /// bends, but turns back when one of a and b is over three times the other, so it is held to the smaller of the two.
    /// </summary>
    private static void AddPair(List<PathSegment> segments, PlaneVector start, double startRad, PlaneVector end, double endRad)
    {
        PlaneVector chord = end - start;
        double a = Math.IEEERemainder(chord.DirectionRad - startRad, Math.Tau), b = Math.IEEERemainder(endRad - chord.DirectionRad, Math.Tau);
        double smaller = Math.Min(Math.Abs(a), Math.Abs(b));
        // An angle of nothing has the sign of its last digit: from a straight into a bend the pair turns back a little.
        bool turnsOn = a * b > 0 && smaller > StraightRad;
        double g = turnsOn ? Math.Clamp((a - b) / 2, -smaller, smaller) : (a - b) / 2;
        if (Math.Abs(a) + Math.Abs(b) <= StraightRad)
        {
            segments.Add(new LineSegment(start, end));
            return;
        }

        bool held = g != (a - b) / 2;
        double sumSine = Math.Sin((a + b) / 2);
        double firstM = held ? chord.SizeM * Math.Sin((b + g) / 2) / sumSine : chord.SizeM / (2 * Math.Cos((a + b) / 4));
        double secondM = held ? chord.SizeM * Math.Sin((a - g) / 2) / sumSine : firstM;
        AddArc(segments, start, startRad, a + g, firstM);
        PlaneVector joint = start + PlaneVector.Polar(firstM, startRad + ((a + g) / 2));
        AddArc(segments, joint, startRad + a + g, b - g, secondM);
    }

    private static void AddArc(List<PathSegment> segments, PlaneVector start, double directionRad, double turnRad, double chordM)
    {
        if (chordM <= 0) return;
        segments.Add(Math.Abs(turnRad) <= StraightRad
            ? new LineSegment(start, start + PlaneVector.Polar(chordM, directionRad + (turnRad / 2)))
            : ArcSegment.Leaving(start, directionRad, chordM / (2 * Math.Sin(Math.Abs(turnRad) / 2)), turnRad));
    }
}
