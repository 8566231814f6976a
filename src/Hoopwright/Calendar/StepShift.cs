namespace Hoopwright.Calendar;

/// <summary>What is worked on a step on one day.</summary>
/// <param name="StepId">The step.</param>
/// <param name="Number">Which of its days this is, from 1.</param>
/// <param name="From">From when.</param>
/// <param name="To">To when.</param>
/// <param name="People">How many are at it.</param>
/// <param name="IsLast">True when the step ends on this day.</param>
public sealed record StepShift(string StepId, int Number, DateTime From, DateTime To, int People, bool IsLast);
