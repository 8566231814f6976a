namespace Hoopwright.Sheets.Drawings;

/// <summary>A point of the paper, in millimetres from its upper left corner: x to the right, y down.</summary>
/// <param name="XMm">To the right, mm.</param>
/// <param name="YMm">Down, mm.</param>
public readonly record struct SheetPoint(double XMm, double YMm)
{
    /// <summary>Straight distance to another point, mm.</summary>
    public double DistanceMm(SheetPoint other) => Math.Sqrt(Squared(XMm - other.XMm) + Squared(YMm - other.YMm));

    /// <summary>The point so much further to the right and down, mm.</summary>
    public SheetPoint Moved(double rightMm, double downMm) => new(XMm + rightMm, YMm + downMm);

    /// <summary>The point part of the way to another: 0 is here, 1 is there.</summary>
    internal SheetPoint Towards(SheetPoint other, double part) => new(XMm + ((other.XMm - XMm) * part), YMm + ((other.YMm - YMm) * part));

    /// <summary>The point so far away in a direction counted anticlockwise, as seen, from the right.</summary>
    internal SheetPoint Away(double distanceMm, double directionRad) =>
        new(XMm + (distanceMm * Math.Cos(directionRad)), YMm - (distanceMm * Math.Sin(directionRad)));

    /// <summary>The direction to another point, anticlockwise, as seen, from the right, radians.</summary>
    internal double DirectionRad(SheetPoint other) => Math.Atan2(YMm - other.YMm, other.XMm - XMm);

    private static double Squared(double value) => value * value;
}
