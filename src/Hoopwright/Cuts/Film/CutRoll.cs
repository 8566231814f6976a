using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>One roll and how it is cut, from its start.</summary>
/// <param name="Offer">The size it has.</param>
/// <param name="Levels">The cuts in running order.</param>
public sealed record CutRoll(RollOffer Offer, ImmutableArray<FilmLevel> Levels)
{
    /// <summary>The running marks at which to cut, along one tape laid beside the roll; exact.</summary>
    public ImmutableArray<Length> Marks => [.. Levels.Select(level => level.To)];

    /// <summary>What stays on the roll after the last mark.</summary>
    public Length Remainder => Offer.Length - (Levels.IsEmpty ? Length.Zero : Levels[^1].To);
}
