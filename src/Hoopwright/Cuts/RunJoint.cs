using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>A joint in a run.</summary>
/// <param name="MemberId">The run.</param>
/// <param name="At">Distance of the joint from the start of the run.</param>
/// <param name="Before">Number of the piece before it.</param>
/// <param name="After">Number of the piece after it.</param>
public sealed record RunJoint(string MemberId, Length At, string Before, string After);
