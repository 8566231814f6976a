using Hoopwright.Geometry;

namespace Hoopwright.Strength.Steel;

/// <summary>A round tube as the checks see it, in SI.</summary>
internal readonly record struct TubeSection
{
    /// <summary>Outside diameter D.</summary>
    internal required double OutsideM { get; init; }

    /// <summary>Wall t used in design.</summary>
    internal required double WallM { get; init; }

    /// <summary>Area of steel A.</summary>
    internal required double AreaM2 { get; init; }

    /// <summary>Elastic modulus S.</summary>
    internal required double ElasticM3 { get; init; }

    /// <summary>Plastic modulus Z.</summary>
    internal required double PlasticM3 { get; init; }

    /// <summary>Radius of gyration r.</summary>
    internal required double GyrationM { get; init; }

    /// <summary>Torsion constant C, π(D − t)²t/2.</summary>
    internal required double TorsionM3 { get; init; }

    /// <summary>D/t, the slenderness of the wall.</summary>
    internal double WallRatio => OutsideM / WallM;

    /// <summary>
    /// The section of a tube, its wall taken as it is. AISC 360 section B4.2 asks for 0.93 of the nominal wall of tubes to ASTM
    /// A500; give that wall where it applies.
    /// </summary>
    internal static TubeSection Of(RoundTube tube)
    {
        double outsideM = tube.Outside.Metres, wallM = tube.Wall.Metres;
        return new TubeSection
        {
            OutsideM = outsideM,
            WallM = wallM,
            AreaM2 = tube.Area.SquareMetres,
            ElasticM3 = tube.ElasticModulus.Metres3,
            PlasticM3 = tube.PlasticModulus.Metres3,
            GyrationM = tube.RadiusOfGyration.Metres,
            TorsionM3 = Math.PI * (outsideM - wallM) * (outsideM - wallM) * wallM / 2,
        };
    }
}
