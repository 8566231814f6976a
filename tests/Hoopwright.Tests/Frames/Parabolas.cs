using Hoopwright.Frames;

namespace Hoopwright.Tests.Frames;

/// <summary>Parabolic arches of span 1, chords of equal span.</summary>
internal static class Parabolas
{
    /// <summary>Adds one; the section may change with the secant of the chord's slope.</summary>
    internal static int[] Add(FrameBuilder frame, double rise, int chords, Freedoms feet, Func<double, FrameSection> section)
    {
        int[] nodes = [.. Enumerable.Range(0, chords + 1).Select(at => frame.Node((double)at / chords, 0, Height(at), at == 0 || at == chords ? feet : Freedoms.None))];
        for (int at = 0; at < chords; at++)
        {
            double slope = (Height(at + 1) - Height(at)) * chords;
            frame.Section = section(Math.Sqrt(1 + (slope * slope)));
            frame.Member(nodes[at], nodes[at + 1]);
        }
        return nodes;

        double Height(int at)
        {
            double x = (double)at / chords;
            return 4 * rise * x * (1 - x);
        }
    }
}
