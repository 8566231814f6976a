using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>An even load along members.</summary>
/// <param name="MemberIds">The members (<see cref="Layout.Member.Id"/>), each loaded over its whole length.</param>
/// <param name="Axis">The direction; a negative amount goes against it.</param>
/// <param name="Amount">Force for a length of the member, or of its projection.</param>
/// <param name="Per">What the length is measured along.</param>
public sealed record LineLoad(ImmutableArray<string> MemberIds, LoadAxis Axis, ForcePerLength Amount, LoadMeasure Per);
