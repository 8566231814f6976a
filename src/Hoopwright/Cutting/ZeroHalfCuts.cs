namespace Hoopwright.Cutting;

/// <summary>
/// Rounds up half the sum of a few rows (Chvátal-Gomory cuts with multipliers 0 and 1/2): where the pieces wanted of one, two
/// or three lengths together are odd in number, half of them rounded up is at most the sum of every bar's half rounded up.
/// </summary>
internal static class ZeroHalfCuts
{
    private const int MostARound = 25;

    /// <summary>The cuts that a solution breaks most.</summary>
    public static List<SearchRow> Violated(CutProblem problem, List<Pattern> pool, List<(int Index, double Amount)> solution)
    {
        var columns = new List<int>[problem.Types];
        var neighbours = new SortedSet<int>[problem.Types];
        var surplus = new double[problem.Types];
        for (var type = 0; type < problem.Types; type++)
            (columns[type], neighbours[type], surplus[type]) = ([], [], -problem.Demand[type]);
        for (var column = 0; column < solution.Count; column++)
        {
            var pattern = pool[solution[column].Index];
            for (var i = 0; i < pattern.Types.Length; i++)
            {
                surplus[pattern.Types[i]] += solution[column].Amount * pattern.Counts[i];
                if (pattern.Counts[i] % 2 == 0)
                    continue;
                columns[pattern.Types[i]].Add(column);
                for (var j = 0; j < pattern.Types.Length; j++)
                {
                    if (pattern.Counts[j] % 2 != 0 && pattern.Types[j] > pattern.Types[i])
                        neighbours[pattern.Types[i]].Add(pattern.Types[j]);
                }
            }
        }

        var found = new List<(double Slack, int[] Types)>();
        var isOdd = new bool[solution.Count];
        for (var one = 0; one < problem.Types; one++)
        {
            Try([one]);
            var near = neighbours[one].ToArray();
            foreach (var two in near)
            {
                Try([one, two]);
                // A third that shares bars with either.
                foreach (var three in neighbours[two].Union(near).Where(type => type > two).Order())
                    Try([one, two, three]);
            }
        }

        return
        [
            .. found.OrderBy(cut => cut.Slack).ThenBy(cut => cut.Types[0])
                .ThenBy(cut => cut.Types.Length).ThenBy(cut => cut.Types[^1]).Take(MostARound).Select(cut => Row(problem, pool, cut.Types)),
        ];

        void Try(int[] types)
        {
            if (types.Sum(type => (long)problem.Demand[type]) % 2 == 0)
                return;
            // Broken where the bars with an odd number of these, and the surplus, come to less than one.
            var slack = types.Sum(type => Math.Max(0, surplus[type]));
            Array.Clear(isOdd);
            foreach (var type in types)
            {
                foreach (var column in columns[type])
                    isOdd[column] = !isOdd[column];
            }

            for (var column = 0; column < isOdd.Length && slack < 0.97; column++)
            {
                if (isOdd[column])
                    slack += solution[column].Amount;
            }

            if (slack < 0.97)
                found.Add((Math.Round(slack, 6), types));
        }
    }

    private static SearchRow Row(CutProblem problem, List<Pattern> pool, int[] types) => new(
        [.. pool.Select(pattern => (types.Sum(pattern.CountOf) + 1) / 2)],
        RowSense.AtLeast,
        (types.Sum(type => (long)problem.Demand[type]) + 1) / 2);
}
