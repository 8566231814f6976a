using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Soil;

/// <summary>
/// Posts pushed sideways, by the International Building Code, section 1807.3. Each rule both ways: the depth a load needs, and
/// the load a depth allows. Lateral pressure grows with depth down to 12 ft and not beyond.
/// </summary>
internal static class LateralPost
{
    internal static readonly Formula FreeDepth = new("d", "0.5·A·(1 + √(1 + 4.36·h/A)); A = 2.34·P/(S1·b); S1 at d/3", "m",
        Register.Ibc2021.At("Eq. 18-1, section 1807.3.2.1", Standing.Published));

    internal static readonly Formula FreeLoad = new("P", "A·S1·b/2.34; A = d²/(d + 1.09·h)", "N", Register.Ibc2021.At("Eq. 18-1 solved for the load", Standing.Derived));

    internal static readonly Formula HeldDepth = new("d", "√(4.25·Mg/(S3·b)); Mg = P·h; S3 at d", "m",
        Register.Ibc2021.At("Eq. 18-2, 18-3, section 1807.3.2.2", Standing.Published));

    internal static readonly Formula HeldMoment = new("Mg", "d²·S3·b/4.25", "N·m", Register.Ibc2021.At("Eq. 18-3 solved for the moment", Standing.Derived));

    internal static readonly Formula Doubled = new("S", "2·S for isolated poles that may move 1/2 in at the ground under short-term loads", "Pa",
        Register.Ibc2021.At("section 1806.3.4", Standing.Published));

    internal static readonly Formula FrostLeftOut = new("d, h", "depth counted from under the frost line, load height up to there", "m", Citation.CommonPractice);

    /// <summary>Depth beyond which lateral pressure does not grow: 12 ft.</summary>
    internal const double DeepestPressureM = 12 * FootM;

    /// <summary>Allowable lateral pressure at a depth.</summary>
    internal static double PressurePa(double lateralPaPerM, double depthM) => lateralPaPerM * Math.Min(depthM, DeepestPressureM);

    /// <summary>Load allowed on a post that nothing holds at the ground.</summary>
    /// <param name="depthM">d, embedded; 0 or more.</param>
    /// <param name="heightM">h, from the ground to the load; 0 or more.</param>
    /// <param name="widthM">b: diameter of a round post or footing, diagonal of a square one; above 0.</param>
    /// <param name="lateralPaPerM">S per metre of depth.</param>
    internal static double FreeLoadN(double depthM, double heightM, double widthM, double lateralPaPerM)
    {
        if (depthM <= 0) return 0;
        double a = depthM * depthM / (depthM + (1.09 * heightM));
        // The code limits d, and S1 stands at a third of it.
        return a * PressurePa(lateralPaPerM, Math.Min(depthM, DeepestPressureM) / 3) * widthM / 2.34;
    }

    /// <summary>Depth needed by a post that nothing holds at the ground. The pressure depends on the depth, so it is searched for.</summary>
    /// <returns>d; 0 for no load; positive infinity in soil that gives nothing.</returns>
    internal static double FreeDepthM(double forceN, double heightM, double widthM, double lateralPaPerM) =>
        Deepest(depthM => FreeLoadN(depthM, heightM, widthM, lateralPaPerM), forceN);

    /// <summary>Moment at the ground allowed on a post that a rigid floor holds there.</summary>
    internal static double HeldMomentNm(double depthM, double widthM, double lateralPaPerM) =>
        depthM <= 0 ? 0 : depthM * depthM * PressurePa(lateralPaPerM, depthM) * widthM / 4.25;

    /// <summary>Depth needed by a post that a rigid floor holds at the ground.</summary>
    internal static double HeldDepthM(double momentNm, double widthM, double lateralPaPerM) =>
        Deepest(depthM => HeldMomentNm(depthM, widthM, lateralPaPerM), momentNm);

    /// <summary>The least depth whose strength reaches a demand; strength rises with depth from 0 without end.</summary>
    private static double Deepest(Func<double, double> strengthAt, double demand)
    {
        if (demand <= 0) return 0;
        double high = 1;
        while (strengthAt(high) < demand)
        {
            high *= 2;
            if (high > 1e6) return double.PositiveInfinity;
        }
        double low = 0;
        // 80 halvings of at most a million metres end far below the last bit that matters.
        for (int step = 0; step < 80; step++)
        {
            double middle = (low + high) / 2;
            if (strengthAt(middle) < demand) low = middle;
            else high = middle;
        }
        return high;
    }
}
