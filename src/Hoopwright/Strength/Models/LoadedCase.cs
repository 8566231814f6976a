using System.Collections.Immutable;

namespace Hoopwright.Strength.Models;

/// <summary>A combination with its loads as far as they are fixed, and those that a search scales.</summary>
/// <param name="Code">Name of the combination, or of the case that is scaled.</param>
/// <param name="Words">In words.</param>
/// <param name="Fixed">Loads that stay.</param>
/// <param name="Scaled">Loads times the snow or the wind that is looked for, in Pa.</param>
internal sealed record LoadedCase(string Code, string Words, ImmutableArray<BowTerm> Fixed, ImmutableArray<BowTerm> Scaled)
{
    /// <summary>Most loads of one combination: room that is enough for <see cref="At"/>.</summary>
    internal const int MostTerms = 16;

    /// <summary>All loads at a snow or a wind.</summary>
    /// <param name="referencePa">The snow or the wind, Pa.</param>
    /// <param name="into">Room for all of them.</param>
    internal ReadOnlySpan<BowTerm> At(double referencePa, Span<BowTerm> into)
    {
        int count = 0;
        foreach (BowTerm term in Fixed)
            into[count++] = term;
        foreach (BowTerm term in Scaled)
            into[count++] = term with { Times = term.Times * referencePa };
        return into[..count];
    }
}
