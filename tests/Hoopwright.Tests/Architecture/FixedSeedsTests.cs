using System.Collections.Concurrent;
using CsCheck;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Architecture;

public sealed class FixedSeedsTests
{
    private static bool IsFresh => Environment.GetEnvironmentVariable(FixedSeeds.FreshVariable) is not null || Environment.GetEnvironmentVariable("CsCheck_Seed") is not null;

    [Fact]
    public void A_property_is_tried_on_the_same_cases_in_every_run_on_any_number_of_threads()
    {
        Assert.SkipWhen(IsFresh, "Fresh seeds are asked for.");
        int[] one = Cases(threads: 1);
        Assert.Equal(one, Cases(threads: 3));
        Assert.InRange(one.Distinct().Count(), 150, 200);
        // Written down once: the cases are those of every other machine and day too.
        Assert.Equal(LargeCase, one[150]);
    }

    [Fact]
    public void A_property_that_fails_says_for_which_case() =>
        Assert.Contains("seed", Assert.Throws<CsCheckException>(() => Gen.Int[0, 1000].Sample(number => number < 900, iter: 500)).Message, StringComparison.Ordinal);

    [Fact]
    public void No_property_names_a_seed_of_its_own()
    {
        // CsCheck takes a seed for the first case only and the rest from the clock, so that such a test is another one in every run.
        string[] named = [.. Directory.GetFiles(Path.Combine(SamplePlans.Root, "tests"), "*.cs", SearchOption.AllDirectories)
            .Where(file => Path.GetFileNameWithoutExtension(file) is not (nameof(FixedSeeds) or nameof(FixedSeedsTests)) && !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(file => File.ReadAllText(file).Contains(" seed: ", StringComparison.Ordinal))];
        Assert.Empty(named);
    }

    private const int LargeCase = 38930;

    private static int[] Cases(int threads)
    {
        var seen = new ConcurrentBag<int>();
        Gen.Int.Sample(number =>
        {
            seen.Add(number);
            return true;
        }, iter: 200, threads: threads);
        return [.. seen.Order()];
    }
}
