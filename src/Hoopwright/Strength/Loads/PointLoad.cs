using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>A load at one point of a member.</summary>
/// <param name="MemberId">The member (<see cref="Layout.Member.Id"/>).</param>
/// <param name="At">The point, on its middle line.</param>
/// <param name="Axis">The direction; a negative amount goes against it.</param>
/// <param name="Amount">The force.</param>
public sealed record PointLoad(string MemberId, TunnelPoint At, LoadAxis Axis, Force Amount);
