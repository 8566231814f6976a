namespace Hoopwright.Quantities;

/// <summary>The wall of a tube, and the gauge number it was given by, if any.</summary>
/// <param name="Thickness">The wall; above 0.</param>
/// <param name="Gauge">The Birmingham gauge number it was read from; null when the wall itself was given.</param>
public readonly record struct TubeWall(Length Thickness, int? Gauge)
{
    /// <summary>The table that a gauge number was looked up in, to be shown beside it; null when there was none.</summary>
    public string? Table => Gauge is null ? null : TubeGauge.TableName;
}
