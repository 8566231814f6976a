namespace Hoopwright.Cuts.Film;

/// <summary>Pieces that are cut to one size.</summary>
/// <param name="Across">Least width, in ticks.</param>
/// <param name="Along">Length, in ticks.</param>
/// <param name="Order">Place in the cutting order of the first of them.</param>
/// <param name="Count">How many.</param>
/// <param name="MayTurn">True when they may also lie with their length across the roll.</param>
internal sealed record FilmSize(long Across, long Along, int Order, int Count, bool MayTurn = false)
{
    /// <summary>True for pieces that have been turned: what is across now was along.</summary>
    internal bool IsTurned { get; private init; }

    /// <summary>The same pieces turned.</summary>
    internal FilmSize Turned => this with { Across = Along, Along = Across, IsTurned = !IsTurned };

    /// <summary>The least width that they take of a stretch of roll; <paramref name="never"/> where they do not fit into it.</summary>
    internal long WidthWithin(long length, long never) =>
        Math.Min(Along <= length ? Across : never, MayTurn && Across <= length ? Along : never);

    /// <summary>As they lie in a stretch of roll: the way that takes the least width.</summary>
    internal FilmSize LaidWithin(long length) => Along <= length && (!MayTurn || Across > length || Across <= Along) ? this : Turned;
}
