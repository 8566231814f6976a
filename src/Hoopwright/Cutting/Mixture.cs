namespace Hoopwright.Cutting;

/// <summary>A whole plan in the engine's terms: patterns, each cut so many times.</summary>
internal sealed class Mixture
{
    private readonly Dictionary<Pattern, int> _times = new(Pattern.Same.Instance);

    /// <summary>What all the bars cost.</summary>
    public long Cost { get; private set; }

    /// <summary>How many bars.</summary>
    public long BarCount { get; private set; }

    /// <summary>What found it.</summary>
    public CutMethod Method { get; init; }

    /// <summary>The patterns and their times, in the order they were first added.</summary>
    public IEnumerable<(Pattern Pattern, int Times)> Parts => _times.Select(part => (part.Key, part.Value));

    /// <summary>Adds bars cut to a pattern.</summary>
    public void Add(Pattern pattern, int times)
    {
        if (times == 0)
            return;
        _times[pattern] = _times.GetValueOrDefault(pattern) + times;
        Cost += pattern.Cost * times;
        BarCount += times;
    }

    /// <summary>Adds all of another mixture.</summary>
    public void Add(Mixture other)
    {
        foreach (var (pattern, times) in other.Parts)
            Add(pattern, times);
    }
}
