namespace Hoopwright.Strength.Wood;

/// <summary>Under what conditions wood carries its load.</summary>
/// <param name="Duration">The shortest load of the combination.</param>
/// <param name="IsWet">True where the wood stays over 19 % moisture: in the ground, and usually inside a tunnel.</param>
/// <param name="Temperature">How hot it stays.</param>
/// <param name="IsIncised">True for wood incised to take the treatment (Douglas Fir, Hem-Fir, Spruce-Pine-Fir; not Southern Pine).</param>
/// <param name="IsRepetitive">True for three or more alike, at most 24 in apart, tied so that they share the load.</param>
internal readonly record struct WoodConditions(
    LoadDuration Duration, bool IsWet = false, WoodTemperature Temperature = WoodTemperature.UpTo100F, bool IsIncised = false, bool IsRepetitive = false);
