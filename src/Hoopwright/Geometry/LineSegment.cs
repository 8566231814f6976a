using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>A straight piece of a path.</summary>
public sealed record LineSegment : PathSegment
{
    /// <summary>From one point to another, which must differ.</summary>
    public LineSegment(PlanePoint start, PlanePoint end)
        : this(PlaneVector.Of(start), PlaneVector.Of(end))
    {
    }

    internal LineSegment(PlaneVector startM, PlaneVector endM) => (StartM, EndM) = (startM, endM);

    /// <inheritdoc/>
    public override PlanePoint Start => StartM.ToPoint();

    /// <inheritdoc/>
    public override PlanePoint End => EndM.ToPoint();

    /// <inheritdoc/>
    public override Length Length => Length.FromMetres(Along.SizeM);

    /// <inheritdoc/>
    public override Angle Turned => Angle.Zero;

    internal override PlaneVector StartM { get; }

    internal override PlaneVector EndM { get; }

    internal override double StartDirectionRad => Along.DirectionRad;

    internal override double EndDirectionRad => Along.DirectionRad;

    private PlaneVector Along => EndM - StartM;

    internal override PlaneVector PointAtM(double distanceM)
    {
        double lengthM = Along.SizeM;
        return lengthM == 0 ? StartM : StartM + (Along * (distanceM / lengthM));
    }

    internal override double DirectionAtRad(double distanceM) => StartDirectionRad;

    internal override PathSegment Between(double fromM, double toM) => new LineSegment(PointAtM(fromM), PointAtM(toM));

    internal override PathSegment Mirrored(double aboutXM) =>
        new LineSegment(EndM with { XM = (2 * aboutXM) - EndM.XM }, StartM with { XM = (2 * aboutXM) - StartM.XM });

    internal override PathSegment Reversed() => new LineSegment(EndM, StartM);

    internal override PathSegment? OffsetLeft(double distanceM)
    {
        PlaneVector aside = Along.TurnedLeft * (distanceM / Along.SizeM);
        return new LineSegment(StartM + aside, EndM + aside);
    }

    internal override PathSegment? Retrimmed(PlaneVector start, PlaneVector end) =>
        (end - start).Dot(Along) >= 0 ? new LineSegment(start, end) : null;

    internal override IEnumerable<double> DistancesAtX(double xM) => DistancesAt(xM, StartM.XM, EndM.XM);

    internal override IEnumerable<double> DistancesAtY(double yM) => DistancesAt(yM, StartM.YM, EndM.YM);

    internal override double AreaBelowM2() => (StartM.YM + EndM.YM) / 2 * (EndM.XM - StartM.XM);

    internal override IEnumerable<PlaneVector> Extremes() => [];

    private IEnumerable<double> DistancesAt(double at, double from, double to)
    {
        double lengthM = Along.SizeM;
        if (Math.Abs(to - from) <= Tolerances.SamePointM)
        {
            if (Math.Abs(at - from) > Tolerances.SamePointM) yield break;
            yield return 0;
            yield return lengthM;
            yield break;
        }

        if (at < Math.Min(from, to) - Tolerances.SamePointM || at > Math.Max(from, to) + Tolerances.SamePointM) yield break;
        yield return Math.Clamp((at - from) / (to - from), 0, 1) * lengthM;
    }
}
