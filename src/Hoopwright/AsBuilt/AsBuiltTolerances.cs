using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.AsBuilt;

/// <summary>How near is near enough, by the plan or as is usual. No extension page gives any: all usual ones are from memory.</summary>
public sealed record AsBuiltTolerances
{
    private AsBuiltTolerances(BuildTolerances given, Length length, Answers answers)
    {
        Diagonals = answers.Take("tolerances.diagonals", UsualDiagonals(length), given.Diagonals);
        Frame = answers.Take("tolerances.frame", UsualFrame, given.Frame);
        Bow = answers.Take("tolerances.bow", UsualBow, given.Bow);
        Posts = answers.Take("tolerances.posts", UsualPosts, given.Posts);
        Doors = answers.Take("tolerances.doors", UsualDoors, given.Doors);
        Holes = answers.Take("tolerances.holes", UsualHoles, given.Holes);
        Tape = answers.Take("tolerances.tape", UsualTape, given.Tape);
    }

    /// <summary>How much the two diagonals of the string rectangle may differ.</summary>
    public Length Diagonals { get; }

    /// <summary>Spans, marks, sides of the string rectangle, heights of boards.</summary>
    public Length Frame { get; }

    /// <summary>Length over the outside of a bow, and its height.</summary>
    public Length Bow { get; }

    /// <summary>Clear height at an end-wall post.</summary>
    public Length Posts { get; }

    /// <summary>Openings of doors.</summary>
    public Length Doors { get; }

    /// <summary>Depth of posts in the ground; depth and diameter of holes.</summary>
    public Length Holes { get; }

    /// <summary>How near a reading of the tape is to the truth, nineteen times of twenty.</summary>
    public Length Tape { get; }

    internal static Usual<Length> UsualFrame { get; } = new(Length.FromInches(0.25), "Spans, marks, sides and boards may be off by this much.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<Length> UsualBow { get; } = new(Length.FromInches(0.5), "A bow may be off by this much over its outside and in its height.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<Length> UsualPosts { get; } = new(Length.FromInches(0.125), "The clear height at an end-wall post may be off by this much.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<Length> UsualDoors { get; } = new(Length.FromInches(0.125), "Openings of doors may be off by this much.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<Length> UsualHoles { get; } = new(Length.FromInches(1), "Posts and holes may be off by this much in depth, holes in diameter.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<Length> UsualTape { get; } = new(Length.FromInches(0.125), "A reading of the tape is this near to the truth nineteen times of twenty.", Citation.FromMemory);

    internal static Usual<Length> UsualDiagonals(Length length) => new(
        length <= Length.FromFeet(48) ? Length.FromInches(0.25) : Length.FromInches(0.5), "The two diagonals may differ by this much.", Citation.FromMemory)
    {
        Metric = MetricWay.Down,
    };

    /// <summary>Asks the plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="length">Length of the tunnel.</param>
    /// <param name="answers">Collects what was answered.</param>
    public static AsBuiltTolerances Of(Plan plan, Length length, Answers answers) => new(plan.Tolerances, length, answers);
}
