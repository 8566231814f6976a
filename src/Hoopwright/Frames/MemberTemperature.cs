namespace Hoopwright.Frames;

/// <summary>A change of a member's temperature.</summary>
/// <param name="Member">Index of the member.</param>
/// <param name="UniformK">Rise along its middle line, K.</param>
/// <param name="GradientYKPerM">How much warmer it is per metre of local y, K/m.</param>
/// <param name="GradientZKPerM">How much warmer it is per metre of local z, K/m.</param>
internal sealed record MemberTemperature(int Member, double UniformK, double GradientYKPerM = 0, double GradientZKPerM = 0);
