using Hoopwright.Plans;
using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Soil;

/// <summary>
/// Presumptive values of the International Building Code, table 1806.2, and the ranges in which the other properties of such
/// soils usually lie. A test on site takes the place of any of them.
/// </summary>
internal static class SoilTable
{
    private static readonly Citation Code = Register.Ibc2021.At("table 1806.2", Standing.Published);

    private static readonly Citation Ranges = Register.SoilMechanics.At("usual ranges of unit weight, friction and strength");

    private static readonly Bounds None = new(0, 0);

    /// <summary>The values of a class; null for mud, organic soil, peat and loose fill, of which the code presumes nothing.</summary>
    internal static SoilValues? For(SoilClass soil) => soil switch
    {
        // Nothing but weight is presumed of rock in uplift: an anchor in rock is grouted and tested.
        SoilClass.Bedrock => Rock(soil, 12_000, 1200, 0.70),
        SoilClass.SedimentaryRock => Rock(soil, 4000, 400, 0.35),
        SoilClass.Gravel => Grains(soil, 3000, 200, 0.35, new Bounds(105, 130), new Bounds(32, 40)),
        SoilClass.Sand => Grains(soil, 2000, 150, 0.25, new Bounds(95, 120), new Bounds(28, 35)),
        SoilClass.Clay => Of(soil, 1500, 100, 0, 130, new Bounds(95, 120)) with
        {
            // Soft to firm: 250 to 1000 psf.
            ShearStrengthPa = new Bounds(250, 1000) * PsfPa,
            Adhesion = new Bounds(0.5, 0.7),
        },
        SoilClass.Soft => null,
    };

    private static SoilValues Rock(SoilClass soil, double bearingPsf, double lateralPsfPerFt, double friction) =>
        Of(soil, bearingPsf, lateralPsfPerFt, friction, 0, new Bounds(130, 160));

    private static SoilValues Grains(SoilClass soil, double bearingPsf, double lateralPsfPerFt, double friction, Bounds weightPcf, Bounds angleDeg) =>
        Of(soil, bearingPsf, lateralPsfPerFt, friction, 0, weightPcf) with
        {
            FrictionRad = angleDeg * (Math.PI / 180),
            // K 0.3 with 15° for a post in a loose backfilled hole, 1.0 with 25° for one driven in dense soil.
            ShaftFriction = new Bounds(0.3 * Math.Tan(15 * Math.PI / 180), 1.0 * Math.Tan(25 * Math.PI / 180)),
        };

    private static SoilValues Of(SoilClass soil, double bearingPsf, double lateralPsfPerFt, double friction, double cohesionPsf, Bounds weightPcf) => new()
    {
        Class = soil,
        BearingPa = bearingPsf * PsfPa,
        LateralPaPerM = lateralPsfPerFt * PcfNPerM3,
        SlidingFriction = friction,
        SlidingCohesionPa = cohesionPsf * PsfPa,
        UnitWeightNPerM3 = weightPcf * PcfNPerM3,
        FrictionRad = None,
        ShearStrengthPa = None,
        ShaftFriction = None,
        Adhesion = None,
        Source = Code,
        RangeSource = Ranges,
    };
}
