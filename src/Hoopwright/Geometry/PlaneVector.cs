using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>A point or a direction in an upright plane, in metres: the plain numbers inside the geometry.</summary>
internal readonly record struct PlaneVector(double XM, double YM)
{
    internal double SizeM => Math.Sqrt((XM * XM) + (YM * YM));

    /// <summary>Direction, counter-clockwise from across, from -π to π.</summary>
    internal double DirectionRad => Math.Atan2(YM, XM);

    /// <summary>The same turned a quarter to the left.</summary>
    internal PlaneVector TurnedLeft => new(-YM, XM);

    internal static PlaneVector Of(PlanePoint point) => new(point.Across.Metres, point.Up.Metres);

    internal static PlaneVector Polar(double sizeM, double directionRad) =>
        new(sizeM * Math.Cos(directionRad), sizeM * Math.Sin(directionRad));

    internal PlanePoint ToPoint() => new(Length.FromMetres(XM), Length.FromMetres(YM));

    internal double Dot(PlaneVector other) => (XM * other.XM) + (YM * other.YM);

    /// <summary>Positive when the other direction lies to the left.</summary>
    internal double Cross(PlaneVector other) => (XM * other.YM) - (YM * other.XM);

    public static PlaneVector operator +(PlaneVector a, PlaneVector b) => new(a.XM + b.XM, a.YM + b.YM);

    public static PlaneVector operator -(PlaneVector a, PlaneVector b) => new(a.XM - b.XM, a.YM - b.YM);

    public static PlaneVector operator *(PlaneVector a, double times) => new(a.XM * times, a.YM * times);
}
