using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Inside;

/// <summary>What the plan alone tells of the climate inside, without any weather: the most light, air in a calm, heater and fans.</summary>
public sealed record InsideOutlook
{
    /// <summary>Where; null where the plan does not say, and then what rests on the sun is not told.</summary>
    public required Place? Place { get; init; }

    /// <summary>Floor.</summary>
    public required Area Floor { get; init; }

    /// <summary>Film of roof and ends.</summary>
    public required Area Cover { get; init; }

    /// <summary>Air inside.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Part of light that the film lets through square to it, all layers.</summary>
    public required Ratio FilmSquare { get; init; }

    /// <summary>The same for light from all over the sky.</summary>
    public required Ratio FilmDiffuse { get; init; }

    /// <summary>Part of the light that bows and purlins take.</summary>
    public required Ratio FrameShade { get; init; }

    /// <summary>Sides, doors and vents.</summary>
    public required ImmutableArray<AirOpening> Openings { get; init; }

    /// <summary>What they let through in a calm, shut, half and wide open.</summary>
    public required ImmutableArray<CalmAir> Air { get; init; }

    /// <summary>Cloudless days by month, January first; none where the plan does not say where it stands.</summary>
    public required ImmutableArray<ClearMonth> Light { get; init; }

    /// <summary>What a heater must give on the coldest night of the plan.</summary>
    public required HeaterSize Heater { get; init; }

    /// <summary>Air that fans must move by the rule for fans.</summary>
    public required AirFlow FanByRule { get; init; }

    /// <summary>Air that they must move in the brightest hour of a cloudless year; null where the plan does not say where it stands.</summary>
    public required AirFlow? FanByBalance { get; init; }

    /// <summary>What was asked of the plan, and what was taken where it is silent.</summary>
    public required ImmutableArray<RuleUsed> Rules { get; init; }

    /// <summary>What of it should be confirmed.</summary>
    public required ImmutableArray<Diagnostic> Assumptions { get; init; }
}
