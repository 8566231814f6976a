using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <summary>A round tube by its outside diameter and wall. All values are exact for those two, no corner or seam counted.</summary>
/// <param name="Outside">Outside diameter D; above 0.</param>
/// <param name="Wall">Wall thickness t; above 0, at most half of D.</param>
public sealed record RoundTube(Length Outside, Length Wall)
{
    /// <summary>Density of steel: 7850 kg/m³ (490 lb/ft³).</summary>
    public const double SteelKgM3 = 7850;

    private double OutsideM => Outside.Metres;

    private double InsideM => Outside.Metres - (2 * Wall.Metres);

    /// <summary>Area of steel, π(D² − d²)/4.</summary>
    public Area Area => Area.FromSquareMetres(Math.PI * ((OutsideM * OutsideM) - (InsideM * InsideM)) / 4);

    /// <summary>Second moment about any diameter, π(D⁴ − d⁴)/64.</summary>
    public SecondMoment SecondMoment => SecondMoment.FromMetres4(Math.PI * (Math.Pow(OutsideM, 4) - Math.Pow(InsideM, 4)) / 64);

    /// <summary>Elastic modulus, 2I/D.</summary>
    public SectionModulus ElasticModulus => SectionModulus.FromMetres3(2 * SecondMoment.Metres4 / OutsideM);

    /// <summary>Plastic modulus, (D³ − d³)/6.</summary>
    public SectionModulus PlasticModulus => SectionModulus.FromMetres3((Math.Pow(OutsideM, 3) - Math.Pow(InsideM, 3)) / 6);

    /// <summary>Radius of gyration, √(D² + d²)/4.</summary>
    public Length RadiusOfGyration => Length.FromMetres(Math.Sqrt((OutsideM * OutsideM) + (InsideM * InsideM)) / 4);

    /// <summary>Mass of steel per length, zinc not counted.</summary>
    public MassPerLength SteelMass => MassPerLength.FromKilogramsPerMetre(Area.SquareMetres * SteelKgM3);
}
