using Hoopwright.Sources;

namespace Hoopwright.Strength.Wood;

/// <summary>Stability of columns and beams.</summary>
internal static class WoodStability
{
    internal static readonly Formula Column = new("CP", "(1 + a)/(2c) − √(((1 + a)/(2c))² − a/c); a = FcE/Fc*; FcE = 0.822·Emin'/(le/d)²; c = 0.8 sawn", "",
        Register.Nds2018.At("Eq. 3.7-1; le/d at most 50"));

    internal static readonly Formula Beam = new("CL", "(1 + a)/1.9 − √(((1 + a)/1.9)² − a/0.95); a = FbE/Fb*; FbE = 1.20·Emin'/RB²; RB = √(le·d/b²)", "",
        Register.Nds2018.At("Eq. 3.3-5, 3.3-6; RB at most 50; table 3.3.3 for le"));

    /// <summary>The greatest slenderness of a column, le/d, and of a beam, RB.</summary>
    internal const double MostSlenderness = 50;

    /// <summary>c of sawn lumber.</summary>
    private const double Sawn = 0.8;

    /// <summary>Euler stress FcE of a column; infinite for no length.</summary>
    internal static double ColumnElasticPa(double youngMinPa, double effectiveLengthM, double depthM)
    {
        double slenderness = effectiveLengthM / depthM;
        return 0.822 * youngMinPa / (slenderness * slenderness);
    }

    /// <summary>CP of a solid column.</summary>
    /// <param name="elasticPa">FcE.</param>
    /// <param name="stressPa">Fc*.</param>
    internal static double ColumnFactor(double elasticPa, double stressPa) => Factor(stressPa / elasticPa, Sawn);

    /// <summary>RB of a beam.</summary>
    /// <param name="effectiveLengthM">le, by <see cref="BeamEffectiveLengthM"/>.</param>
    /// <param name="section">Section, bent on edge.</param>
    internal static double BeamSlenderness(double effectiveLengthM, WoodSection section) =>
        Math.Sqrt(effectiveLengthM * section.WidthM) / section.ThicknessM;

    /// <summary>CL of a beam.</summary>
    /// <param name="elasticPa">FbE.</param>
    /// <param name="stressPa">Fb*.</param>
    internal static double BeamFactor(double elasticPa, double stressPa) => Factor(stressPa / elasticPa, 0.95);

    /// <summary>FbE of a beam; infinite for no length.</summary>
    internal static double BeamElasticPa(double youngMinPa, double slenderness) => 1.20 * youngMinPa / (slenderness * slenderness);

    /// <summary>Effective length le of a beam from the length lu over which its compression edge is free: NDS table 3.3.3.</summary>
    /// <param name="unbracedM">lu; 0 where the edge is held throughout.</param>
    /// <param name="depthM">d.</param>
    /// <param name="load">How it is loaded.</param>
    internal static double BeamEffectiveLengthM(double unbracedM, double depthM, BeamLoad load)
    {
        bool isShort = unbracedM < 7 * depthM;
        return (load, isShort) switch
        {
            (BeamLoad.Uniform, true) => 2.06 * unbracedM,
            (BeamLoad.Uniform, false) => (1.63 * unbracedM) + (3 * depthM),
            (BeamLoad.Middle, true) => 1.80 * unbracedM,
            (BeamLoad.Middle, false) => (1.37 * unbracedM) + (3 * depthM),
            (BeamLoad.EndMoments, _) => 1.84 * unbracedM,
            (BeamLoad.CantileverUniform, true) => 1.33 * unbracedM,
            (BeamLoad.CantileverUniform, false) => (0.90 * unbracedM) + (3 * depthM),
            (BeamLoad.CantileverEnd, true) => 1.87 * unbracedM,
            (BeamLoad.CantileverEnd, false) => (1.44 * unbracedM) + (3 * depthM),
            // Any other load: the rows for loads not listed.
            (BeamLoad.Any, true) => 2.06 * unbracedM,
            (BeamLoad.Any, false) => unbracedM <= 14.3 * depthM ? (1.63 * unbracedM) + (3 * depthM) : 1.84 * unbracedM,
        };
    }

    // Both factors are one curve. Written in 1/a and as a quotient it is exact at no length at all, where a is infinite, and loses
    // no digits just above it.
    private static double Factor(double stressOverElastic, double c)
    {
        double half = (1 + stressOverElastic) / (2 * c);
        return Math.Min(1, 1 / (c * (half + Math.Sqrt((half * half) - (stressOverElastic / c)))));
    }
}
