using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>Load cases taken together, each with a factor.</summary>
/// <param name="Id">Its name in the model.</param>
/// <param name="Parts">Its load cases.</param>
internal sealed record FrameCombination(string Id, ImmutableArray<CombinationPart> Parts);

/// <summary>A load case in a combination.</summary>
/// <param name="LoadCase">Index of the load case.</param>
/// <param name="Factor">What it is multiplied by.</param>
internal readonly record struct CombinationPart(int LoadCase, double Factor);
