namespace Hoopwright.AsBuilt;

/// <summary>Something that was measured, and what to do about it.</summary>
/// <param name="Measurement">What was measured, against the plan.</param>
/// <param name="PutRight">How to put it right: what to move, which way, how far. Null where it is within its tolerance.</param>
/// <param name="OrElse">What follows it when it stays; null where it is within its tolerance.</param>
public sealed record Deviation(Measurement Measurement, string? PutRight, string? OrElse);
