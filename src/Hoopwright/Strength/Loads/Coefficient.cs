using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>A value that a load was worked out with.</summary>
/// <param name="Formula">Its symbol, how it comes about, its unit and its source.</param>
/// <param name="Value">The value, in that unit.</param>
/// <param name="Words">What it is for, in words.</param>
public sealed record Coefficient(Formula Formula, Ratio Value, string Words)
{
    /// <summary>True when it was written from memory: it is to be confirmed with the current standard.</summary>
    public bool NeedsConfirming => Formula.Source.Standing == Standing.FromMemory;
}
