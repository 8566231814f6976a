using Hoopwright.Sources;

namespace Hoopwright.Strength.Steel;

/// <summary>
/// Strength of a closed cylindrical tube by AISI S100-16. That standard has no rule for shear and torsion of round tubes; the
/// rules of AISC 360 stand in, with its factors.
/// </summary>
internal static class AisiTube
{
    internal static readonly ResistanceFactor CompressionFactor = new(Phi: 0.85, Omega: 1.80);

    internal static readonly ResistanceFactor BendingFactor = new(Phi: 0.95, Omega: 1.67);

    internal static readonly Formula ColumnStress = new("Fn", "λc = √(Fy/Fe) ≤ 1.5: 0.658^(λc²)·Fy; else 0.877/λc²·Fy", "Pa", Register.AisiS100.At("section E2, closed cylindrical tubes"));

    internal static readonly Formula ColumnStrength = new("Pn",
        "Fn·Ae; Ae = Ao + R·(A − Ao); R = Fy/(2·Fe), at most 1; Ao = A·(0.037/((D/t)·(Fy/E)) + 0.667), at most A; D/t ≤ 0.441·E/Fy", "N",
        Register.AisiS100.At("chapter E, closed cylindrical tubular members"));

    internal static readonly Formula BendingStrength = new("Mn",
        "Fc·Sf; D/t ≤ 0.0714·E/Fy: Fc = 1.25·Fy; to 0.318·E/Fy: (0.970 + 0.020·(E/Fy)/(D/t))·Fy; to 0.441·E/Fy: 0.328·E/(D/t)", "N·m",
        Register.AisiS100.At("chapter F, closed cylindrical tubular members"));

    internal static readonly Formula ShearStrength = AiscTube.ShearStrength;

    /// <summary>The thinnest wall the standard has rules for, as D/t over E/Fy.</summary>
    private const double ThinnestWall = 0.441;

    /// <summary>How slender the wall is in bending.</summary>
    internal static WallClass BendingWall(TubeSection tube, SteelMaterial steel) => (tube.WallRatio / steel.YoungOverYield) switch
    {
        <= 0.0714 => WallClass.Compact,
        <= 0.318 => WallClass.Noncompact,
        <= ThinnestWall => WallClass.Slender,
        _ => WallClass.OutsideStandard,
    };

    /// <summary>Nominal stress Fn of a column.</summary>
    internal static double ColumnStressPa(double yieldPa, double elasticBucklingPa)
    {
        double lambdaSquared = yieldPa / elasticBucklingPa;
        return lambdaSquared <= 1.5 * 1.5 ? Math.Pow(0.658, lambdaSquared) * yieldPa : 0.877 / lambdaSquared * yieldPa;
    }

    /// <summary>What of the area counts at the stress Fn.</summary>
    internal static double EffectiveAreaM2(TubeSection tube, SteelMaterial steel, double elasticBucklingPa)
    {
        double localM2 = Math.Min(1, (0.037 * steel.YoungOverYield / tube.WallRatio) + 0.667) * tube.AreaM2;
        double spared = Math.Min(1, steel.YieldPa / (2 * elasticBucklingPa));
        return localM2 + (spared * (tube.AreaM2 - localM2));
    }

    /// <summary>Compression.</summary>
    internal static CompressionCapacity Compression(TubeSection tube, SteelMaterial steel, double elasticBucklingPa, DesignMethod method)
    {
        if (tube.WallRatio > ThinnestWall * steel.YoungOverYield)
            return new CompressionCapacity(SteelCapacity.OutsideStandard, elasticBucklingPa, 0, WallClass.OutsideStandard);
        double stressPa = ColumnStressPa(steel.YieldPa, elasticBucklingPa), areaM2 = EffectiveAreaM2(tube, steel, elasticBucklingPa);
        double nominalN = stressPa * areaM2;
        WallClass wall = areaM2 < tube.AreaM2 ? WallClass.Slender : WallClass.Compact;
        SteelLimitState limit = wall == WallClass.Slender ? SteelLimitState.LocalBuckling
            : steel.YieldPa / elasticBucklingPa <= 2.25 ? SteelLimitState.InelasticBuckling
            : SteelLimitState.ElasticBuckling;
        return new CompressionCapacity(
            new SteelCapacity(nominalN, CompressionFactor.DesignOf(nominalN, method), limit, stressPa), elasticBucklingPa, areaM2, wall);
    }

    /// <summary>Bending.</summary>
    internal static SteelCapacity Bending(TubeSection tube, SteelMaterial steel, DesignMethod method)
    {
        double perWall = steel.YoungOverYield / tube.WallRatio;
        return BendingWall(tube, steel) switch
        {
            WallClass.Compact => Of(1.25 * steel.YieldPa, SteelLimitState.Yielding),
            WallClass.Noncompact => Of((0.970 + (0.020 * perWall)) * steel.YieldPa, SteelLimitState.LocalBuckling),
            WallClass.Slender => Of(0.328 * steel.YoungPa / tube.WallRatio, SteelLimitState.LocalBuckling),
            WallClass.OutsideStandard => SteelCapacity.OutsideStandard,
        };

        SteelCapacity Of(double stressPa, SteelLimitState limit)
        {
            double nominalNm = stressPa * tube.ElasticM3;
            return new SteelCapacity(nominalNm, BendingFactor.DesignOf(nominalNm, method), limit, stressPa);
        }
    }

    /// <summary>All strengths of one member; the arguments are those of <see cref="AiscTube.StrengthOf"/>.</summary>
    internal static TubeStrength StrengthOf(
        TubeSection tube, SteelMaterial steel, double elasticBucklingPa, double lengthM, double effectiveNetAreaM2, DesignMethod method) => new()
        {
            Standard = SteelStandard.AisiS100Round,
            Method = method,
            Compression = Compression(tube, steel, elasticBucklingPa, method),
            Tension = AiscTube.Tension(tube, steel, effectiveNetAreaM2, method),
            Bending = Bending(tube, steel, method),
            Shear = AiscTube.Shear(tube, steel, lengthM, method),
            Torsion = AiscTube.Torsion(tube, steel, lengthM, method),
        };
}
