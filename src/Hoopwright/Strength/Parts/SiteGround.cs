using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Posts;

namespace Hoopwright.Strength.Parts;

/// <summary>The ground at both ends of what is known of it.</summary>
/// <param name="Weak">Soil over the frost line does not count, and the lateral pressure is taken once.</param>
/// <param name="Strong">Soil counts from the top, and the lateral pressure is doubled as for isolated poles that may move 1/2 in.</param>
internal readonly record struct SiteGround(GroundAt Weak, GroundAt Strong)
{
    /// <summary>The ground of a tunnel.</summary>
    internal static SiteGround Of(Tunnel tunnel, Answers answers)
    {
        SoilClass soil = answers.Take("site.soilClass", LoadDefaults.Soil, tunnel.Plan.Site.SoilClass);
        // Without a frost depth the layout has said already that none is held against the posts.
        return new SiteGround(new GroundAt(soil, tunnel.Plan.Site.FrostDepth?.Value.Metres ?? 0, IsDoubled: false), new GroundAt(soil, 0, IsDoubled: true));
    }
}
