using System.Collections.Immutable;
using Hoopwright.Geometry;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A row of dimensions that a figure asks for.</summary>
/// <param name="Side">On which side.</param>
/// <param name="Points">What is measured, in order along the side.</param>
/// <param name="Texts">One text per gap, or per point after the first for running marks.</param>
/// <param name="IsRunning">True for running marks from the first point.</param>
/// <param name="SumText">Writes the sum of gaps from one point to another; for runs of equal gaps.</param>
internal sealed record RowRequest(
    Side Side, ImmutableArray<PlanePoint> Points, ImmutableArray<string> Texts, bool IsRunning, Func<int, int, string>? SumText)
{
    /// <summary>True when the texts are no distances, so that the first point carries no zero.</summary>
    public bool IsPlain { get; init; }

    /// <summary>True when so many equal gaps, each as written, make the sum as written; a run that does not is written without its gap.</summary>
    public Func<int, int, bool>? AddsUp { get; init; }
}
