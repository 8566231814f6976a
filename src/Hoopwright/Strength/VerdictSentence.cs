using System.Collections.Immutable;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength;

/// <summary>Says in a sentence or two how a tunnel stands the entered loads, and what of it passes a limit; never more than was found.</summary>
internal static class VerdictSentence
{
    // The rest stands in the tables.
    private const int MostNamed = 5;

    /// <summary>The sentence.</summary>
    /// <param name="verdict">The verdict on the whole.</param>
    /// <param name="frame">The verdict on bows and row.</param>
    /// <param name="frameParts">What of the frame passes a limit, in words: as taken, or at the weaker end where the frame is marginal.</param>
    /// <param name="parts">Everything besides the frame that was checked.</param>
    /// <param name="loads">The loads.</param>
    internal static string Of(StrengthVerdict verdict, StrengthVerdict frame, ImmutableArray<string> frameParts, ImmutableArray<PartStrength> parts, TunnelLoads loads)
    {
        string missing = Missing(loads);
        string[] past = [.. FrameIf(StrengthVerdict.DoesNotStand), .. parts.Where(part => part.Verdict == StrengthVerdict.DoesNotStand).OrderByDescending(part => Number(part.AtStrongest)).Select(part => part.Words)];
        string[] marginal = [.. FrameIf(StrengthVerdict.Marginal), .. parts.Where(part => part.Verdict == StrengthVerdict.Marginal).OrderByDescending(part => Number(part.AtWeakest)).Select(part => part.Words)];
        return verdict switch
        {
            StrengthVerdict.Stands => $"The tunnel stands the entered loads on these assumptions: nothing that is checked here passes a limit, not even at the weaker end of what is known.{missing}",
            StrengthVerdict.Marginal => $"The tunnel is marginal under the entered loads on these assumptions: what is not known well decides. At its weaker end past a limit: {List(marginal)}.{missing}",
            StrengthVerdict.DoesNotStand => $"The tunnel does not stand the entered loads on these assumptions. Past a limit: {List(past)}.{(marginal.Length > 0 ? $" Marginal besides: {List(marginal)}." : "")}{missing}",
            StrengthVerdict.NothingEntered => "The plan gives no ground snow and no wind, so only what the inner bows stand is worked out.",
        };

        IEnumerable<string> FrameIf(StrengthVerdict wanted) => frame == wanted ? frameParts : [];
    }

    private static string Missing(TunnelLoads loads) => (loads.GroundSnow, loads.Wind) switch
    {
        (null, _) => " No ground snow is given, so snow is not in this.",
        (_, null) => " No wind is given, so wind is not in this.",
        _ => "",
    };

    // Names have commas in them.
    private static string List(string[] names) => names.Length <= MostNamed
        ? string.Join("; ", names)
        : FormattableString.Invariant($"{string.Join("; ", names.Take(MostNamed))}; and {names.Length - MostNamed} more");

    private static double Number(Quantities.Ratio? utilisation) => utilisation?.Value ?? double.PositiveInfinity;
}
