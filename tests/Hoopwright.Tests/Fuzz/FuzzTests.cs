using Hoopwright.Testing.Fuzz;

namespace Hoopwright.Tests.Fuzz;

/// <summary>The short form of the fuzzing that fuzz/run does at length: the same inputs each time, and those in which something was found.</summary>
public sealed class FuzzTests
{
    public static TheoryData<string> Targets { get; } = [.. FuzzTargets.All.Select(target => target.Name)];

    [Theory]
    [MemberData(nameof(Targets))]
    public void Whatever_a_reader_is_given_it_answers(string name)
    {
        FuzzTarget target = FuzzTargets.All.Single(each => each.Name == name);
        Fuzzer fuzzer = new(target, 20260418);
        // Fewer of those that take long to work out.
        fuzzer.Run(name is "works" ? 60 : name is "plan" or "merge" ? 400 : 1500, isTimed: false);
        Assert.True(fuzzer.Whole > 0, "None of the inputs could be worked out.");
        Assert.True(fuzzer.Found.Count == 0, string.Join("\n\n", fuzzer.Found.Take(3).Select(found => $"{found.Fault}\n{System.Text.Encoding.UTF8.GetString(found.Input)[..Math.Min(2000, found.Input.Length)]}")));
    }
}
