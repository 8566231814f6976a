using CsCheck;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Documents;

public sealed class SamePlanTests
{
    private const double ToleranceM = 1e-9;

    // A measured table of heights need not be the same from both sides, and the mirroring here leaves it as it is.
    [Fact]
    public void A_mirrored_plan_without_doors_gives_the_same_pieces() => Generate.ValidPlan.Where(plan => plan.Frame.Bow.Shape != BowKind.Offsets).Sample(plan =>
    {
        Plan closed = plan with { Ends = plan.Ends with { Front = plan.Ends.Front with { Doors = [] }, Back = plan.Ends.Back is { } back ? back with { Doors = [] } : null } };
        AssertSame(Pieces(closed), Pieces(Mirrored(closed)));
    }, iter: 300);

    [Fact]
    public void The_units_of_the_results_change_no_piece() => Generate.ValidPlan.Select(plan =>
        plan with { Ground = plan.Ground with { PostLength = new Written<Length>("96 in", Length.FromInches(96)) } }).Sample(plan =>
        AssertSame(Pieces(plan with { Units = UnitSystem.UsCustomary }), Pieces(plan with { Units = UnitSystem.Metric })), iter: 300);

    private static (MemberRole Role, double CutM)[] Pieces(Plan plan)
    {
        LayoutOutcome outcome = TunnelPlanner.LayOut(plan, new Answers(plan.Units!.Value));
        Assert.NotNull(outcome.Tunnel);
        return [.. outcome.Tunnel.Members.Select(member => (member.Role, member.CutLength.Metres)).Order()];
    }

    private static void AssertSame((MemberRole Role, double CutM)[] one, (MemberRole Role, double CutM)[] other)
    {
        Assert.Equal(one.Select(piece => piece.Role), other.Select(piece => piece.Role));
        foreach (((MemberRole role, double cutM), (_, double otherM)) in one.Zip(other))
            Assert.True(Math.Abs(cutM - otherM) < ToleranceM, $"{role}: {cutM} m and {otherM} m");
    }

    private static Plan Mirrored(Plan plan)
    {
        Length span = plan.Frame.Span!.Value.Value;
        return plan with
        {
            Site = plan.Site with { FallAcross = plan.Site.FallAcross is { } fall ? new Written<Ratio>("mirrored", Ratio.FromValue(-fall.Value.Value)) : null },
            Ends = plan.Ends with { Front = MirroredEnd(plan.Ends.Front, span), Back = plan.Ends.Back is { } back ? MirroredEnd(back, span) : null },
            Sides = plan.Sides.Right is { } right ? plan.Sides with { Left = right, Right = plan.Sides.Left } : plan.Sides,
        };
    }

    private static End MirroredEnd(End end, Length span) => end with
    {
        Posts = [.. end.Posts.Reverse().Select(post => new Written<Length>("mirrored", span - post.Value))],
        Doors = [.. end.Doors.Reverse().Select(door => door with { Centre = door.Centre is { } centre ? new Written<Length>("mirrored", span - centre.Value) : null })],
    };
}
