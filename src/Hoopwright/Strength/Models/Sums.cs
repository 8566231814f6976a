using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Hoopwright.Strength.Models;

/// <summary>Adds up what load cases do to the many places of a frame.</summary>
internal static class Sums
{
    /// <summary>Adds so many times a part to a sum, place by place.</summary>
    /// <param name="sum">One value for each place; changed.</param>
    /// <param name="part">As many values.</param>
    /// <param name="times">The factor.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Add(double[] sum, double[] part, double times)
    {
        // Each place by itself, so that wide registers change no digit.
        Span<Vector<double>> wideSum = MemoryMarshal.Cast<double, Vector<double>>(sum.AsSpan());
        ReadOnlySpan<Vector<double>> widePart = MemoryMarshal.Cast<double, Vector<double>>(part.AsSpan(0, sum.Length));
        for (int at = 0; at < wideSum.Length; at++) wideSum[at] += times * widePart[at];
        for (int at = wideSum.Length * Vector<double>.Count; at < sum.Length; at++) sum[at] += times * part[at];
    }
}
