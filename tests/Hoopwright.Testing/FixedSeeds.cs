using System.Globalization;
using System.Runtime.CompilerServices;
using CsCheck;

#pragma warning disable IDE0130 // In the namespace around every test project, so that it comes before CsCheck's own Sample: see the summary.
namespace Hoopwright;

/// <summary>
/// Property tests with the same cases in every run. CsCheck takes its cases from the clock, so that a counterexample which
/// happens to turn up would stop a change that has nothing to do with it. Standing in the namespace that all tests share,
/// these methods are found before those of the same name that <c>using CsCheck</c> brings.
/// </summary>
public static class FixedSeeds
{
    /// <summary>
    /// Set to a whole number, this environment variable has each property tried on that many times as many cases as it asks
    /// for, from fresh seeds. What turns up is kept as a unit test.
    /// </summary>
    public const string FreshVariable = "HOOPWRIGHT_FRESH_SEEDS";

    private const uint Stream = 1;

    private static readonly int FreshTimes =
        int.TryParse(Environment.GetEnvironmentVariable(FreshVariable), CultureInfo.InvariantCulture, out int times) ? Math.Max(0, times) : 0;

    // CsCheck names a seed in what it says of a failure; set again, it is the first case and the others are fresh.
    private static readonly bool OneSeed = Environment.GetEnvironmentVariable("CsCheck_Seed") is not null;

    /// <summary>Fails with the smallest case found for which the property does not hold.</summary>
    /// <param name="gen">Makes the cases.</param>
    /// <param name="holds">False, or an exception, where the property does not hold.</param>
    /// <param name="iter">How many cases.</param>
    /// <param name="threads">How many at a time; as many as there are processors when left out.</param>
    /// <param name="of">The test, from which the seeds come; left out.</param>
    public static void Sample<T>(this Gen<T> gen, Func<T, bool> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "")
    {
        if (FreshTimes > 0 || OneSeed)
        {
            Check.Sample(gen, holds, iter: iter * Math.Max(1, FreshTimes), threads: threads);
            return;
        }

        // Without a bound the thread pool takes each long case for a stuck one and adds a thread for it, in the end hundreds with their memory.
        ParallelLoopResult loop = Parallel.For(0, iter, new ParallelOptions { MaxDegreeOfParallelism = threads < 0 ? Environment.ProcessorCount : threads }, (number, state) =>
        {
            // Cases before the first that fails are all tried, so that it is the same one in every run.
            if (!Holds(gen, holds, CaseOf(of, number))) state.Break();
        });
        if (loop.LowestBreakIteration is not { } failed) return;

        // Tried again by CsCheck, which makes it smaller and says what it is.
        string seed = CaseOf(of, failed).ToString();
        Check.Sample(gen, holds, seed: seed, iter: iter, threads: threads);
        throw new InvalidOperationException($"The property failed for the seed {seed}, and held when it was tried again: it depends on more than its case.");
    }

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T>(this Gen<T> gen, Action<T> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => Held(() => holds(one)), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => holds(one.Item1, one.Item2), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => Held(() => holds(one.Item1, one.Item2)), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => holds(one.Item1, one.Item2, one.Item3), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => Held(() => holds(one.Item1, one.Item2, one.Item3)), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => holds(one.Item1, one.Item2, one.Item3, one.Item4), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => Held(() => holds(one.Item1, one.Item2, one.Item3, one.Item4)), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Func<T1, T2, T3, T4, T5, bool> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => holds(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => Held(() => holds(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5)), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Func<T1, T2, T3, T4, T5, T6, bool> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => holds(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5, one.Item6), iter, threads, of);

    /// <inheritdoc cref="Sample{T}(Gen{T}, Func{T, bool}, long, int, string)"/>
    public static void Sample<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> holds, long iter = 100, int threads = -1, [CallerMemberName] string of = "") =>
        gen.Sample(one => Held(() => holds(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5, one.Item6)), iter, threads, of);

    private static bool Held(Action holds)
    {
        holds();
        return true;
    }

    private static bool Holds<T>(Gen<T> gen, Func<T, bool> holds, PCG random)
    {
        try
        {
            return holds(gen.Generate(random, null, out _));
        }
#pragma warning disable CA1031 // Whatever is thrown says that the property does not hold; CsCheck tells it when the case is tried again.
        catch (Exception)
#pragma warning restore CA1031
        {
            return false;
        }
    }

    /// <summary>The random numbers of one case of one test: from its name and number, well mixed, and from nothing else.</summary>
    private static PCG CaseOf(string test, long number)
    {
        unchecked
        {
            ulong mixed = 14695981039346656037;
            foreach (char letter in test) mixed = (mixed ^ letter) * 1099511628211;
            mixed += (ulong)number * 0x9E3779B97F4A7C15;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return new PCG(Stream, mixed ^ (mixed >> 31));
        }
    }
}
