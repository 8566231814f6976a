namespace Hoopwright.Calendar;

/// <summary>A day on which people come.</summary>
/// <param name="Date">Which.</param>
/// <param name="Begins">When work begins, by the clock on the wall.</param>
/// <param name="Ends">When it ends: after the hours of the plan, or at the end of daylight where that is earlier.</param>
/// <param name="People">How many come.</param>
public sealed record WorkDay(DateOnly Date, TimeOnly Begins, TimeOnly Ends, int People);
