using Hoopwright.Frames;

namespace Hoopwright.Strength.Models;

/// <summary>What loads along a chord of a bow put on its held ends: six numbers as <see cref="PlanarBow"/> takes them.</summary>
internal static class ChordLoads
{
    /// <summary>Adds a load on a part of a chord, straight between its ends, in the chord's own axes.</summary>
    /// <param name="spread">Six numbers: along, to the left, turning, at the start and at the end.</param>
    /// <param name="lengthM">Length of the chord.</param>
    /// <param name="fromShare">Start of the part, 0 to 1.</param>
    /// <param name="toShare">End of the part.</param>
    /// <param name="start">Load at its start, N/m along and to the left.</param>
    /// <param name="end">Load at its end.</param>
    internal static void Add(Span<double> spread, double lengthM, double fromShare, double toShare, (double Along, double Left) start, (double Along, double Left) end)
    {
        for (int point = 0; point < 3; point++)
        {
            double share = HeldEnds.Places[point], xi = fromShare + ((toShare - fromShare) * share), partM = HeldEnds.Weights[point] * (toShare - fromShare) * lengthM;
            double along = (start.Along + ((end.Along - start.Along) * share)) * partM, left = (start.Left + ((end.Left - start.Left) * share)) * partM;
            spread[0] += (1 - xi) * along;
            spread[3] += xi * along;
            HeldEnds.AddAcross(spread, left, lengthM, xi, phi: 0, shift: 1, turn: 2, apart: 3, sense: 1);
        }
    }
}
