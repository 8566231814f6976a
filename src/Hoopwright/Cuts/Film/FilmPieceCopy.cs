using Hoopwright.Cover;

namespace Hoopwright.Cuts.Film;

/// <summary>One piece to cut: a piece of the cover, or one layer of it.</summary>
/// <param name="Piece">The piece of the cover.</param>
/// <param name="Copy">1 for the first of alike layers.</param>
internal sealed record FilmPieceCopy(CoverPiece Piece, int Copy)
{
    /// <summary>Least width, in ticks.</summary>
    internal long Across { get; } = FilmTicks.Needed(Piece.AcrossRoll);

    /// <summary>Length, in ticks.</summary>
    internal long Along { get; } = FilmTicks.Needed(Piece.AlongRoll);

    /// <summary>What to write on it.</summary>
    internal string Label => Piece.Count == 1 ? Piece.Place : FormattableString.Invariant($"{Piece.Place}, layer {Copy} of {Piece.Count}");
}
