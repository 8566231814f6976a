using Hoopwright.Sources;

namespace Hoopwright.Strength.Steel;

/// <summary>
/// Strength of a round tube by AISC 360-16; the clauses used read the same in 360-22. For each action one function, its
/// formulas beside it. All strengths are for the section and steel given; the wall is the design wall.
/// </summary>
internal static class AiscTube
{
    /// <summary>E1, F1, G1 and H3.1: one pair of factors for all of them.</summary>
    internal static readonly ResistanceFactor Factor = new(Phi: 0.90, Omega: 1.67);

    /// <summary>D2(b): breaking of the net section.</summary>
    internal static readonly ResistanceFactor RuptureFactor = new(Phi: 0.75, Omega: 2.00);

    internal static readonly Formula ColumnStress = new("Fcr", "Fy/Fe ≤ 2.25: 0.658^(Fy/Fe)·Fy; else 0.877·Fe", "Pa", Register.Aisc360.At("Eq. E3-2, E3-3"));

    internal static readonly Formula ColumnStrength = new("Pn", "Fcr·Ae; Ae = A to D/t = 0.11·E/Fy, then A·(0.038·E/(Fy·D/t) + 2/3) to 0.45·E/Fy", "N",
        Register.Aisc360.At("Eq. E3-1, E7-1, E7-6, E7-7"));

    internal static readonly Formula TensionStrength = new("Pn", "least design strength of Fy·A (φ 0.90, Ω 1.67) and Fu·Ae (φ 0.75, Ω 2.00)", "N",
        Register.Aisc360.At("Eq. D2-1, D2-2"));

    internal static readonly Formula BendingStrength = new("Mn",
        "D/t ≤ 0.07·E/Fy: Fy·Z; to 0.31·E/Fy: (0.021·E/(D/t) + Fy)·S, at most Fy·Z; to 0.45·E/Fy: 0.33·E/(D/t)·S", "N·m",
        Register.Aisc360.At("Eq. F8-1 to F8-4"));

    internal static readonly Formula ShearStrength = new("Vn", "Fcr·A/2; Fcr = max(1.60·E/(√(Lv/D)·(D/t)^1.25), 0.78·E/(D/t)^1.5), at most 0.6·Fy", "N",
        Register.Aisc360.At("Eq. G5-1, G5-2a, G5-2b"));

    internal static readonly Formula TorsionStrength = new("Tn", "Fcr·C; C = π·(D − t)²·t/2; Fcr = max(1.23·E/(√(L/D)·(D/t)^1.25), 0.60·E/(D/t)^1.5), at most 0.6·Fy", "N·m",
        Register.Aisc360.At("Eq. H3-1, H3-2a, H3-2b"));

    /// <summary>How slender the wall is in compression: up to 0.11 E/Fy it loses nothing.</summary>
    internal static WallClass CompressionWall(TubeSection tube, SteelMaterial steel) => (tube.WallRatio / steel.YoungOverYield) switch
    {
        <= 0.11 => WallClass.Compact,
        < 0.45 => WallClass.Slender,
        _ => WallClass.OutsideStandard,
    };

    /// <summary>How slender the wall is in bending.</summary>
    internal static WallClass BendingWall(TubeSection tube, SteelMaterial steel) => (tube.WallRatio / steel.YoungOverYield) switch
    {
        <= 0.07 => WallClass.Compact,
        <= 0.31 => WallClass.Noncompact,
        < 0.45 => WallClass.Slender,
        _ => WallClass.OutsideStandard,
    };

    /// <summary>Critical stress Fcr of a column, E3.</summary>
    /// <param name="yieldPa">Fy.</param>
    /// <param name="elasticBucklingPa">Fe; above 0, may be infinite.</param>
    internal static double ColumnStressPa(double yieldPa, double elasticBucklingPa)
    {
        double yieldOverElastic = yieldPa / elasticBucklingPa;
        return yieldOverElastic <= 2.25 ? Math.Pow(0.658, yieldOverElastic) * yieldPa : 0.877 * elasticBucklingPa;
    }

    /// <summary>Compression, E3 with the slender wall of E7.</summary>
    /// <param name="tube">Section.</param>
    /// <param name="steel">Steel.</param>
    /// <param name="elasticBucklingPa">Fe, by <see cref="Buckling"/>.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    internal static CompressionCapacity Compression(TubeSection tube, SteelMaterial steel, double elasticBucklingPa, DesignMethod method)
    {
        WallClass wall = CompressionWall(tube, steel);
        if (wall == WallClass.OutsideStandard) return new CompressionCapacity(SteelCapacity.OutsideStandard, elasticBucklingPa, 0, wall);

        double stressPa = ColumnStressPa(steel.YieldPa, elasticBucklingPa);
        double areaM2 = wall == WallClass.Compact
            ? tube.AreaM2
            : tube.AreaM2 * ((0.038 * steel.YoungOverYield / tube.WallRatio) + (2.0 / 3));
        SteelLimitState limit = wall == WallClass.Slender ? SteelLimitState.LocalBuckling
            : steel.YieldPa / elasticBucklingPa <= 2.25 ? SteelLimitState.InelasticBuckling
            : SteelLimitState.ElasticBuckling;
        double nominalN = stressPa * areaM2;
        return new CompressionCapacity(new SteelCapacity(nominalN, Factor.DesignOf(nominalN, method), limit, stressPa), elasticBucklingPa, areaM2, wall);
    }

    /// <summary>Tension, D2: yield of the tube or breaking at its holes.</summary>
    /// <param name="tube">Section.</param>
    /// <param name="steel">Steel.</param>
    /// <param name="effectiveNetAreaM2">Ae at the worst section, holes and shear lag taken off; the whole area where there are none.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    internal static SteelCapacity Tension(TubeSection tube, SteelMaterial steel, double effectiveNetAreaM2, DesignMethod method)
    {
        double yieldN = steel.YieldPa * tube.AreaM2, ruptureN = steel.UltimatePa * effectiveNetAreaM2;
        var byYield = new SteelCapacity(yieldN, Factor.DesignOf(yieldN, method), SteelLimitState.Yielding, steel.YieldPa);
        var byRupture = new SteelCapacity(ruptureN, RuptureFactor.DesignOf(ruptureN, method), SteelLimitState.Rupture, steel.UltimatePa);
        return byYield.Design <= byRupture.Design ? byYield : byRupture;
    }

    /// <summary>Bending, F8. A round tube does not buckle sideways in bending.</summary>
    internal static SteelCapacity Bending(TubeSection tube, SteelMaterial steel, DesignMethod method)
    {
        double plasticNm = steel.YieldPa * tube.PlasticM3;
        double wrinklePa = steel.YoungPa / tube.WallRatio;
        return BendingWall(tube, steel) switch
        {
            WallClass.Compact => Of(plasticNm, SteelLimitState.Yielding),
            WallClass.Noncompact => Of(Math.Min(plasticNm, ((0.021 * wrinklePa) + steel.YieldPa) * tube.ElasticM3), SteelLimitState.LocalBuckling),
            WallClass.Slender => Of(Math.Min(plasticNm, 0.33 * wrinklePa * tube.ElasticM3), SteelLimitState.LocalBuckling),
            WallClass.OutsideStandard => SteelCapacity.OutsideStandard,
        };

        SteelCapacity Of(double nominalNm, SteelLimitState limit) => new(nominalNm, Factor.DesignOf(nominalNm, method), limit, nominalNm / tube.ElasticM3);
    }

    /// <summary>Shear, G5.</summary>
    /// <param name="tube">Section.</param>
    /// <param name="steel">Steel.</param>
    /// <param name="shearSpanM">Lv, from the greatest to no shear; above 0.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    internal static SteelCapacity Shear(TubeSection tube, SteelMaterial steel, double shearSpanM, DesignMethod method) =>
        Sheared(tube, steel, 1.60, 0.78, shearSpanM, tube.AreaM2 / 2, method);

    /// <summary>Torsion, H3.1(a).</summary>
    /// <param name="tube">Section.</param>
    /// <param name="steel">Steel.</param>
    /// <param name="lengthM">L, the length of the member; above 0.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    internal static SteelCapacity Torsion(TubeSection tube, SteelMaterial steel, double lengthM, DesignMethod method) =>
        Sheared(tube, steel, 1.23, 0.60, lengthM, tube.TorsionM3, method);

    /// <summary>All strengths of one member.</summary>
    /// <param name="tube">Section.</param>
    /// <param name="steel">Steel.</param>
    /// <param name="elasticBucklingPa">Fe.</param>
    /// <param name="lengthM">Length between points where the member is held; used for Lv and L.</param>
    /// <param name="effectiveNetAreaM2">Ae in tension.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    internal static TubeStrength StrengthOf(
        TubeSection tube, SteelMaterial steel, double elasticBucklingPa, double lengthM, double effectiveNetAreaM2, DesignMethod method) => new()
        {
            Standard = SteelStandard.Aisc360Round,
            Method = method,
            Compression = Compression(tube, steel, elasticBucklingPa, method),
            Tension = Tension(tube, steel, effectiveNetAreaM2, method),
            Bending = Bending(tube, steel, method),
            Shear = Shear(tube, steel, lengthM, method),
            Torsion = Torsion(tube, steel, lengthM, method),
        };

    private static SteelCapacity Sheared(
        TubeSection tube, SteelMaterial steel, double longFactor, double shortFactor, double lengthM, double resisting, DesignMethod method)
    {
        double longPa = longFactor * steel.YoungPa / (Math.Sqrt(lengthM / tube.OutsideM) * Math.Pow(tube.WallRatio, 1.25));
        double shortPa = shortFactor * steel.YoungPa / Math.Pow(tube.WallRatio, 1.5);
        double bucklingPa = Math.Max(longPa, shortPa), yieldPa = 0.6 * steel.YieldPa;
        double stressPa = Math.Min(bucklingPa, yieldPa);
        double nominal = stressPa * resisting;
        return new SteelCapacity(nominal, Factor.DesignOf(nominal, method), bucklingPa < yieldPa ? SteelLimitState.ShearBuckling : SteelLimitState.Yielding, stressPa);
    }
}
