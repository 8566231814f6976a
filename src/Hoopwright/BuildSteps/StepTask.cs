using Hoopwright.CoverSteps;
using Hoopwright.Sources;

namespace Hoopwright.BuildSteps;

/// <summary>A part of the work of a step: so many, so long for each.</summary>
/// <param name="What">What is done to each.</param>
/// <param name="Count">How many, or how much.</param>
/// <param name="Unit">What is counted, in the plural.</param>
/// <param name="MinutesEach">Person-minutes for each by practised people, at the least and at the most.</param>
/// <param name="Source">Where the time comes from.</param>
public sealed record StepTask(Phrase What, decimal Count, string Unit, MinuteSpan MinutesEach, Citation Source);
