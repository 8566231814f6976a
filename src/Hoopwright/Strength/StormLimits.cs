using System.Collections.Immutable;

namespace Hoopwright.Strength;

/// <summary>What the tunnel stands of a storm: bows first, then posts, ends and film. A licensed engineer decides.</summary>
/// <param name="Bows">The bows, state by state; a state that reaches no limit within 125 m/s or 20 kPa is not there.</param>
/// <param name="Parts">Posts, ends and film, weakest first, for winds and snow that the plan enters; those without a limit in reach are not there.</param>
/// <param name="NoParts">Why there are none of those for wind or for snow, in words; null where there are.</param>
public sealed record StormLimits(ImmutableArray<StormLimit> Bows, ImmutableArray<StormPart> Parts, string? NoParts)
{
    /// <summary>The bows in a state; null when no limit is in reach.</summary>
    /// <param name="state">Which.</param>
    public StormLimit? Of(StormState state) => Bows.FirstOrDefault(limit => limit.State == state);
}
