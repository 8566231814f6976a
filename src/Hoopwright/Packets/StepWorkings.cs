using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>Workings of the steps of the build and of the re-cover.</summary>
internal static class StepWorkings
{
    private static readonly Citation Practice = Citation.CommonPractice;

    public static ImmutableArray<Working> All { get; } =
    [
        .. Sum("steps", "steps.build[*]"),
        .. Sum("steps.recoverWork", "steps.recover[*]"),
        .. new[] { "steps.build[*]", "steps.recover[*]" }.SelectMany(Step),
    ];

    private static IEnumerable<Working> Sum(string path, string step) =>
    [
        Workings.Of(path + ".least", "the sum over the steps", Citation.Geometry, [step + ".least"], ["crew.skill"]),
        Workings.Of(path + ".likely", "the sum over the steps", Citation.Geometry, [step + ".likely"], ["crew.skill"]),
        Workings.Of(path + ".most", "the sum over the steps", Citation.Geometry, [step + ".most"], ["crew.skill"]),
    ];

    private static IEnumerable<Working> Step(string step) =>
    [
        Workings.Of(step + ".least", "Σ count · least for each, in whole minutes; for beginners " + StepTimes.BeginnerRule.Text, StepTimes.BeginnerRule.Source, [step + ".tasks[*].count", step + ".tasks[*].leastEach"], ["crew.skill"]),
        Workings.Of(step + ".likely", "midway between least and most of practised people; for beginners " + StepTimes.BeginnerRule.Text, StepTimes.BeginnerRule.Source, [step + ".least", step + ".most"], ["crew.skill"]),
        Workings.Of(step + ".most", "Σ count · most for each, in whole minutes; for beginners " + StepTimes.BeginnerRule.Text, StepTimes.BeginnerRule.Source, [step + ".tasks[*].count", step + ".tasks[*].mostEach"], ["crew.skill"]),
        Workings.Of(step + ".after[*].wait", "time by the clock: a jig holds a post 12 to 24 h while concrete sets; three days before film pulls at it; three business days for the one-call service", new("High Tunnels, University of Vermont Center for Sustainable Agriculture (2007); one-call notice of Oklahoma", "p. 44", Standing.Published), [], []),
        Workings.Of(step + ".tasks[*].count", "counted from the members, runs and lines of the takeoff that the step handles", Citation.Geometry, [step + ".materials[*].quantity"], []),
        Workings.Of(step + ".tasks[*].leastEach", "from memory, set against the published sum", StepTimes.Rates, [], []),
        Workings.Of(step + ".tasks[*].mostEach", "from memory, set against the published sum", StepTimes.Rates, [], []),
        Workings.Of(step + ".leastPeople", "hands that it takes at once", Practice, [], []),
        Workings.Of(step + ".bestPeople", "more get in each other's way", Practice, [], []),
        Workings.Of(step + ".tools[*].count", "one to each pair of hands that needs it", Practice, [], []),
        Workings.Of(step + ".materials[*].quantity", "counted by the rules of the takeoff for what the step handles; all steps together use what the takeoff lists", Practice, [], []),
    ];
}
