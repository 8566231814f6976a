namespace Hoopwright.Strength.Models;

/// <summary>The snow or the wind at which a bow reaches its limit.</summary>
/// <param name="ReferencePa">Ground snow, or ½·ρ·V² of the wind, Pa; positive infinity when none in reach does it.</param>
/// <param name="Case">The loads under which it does; null when none does.</param>
/// <param name="Lean">Which way it was out of plumb.</param>
/// <param name="Place">Number of the bow.</param>
/// <param name="Verdict">What reaches its limit there.</param>
internal sealed record BowLimit(double ReferencePa, LoadedCase? Case, int Lean, int Place, BowVerdict Verdict)
{
    /// <summary>Nothing in reach.</summary>
    internal static BowLimit None { get; } = new(double.PositiveInfinity, null, 0, 0, default);
}
