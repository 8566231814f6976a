namespace Hoopwright.Cutting;

/// <summary>A way of filling one bar: how many pieces of each length, heaviest length first, counts above 0.</summary>
internal class Pattern
{
    public Pattern(CutProblem problem, int bar, int[] types, int[] counts)
    {
        Bar = bar;
        Types = types;
        Counts = counts;
        for (var i = 0; i < types.Length; i++)
            Used += problem.Weight[types[i]] * counts[i];
        Cost = problem.CostOf(bar, Used);
    }

    public int Bar { get; }

    public int[] Types { get; }

    public int[] Counts { get; }

    /// <summary>The weight of the pieces.</summary>
    public long Used { get; }

    /// <summary>The bar's price less the worth of its rest.</summary>
    public long Cost { get; }

    /// <summary>By bar, then fullest first, then longest pieces first: a fixed order for writing.</summary>
    public static IComparer<Pattern> InOrder { get; } = Comparer<Pattern>.Create((one, other) =>
    {
        var compared = one.Bar != other.Bar ? one.Bar.CompareTo(other.Bar) : other.Used.CompareTo(one.Used);
        for (var i = 0; compared == 0 && i < Math.Min(one.Types.Length, other.Types.Length); i++)
        {
            compared = one.Types[i] != other.Types[i]
                ? one.Types[i].CompareTo(other.Types[i])
                : other.Counts[i].CompareTo(one.Counts[i]);
        }

        return compared != 0 ? compared : other.Types.Length.CompareTo(one.Types.Length);
    });

    /// <summary>From a count for every length.</summary>
    public static Pattern Of(CutProblem problem, int bar, ReadOnlySpan<int> countOfType)
    {
        var types = new List<int>();
        var counts = new List<int>();
        for (var type = 0; type < countOfType.Length; type++)
        {
            if (countOfType[type] == 0)
                continue;
            types.Add(type);
            counts.Add(countOfType[type]);
        }

        return new Pattern(problem, bar, [.. types], [.. counts]);
    }

    /// <summary>How many pieces of one length.</summary>
    public int CountOf(int type)
    {
        var at = Array.IndexOf(Types, type);
        return at < 0 ? 0 : Counts[at];
    }

    /// <summary>The same without what is no longer wanted.</summary>
    public virtual Pattern CutDownTo(CutProblem problem, ReadOnlySpan<int> wanted)
    {
        var counts = new int[problem.Types];
        for (var i = 0; i < Types.Length; i++)
            counts[Types[i]] = Math.Min(Counts[i], wanted[Types[i]]);
        return Of(problem, Bar, counts);
    }

    /// <summary>How many whole times it can be cut without making more than is wanted.</summary>
    public int TimesWithin(ReadOnlySpan<int> demand)
    {
        var times = int.MaxValue;
        for (var i = 0; i < Types.Length; i++)
            times = Math.Min(times, demand[Types[i]] / Counts[i]);
        return times;
    }

    /// <summary>Equal when the same bar is filled with the same pieces.</summary>
    public sealed class Same : IEqualityComparer<Pattern>
    {
        public static Same Instance { get; } = new();

        public bool Equals(Pattern? x, Pattern? y) =>
            ReferenceEquals(x, y) || (x is not null && y is not null && x.Bar == y.Bar && x.Used == y.Used
                && x.Types.AsSpan().SequenceEqual(y.Types) && x.Counts.AsSpan().SequenceEqual(y.Counts));

        public int GetHashCode(Pattern obj)
        {
            var hash = obj.Bar;
            for (var i = 0; i < obj.Types.Length; i++)
                hash = unchecked((((hash * 31) + obj.Types[i]) * 31) + obj.Counts[i]);
            return hash;
        }
    }
}
