using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>
/// A point of the real tunnel. x runs across the span from the left ground line, y along the length from the front
/// end bow's middle, z up from the grade datum. Left and right are as seen entering by the front end.
/// </summary>
/// <param name="X">Across.</param>
/// <param name="Y">Along.</param>
/// <param name="Z">Up.</param>
public readonly record struct TunnelPoint(Length X, Length Y, Length Z)
{
    /// <summary>Straight distance to another point.</summary>
    public Length DistanceTo(TunnelPoint other)
    {
        double dxM = X.Metres - other.X.Metres, dyM = Y.Metres - other.Y.Metres, dzM = Z.Metres - other.Z.Metres;
        return Length.FromMetres(Math.Sqrt((dxM * dxM) + (dyM * dyM) + (dzM * dzM)));
    }
}
