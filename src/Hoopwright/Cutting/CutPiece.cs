using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>A piece to be cut, in one whole length.</summary>
/// <param name="Id">The name it goes by in the plan; not repeated within a job.</param>
/// <param name="Length">The finished length; above 0.</param>
/// <param name="Count">How many of it; 0 or more.</param>
public sealed record CutPiece(string Id, Length Length, int Count);
