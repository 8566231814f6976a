using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;

namespace Hoopwright.Plans;

/// <summary>How near to the plan is near enough.</summary>
internal static class ToleranceFormats
{
    private static readonly QuantityRange<Length> Near = PlanQuantities.Length.Within("1/32 in", "12 in", "1 mm", "300 mm").Like("1/4 in", "6 mm");

    public static PlanFormat<BuildTolerances> Tolerances { get; } = new(
        Quantity<BuildTolerances, Length>("diagonals", Near, near => near.Diagonals, (near, value) => near with { Diagonals = value }),
        Quantity<BuildTolerances, Length>("frame", Near, near => near.Frame, (near, value) => near with { Frame = value }),
        Quantity<BuildTolerances, Length>("bow", Near, near => near.Bow, (near, value) => near with { Bow = value }),
        Quantity<BuildTolerances, Length>("posts", Near, near => near.Posts, (near, value) => near with { Posts = value }),
        Quantity<BuildTolerances, Length>("doors", Near, near => near.Doors, (near, value) => near with { Doors = value }),
        Quantity<BuildTolerances, Length>("holes", Near, near => near.Holes, (near, value) => near with { Holes = value }),
        Quantity<BuildTolerances, Length>("tape", Near, near => near.Tape, (near, value) => near with { Tape = value }));
}
