namespace Hoopwright.Cuts.Film;

/// <summary>Pieces that are cut to one size.</summary>
/// <param name="Across">Least width, in ticks.</param>
/// <param name="Along">Length, in ticks.</param>
/// <param name="Order">Place in the cutting order of the first of them.</param>
/// <param name="Count">How many.</param>
internal sealed record FilmSize(long Across, long Along, int Order, int Count);
