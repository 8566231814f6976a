namespace Hoopwright.Cutting;

/// <summary>The likeliest branches of a mixture: of each kind, the few whose values are nearest halfway between whole numbers.</summary>
internal static class BranchChoices
{
    private const int OfEachKind = 10;
    private const double Least = 1e-4;

    public static List<BranchChoice> Of(CutProblem problem, List<Pattern> pool, List<(int Index, double Amount)> solution)
    {
        var choices = new List<BranchChoice>();
        AddBars(problem, pool, solution, choices, shares: true);
        AddPairs(pool, solution, choices);
        AddSingles(pool, solution, choices);
        return choices;
    }

    /// <summary>The quick choice: a kind of bar, else a pair of lengths, else the pattern nearest to a further whole bar.</summary>
    public static BranchChoice? Quick(CutProblem problem, List<Pattern> pool, List<(int Index, double Amount)> solution)
    {
        var choices = new List<BranchChoice>();
        AddBars(problem, pool, solution, choices, shares: false);
        if (choices.Count == 0)
            AddPairs(pool, solution, choices);
        if (choices.Count > 0)
            return choices.MaxBy(choice => Math.Round(Fraction(choice.Value), 6));
        var single = solution.Where(part => Fraction(part.Amount) > Least / 10)
            .OrderByDescending(part => Math.Round(part.Amount - Math.Floor(part.Amount), 6)).ThenBy(part => part.Index).ToList();
        return single.Count == 0 ? null : Single(pool, single[0]);
    }

    /// <summary>How many bars of a kind, how many in all, how many pieces of a length from a kind of bar.</summary>
    private static void AddBars(
        CutProblem problem, List<Pattern> pool, List<(int Index, double Amount)> solution, List<BranchChoice> choices, bool shares)
    {
        if (problem.Bars.Length < 2)
            return;
        var counts = new double[problem.Bars.Length];
        var pieces = new double[problem.Bars.Length, problem.Types];
        foreach (var (index, amount) in solution)
        {
            var pattern = pool[index];
            counts[pattern.Bar] += amount;
            for (var i = 0; i < pattern.Types.Length; i++)
                pieces[pattern.Bar, pattern.Types[i]] += amount * pattern.Counts[i];
        }

        if (shares && Fraction(counts.Sum()) > Least)
            choices.Add(new BranchChoice(_ => 1, counts.Sum()));
        choices.AddRange(Enumerable.Range(0, counts.Length).Where(bar => Fraction(counts[bar]) > Least)
            .Select(bar => new BranchChoice(pattern => pattern.Bar == bar ? 1 : 0, counts[bar])));
        if (!shares)
            return;
        var byLength =
            from bar in Enumerable.Range(0, counts.Length)
            from type in Enumerable.Range(0, problem.Types)
            where Fraction(pieces[bar, type]) > Least
            orderby Math.Round(Fraction(pieces[bar, type]), 6) descending, type, bar
            select new BranchChoice(pattern => pattern.Bar == bar ? pattern.CountOf(type) : 0, pieces[bar, type]);
        choices.AddRange(byLength.Take(OfEachKind));
    }

    /// <summary>How many bars have two given lengths together, or one length twice.</summary>
    private static void AddPairs(List<Pattern> pool, List<(int Index, double Amount)> solution, List<BranchChoice> choices)
    {
        var sums = new SortedDictionary<(int One, int Other), double>();
        foreach (var (index, amount) in solution)
        {
            var pattern = pool[index];
            for (var i = 0; i < pattern.Types.Length; i++)
            {
                for (var j = pattern.Counts[i] > 1 ? i : i + 1; j < pattern.Types.Length; j++)
                {
                    var pair = (pattern.Types[i], pattern.Types[j]);
                    sums[pair] = sums.GetValueOrDefault(pair) + amount;
                }
            }
        }

        choices.AddRange(sums.Where(pair => Fraction(pair.Value) > Least)
            .OrderByDescending(pair => Math.Round(Fraction(pair.Value), 6)).ThenBy(pair => pair.Key).Take(OfEachKind)
            .Select(pair => new BranchChoice(pattern => Together(pattern, pair.Key) ? 1 : 0, pair.Value)));
    }

    /// <summary>How many bars are cut to one pattern.</summary>
    private static void AddSingles(List<Pattern> pool, List<(int Index, double Amount)> solution, List<BranchChoice> choices) =>
        choices.AddRange(solution.Where(part => Fraction(part.Amount) > Least / 10)
            .OrderByDescending(part => Math.Round(Fraction(part.Amount), 6)).ThenBy(part => part.Index)
            .Take(choices.Count == 0 ? 1 : OfEachKind)
            .Select(part => Single(pool, part)));

    private static BranchChoice Single(List<Pattern> pool, (int Index, double Amount) part) =>
        new(pattern => ReferenceEquals(pattern, pool[part.Index]) ? 1 : 0, part.Amount);

    private static bool Together(Pattern pattern, (int One, int Other) pair) => pair.One == pair.Other
        ? pattern.CountOf(pair.One) > 1
        : pattern.CountOf(pair.One) != 0 && pattern.CountOf(pair.Other) != 0;

    /// <summary>How far a number is from the nearest whole one.</summary>
    private static double Fraction(double value) => Math.Min(value - Math.Floor(value), Math.Ceiling(value) - value);
}
