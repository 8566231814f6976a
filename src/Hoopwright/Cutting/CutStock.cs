using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>One kind of bar, board or stick that pieces can be cut from.</summary>
/// <param name="Id">The name it goes by in the plan; not repeated within a job.</param>
/// <param name="Length">The whole bar as sold, end trim included; above 0.</param>
/// <param name="Price">What one bar costs; 0 or more. Stock on hand is a line with price 0 and a limit.</param>
/// <param name="Limit">The most bars there are; null when as many as wanted can be had.</param>
public sealed record CutStock(string Id, Length Length, Money Price, int? Limit = null);
