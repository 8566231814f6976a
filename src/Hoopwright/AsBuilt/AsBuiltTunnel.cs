using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>What stands, against what was planned.</summary>
public sealed record AsBuiltTunnel
{
    /// <summary>What was measured.</summary>
    public required SiteMeasurements Measurements { get; init; }

    /// <summary>The tunnel as planned.</summary>
    public Tunnel Planned => Measurements.Planned;

    /// <summary>The tunnel as it stands: what was measured in place of what was planned.</summary>
    public required Tunnel Standing { get; init; }

    /// <summary>True when what was measured did not go together with the plan, so that the planned tunnel stands in; the diagnostics say why.</summary>
    public required bool DoesNotFit { get; init; }

    /// <summary>How square it stands; null until four sides and two diagonals are measured.</summary>
    public required Squaring? Squaring { get; init; }

    /// <summary>How surely readings are known.</summary>
    public required MeasuringNoise Noise { get; init; }

    /// <summary>Everything that was measured against what is planned, with how to put right what is out of tolerance.</summary>
    public required ImmutableArray<Deviation> Deviations { get; init; }

    /// <summary>How many bows were measured over their outside.</summary>
    public int BowsMeasured => Measurements.Measured.Count(each => each.Of.Kind == MeasurableKind.BowLength && each.Value is not null);

    /// <summary>Within what the length over the longest measured bow is known, nineteen times of twenty; null while none is measured.</summary>
    public Length? OverBowWithin => BowsMeasured == 0 ? null : Noise.LimitOf(BowsMeasured);

    /// <summary>Within what the length of the tunnel is known, nineteen times of twenty; null while no side is measured.</summary>
    public Length? AlongWithin => LengthsMeasured == 0 ? null : Noise.LimitOf(LengthsMeasured);

    private int LengthsMeasured =>
        ((string[])[MeasureNames.Square("left"), MeasureNames.Square("right"), MeasureNames.BowMark(Planned.Stations.Length)]).Count(name => Measurements.Of(name)?.Value is not null);
}
