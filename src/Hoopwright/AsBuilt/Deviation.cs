using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.AsBuilt;

/// <summary>Something that was measured, and what to do about it.</summary>
/// <param name="Measurement">What was measured, against the plan.</param>
/// <param name="PutRight">How to put it right: what to move, which way, how far. None where it is within its tolerance.</param>
/// <param name="OrElse">What follows it when it stays; null where it is within its tolerance.</param>
public sealed record Deviation(Measurement Measurement, ImmutableArray<Phrase> PutRight, Phrase? OrElse)
{
    /// <summary>True where something is to be put right.</summary>
    public bool IsOut => OrElse is not null;

    /// <summary>How to put it right, in English; null where it is within its tolerance.</summary>
    public string? PutRightText => IsOut ? string.Join(" ", PutRight) : null;
}
