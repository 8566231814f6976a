using System.Collections.Immutable;
using Hoopwright.CoverSteps;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Upkeep;

/// <summary>What a storm may bring, what to do before it and in which order to clear, from what this tunnel really stands.</summary>
public sealed record StormCard
{
    /// <summary>What the bows, posts, ends and film stand.</summary>
    public required StormLimits Limits { get; init; }

    /// <summary>Weight on the roof at the limit, where it lies deepest, at the weaker end of what is known; null where no limit is in reach.</summary>
    public required Pressure? RoofSnow { get; init; }

    /// <summary>How the snow lies that reaches it; null where no limit is in reach.</summary>
    public required StormState? RoofSnowLies { get; init; }

    /// <summary>Snow and rain on snow that may come down, on level ground, until the limit; null where no limit is in reach.</summary>
    public required Pressure? Fall { get; init; }

    /// <summary>Part of the snow at the limit at which the roof is cleared.</summary>
    public required Ratio ClearAt { get; init; }

    /// <summary>Depths by kind of snow, the lightest first; none where no limit is in reach.</summary>
    public required ImmutableArray<SnowClearing> Snow { get; init; }

    /// <summary>What to do before which gusts, the weakest first.</summary>
    public required ImmutableArray<StormGust> Gusts { get; init; }

    /// <summary>Gust at which the bare frame reaches its limit, where it stands clearly more without film, so that taking film off beforehand is a last resort; null where it does not.</summary>
    public required Speed? BareGust { get; init; }

    /// <summary>Parts that may reach what is allowed at less than the bows, at the weaker end of what is known of them.</summary>
    public required ImmutableArray<StormPart> Weaker { get; init; }

    /// <summary>In which order to clear snow.</summary>
    public required ImmutableArray<StormRule> Order { get; init; }

    /// <summary>What can hurt.</summary>
    public required ImmutableArray<StepCaution> Cautions { get; init; }

    /// <summary>The gust that an action is called for; null where it is not.</summary>
    /// <param name="action">The action.</param>
    public Speed? GustOf(StormAction action) => Gusts.FirstOrDefault(each => each.Action == action)?.Gust;
}
