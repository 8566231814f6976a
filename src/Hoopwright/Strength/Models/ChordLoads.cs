namespace Hoopwright.Strength.Models;

/// <summary>What loads along a chord of a bow put on its held ends: six numbers as <see cref="Frames.PlanarBow"/> takes them.</summary>
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
        // Three points give a cubic times a straight line exactly (Gauss).
        ReadOnlySpan<double> places = [0.5 - 0.38729833462074168852, 0.5, 0.5 + 0.38729833462074168852];
        ReadOnlySpan<double> weights = [5.0 / 18, 8.0 / 18, 5.0 / 18];
        for (int point = 0; point < 3; point++)
        {
            double share = places[point], xi = fromShare + ((toShare - fromShare) * share), partM = weights[point] * (toShare - fromShare) * lengthM;
            double along = (start.Along + ((end.Along - start.Along) * share)) * partM, left = (start.Left + ((end.Left - start.Left) * share)) * partM;
            double xi2 = xi * xi, xi3 = xi2 * xi;
            spread[0] += (1 - xi) * along;
            spread[3] += xi * along;
            spread[1] += (1 - (3 * xi2) + (2 * xi3)) * left;
            spread[4] += ((3 * xi2) - (2 * xi3)) * left;
            spread[2] += (xi - (2 * xi2) + xi3) * lengthM * left;
            spread[5] += (xi3 - xi2) * lengthM * left;
        }
    }
}
