using Hoopwright.Geometry;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Steel;

/// <summary>
/// Strength of a square tube by AISC 360-16. A flat of a wall counts b = B − 3t. A square section does not buckle sideways in
/// bending. Walls that are slender in bending are outside what is covered here: bend a heavier wall.
/// </summary>
internal static class AiscSquareTube
{
    internal static readonly Formula ColumnStrength = new("Pn",
        "Fcr·Ae; Ae = A − 4·(b − be)·t; be = b to b/t = 1.40·√(E/Fy)·√(Fy/Fcr), then b·(1 − 0.20·√(Fel/Fcr))·√(Fel/Fcr); Fel = (1.38·1.40·√(E/Fy)/(b/t))²·Fy", "N",
        Register.Aisc360.At("Eq. E3-1, E7-1 to E7-5, table E7.1 case b"));

    internal static readonly Formula BendingStrength = new("Mn",
        "b/t ≤ 1.12·√(E/Fy): Fy·Z; to 1.40·√(E/Fy): Mp − (Mp − Fy·S)·(3.57·(b/t)·√(Fy/E) − 4.0), at most Mp", "N·m", Register.Aisc360.At("Eq. F7-1, F7-2"));

    internal static readonly Formula ShearStrength = new("Vn", "0.6·Fy·2·h·t·Cv2; kv = 5; h/t ≤ 1.10·√(kv·E/Fy): Cv2 = 1", "N", Register.Aisc360.At("Eq. G4-1, G2-9 to G2-11"));

    internal static readonly Formula TorsionStrength = new("Tn", "0.6·Fy·C; C = 2·(B − t)²·t − 4.5·(4 − π)·t³; h/t ≤ 2.45·√(E/Fy)", "N·m", Register.Aisc360.At("Eq. H3-1, H3-3 and user note"));

    /// <summary>The flat of a wall over its thickness, b/t.</summary>
    internal static double FlatRatio(SquareTube tube) => (tube.Outside.Metres - (3 * tube.Wall.Metres)) / tube.Wall.Metres;

    /// <summary>How slender the walls are in bending.</summary>
    internal static WallClass BendingWall(double flatRatio, SteelMaterial steel) => (flatRatio / Math.Sqrt(steel.YoungOverYield)) switch
    {
        <= 1.12 => WallClass.Compact,
        <= 1.40 => WallClass.Noncompact,
        _ => WallClass.OutsideStandard,
    };

    /// <summary>Nominal moment of a square tube, F7.</summary>
    /// <param name="flatRatio">b/t of the wall in compression.</param>
    /// <param name="plasticM3">Z.</param>
    /// <param name="elasticM3">S.</param>
    /// <param name="steel">Steel.</param>
    /// <returns>Mn, 0 outside what is covered.</returns>
    internal static double NominalMomentNm(double flatRatio, double plasticM3, double elasticM3, SteelMaterial steel)
    {
        double plasticNm = steel.YieldPa * plasticM3, firstYieldNm = steel.YieldPa * elasticM3;
        return BendingWall(flatRatio, steel) switch
        {
            WallClass.Compact => plasticNm,
            WallClass.Noncompact => Math.Min(plasticNm, plasticNm - ((plasticNm - firstYieldNm) * ((3.57 * flatRatio / Math.Sqrt(steel.YoungOverYield)) - 4.0))),
            WallClass.Slender or WallClass.OutsideStandard => 0,
        };
    }

    /// <summary>Compression, E3 with the slender walls of E7.</summary>
    internal static CompressionCapacity Compression(SquareTube tube, SteelMaterial steel, double elasticBucklingPa, DesignMethod method)
    {
        double stressPa = AiscTube.ColumnStressPa(steel.YieldPa, elasticBucklingPa);
        double flatRatio = FlatRatio(tube), limit = 1.40 * Math.Sqrt(steel.YoungOverYield);
        double wallM = tube.Wall.Metres, flatM = flatRatio * wallM;
        double areaM2 = tube.Area.SquareMetres;
        WallClass wall = WallClass.Compact;
        if (flatRatio > limit * Math.Sqrt(steel.YieldPa / stressPa))
        {
            wall = WallClass.Slender;
            double share = 1.38 * limit / flatRatio * Math.Sqrt(steel.YieldPa / stressPa);
            areaM2 -= 4 * wallM * (flatM - (flatM * (1 - (0.20 * share)) * share));
        }
        SteelLimitState state = wall == WallClass.Slender ? SteelLimitState.LocalBuckling
            : steel.YieldPa / elasticBucklingPa <= 2.25 ? SteelLimitState.InelasticBuckling
            : SteelLimitState.ElasticBuckling;
        double nominalN = stressPa * areaM2;
        return new CompressionCapacity(new SteelCapacity(nominalN, AiscTube.Factor.DesignOf(nominalN, method), state, stressPa), elasticBucklingPa, areaM2, wall);
    }

    /// <summary>All strengths of one member. Bending, shear and torsion do not depend on its length.</summary>
    /// <param name="tube">Section; walls not filled.</param>
    /// <param name="steel">Steel.</param>
    /// <param name="elasticBucklingPa">Fe.</param>
    /// <param name="effectiveNetAreaM2">Ae in tension.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    internal static TubeStrength StrengthOf(SquareTube tube, SteelMaterial steel, double elasticBucklingPa, double effectiveNetAreaM2, DesignMethod method)
    {
        double flatRatio = FlatRatio(tube), wallM = tube.Wall.Metres, outsideM = tube.Outside.Metres;
        double shearYieldPa = 0.6 * steel.YieldPa;
        double momentNm = NominalMomentNm(flatRatio, tube.PlasticModulus.Metres3, tube.ElasticModulus.Metres3, steel);
        double shearLimit = 1.10 * Math.Sqrt(5 * steel.YoungOverYield);
        bool stocky = flatRatio <= 2.45 * Math.Sqrt(steel.YoungOverYield);
        double middleM = outsideM - wallM;
        double torsionM3 = (2 * middleM * middleM * wallM) - (4.5 * (4 - Math.PI) * wallM * wallM * wallM);
        double yieldN = steel.YieldPa * tube.Area.SquareMetres, ruptureN = steel.UltimatePa * effectiveNetAreaM2;
        SteelCapacity byYield = Of(yieldN, SteelLimitState.Yielding, steel.YieldPa);
        SteelCapacity byRupture = new(ruptureN, AiscTube.RuptureFactor.DesignOf(ruptureN, method), SteelLimitState.Rupture, steel.UltimatePa);
        return new TubeStrength
        {
            Standard = SteelStandard.Aisc360Square,
            Method = method,
            Compression = Compression(tube, steel, elasticBucklingPa, method),
            Tension = byYield.Design <= byRupture.Design ? byYield : byRupture,
            Bending = momentNm > 0
                ? Of(momentNm, BendingWall(flatRatio, steel) == WallClass.Compact ? SteelLimitState.Yielding : SteelLimitState.LocalBuckling, momentNm / tube.ElasticModulus.Metres3)
                : SteelCapacity.OutsideStandard,
            Shear = flatRatio <= shearLimit
                ? Of(shearYieldPa * 2 * flatRatio * wallM * wallM, SteelLimitState.Yielding, shearYieldPa)
                : SteelCapacity.OutsideStandard,
            Torsion = stocky ? Of(shearYieldPa * torsionM3, SteelLimitState.Yielding, shearYieldPa) : SteelCapacity.OutsideStandard,
        };

        SteelCapacity Of(double nominal, SteelLimitState limit, double stressPa) => new(nominal, AiscTube.Factor.DesignOf(nominal, method), limit, stressPa);
    }
}
