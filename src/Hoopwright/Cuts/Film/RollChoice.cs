using System.Collections.Immutable;

namespace Hoopwright.Cuts.Film;

/// <summary>One roll of a choice: the offer it is, and its levels as lists of pieces as they lie.</summary>
/// <param name="Offer">Number of the offer.</param>
/// <param name="Levels">For each level the sizes of its pieces, turned where they lie so.</param>
internal sealed record RollChoice(int Offer, ImmutableArray<ImmutableArray<FilmSize>> Levels);
