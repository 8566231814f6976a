using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>A setting of the saw stop.</summary>
/// <param name="Length">From blade to stop.</param>
/// <param name="Pieces">The numbers of the pieces cut against it.</param>
public sealed record SawStop(Length Length, ImmutableArray<string> Pieces);
