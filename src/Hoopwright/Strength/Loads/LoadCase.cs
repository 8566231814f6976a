using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>
/// One thing that can happen to the tunnel. Loads whose <see cref="Scale"/> is not fixed are held for a reference of 1 Pa;
/// <see cref="AtSite"/> gives them for the site, <see cref="Times"/> for any other snow or wind.
/// </summary>
public sealed record LoadCase
{
    /// <summary>Its stable name, such as <c>wind-left-shut-plus</c>.</summary>
    public required string Code { get; init; }

    /// <summary>What it is, in words.</summary>
    public required string Words { get; init; }

    /// <summary>What it comes from.</summary>
    public required LoadKind Kind { get; init; }

    /// <summary>What it grows with.</summary>
    public LoadScale Scale { get; init; } = LoadScale.Fixed;

    /// <summary>The reference at the site: ground snow, or ½·ρ·V² of the wind; null when fixed, or when the plan does not give it.</summary>
    public Pressure? SiteReference { get; init; }

    /// <summary>True when the frame's own weight belongs to it: the frame model adds that by its sections.</summary>
    public bool SelfWeight { get; init; }

    /// <summary>Loads on the film.</summary>
    public ImmutableArray<SurfaceLoad> Surfaces { get; init; } = [];

    /// <summary>Of a case of snow: what lies on the roof over the plan, where most does. What fills a gap beside it lies on the ground and leans on the side.</summary>
    public Pressure RoofSnow => Surfaces is [var roof, ..] ? roof.PlanGravity.Greatest : Pressure.Zero;

    /// <summary>Loads along members.</summary>
    public ImmutableArray<LineLoad> Lines { get; init; } = [];

    /// <summary>Loads at points.</summary>
    public ImmutableArray<PointLoad> Points { get; init; } = [];

    /// <summary>Pressures on the ends.</summary>
    public ImmutableArray<EndPressure> Ends { get; init; } = [];

    /// <summary>Pull of the film on the end bows; null for none.</summary>
    public EndFilmPull? FilmPull { get; init; }

    /// <summary>A change of temperature; null for none.</summary>
    public TemperatureChange? Temperature { get; init; }

    /// <summary>How open the tunnel stands; null where that plays no part.</summary>
    public EnclosureClass? Enclosure { get; init; }

    /// <summary>False for a case that is shown but not asked of the frame: doors open though someone shuts them before storms.</summary>
    public bool Counts { get; init; } = true;

    /// <summary>False for wind on a tunnel of which something stands open, other than by loads that are the same when it is shut.</summary>
    internal bool IsShut { get; init; } = true;

    /// <summary>The case that is this one seen from behind, left for right; its own code when it is even. On an even tunnel one of the two is enough.</summary>
    public required string TwinCode { get; init; }

    /// <summary>The values it was worked out with, besides those of <see cref="TunnelLoads.Coefficients"/>.</summary>
    public ImmutableArray<Coefficient> Coefficients { get; init; } = [];

    /// <summary>What was assumed for this case that no field of the plan changes; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>The case as it is at the site; null when it needs a snow or a wind that the plan does not give.</summary>
    public LoadCase? AtSite() => Scale == LoadScale.Fixed ? this : SiteReference is { } reference ? Times(reference) : null;

    /// <summary>The case for a snow or a wind, as a fixed one; a fixed case stays as it is.</summary>
    /// <param name="reference">Ground snow, or ½·ρ·V².</param>
    public LoadCase Times(Pressure reference)
    {
        if (Scale == LoadScale.Fixed) return this;
        double times = reference.Pascals;
        var ratio = Ratio.FromValue(times);
        return this with
        {
            Scale = LoadScale.Fixed,
            SiteReference = null,
            Surfaces = [.. Surfaces.Select(load => load.Times(ratio))],
            Lines = [.. Lines.Select(load => load with { Amount = load.Amount * times })],
            Points = [.. Points.Select(load => load with { Amount = load.Amount * times })],
            Ends = [.. Ends.Select(load => load with { Inwards = load.Inwards * times })],
            FilmPull = FilmPull is { } pull ? pull with { Steady = pull.Steady * times } : null,
        };
    }
}
