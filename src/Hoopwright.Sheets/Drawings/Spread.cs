namespace Hoopwright.Sheets.Drawings;

/// <summary>Moves things along a line as little as possible until none is too near the next.</summary>
internal static class Spread
{
    /// <summary>
    /// Positions with the least sum of squared moves that keep the order and the least distances, within two limits:
    /// pool adjacent violators (Barlow and others, Statistical Inference under Order Restrictions, 1972; from memory).
    /// Where they cannot all fit, they start at the lower limit and run over the upper.
    /// </summary>
    internal static double[] Apart(IReadOnlyList<double> wanted, IReadOnlyList<double> widths, double gap, double low, double high)
    {
        int count = wanted.Count;
        double[] lead = new double[count];
        for (int index = 1; index < count; index++)
            lead[index] = lead[index - 1] + ((widths[index - 1] + widths[index]) / 2) + gap;
        List<(double Sum, int Count)> blocks = [];
        for (int index = 0; index < count; index++)
        {
            (double Sum, int Count) block = (wanted[index] - lead[index], 1);
            while (blocks.Count > 0 && blocks[^1].Sum / blocks[^1].Count > block.Sum / block.Count)
            {
                block = (block.Sum + blocks[^1].Sum, block.Count + blocks[^1].Count);
                blocks.RemoveAt(blocks.Count - 1);
            }

            blocks.Add(block);
        }

        double[] placed = new double[count];
        int next = 0;
        foreach ((double sum, int size) in blocks)
        {
            for (int index = 0; index < size; index++, next++)
            {
                double least = low + (widths[0] / 2), most = high - (widths[^1] / 2) - lead[^1];
                placed[next] = Math.Max(least, Math.Min(most, sum / size)) + lead[next];
            }
        }

        return placed;
    }

    /// <summary>How much room they need in all.</summary>
    internal static double Needed(IReadOnlyList<double> widths, double gap) => widths.Sum() + (gap * Math.Max(0, widths.Count - 1));
}
