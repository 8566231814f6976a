namespace Hoopwright.Cutting.TwoStage;

/// <summary>Plans in no time: sheets filled one after the other, longest level first, the best value of sheet each time.</summary>
internal static class SheetGreedy
{
    /// <summary>The cheapest of several greedy plans; null when the sheets leave pieces over that may not be left out.</summary>
    public static Mixture? Best(SheetProblem problem, WorkMeter meter)
    {
        var best = Complete(problem, problem.Demand, Greedy.Limits(problem), CutMethod.Greedy, meter);
        for (var favourite = 0; favourite < problem.Sheets && !meter.IsOver; favourite++)
        {
            if (Complete(problem, problem.Demand, Greedy.Limits(problem), CutMethod.Greedy, meter, favourite) is { } plan && (best is null || plan.Cost < best.Cost))
                best = plan;
        }

        return best;
    }

    /// <summary>Serves what is still wanted from the sheets still there; null when they do not suffice.</summary>
    public static Mixture? Complete(SheetProblem problem, int[] wanted, int[] limits, CutMethod method, WorkMeter meter, int favourite = -1)
    {
        var left = wanted.ToArray();
        var sheets = limits.ToArray();
        var plan = new Mixture { Method = method };
        var total = left.Select((count, type) => (Int128)count * problem.Weight[type]).Aggregate(Int128.Zero, (a, b) => a + b);
        while (total > 0)
        {
            SheetPattern? chosen = null;
            for (var bar = 0; bar < problem.Sheets; bar++)
            {
                if (sheets[bar] == 0)
                    continue;
                foreach (var turned in Turns)
                {
                    var pattern = Filled(problem, bar, left, turned, meter);
                    if (pattern.Types.Length > 0 && (chosen is null || IsBetter(pattern, chosen, total, favourite)))
                        chosen = pattern;
                }
            }

            chosen = LessByLeavingOut(problem, chosen, left);
            if (chosen is null)
                return null;
            var times = Math.Min(chosen.TimesWithin(left), sheets[chosen.Bar]);
            if (problem.Bars[chosen.Bar].IsLimited)
                sheets[chosen.Bar] -= times;
            for (var i = 0; i < chosen.Types.Length; i++)
                left[chosen.Types[i]] -= chosen.Counts[i] * times;
            total -= (Int128)chosen.Used * times;
            plan.Add(chosen, times);
        }

        return plan;
    }

    // As given and the other way; pieces that lie one way only are tried as they lie.
    private static readonly bool[] Turns = [false, true];

    /// <summary>A level filled with what is wanted, longest pieces first; what it takes is taken off.</summary>
    /// <param name="problem">The job.</param>
    /// <param name="first">The first lay that is short enough.</param>
    /// <param name="width">The room across.</param>
    /// <param name="wanted">What is still wanted.</param>
    /// <param name="turned">Which way to prefer.</param>
    public static Level? Filled(SheetProblem problem, int first, long width, int[] wanted, bool turned)
    {
        var counts = new int[problem.Lays.Length];
        // The preferred way before the other one, since the first that fits takes all it can.
        for (var way = 0; way < 2; way++)
        {
            for (var lay = first; lay < counts.Length; lay++)
            {
                var (type, across, _, isTurned) = problem.Lays[lay];
                if (isTurned == turned == (way == 1) || wanted[type] == 0 || across > width)
                    continue;
                var count = (int)Math.Min(problem.Slit ? wanted[type] : 1, width / across);
                counts[lay] += count;
                wanted[type] -= count;
                width -= count * across;
                if (!problem.Slit)
                    return Level.Of(counts);
            }
        }

        return Level.Of(counts);
    }

    private static SheetPattern Filled(SheetProblem problem, int bar, int[] wanted, bool turned, WorkMeter meter)
    {
        var left = wanted.ToArray();
        var (width, room) = (problem.Widths[bar], problem.Lengths[bar]);
        var levels = new List<Level>();
        while (true)
        {
            var first = FirstThatFits(problem, left, width, room, turned);
            if (first < 0)
                break;
            // The piece that gives the level its length, then the longest that still fit beside it.
            var (type, across, along, _) = problem.Lays[first];
            left[type]--;
            var rest = problem.Slit ? Filled(problem, first, width - across, left, turned) : null;
            levels.Add(With(rest, first));
            room -= along;
        }

        meter.Spend((levels.Count + 1) * (problem.Lays.Length + 10L));
        return SheetPattern.Of(problem, bar, levels);
    }

    private static Level With(Level? rest, int lay)
    {
        if (rest is null)
            return new Level([lay], [1]);
        var at = Array.IndexOf(rest.Lays, lay);
        return at >= 0
            ? rest with { Counts = [.. rest.Counts.Select((count, i) => i == at ? count + 1 : count)] }
            : new Level([lay, .. rest.Lays], [1, .. rest.Counts]);
    }

    private static int FirstThatFits(SheetProblem problem, int[] wanted, long width, long room, bool turned)
    {
        var other = -1;
        for (var lay = 0; lay < problem.Lays.Length; lay++)
        {
            var (type, across, along, isTurned) = problem.Lays[lay];
            if (wanted[type] == 0 || across > width || along > room)
                continue;
            if (isTurned == turned)
                return lay;
            if (other < 0)
                other = lay;
        }

        return other;
    }

    /// <summary>A sheet that finishes the job wins when cheapest; otherwise the favourite; otherwise cost per area served.</summary>
    private static bool IsBetter(Pattern one, Pattern other, Int128 total, int favourite)
    {
        var (oneIsAll, otherIsAll) = (one.Used == total, other.Used == total);
        if (oneIsAll && otherIsAll)
            return one.Cost < other.Cost;
        if (oneIsAll != otherIsAll)
            return oneIsAll ? one.Cost <= other.Cost || PerArea(one, other) < 0 : one.Cost < other.Cost && PerArea(one, other) < 0;
        if (one.Bar != other.Bar && (one.Bar == favourite || other.Bar == favourite))
            return one.Bar == favourite;
        var better = PerArea(one, other);
        return better < 0 || (better == 0 && one.Used > other.Used);
    }

    private static int PerArea(Pattern one, Pattern other) =>
        ((Int128)one.Cost * other.Used).CompareTo((Int128)other.Cost * one.Used);

    /// <summary>Leaving all its pieces out where that costs less than the sheet, one by one; or where there is none left.</summary>
    private static SheetPattern? LessByLeavingOut(SheetProblem problem, SheetPattern? chosen, int[] left)
    {
        if (problem.Bars.Length == problem.Sheets)
            return chosen;
        var costOf = new long?[problem.Types];
        for (var bar = problem.Sheets; bar < problem.Bars.Length; bar++)
            costOf[problem.LeavesOut[bar]] = problem.Bars[bar].Price;
        if (chosen is not null)
        {
            var without = chosen.Types.Select((type, i) => costOf[type] * chosen.Counts[i]).ToArray();
            if (without.Contains(null) || without.Sum() >= chosen.Cost)
                return chosen;
        }

        for (var bar = problem.Sheets; bar < problem.Bars.Length; bar++)
        {
            if (left[problem.LeavesOut[bar]] > 0 && (chosen is null || chosen.CountOf(problem.LeavesOut[bar]) > 0))
                return problem.LeftOut(bar);
        }

        return null;
    }
}
