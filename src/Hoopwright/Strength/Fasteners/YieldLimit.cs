using System.Collections.Immutable;
using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Fasteners;

/// <summary>Lateral reference value of one fastener in single shear: the least of six ways to give way.</summary>
internal sealed record YieldLimit
{
    internal static readonly Formula Modes = new("Z",
        "least of Im: D·lm·Fem/Rd; Is: D·ls·Fes/Rd; II: k1·D·ls·Fes/Rd; IIIm: k2·D·lm·Fem/((1 + 2Re)·Rd); IIIs: k3·D·ls·Fem/((2 + Re)·Rd); IV: D²/Rd·√(2·Fem·Fyb/(3·(1 + Re)))",
        "N", Register.Nds2018.At("table 12.3.1A, Eq. 12.3-1 to 12.3-6"));

    internal static readonly Formula Reduction = new("Rd",
        "D to 0.17 in: 2.2; to 0.25 in: 10·D + 0.5; from 0.25 in: 4, 3.6, 3.2 times Kθ for I, II, III and IV; Kθ = 1 + 0.25·θ/90°", "", Register.Nds2018.At("table 12.3.1B"));

    /// <summary>Z of each mode, in the order of <see cref="YieldMode"/>.</summary>
    internal required ImmutableArray<double> ModesN { get; init; }

    /// <summary>The mode that governs.</summary>
    internal required YieldMode Mode { get; init; }

    /// <summary>Z, the least of them.</summary>
    internal double ReferenceN => ModesN[(int)Mode];

    /// <summary>Works out the six modes.</summary>
    /// <param name="fastener">Fastener; its root diameter bends and bears.</param>
    /// <param name="mainLengthM">lm, length in the main member, where the point is.</param>
    /// <param name="sideLengthM">ls, thickness of the side member.</param>
    /// <param name="mainBearingPa">Fem.</param>
    /// <param name="sideBearingPa">Fes.</param>
    /// <param name="toGrainRad">The greatest angle between load and grain in either member; 0 to π/2.</param>
    internal static YieldLimit Of(Fastener fastener, double mainLengthM, double sideLengthM, double mainBearingPa, double sideBearingPa, double toGrainRad)
    {
        double d = fastener.RootM, fyb = fastener.BendingYieldPa;
        double re = mainBearingPa / sideBearingPa, rt = mainLengthM / sideLengthM;
        (double crush, double turn, double bend) = ReductionOf(fastener, toGrainRad);
        double k1 = (Math.Sqrt(re + (2 * re * re * (1 + rt + (rt * rt))) + (rt * rt * re * re * re)) - (re * (1 + rt))) / (1 + re);
        double k2 = -1 + Math.Sqrt((2 * (1 + re)) + (2 * fyb * (1 + (2 * re)) * d * d / (3 * mainBearingPa * mainLengthM * mainLengthM)));
        double k3 = -1 + Math.Sqrt((2 * (1 + re) / re) + (2 * fyb * (2 + re) * d * d / (3 * mainBearingPa * sideLengthM * sideLengthM)));
        ImmutableArray<double> modes =
        [
            d * mainLengthM * mainBearingPa / crush,
            d * sideLengthM * sideBearingPa / crush,
            k1 * d * sideLengthM * sideBearingPa / turn,
            k2 * d * mainLengthM * mainBearingPa / ((1 + (2 * re)) * bend),
            k3 * d * sideLengthM * mainBearingPa / ((2 + re) * bend),
            d * d / bend * Math.Sqrt(2 * mainBearingPa * fyb / (3 * (1 + re))),
        ];
        return new YieldLimit { ModesN = modes, Mode = (YieldMode)modes.IndexOf(modes.Min()) };
    }

    /// <summary>Rd of the modes I, II, and III with IV.</summary>
    internal static (double Crush, double Turn, double Bend) ReductionOf(Fastener fastener, double toGrainRad)
    {
        double rootIn = fastener.RootM / InchM, nominalIn = fastener.DiameterM / InchM;
        double angle = 1 + (0.25 * toGrainRad / (Math.PI / 2));
        if (rootIn >= 0.25) return (4 * angle, 3.6 * angle, 3.2 * angle);
        // A thick screw with a thin root takes the factor of its root, times that of the angle. A thin screw takes that of its
        // nominal diameter, as the council's own example does; its root would give up to a tenth more strength.
        double thin = nominalIn >= 0.25 ? Thin(rootIn) * angle : Thin(nominalIn);
        return (thin, thin, thin);

        static double Thin(double diameterIn) => diameterIn <= 0.17 ? 2.2 : (10 * diameterIn) + 0.5;
    }
}
