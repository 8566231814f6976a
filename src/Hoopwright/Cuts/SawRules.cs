using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>The rules of the saw as answered.</summary>
/// <param name="Kerf">Width of the cut.</param>
/// <param name="Trim">Cut off the end of every stock piece.</param>
/// <param name="UsefulLeftover">The shortest leftover worth keeping.</param>
/// <param name="Units">The tape.</param>
internal sealed record SawRules(Length Kerf, Length Trim, Length UsefulLeftover, UnitSystem Units);
