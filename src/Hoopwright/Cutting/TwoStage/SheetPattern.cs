namespace Hoopwright.Cutting.TwoStage;

/// <summary>A way of cutting one sheet, level by level.</summary>
internal sealed class SheetPattern : Pattern
{
    private SheetPattern(SheetProblem problem, int bar, Level[] levels, int[] types, int[] counts)
        : base(problem, bar, types, counts) => Levels = levels;

    /// <summary>Its levels.</summary>
    public Level[] Levels { get; }

    /// <summary>From its levels.</summary>
    public static SheetPattern Of(SheetProblem problem, int bar, IEnumerable<Level> levels)
    {
        Level[] all = [.. levels];
        var countOfType = new int[problem.Types];
        foreach (var level in all)
        {
            for (var i = 0; i < level.Lays.Length; i++)
                countOfType[problem.Lays[level.Lays[i]].Type] += level.Counts[i];
        }

        int[] types = [.. Enumerable.Range(0, countOfType.Length).Where(type => countOfType[type] > 0)];
        return new SheetPattern(problem, bar, all, types, [.. types.Select(type => countOfType[type])]);
    }

    public override Pattern CutDownTo(CutProblem problem, ReadOnlySpan<int> wanted)
    {
        var left = wanted.ToArray();
        var sheets = (SheetProblem)problem;
        return Of(sheets, Bar, Levels.Select(level => level.Take(sheets, left)).OfType<Level>().ToArray());
    }
}
