namespace Hoopwright.Testing.Fuzz;

/// <summary>
/// Feeds a reader with inputs made from those that led somewhere new, and gathers what it cannot bear: an exception, more than a second, more
/// than 500 MB taken for one input. Seconds are those of the processor, so that other work on the machine is not taken for a slow reader.
/// </summary>
/// <param name="target">The reader.</param>
/// <param name="seed">The same seed gives the same inputs, where coverage is the same.</param>
/// <param name="isNew">Asked after each input whether it went where none went before; null where that cannot be known, and then the seeds alone are changed.</param>
public sealed class Fuzzer(FuzzTarget target, int seed, Func<bool>? isNew = null)
{
    private const long MostBytes = 500L << 20;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    private readonly Mutator mutator = new(seed);
    private readonly TreeMutator trees = new(seed);
    private readonly List<byte[]> corpus = [.. target.Seeds];
    private readonly List<byte[]> whole = [];
    private int fed;

    /// <summary>Inputs worth keeping: the seeds, and each that went somewhere new.</summary>
    public IReadOnlyList<byte[]> Corpus => corpus;

    /// <summary>How many of the inputs made gave a result, so that what comes after reading was fed too.</summary>
    public int Whole { get; private set; }

    /// <summary>What was found: the input, and what happened.</summary>
    public List<(byte[] Input, string Fault)> Found { get; } = [];

    /// <summary>The longest that one input took, of the processor.</summary>
    public TimeSpan Slowest { get; private set; }

    /// <summary>The most memory taken for one input, all of it together, freed or not.</summary>
    public long MostTaken { get; private set; }

    /// <summary>Feeds it; once more, it goes on.</summary>
    /// <param name="inputs">How many inputs.</param>
    /// <param name="isTimed">False where other work in the same process makes times mean nothing.</param>
    public void Run(int inputs, bool isTimed = true)
    {
        // First untimed: what the compiler takes for a way through the reader is not the reader's.
        if (fed == 0)
        {
            foreach (byte[] seedInput in target.Seeds) if (Feed(seedInput, isTimed: false) == true) whole.Add(seedInput);
        }
        for (int last = fed + inputs; fed < last; fed++)
        {
            byte[] made = ((fed & 1) == 0 ? null : OfWhole(fed / 2)) ?? OfAny(fed / 2);
            bool? isWhole = Feed(made, isTimed);
            if (isWhole == true) Whole++;
            if (isWhole is null || isNew?.Invoke() != true) continue;
            corpus.Add(made);
            if (isWhole == true) whole.Add(made);
        }
    }

    // A walk over those that gave a result, changed within the rules of JSON: few of the others come further than the reader.
    private byte[]? OfWhole(int number) => whole.Count == 0 ? null : trees.Next(whole[number % whole.Count], whole[(int)(number * 7919L % whole.Count)]);

    // A walk over the corpus in which each is changed as often as any other, the newest a little sooner.
    private byte[] OfAny(int number)
    {
        byte[] one = corpus[(number & 3) == 0 ? corpus.Count - 1 - (number / 4 % Math.Min(8, corpus.Count)) : number % corpus.Count];
        // Of two the shorter, but for one in sixteen: what grows goes new ways by its size alone, and takes the time of many short ones.
        byte[] other = corpus[(int)(number * 7919L % corpus.Count)];
        if (other.Length < one.Length == (number % 16 != 15)) one = other;
        return mutator.Next(one, corpus[(int)(number * 7L % corpus.Count)]);
    }

    // Whether a result came of it; null where something was found.
    private bool? Feed(byte[] input, bool isTimed)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        bool isWhole;
        TimeSpan began = Environment.CpuUsage.TotalTime;
        try
        {
            isWhole = target.Run(input);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            Found.Add((input, fault.ToString()));
            return null;
        }
        TimeSpan took = Environment.CpuUsage.TotalTime - began;
        long taken = GC.GetAllocatedBytesForCurrentThread() - before;
        MostTaken = Math.Max(taken, MostTaken);
        if (isTimed && took > Slowest) Slowest = took;
        if (isTimed && took > Longest) Found.Add((input, FormattableString.Invariant($"took {took.TotalSeconds:0.0} s")));
        if (taken > MostBytes) Found.Add((input, FormattableString.Invariant($"took {taken >> 20} MB")));
        return isWhole;
    }
}
