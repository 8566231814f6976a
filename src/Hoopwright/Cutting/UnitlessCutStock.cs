namespace Hoopwright.Cutting;

/// <summary>One kind of bar in plain numbers.</summary>
/// <param name="Id">The name it goes by; not repeated within a job.</param>
/// <param name="Length">The whole bar; above 0.</param>
/// <param name="Price">What one bar costs; 0 or more.</param>
/// <param name="Limit">The most bars there are; null when as many as wanted.</param>
public sealed record UnitlessCutStock(string Id, decimal Length, decimal Price, int? Limit = null);
