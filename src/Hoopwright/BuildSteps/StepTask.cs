using Hoopwright.Diagnostics;
using Hoopwright.Sources;

namespace Hoopwright.BuildSteps;

/// <summary>A part of the work of a step: so many, so long for each.</summary>
/// <param name="What">What is done to each.</param>
/// <param name="Count">How many.</param>
/// <param name="LeastEach">Time of one practised person for each, at the least.</param>
/// <param name="MostEach">Time of one practised person for each, at the most.</param>
/// <param name="Source">Where the times come from.</param>
public sealed record StepTask(Phrase What, int Count, TimeSpan LeastEach, TimeSpan MostEach, Citation Source);
