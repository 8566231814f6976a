using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>A square tube with sharp corners, by its outside width and wall; a rolled one has slightly less.</summary>
/// <param name="Outside">Outside width; above 0.</param>
/// <param name="Wall">Wall thickness; above 0, at most half the width.</param>
public sealed record SquareTube(Length Outside, Length Wall)
{
    private double OutsideM => Outside.Metres;

    private double InsideM => Outside.Metres - (2 * Wall.Metres);

    /// <summary>Area of steel, B² − b².</summary>
    public Area Area => Area.FromSquareMetres((OutsideM * OutsideM) - (InsideM * InsideM));

    /// <summary>Second moment about an axis parallel to a side, (B⁴ − b⁴)/12.</summary>
    public SecondMoment SecondMoment => SecondMoment.FromMetres4((Math.Pow(OutsideM, 4) - Math.Pow(InsideM, 4)) / 12);

    /// <summary>Elastic modulus, 2I/B.</summary>
    public SectionModulus ElasticModulus => SectionModulus.FromMetres3(2 * SecondMoment.Metres4 / OutsideM);

    /// <summary>Plastic modulus, (B³ − b³)/4.</summary>
    public SectionModulus PlasticModulus => SectionModulus.FromMetres3((Math.Pow(OutsideM, 3) - Math.Pow(InsideM, 3)) / 4);

    /// <summary>Radius of gyration, √((B² + b²)/12).</summary>
    public Length RadiusOfGyration => Length.FromMetres(Math.Sqrt(((OutsideM * OutsideM) + (InsideM * InsideM)) / 12));

    /// <summary>Mass of steel per length, zinc not counted.</summary>
    public MassPerLength SteelMass => MassPerLength.FromKilogramsPerMetre(Area.SquareMetres * RoundTube.SteelKgM3);
}
