using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>One way of joining a run from several pieces.</summary>
/// <param name="Joints">Distances of the joints from the start of the run.</param>
/// <param name="Pieces">The pieces from the start of the run.</param>
internal sealed record JointLayout(ImmutableArray<Length> Joints, ImmutableArray<Length> Pieces)
{
    // Far finer than a tape, far coarser than arithmetic.
    private const double GrainsPerMetre = 1e7;

    /// <summary>Layouts with the same pieces in another order cost the same.</summary>
    public string SamePieces { get; } = string.Join(' ', Pieces.Select(GrainsOf).Order().Select(grains => grains.ToString(CultureInfo.InvariantCulture)));

    /// <summary>Lengths that are one length on the saw.</summary>
    public static long GrainsOf(Length length) => (long)Math.Round(length.Metres * GrainsPerMetre);

    /// <summary>The length of so many grains.</summary>
    public static Length LengthOf(long grains) => Length.FromMetres(grains / GrainsPerMetre);
}
