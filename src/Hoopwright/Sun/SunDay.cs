namespace Hoopwright.Sun;

/// <summary>When the sun rises, stands highest and sets on one day of a place, by the clock there.</summary>
/// <param name="Noon">When it stands in the south, or in the north where it goes that way.</param>
/// <param name="Rise">When it rises; null when it does not rise on this day or does not set.</param>
/// <param name="Set">When it sets; null together with <paramref name="Rise"/>.</param>
/// <param name="DayLength">How long it is up: 0 in the polar night, 24 hours in the polar day.</param>
public sealed record SunDay(DateTimeOffset Noon, DateTimeOffset? Rise, DateTimeOffset? Set, TimeSpan DayLength);
