using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>A change to a plan, worked out: what it gains and what it costs against the plan as it was.</summary>
public sealed record ChangedDesign
{
    /// <summary>The change.</summary>
    public required PlanChange Change { get; init; }

    /// <summary>The changed plan.</summary>
    public required SweptDesign Design { get; init; }

    /// <summary>Ground snow at the storm's limit, more than before; null where either was not found.</summary>
    public Pressure? MoreSnow { get; init; }

    /// <summary>Settled snow on the roof at that limit, deeper than before; null where either was not found.</summary>
    public Length? DeeperSnow { get; init; }

    /// <summary>Gust at the storm's limit, more than before; null where either was not found.</summary>
    public Speed? MoreGust { get; init; }

    /// <summary>What the order costs more than before; null when the changed plan cannot be built.</summary>
    public Money? MoreCost { get; init; }

    /// <summary>Lines without a price, more than before; the cost leaves them out.</summary>
    public int MoreUnpriced { get; init; }

    /// <summary>How much the part that is used most uses of what it stands under the entered loads, at the weak end of what is known; null when no loads are entered.</summary>
    public Ratio? WorstUse { get; init; }

    /// <summary>The part that is used most, in words; null when no loads are entered.</summary>
    public string? WorstPart { get; init; }

    /// <summary>What it gains, for ranking: how much nearer it is to standing, or how much more snow and wind it stands where it stands already or nothing is entered. Logarithm of times; 0 for no gain.</summary>
    internal double Gain { get; init; }

    /// <summary>True when it gains anything.</summary>
    public bool Helps => Design.Verdict is not null && Gain > LeastGain;

    // Limits are found to half a per mille.
    private const double LeastGain = 2e-3;

    internal static ChangedDesign Of(PlanChange change, int number, PlannedTunnel changed, PlannedTunnel before)
    {
        var design = SweptDesign.Of(number, [], changed);
        var result = new ChangedDesign { Change = change, Design = design };
        if (changed is not { Strength: { } now, Orders: { } orders } || before is not { Strength: { } was, Orders: { } ordersBefore }) return result;
        SweptDesign beforeDesign = SweptDesign.Of(number, [], before);
        return result with
        {
            MoreSnow = design.StormSnow is { } snow && beforeDesign.StormSnow is { } snowBefore ? snow - snowBefore : null,
            DeeperSnow = Settled(now) is { } depth && Settled(was) is { } depthBefore ? depth - depthBefore : null,
            MoreGust = design.StormGust is { } gust && beforeDesign.StormGust is { } gustBefore ? Speed.FromMetresPerSecond(gust.MetresPerSecond - gustBefore.MetresPerSecond) : null,
            MoreCost = orders.Total - ordersBefore.Total,
            MoreUnpriced = orders.Unpriced - ordersBefore.Unpriced,
            WorstUse = LoadUse.Worst(now) is { } worst ? Ratio.FromValue(worst.Used) : null,
            WorstPart = LoadUse.Worst(now)?.Part,
            Gain = LoadUse.Short(was) is > 0 and var shortBefore ? shortBefore - LoadUse.Short(now) : MoreStood(design, beforeDesign),
        };
    }

    private static double MoreStood(SweptDesign now, SweptDesign before) =>
        Times(now.StormSnow?.Pascals, before.StormSnow?.Pascals) + (2 * Times(now.StormGust?.MetresPerSecond, before.StormGust?.MetresPerSecond));

    private static double Times(double? now, double? before) => now is > 0 && before is > 0 ? Math.Log(now.Value / before.Value) : 0;

    private static Length? Settled(StrengthReport strength) => strength.InSnow(StrengthLevel.Storm)?.Depths is [_, var settled, ..] ? settled.Depth : null;
}
