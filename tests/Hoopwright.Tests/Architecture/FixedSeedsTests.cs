using System.Collections.Concurrent;
using CsCheck;

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
