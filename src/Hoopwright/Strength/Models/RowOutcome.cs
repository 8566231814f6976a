using System.Collections.Immutable;

namespace Hoopwright.Strength.Models;

/// <summary>What came of looking at a row.</summary>
/// <param name="Strength">How it stands.</param>
/// <param name="Posts">What the posts of the ends carry: for each post and each kind of load duration the worst, and the hardest pull.</param>
internal sealed record RowOutcome(RowStrength Strength, ImmutableArray<RowPostForce> Posts);
