using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>A round hole filled with concrete about a post.</summary>
/// <param name="Id">Its name.</param>
/// <param name="PostId">The member that stands in it.</param>
/// <param name="Centre">Middle of the hole at the ground.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Depth">Depth below the ground.</param>
/// <param name="PostDepth">How far the post reaches down into it.</param>
/// <param name="PostArea">Area of the post's section that displaces concrete.</param>
/// <param name="CollarRise">Height of the collar at the post over the ground, from which it slopes down to the hole's edge.</param>
/// <param name="Volume">Concrete, with the sloped collar, less the post.</param>
public sealed record ConcreteHole(
    string Id, string PostId, TunnelPoint Centre, Length Diameter, Length Depth, Length PostDepth, Area PostArea,
    Length CollarRise, Volume Volume);
