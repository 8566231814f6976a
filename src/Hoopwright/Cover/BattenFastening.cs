using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>
/// Nails and staples of a batten over film: nails close together at the start, where the film pulls first, then evenly; a
/// staple between each pair of nails. Common practice, no source.
/// </summary>
public static class BattenFastening
{
    // Marks nearer than this are one nail.
    private const double SameNailM = 1e-6;

    /// <summary>
    /// Where the nails stand, from the start of the batten: the first two at <paramref name="first"/> and twice that, then
    /// every <paramref name="spacing"/>, and the last at <paramref name="first"/> from the far end. A batten no longer than
    /// twice <paramref name="first"/> gets one nail in its middle; one without length none.
    /// </summary>
    /// <param name="run">Length of the batten.</param>
    /// <param name="first">Distance of the first nail from the end, and of the second from the first; above 0.</param>
    /// <param name="spacing">Distance of the other nails; above 0.</param>
    public static ImmutableArray<Length> Marks(Length run, Length first, Length spacing)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(first.Metres, 0, nameof(first));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(spacing.Metres, 0, nameof(spacing));
        if (run.Metres <= SameNailM) return [];
        Length last = run - first;
        if (last.Metres <= first.Metres + SameNailM) return [run / 2];

        var marks = ImmutableArray.CreateBuilder<Length>();
        marks.Add(first);
        for (int nail = 0; ; nail++)
        {
            Length mark = (first * 2) + (spacing * nail);
            if (mark.Metres >= last.Metres - SameNailM) break;
            marks.Add(mark);
        }
        marks.Add(last);
        return marks.ToImmutable();
    }

    /// <summary>Staples between so many nails: one between each pair.</summary>
    /// <param name="nails">How many nails; 0 or more.</param>
    public static int Staples(int nails) => Math.Max(0, nails - 1);
}
