using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>A point on the path of a large-displacement run.</summary>
/// <param name="LoadFactor">Multiple of the combination's load.</param>
/// <param name="Displacements">Six values for each node: shifts in m, and the turn from the start as a turn vector in rad.</param>
/// <param name="Iterations">Times the frame was solved for this point.</param>
internal sealed record PathPoint(double LoadFactor, ImmutableArray<double> Displacements, int Iterations);
