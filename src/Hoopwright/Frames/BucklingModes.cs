using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>The lowest multiples of a combination at which a frame buckles.</summary>
/// <param name="Factors">Lowest first; fewer than asked when the frame has no more.</param>
/// <param name="Shapes">One for each factor: six values for each node, the greatest shift being 1.</param>
/// <param name="Residual">Greatest out-of-balance of any mode, as a share.</param>
internal sealed record BucklingModes(ImmutableArray<double> Factors, ImmutableArray<ImmutableArray<double>> Shapes, double Residual);
