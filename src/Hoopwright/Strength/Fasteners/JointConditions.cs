using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Fasteners;

/// <summary>Under what conditions a joint in wood carries its load.</summary>
/// <param name="Duration">The shortest load; impact counts as ten minutes, since connections have no more.</param>
/// <param name="IsWet">True where the wood stays over 19 % moisture.</param>
/// <param name="WasWet">True where it was over 19 % when the joint was made, as fresh treated wood is.</param>
/// <param name="Temperature">How hot it stays.</param>
/// <param name="IsEndGrain">True where the fastener goes in along the grain.</param>
/// <param name="IsToeNailed">True for a nail driven slantwise.</param>
internal readonly record struct JointConditions(
    LoadDuration Duration, bool IsWet = false, bool WasWet = false, WoodTemperature Temperature = WoodTemperature.UpTo100F,
    bool IsEndGrain = false, bool IsToeNailed = false);
