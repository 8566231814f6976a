namespace Hoopwright.Cutting.TwoStage;

/// <summary>A stretch of a sheet between two cuts straight across, with its pieces side by side.</summary>
/// <param name="Lays">Which lays it holds, by their number, each once, in rising order.</param>
/// <param name="Counts">How many of each; above 0.</param>
internal sealed record Level(int[] Lays, int[] Counts)
{
    /// <summary>From a count for every lay; null when it holds nothing.</summary>
    public static Level? Of(ReadOnlySpan<int> countOfLay)
    {
        var lays = new List<int>();
        var counts = new List<int>();
        for (var lay = 0; lay < countOfLay.Length; lay++)
        {
            if (countOfLay[lay] == 0)
                continue;
            lays.Add(lay);
            counts.Add(countOfLay[lay]);
        }

        return lays.Count == 0 ? null : new Level([.. lays], [.. counts]);
    }

    /// <summary>How long it must be. Lays are numbered longest first.</summary>
    public long Along(SheetProblem problem) => problem.Lays[Lays[0]].Along;

    /// <summary>How much of the width it takes.</summary>
    public long Across(SheetProblem problem)
    {
        long across = 0;
        for (var i = 0; i < Lays.Length; i++)
            across += problem.Lays[Lays[i]].Across * Counts[i];
        return across;
    }

    /// <summary>The same without what is no longer wanted, which is taken off what is; null when nothing is left.</summary>
    public Level? Take(SheetProblem problem, Span<int> wanted)
    {
        var counts = new int[problem.Lays.Length];
        for (var i = 0; i < Lays.Length; i++)
        {
            var type = problem.Lays[Lays[i]].Type;
            counts[Lays[i]] = Math.Min(Counts[i], wanted[type]);
            wanted[type] -= counts[Lays[i]];
        }

        return Of(counts);
    }
}
