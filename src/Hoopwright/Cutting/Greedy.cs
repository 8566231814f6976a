namespace Hoopwright.Cutting;

/// <summary>Plans in no time: bars filled one after the other, longest piece first, the best value of bar each time.</summary>
internal static class Greedy
{
    /// <summary>The cheapest of several greedy plans; null when the limits leave pieces over.</summary>
    public static Mixture? Best(CutProblem problem, WorkMeter meter)
    {
        var best = Complete(problem, problem.Demand, Limits(problem), CutMethod.Greedy, meter);
        for (var favourite = 0; favourite < problem.Bars.Length; favourite++)
        {
            if (Complete(problem, problem.Demand, Limits(problem), CutMethod.Greedy, meter, favourite) is { } plan
                && (best is null || plan.Cost < best.Cost))
                best = plan;
        }

        return best;
    }

    /// <summary>How many bars of each kind there are.</summary>
    public static int[] Limits(CutProblem problem) => [.. problem.Bars.Select(bar => bar.Limit)];

    /// <summary>Serves what is still wanted from the bars still there; null when they do not suffice.</summary>
    /// <param name="problem">The job.</param>
    /// <param name="wanted">What is still wanted.</param>
    /// <param name="limits">How many bars of each kind are still there.</param>
    /// <param name="method">What the plan is said to be found by.</param>
    /// <param name="meter">Counts the work.</param>
    /// <param name="favourite">A bar to use wherever it holds the next piece; −1 for none.</param>
    public static Mixture? Complete(
        CutProblem problem, int[] wanted, int[] limits, CutMethod method, WorkMeter meter, int favourite = -1)
    {
        var rest = new Remainder(problem, wanted);
        var left = limits.ToArray();
        var plan = new Mixture { Method = method };
        while (rest.First() is var first && first < problem.Types)
        {
            Pattern? chosen = null;
            var whole = false;
            for (var bar = 0; bar < problem.Bars.Length; bar++)
            {
                if (left[bar] == 0 || problem.Bars[bar].Capacity < problem.Weight[first])
                    continue;
                var pattern = rest.FillLongestFirst(bar, meter);
                var all = pattern.Used == rest.TotalWeight;
                if (chosen is null || IsBetter(pattern, all, chosen, whole, favourite))
                    (chosen, whole) = (pattern, all);
            }

            if (chosen is null)
                return null;
            var times = Math.Min(chosen.TimesWithin(rest.Demand), left[chosen.Bar]);
            if (problem.Bars[chosen.Bar].IsLimited)
                left[chosen.Bar] -= times;
            rest.Take(chosen, times);
            plan.Add(chosen, times);
        }

        return plan;
    }

    /// <summary>A bar that finishes the job wins when cheapest; otherwise the favourite; otherwise cost per weight served.</summary>
    private static bool IsBetter(Pattern one, bool oneIsAll, Pattern other, bool otherIsAll, int favourite)
    {
        if (oneIsAll != otherIsAll)
            return oneIsAll ? one.Cost <= other.Cost || PerWeight(one, other) < 0 : one.Cost < other.Cost && PerWeight(one, other) < 0;
        if (oneIsAll)
            return one.Cost < other.Cost;
        if (one.Bar == favourite || other.Bar == favourite)
            return one.Bar == favourite;
        var better = PerWeight(one, other);
        return better < 0 || (better == 0 && one.Used > other.Used);
    }

    private static int PerWeight(Pattern one, Pattern other) =>
        ((Int128)one.Cost * other.Used).CompareTo((Int128)other.Cost * one.Used);

    /// <summary>What is still wanted, with a way to find the longest that fits without looking at what is used up.</summary>
    private sealed class Remainder
    {
        private readonly CutProblem _problem;
        private readonly int[] _next;

        public Remainder(CutProblem problem, int[] wanted)
        {
            _problem = problem;
            Demand = wanted.ToArray();
            _next = [.. Enumerable.Range(0, problem.Types + 1)];
            for (var type = 0; type < problem.Types; type++)
            {
                TotalWeight += (Int128)problem.Weight[type] * Demand[type];
                if (Demand[type] == 0)
                    _next[type] = type + 1;
            }
        }

        public int[] Demand { get; }

        public Int128 TotalWeight { get; private set; }

        public int First() => From(0);

        public Pattern FillLongestFirst(int bar, WorkMeter meter)
        {
            var types = new List<int>();
            var counts = new List<int>();
            var room = _problem.Bars[bar].Capacity;
            for (var type = From(0); type < _problem.Types;)
            {
                var weight = _problem.Weight[type];
                if (weight <= room)
                {
                    var count = (int)Math.Min(Demand[type], room / weight);
                    types.Add(type);
                    counts.Add(count);
                    room -= count * weight;
                }

                type = From(Math.Max(type + 1, FirstNoHeavierThan(room)));
            }

            meter.Spend(20 * (types.Count + 1));
            return new Pattern(_problem, bar, [.. types], [.. counts]);
        }

        public void Take(Pattern pattern, int times)
        {
            for (var i = 0; i < pattern.Types.Length; i++)
            {
                var type = pattern.Types[i];
                Demand[type] -= pattern.Counts[i] * times;
                if (Demand[type] == 0)
                    _next[type] = type + 1;
            }

            TotalWeight -= (Int128)pattern.Used * times;
        }

        private int From(int type)
        {
            var end = type;
            while (_next[end] != end)
                end = _next[end];
            while (_next[type] != type)
                (type, _next[type]) = (_next[type], end);
            return end;
        }

        private int FirstNoHeavierThan(long room)
        {
            var (low, high) = (0, _problem.Types);
            while (low < high)
            {
                var middle = (low + high) / 2;
                if (_problem.Weight[middle] <= room)
                    high = middle;
                else
                    low = middle + 1;
            }

            return low;
        }
    }
}
