namespace Hoopwright.Cutting;

/// <summary>A piece to be cut, in plain numbers.</summary>
/// <param name="Id">The name it goes by; not repeated within a job.</param>
/// <param name="Length">The finished length; above 0.</param>
/// <param name="Count">How many of it; 0 or more.</param>
public sealed record UnitlessCutPiece(string Id, decimal Length, int Count);
