using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.BuildSteps;

/// <summary>A part of what a step does.</summary>
/// <param name="Title">What it is, in short; null where the step has no parts.</param>
/// <param name="Does">What to do, in the imperative, in order.</param>
public sealed record StepPart(Phrase? Title, ImmutableArray<Phrase> Does);
