using Hoopwright.Quantities;

namespace Hoopwright.Calendar;

/// <summary>How a step fares in the seasons that were tried.</summary>
/// <param name="StepId">The step.</param>
/// <param name="Waits">In what part of the seasons it waits for its weather.</param>
/// <param name="Waited">Working time that it ends later for that, on the mean of all seasons.</param>
public sealed record StepOdds(string StepId, Ratio Waits, TimeSpan Waited);
