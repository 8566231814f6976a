using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>One ground post as it is set out.</summary>
/// <param name="MemberId">The member.</param>
/// <param name="Bow">Number of the bow it carries.</param>
/// <param name="Left">True on the left side.</param>
/// <param name="Mark">Running mark along the string.</param>
/// <param name="Centre">Middle of the post at the ground.</param>
/// <param name="Top">Height of its top over the datum.</param>
/// <param name="Projection">How far it stands out of the ground.</param>
/// <param name="Embedment">How deep it goes.</param>
/// <param name="InConcrete">True when it stands in concrete.</param>
public sealed record GroundPost(
    string MemberId, int Bow, bool Left, Length Mark, TunnelPoint Centre, Length Top, Length Projection, Length Embedment,
    bool InConcrete);
