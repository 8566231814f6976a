using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>
/// Whole tenths of a micrometre, in which the search compares sizes, so that every sum and every tie is exact. A foot is
/// a whole number of them.
/// </summary>
internal static class FilmTicks
{
    internal const double PerMetre = 1e7;

    // Far above what arithmetic loses, far below what a tape shows.
    private const double Noise = 0.05;

    /// <summary>What a piece needs: up to the next tick.</summary>
    internal static long Needed(Length length) => (long)Math.Ceiling((length.Metres * PerMetre) - Noise);

    /// <summary>What a roll gives: down to the tick.</summary>
    internal static long Given(Length length) => (long)Math.Floor((length.Metres * PerMetre) + Noise);
}
