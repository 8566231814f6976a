using Hoopwright.Plans;
using Hoopwright.Strength.Soil;

namespace Hoopwright.Strength.Posts;

/// <summary>What is known of the ground a post stands in.</summary>
/// <param name="Class">Soil class; of <see cref="SoilClass.Soft"/> nothing is presumed.</param>
/// <param name="FrostDepthM">How deep it freezes.</param>
/// <param name="IsDoubled">True where posts may move 1/2 in at the ground, so that the lateral pressure is doubled.</param>
internal readonly record struct GroundAt(SoilClass Class, double FrostDepthM, bool IsDoubled)
{
    /// <summary>The values of the class; null where nothing is presumed.</summary>
    internal SoilValues? Values => SoilTable.For(Class);
}
