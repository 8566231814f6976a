using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Fasteners;

/// <summary>One fastener in wood, pulled out, sideways or both.</summary>
internal sealed record FastenerCheck : ICheck
{
    internal static readonly Formula NailInteraction = new("utilisation", "P/W' + V/Z'", "", Register.Nds2018.At("Eq. 12.4-2"));

    internal static readonly Formula ScrewInteraction = new("utilisation", "R·(cos²α/Z' + sin²α/W'); R = √(P² + V²), tan α = P/V", "", Register.Nds2018.At("Eq. 12.4-1"));

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>The fastener.</summary>
    internal required FastenerKind Kind { get; init; }

    /// <summary>W', what may be pulled straight; 0 where none is allowed.</summary>
    internal required double WithdrawalN { get; init; }

    /// <summary>Z', what may be pushed sideways.</summary>
    internal required double LateralN { get; init; }

    /// <summary>How it gives way sideways.</summary>
    internal required YieldMode Mode { get; init; }

    /// <summary>Pull over W'.</summary>
    internal required double WithdrawalRatio { get; init; }

    /// <summary>Push over Z'.</summary>
    internal required double LateralRatio { get; init; }

    /// <summary>Meets a fastener with its forces.</summary>
    /// <param name="fastener">Fastener.</param>
    /// <param name="specificGravity">G of the wood that holds the point.</param>
    /// <param name="penetrationM">Length of shank or thread that holds, tip not counted.</param>
    /// <param name="limit">Lateral value.</param>
    /// <param name="conditions">Conditions.</param>
    /// <param name="pullN">Along the fastener; 0 or more.</param>
    /// <param name="pushN">Across it; 0 or more.</param>
    internal static FastenerCheck Of(
        Fastener fastener, double specificGravity, double penetrationM, YieldLimit limit, JointConditions conditions, double pullN, double pushN)
    {
        double withdrawalN = Withdrawal.ReferenceNPerM(fastener.Kind, specificGravity, fastener.DiameterM) * penetrationM
            * JointFactors.OnWithdrawal(fastener.Kind, conditions);
        double lateralN = limit.ReferenceN * JointFactors.OnLateral(fastener, conditions);
        double pulled = pullN <= 0 ? 0 : pullN / withdrawalN, pushed = pushN <= 0 ? 0 : pushN / lateralN;
        return new FastenerCheck
        {
            Utilisation = Combined(fastener.Kind, pullN, pushN, pulled, pushed),
            Kind = fastener.Kind,
            WithdrawalN = withdrawalN,
            LateralN = lateralN,
            Mode = limit.Mode,
            WithdrawalRatio = pulled,
            LateralRatio = pushed,
        };
    }

    /// <summary>Pull and sideways load together: a straight line for nails, Hankinson's curve for screws.</summary>
    private static double Combined(FastenerKind kind, double pullN, double pushN, double pulled, double pushed) => kind switch
    {
        FastenerKind.Nail => pulled + pushed,
        FastenerKind.WoodScrew or FastenerKind.LagScrew when pulled <= 0 || pushed <= 0 => pulled + pushed,
        FastenerKind.WoodScrew or FastenerKind.LagScrew => ((pulled * pullN) + (pushed * pushN)) / double.Hypot(pullN, pushN),
    };

    /// <inheritdoc/>
    public string Governs => (WithdrawalRatio, LateralRatio) switch
    {
        ( > 0, > 0) => "pulling out with sideways load",
        ( > 0, _) => "pulling out of the wood",
        _ => Mode switch
        {
            YieldMode.MainCrushes => "wood crushing in the main member",
            YieldMode.SideCrushes => "crushing in the side member",
            YieldMode.Turns => "the fastener turning in both members",
            YieldMode.BendsInSide or YieldMode.BendsInMain => "the fastener bending at one point",
            YieldMode.BendsTwice => "the fastener bending in both members",
        },
    };

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("W'", WithdrawalN, "N", "pull that may be put on it"),
        new("Z'", LateralN, "N", "sideways load that may be put on it"),
        new("P/W'", WithdrawalRatio, "", "part of the pull used"),
        new("V/Z'", LateralRatio, "", "part of the sideways load used"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas =>
        [Withdrawal.FormulaOf(Kind), DowelBearing.Thin, DowelBearing.Thick, YieldLimit.Modes, YieldLimit.Reduction, JointFactors.Adjusted, Kind == FastenerKind.Nail ? NailInteraction : ScrewInteraction];
}
