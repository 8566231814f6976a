using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Days;

/// <summary>What the plan alone tells of the day on which the roof film is pulled.</summary>
/// <param name="Needs">What the day must be like.</param>
/// <param name="Wind">Wind at the bows over wind at a mast of 10 m in open country.</param>
/// <param name="Rules">What was asked of the plan.</param>
public sealed record CoverDayOutlook(CoverDayNeeds Needs, SiteWind Wind, ImmutableArray<RuleUsed> Rules)
{
    /// <summary>Height at which stations measure wind.</summary>
    public static Length Mast { get; } = Length.FromMetres(10);

    /// <summary>The most mean wind that a forecast for open country may name.</summary>
    public Speed MastWind => Speed.FromMetresPerSecond(Needs.Wind.MetresPerSecond / Wind.Mean.Value);

    /// <summary>The highest gust that it may name.</summary>
    public Speed MastGust => Speed.FromMetresPerSecond(Needs.Gust.MetresPerSecond / Wind.Gust.Value);

    internal static CoverDayOutlook Of(Tunnel tunnel, CoverPlan cover)
    {
        var answers = new Answers(tunnel.Units);
        return new(CoverDayNeeds.Of(tunnel, cover, answers), SiteWind.Of(tunnel.Plan, answers, tunnel.Bow.PeakHeight, Mast), answers.Rules);
    }
}
