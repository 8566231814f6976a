using System.Collections.Immutable;

namespace Hoopwright.Cuts.Film;

/// <summary>One roll of a choice, its levels told by the sizes themselves.</summary>
/// <param name="Offer">Number of the offer.</param>
/// <param name="Levels">For each level the sizes of its pieces.</param>
internal sealed record SizedRoll(int Offer, ImmutableArray<ImmutableArray<FilmSize>> Levels);
