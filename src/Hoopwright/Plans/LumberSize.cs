using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>The size of a board or post.</summary>
/// <param name="Name">As a plan writes it: 2x6 for a nominal size, 45x145 mm for an actual one.</param>
/// <param name="Thickness">The smaller actual dimension.</param>
/// <param name="Width">The larger actual dimension.</param>
/// <param name="IsNominal">True when the name is a nominal size, which is more than the wood measures.</param>
public sealed record LumberSize(string Name, Length Thickness, Length Width, bool IsNominal);
