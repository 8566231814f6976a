using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Upkeep;

/// <summary>A forecast held against a storm card.</summary>
public sealed record StormOutlook
{
    /// <summary>Begin of the hours looked at.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>End of them.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>The strongest gust, at 10 m in open country; null where nothing is known of wind.</summary>
    public required Speed? Gust { get; init; }

    /// <summary>When; null where nothing is known of wind.</summary>
    public required DateTimeOffset? GustAt { get; init; }

    /// <summary>True where some of the gusts were estimated from the mean wind.</summary>
    public required bool GustsEstimated { get; init; }

    /// <summary>Snow that lies already.</summary>
    public required Pressure Lying { get; init; }

    /// <summary>Snow that comes, by weight on level ground.</summary>
    public required Pressure Snow { get; init; }

    /// <summary>Rain that falls onto lying snow.</summary>
    public required Pressure RainOnSnow { get; init; }

    /// <summary>Hours with no wind or no rain known: a storm in them would not be seen.</summary>
    public required int HoursUnknown { get; init; }

    /// <summary>What it calls for, earliest first.</summary>
    public required ImmutableArray<StormWarning> Warnings { get; init; }

    /// <summary>What to know about the forecast.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>True when the storm passes what the tunnel stands.</summary>
    public bool PastLimit => Warnings.Any(each => each.Action is StormAction.WindLimit or StormAction.SnowLimit);
}
