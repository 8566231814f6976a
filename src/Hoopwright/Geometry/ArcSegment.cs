using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>
/// A circular piece of a path. Length R·|φ|, chord 2R·sin(φ/2), area of the segment R²(φ - sin φ)/2: Bronstein and
/// Semendjajew, Taschenbuch der Mathematik, section on the circle, from memory.
/// </summary>
public sealed record ArcSegment : PathSegment
{
    private readonly double startRad;
    private readonly double sweepRad;
    private readonly double radiusM;

    /// <summary>An arc about a centre.</summary>
    /// <param name="centre">The centre.</param>
    /// <param name="radius">The radius; above 0.</param>
    /// <param name="startAngle">Where it begins, seen from the centre, counter-clockwise from across.</param>
    /// <param name="sweep">How far it goes round the centre; counter-clockwise is positive; less than a full turn.</param>
    public ArcSegment(PlanePoint centre, Length radius, Angle startAngle, Angle sweep)
        : this(PlaneVector.Of(centre), radius.Metres, startAngle.Radians, sweep.Radians)
    {
    }

    internal ArcSegment(PlaneVector centreM, double radiusM, double startRad, double sweepRad)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radiusM);
        CentreM = centreM;
        this.radiusM = radiusM;
        this.startRad = startRad;
        this.sweepRad = sweepRad;
    }

    /// <summary>The centre.</summary>
    public PlanePoint Centre => CentreM.ToPoint();

    /// <summary>The radius.</summary>
    public Length Radius => Length.FromMetres(radiusM);

    /// <summary>Where it begins, seen from the centre.</summary>
    public Angle StartAngle => Angle.FromRadians(startRad);

    /// <summary>How far it goes round the centre; counter-clockwise is positive.</summary>
    public Angle Sweep => Angle.FromRadians(sweepRad);

    /// <inheritdoc/>
    public override PlanePoint Start => StartM.ToPoint();

    /// <inheritdoc/>
    public override PlanePoint End => EndM.ToPoint();

    /// <inheritdoc/>
    public override Length Length => Length.FromMetres(LengthM);

    /// <inheritdoc/>
    public override Angle Turned => Sweep;

    /// <summary>Straight distance from end to end.</summary>
    public Length Chord => Length.FromMetres(2 * radiusM * Math.Abs(Math.Sin(sweepRad / 2)));

    internal PlaneVector CentreM { get; }

    internal double RadiusM => radiusM;

    internal override PlaneVector StartM => At(startRad);

    internal override PlaneVector EndM => At(startRad + sweepRad);

    internal override double StartDirectionRad => DirectionAtRad(0);

    internal override double EndDirectionRad => DirectionAtRad(LengthM);

    private double LengthM => radiusM * Math.Abs(sweepRad);

    /// <summary>An arc that leaves a point in a direction and turns by an angle, to the left when positive.</summary>
    internal static ArcSegment Leaving(PlaneVector startM, double directionRad, double radiusM, double turnRad)
    {
        double side = Math.Sign(turnRad);
        PlaneVector toCentre = PlaneVector.Polar(radiusM, directionRad).TurnedLeft * side;
        return new ArcSegment(startM + toCentre, radiusM, directionRad - (side * Math.PI / 2), turnRad);
    }

    internal override PlaneVector PointAtM(double distanceM) => At(startRad + (Math.Sign(sweepRad) * distanceM / radiusM));

    internal override double DirectionAtRad(double distanceM) =>
        Tolerances.WrapRad(startRad + (Math.Sign(sweepRad) * ((distanceM / radiusM) + (Math.PI / 2))));

    internal override PathSegment Between(double fromM, double toM) => new ArcSegment(
        CentreM, radiusM, startRad + (Math.Sign(sweepRad) * fromM / radiusM), Math.Sign(sweepRad) * (toM - fromM) / radiusM);

    // Mirrored, an angle a becomes π - a and the sweep changes sign; walked the other way it changes back.
    internal override PathSegment Mirrored(double aboutXM) => new ArcSegment(
        CentreM with { XM = (2 * aboutXM) - CentreM.XM }, radiusM, Math.PI - startRad - sweepRad, sweepRad);

    internal override PathSegment Reversed() => new ArcSegment(CentreM, radiusM, startRad + sweepRad, -sweepRad);

    internal override PathSegment? OffsetLeft(double distanceM)
    {
        double offsetM = radiusM - (Math.Sign(sweepRad) * distanceM);
        return offsetM <= Tolerances.SamePointM ? null : new ArcSegment(CentreM, offsetM, startRad, sweepRad);
    }

    internal override PathSegment? Retrimmed(PlaneVector start, PlaneVector end)
    {
        double startShiftRad = Tolerances.WrapRad((start - CentreM).DirectionRad - startRad);
        double endShiftRad = Tolerances.WrapRad((end - CentreM).DirectionRad - startRad - sweepRad);
        double newSweepRad = sweepRad - startShiftRad + endShiftRad;
        return newSweepRad * Math.Sign(sweepRad) >= 0 && Math.Abs(newSweepRad) < Math.Tau
            ? new ArcSegment(CentreM, radiusM, startRad + startShiftRad, newSweepRad)
            : null;
    }

    internal override IEnumerable<double> DistancesAtX(double xM)
    {
        double cosine = (xM - CentreM.XM) / radiusM;
        if (Math.Abs(cosine) > 1 + (Tolerances.SamePointM / radiusM)) return [];
        double angleRad = Math.Acos(Math.Clamp(cosine, -1, 1));
        return DistancesOf(angleRad, -angleRad);
    }

    internal override IEnumerable<double> DistancesAtY(double yM)
    {
        double sine = (yM - CentreM.YM) / radiusM;
        if (Math.Abs(sine) > 1 + (Tolerances.SamePointM / radiusM)) return [];
        double angleRad = Math.Asin(Math.Clamp(sine, -1, 1));
        return DistancesOf(angleRad, Math.PI - angleRad);
    }

    // ∫ y dx with x = cx + R cos a, y = cy + R sin a.
    internal override double AreaBelowM2()
    {
        double endRad = startRad + sweepRad;
        double sineSquared = (sweepRad / 2) - ((Math.Sin(2 * endRad) - Math.Sin(2 * startRad)) / 4);
        return (CentreM.YM * (EndM.XM - StartM.XM)) - (radiusM * radiusM * sineSquared);
    }

    internal override IEnumerable<PlaneVector> Extremes()
    {
        for (int quarter = 0; quarter < 4; quarter++)
        {
            double angleRad = quarter * Math.PI / 2;
            if (AheadRad(angleRad) <= Math.Abs(sweepRad)) yield return At(angleRad);
        }
    }

    private PlaneVector At(double angleRad) => CentreM + PlaneVector.Polar(radiusM, angleRad);

    /// <summary>How far ahead of the start an angle lies in the direction of travel, from 0 to a full turn.</summary>
    private double AheadRad(double angleRad)
    {
        double aheadRad = Tolerances.WrapRad((angleRad - startRad) * Math.Sign(sweepRad));
        return aheadRad < 0 ? aheadRad + Math.Tau : aheadRad;
    }

    private IEnumerable<double> DistancesOf(double oneRad, double otherRad)
    {
        double slackRad = Tolerances.SamePointM / radiusM;
        double[] found = [AheadRad(oneRad), AheadRad(otherRad)];
        Array.Sort(found);
        double lastM = double.NegativeInfinity;
        foreach (double raw in found)
        {
            double aheadRad = raw > Math.Tau - slackRad ? 0 : raw;
            if (aheadRad > Math.Abs(sweepRad) + slackRad) continue;
            double distanceM = Math.Min(aheadRad, Math.Abs(sweepRad)) * radiusM;
            if (distanceM - lastM <= Tolerances.SamePointM) continue;
            lastM = distanceM;
            yield return distanceM;
        }
    }
}
