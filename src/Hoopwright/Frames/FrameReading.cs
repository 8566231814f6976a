using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Frames;

/// <summary>What came of reading a model file.</summary>
/// <param name="Model">The model; null when something must be put right first.</param>
/// <param name="Diagnostics">What is wrong with the file, or was assumed.</param>
public sealed record FrameReading(FrameModel? Model, ImmutableArray<Diagnostic> Diagnostics);
