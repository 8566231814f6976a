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
    private readonly List<byte[]> corpus = [.. target.Seeds];
    private int fed;

    /// <summary>Inputs worth keeping: the seeds, and each that went somewhere new.</summary>
    public IReadOnlyList<byte[]> Corpus => corpus;

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
        if (fed == 0) foreach (byte[] seedInput in target.Seeds) Feed(seedInput, isTimed: false);
        // A walk over the corpus in which each is changed as often as any other, the newest a little sooner.
        for (int last = fed + inputs; fed < last; fed++)
        {
            int number = fed;
            byte[] one = corpus[(number & 3) == 0 ? corpus.Count - 1 - (number / 4 % Math.Min(8, corpus.Count)) : number % corpus.Count];
            // Of two the shorter, but for one in sixteen: what grows goes new ways by its size alone, and takes the time of many short ones.
            byte[] other = corpus[(int)(number * 7919L % corpus.Count)];
            if (other.Length < one.Length == (number % 16 != 15)) one = other;
            byte[] made = mutator.Next(one, corpus[(int)(number * 7L % corpus.Count)]);
            if (Feed(made, isTimed) && isNew?.Invoke() == true) corpus.Add(made);
        }
    }

    private bool Feed(byte[] input, bool isTimed)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        TimeSpan began = Environment.CpuUsage.TotalTime;
        try
        {
            target.Run(input);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            Found.Add((input, fault.ToString()));
            return false;
        }
        TimeSpan took = Environment.CpuUsage.TotalTime - began;
        long taken = GC.GetAllocatedBytesForCurrentThread() - before;
        MostTaken = Math.Max(taken, MostTaken);
        if (isTimed && took > Slowest) Slowest = took;
        if (isTimed && took > Longest) Found.Add((input, FormattableString.Invariant($"took {took.TotalSeconds:0.0} s")));
        if (taken > MostBytes) Found.Add((input, FormattableString.Invariant($"took {taken >> 20} MB")));
        return true;
    }
}
