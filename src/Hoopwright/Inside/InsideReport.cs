using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Inside;

/// <summary>What a year inside the tunnel is like: light, air, warmth.</summary>
public sealed record InsideReport
{
    /// <summary>Where.</summary>
    public required Place Place { get; init; }

    /// <summary>The weather's name for the place.</summary>
    public required string Weather { get; init; }

    /// <summary>True when the weather is a typical year, which has no extremes.</summary>
    public required bool TypicalYear { get; init; }

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

    /// <summary>Where across the floor light was worked out, from the left ground line.</summary>
    public required ImmutableArray<Length> Across { get; init; }

    /// <summary>Light by month, January first.</summary>
    public required ImmutableArray<MonthLight> Light { get; init; }

    /// <summary>Light on the strips of film and on both ends.</summary>
    public required ImmutableArray<FacetLight> Facets { get; init; }

    /// <summary>Other ways the tunnel could lie on this site.</summary>
    public required ImmutableArray<HeadingStudy> Headings { get; init; }

    /// <summary>Sides, doors and vents.</summary>
    public required ImmutableArray<AirOpening> Openings { get; init; }

    /// <summary>What they let through, shut, half and wide open.</summary>
    public required ImmutableArray<AirChange> Air { get; init; }

    /// <summary>The year, outside first, then by how the tunnel is kept.</summary>
    public required ImmutableArray<InsideStats> Ways { get; init; }

    /// <summary>How far the tunnel as it is kept by hand may be out, by what is not known.</summary>
    public required InsideBand Band { get; init; }

    /// <summary>What a heater must give on the coldest night.</summary>
    public required HeaterSize Heater { get; init; }

    /// <summary>Heat that a heater gave over the year as a mean power; nothing where the plan has none.</summary>
    public required Power HeaterMean { get; init; }

    /// <summary>What fans must move.</summary>
    public required FanSize Fan { get; init; }

    /// <summary>Days long enough and ground warm enough for hardy crops to grow.</summary>
    public required InsideSeason Season { get; init; }

    /// <summary>Hours in which water stood on the film, as kept by hand.</summary>
    public required int WetFilmHours { get; init; }

    /// <summary>How well the balance of heat of the year closes: what is left over, as a part of all that crossed.</summary>
    public required Ratio BalanceLeft { get; init; }

    /// <summary>Hour by hour, as kept by hand.</summary>
    public required ImmutableArray<InsideHour> Hours { get; init; }

    /// <summary>Day by day.</summary>
    public required ImmutableArray<InsideDay> Days { get; init; }

    /// <summary>What was asked of the plan, and what was taken where it is silent.</summary>
    public required ImmutableArray<RuleUsed> Rules { get; init; }

    /// <summary>What to look at again, and what was assumed.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }
}
