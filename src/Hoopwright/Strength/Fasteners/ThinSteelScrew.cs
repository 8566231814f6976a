using System.Collections.Immutable;
using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Fasteners;

/// <summary>
/// A self-drilling screw that holds one thin steel part to another, such as a channel to a bow or a bow to its post, by section
/// J4 of AISI S100-16. The screw itself breaks at what its maker states; where that is not given it is not checked.
/// </summary>
internal sealed record ThinSteelScrew : ICheck
{
    internal static readonly Formula PullOut = new("Pnot", "0.85·tc·d·Fu2", "N", Register.AisiS100.At("Eq. J4.4.1-1; Ω 3.00, φ 0.50"));

    internal static readonly Formula PullOver = new("Pnov", "1.5·t1·dw·Fu1; dw at most 3/4 in", "N", Register.AisiS100.At("Eq. J4.4.2-1; Ω 3.00, φ 0.50"));

    internal static readonly Formula Shear = new("Pnv",
        "t2/t1 ≤ 1: least of 4.2·√(t2³·d)·Fu2, 2.7·t1·d·Fu1, 2.7·t2·d·Fu2; from 2.5 the last two; straight between", "N", Register.AisiS100.At("Eq. J4.3.1-1 to J4.3.1-5; Ω 3.00, φ 0.50"));

    internal static readonly Formula Together = new("utilisation", "T/Ta + V/Va", "", Register.AisiS100.At("section J4.5, taken as a straight line, which asks for more"));

    /// <summary>Ω and φ of screws.</summary>
    internal static readonly ResistanceFactor Factor = new(Phi: 0.50, Omega: 3.00);

    /// <summary>The widest washer that counts.</summary>
    private const double WidestWasherM = 0.75 * InchM;

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>What gives way under pull.</summary>
    internal required ThinSteelLimit PullLimit { get; init; }

    /// <summary>What gives way under sideways load.</summary>
    internal required ThinSteelLimit ShearLimit { get; init; }

    /// <summary>Nominal pull-out.</summary>
    internal required double PullOutN { get; init; }

    /// <summary>Nominal pull-over.</summary>
    internal required double PullOverN { get; init; }

    /// <summary>Nominal strength sideways.</summary>
    internal required double ShearN { get; init; }

    /// <summary>Pull that may be put on it.</summary>
    internal required double AllowedPullN { get; init; }

    /// <summary>Sideways load that may be put on it.</summary>
    internal required double AllowedShearN { get; init; }

    /// <summary>Pull over what is allowed.</summary>
    internal required double PullRatio { get; init; }

    /// <summary>Sideways load over what is allowed.</summary>
    internal required double ShearRatio { get; init; }

    /// <summary>True when the maker's strength of the screw itself was given and met.</summary>
    internal required bool IsScrewItselfChecked { get; init; }

    /// <summary>Meets a screw with its forces.</summary>
    /// <param name="joint">Screw and parts.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    /// <param name="pullN">Along the screw; 0 or more.</param>
    /// <param name="shearN">Across the screw; 0 or more.</param>
    internal static ThinSteelScrew Of(ThinSteelJoint joint, DesignMethod method, double pullN, double shearN)
    {
        double pullOutN = 0.85 * joint.PointSideM * joint.ScrewM * joint.PointSideUltimatePa;
        double pullOverN = 1.5 * joint.HeadSideM * Math.Min(joint.HeadM, WidestWasherM) * joint.HeadSideUltimatePa;
        double bearingN = BearingN(joint);
        (double pull, ThinSteelLimit pullLimit) = OrScrew(
            pullOutN <= pullOverN ? (pullOutN, ThinSteelLimit.PullOut) : (pullOverN, ThinSteelLimit.PullOver), joint.ScrewTensionN);
        (double shear, ThinSteelLimit shearLimit) = OrScrew((bearingN, ThinSteelLimit.Bearing), joint.ScrewShearN);
        double allowedPullN = Factor.DesignOf(pull, method), allowedShearN = Factor.DesignOf(shear, method);
        double pulled = pullN <= 0 ? 0 : pullN / allowedPullN, sheared = shearN <= 0 ? 0 : shearN / allowedShearN;
        return new ThinSteelScrew
        {
            Utilisation = pulled + sheared,
            PullRatio = pulled,
            ShearRatio = sheared,
            PullLimit = pullLimit,
            ShearLimit = shearLimit,
            PullOutN = pullOutN,
            PullOverN = pullOverN,
            ShearN = bearingN,
            AllowedPullN = allowedPullN,
            AllowedShearN = allowedShearN,
            IsScrewItselfChecked = (pullN <= 0 || joint.ScrewTensionN is not null) && (shearN <= 0 || joint.ScrewShearN is not null),
        };
    }

    /// <inheritdoc/>
    public string Governs => PullRatio >= ShearRatio ? Words(PullLimit) : Words(ShearLimit);

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("Pnot", PullOutN, "N", "nominal pull-out"),
        new("Pnov", PullOverN, "N", "nominal pull-over"),
        new("Pnv", ShearN, "N", "nominal strength sideways"),
        new("Ta", AllowedPullN, "N", "pull that may be put on it"),
        new("Va", AllowedShearN, "N", "sideways load that may be put on it"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas => [PullOut, PullOver, Shear, Together];

    private static string Words(ThinSteelLimit limit) => limit switch
    {
        ThinSteelLimit.PullOut => "the thread tearing out of the steel behind",
        ThinSteelLimit.PullOver => "the steel tearing over the head",
        ThinSteelLimit.Bearing => "the steel beside the screw",
        ThinSteelLimit.Screw => "the screw itself",
    };

    private static double BearingN(ThinSteelJoint joint)
    {
        double front = 2.7 * joint.HeadSideM * joint.ScrewM * joint.HeadSideUltimatePa;
        double behind = 2.7 * joint.PointSideM * joint.ScrewM * joint.PointSideUltimatePa;
        double thick = Math.Min(front, behind);
        double tilting = 4.2 * Math.Sqrt(Math.Pow(joint.PointSideM, 3) * joint.ScrewM) * joint.PointSideUltimatePa;
        double thin = Math.Min(tilting, thick);
        return double.Lerp(thin, thick, Math.Clamp(((joint.PointSideM / joint.HeadSideM) - 1) / 1.5, 0, 1));
    }

    private static (double Nominal, ThinSteelLimit Limit) OrScrew((double Nominal, ThinSteelLimit Limit) steel, double? screwN) =>
        screwN < steel.Nominal ? (screwN.Value, ThinSteelLimit.Screw) : steel;
}
