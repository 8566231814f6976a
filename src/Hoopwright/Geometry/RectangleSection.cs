using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>A solid rectangle, such as a dressed board bent about its wide side. Strength of materials, any handbook.</summary>
/// <param name="Width">The side b parallel to the axis it bends about; above 0.</param>
/// <param name="Depth">The side d across that axis; above 0.</param>
public sealed record RectangleSection(Length Width, Length Depth)
{
    private double WidthM => Width.Metres;

    private double DepthM => Depth.Metres;

    /// <summary>Area, bd.</summary>
    public Area Area => Width * Depth;

    /// <summary>Second moment, bd³/12.</summary>
    public SecondMoment SecondMoment => SecondMoment.FromMetres4(WidthM * Math.Pow(DepthM, 3) / 12);

    /// <summary>Elastic modulus, bd²/6.</summary>
    public SectionModulus ElasticModulus => SectionModulus.FromMetres3(WidthM * DepthM * DepthM / 6);

    /// <summary>Radius of gyration, d/√12.</summary>
    public Length RadiusOfGyration => Depth / Math.Sqrt(12);

    /// <summary>The same section bent about the other axis.</summary>
    public RectangleSection Turned => new(Depth, Width);
}
