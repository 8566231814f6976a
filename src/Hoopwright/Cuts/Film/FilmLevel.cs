using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>One cut straight across a roll: the film between two running marks.</summary>
/// <param name="From">Running mark at which it begins.</param>
/// <param name="To">Running mark at which it is cut off, from the start of the roll; exact.</param>
/// <param name="Pieces">What it holds, across the roll from its edge; more than one where the film is slit lengthwise.</param>
/// <param name="Offcuts">What is left of it when the pieces are out.</param>
public sealed record FilmLevel(
    Length From, Length To, ImmutableArray<PlacedPiece> Pieces, ImmutableArray<FilmOffcut> Offcuts);
