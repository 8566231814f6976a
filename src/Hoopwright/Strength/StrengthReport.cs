using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength;

/// <summary>What the tunnel stands, what gives way first, and on which assumptions.</summary>
public sealed record StrengthReport
{
    /// <summary>Every load case and combination.</summary>
    public required TunnelLoads Loads { get; init; }

    /// <summary>What a wind speed of this report is, as the standard measures it: a gust of three seconds, or a mean of ten minutes.</summary>
    public string WindNoun => Loads.Standard switch
    {
        Plans.LoadStandard.Asce7Of2016 or Plans.LoadStandard.Asce7Of2022 => "gust",
        Plans.LoadStandard.En1991 => "10-minute mean wind",
    };

    /// <summary>Why the frame is not checked; null when it is.</summary>
    public required string? NotChecked { get; init; }

    /// <summary>How it stands the entered loads.</summary>
    public required StrengthVerdict Verdict { get; init; }

    /// <summary>The verdict in a sentence that does not overstate.</summary>
    public required string Says { get; init; }

    /// <summary>The steel that was taken, in words.</summary>
    public required string Steel { get; init; }

    /// <summary>Yield stress: least, taken, most of the range.</summary>
    public required PressureRange? Yield { get; init; }

    /// <summary>How the feet were taken, in words.</summary>
    public required string Feet { get; init; }

    /// <summary>Limits in snow and wind.</summary>
    public required ImmutableArray<StrengthLimit> Limits { get; init; }

    /// <summary>Every combination at the site, worst first; none when the plan gives no snow and no wind.</summary>
    public required ImmutableArray<CombinationStrength> Combinations { get; init; }

    /// <summary>Posts and film under the worst that the loads of the site put on them; none when the plan gives no snow and no wind, or when the frame is not checked.</summary>
    public required ImmutableArray<PartStrength> Parts { get; init; }

    /// <summary>What the feet of the bows put on their posts at most, for the bows between and for those at the ends; none where there are no parts.</summary>
    public ImmutableArray<FootLoads> FootLoads { get; init; } = [];

    /// <summary>Forces and movements under the worst combination of those that the bow carries without buckling; null when there is none.</summary>
    public required BowDiagram? Worst { get; init; }

    /// <summary>The whole row in space; null when neither snow nor wind is entered, or the frame is not checked.</summary>
    public RowStrength? Row { get; init; }

    /// <summary>What it stands of a storm; worked out when it is first asked for. Null where the frame is not checked.</summary>
    public StormLimits? Storm => LazyStorm?.Value;

    internal Lazy<StormLimits>? LazyStorm { get; init; }

    /// <summary>What of the frame passes a limit, in words: as taken, or at the weaker end of the range where the frame is marginal.</summary>
    internal ImmutableArray<string> FrameParts { get; init; } = [];

    /// <summary>What to look at again.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>The limit in snow at a level; null when it was not found.</summary>
    /// <param name="level">What it is measured with.</param>
    public StrengthLimit? InSnow(StrengthLevel level) => Limits.FirstOrDefault(limit => limit.Level == level && limit.GroundSnow is not null);

    /// <summary>The limit in wind at a level; null when it was not found.</summary>
    /// <param name="level">What it is measured with.</param>
    public StrengthLimit? InWind(StrengthLevel level) => Limits.FirstOrDefault(limit => limit.Level == level && limit.Wind is not null);

    /// <summary>What governs: under the worst entered combination, or at the code's limit in snow where no loads are entered; empty when nothing was found.</summary>
    public string Governs => Combinations is [var worst, ..] ? worst.Governs : InSnow(StrengthLevel.Code)?.Governs ?? "";
}
