namespace Hoopwright.Sun;

/// <summary>Light of the sun and the sky at one instant, W/m².</summary>
/// <param name="BeamNormalWPerM2">From the sun itself, on a plane square to it.</param>
/// <param name="DiffuseWPerM2">From the sky, on level ground.</param>
/// <param name="GlobalWPerM2">Both, on level ground.</param>
internal readonly record struct SkyLight(double BeamNormalWPerM2, double DiffuseWPerM2, double GlobalWPerM2);
