using CsCheck;
using Hoopwright.Cover;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Documents;

public sealed class SamePlanTests
{
    private const double ToleranceM = 1e-9;

    [Fact]
    public void A_mirrored_plan_gives_every_piece_in_its_mirrored_place() => Generate.ValidPlan.Sample(AssertMirrors, iter: 300);

    [Theory]
    [InlineData("{ \"kind\": \"side\", \"centre\": \"7 ft\", \"hinge\": \"left\" }")]
    [InlineData("{ \"kind\": \"side\", \"centre\": \"7 ft\", \"hinge\": \"right\", \"swing\": \"out\", \"leafCover\": \"none\" }")]
    [InlineData("{ \"kind\": \"side\", \"centre\": \"14 ft\", \"swing\": \"in\" }")]
    [InlineData("{ \"kind\": \"double\", \"centre\": \"9 ft\", \"width\": \"6 ft\", \"ventHeight\": \"12 in\" }")]
    [InlineData("{ \"kind\": \"sliding\", \"centre\": \"8 ft\" }")]
    [InlineData("{ \"kind\": \"overhead\", \"centre\": \"11 ft\" }")]
    [InlineData("{ \"kind\": \"side\", \"centre\": \"6 ft\", \"hinge\": \"right\" }, { \"kind\": \"sliding\", \"centre\": \"13 ft\" }")]
    public void A_mirrored_door_is_the_same_door_from_the_other_side(string doors) => AssertMirrors(
        SamplePlans.Simple(rest: $"\"ends\": {{ \"front\": {{ \"posts\": [\"18 ft\"], \"doors\": [ {doors} ] }} }}") with { Units = UnitSystem.UsCustomary });

    [Fact]
    public void The_units_of_the_results_change_texts_and_nothing_else() => Generate.ValidPlan.Sample(plan =>
    {
        (Tunnel tunnel, CoverPlan cover, TakeoffList takeoff) = Counted(plan with { Units = UnitSystem.UsCustomary });
        (Tunnel metric, CoverPlan metricCover, TakeoffList metricTakeoff) = Counted(plan with { Units = UnitSystem.Metric });
        Assert.Equal(tunnel.Members.Select(Exactly), metric.Members.Select(Exactly));
        Assert.Equal(tunnel.GroundPosts, metric.GroundPosts);
        Assert.Equal(tunnel.Holes, metric.Holes);
        Assert.Equal(tunnel.SetOut.SideMarks, metric.SetOut.SideMarks);
        Assert.Equal(cover.Pieces.Select(piece => (piece.Id, piece.Count, piece.AlongRoll, piece.AcrossRoll)), metricCover.Pieces.Select(piece => (piece.Id, piece.Count, piece.AlongRoll, piece.AcrossRoll)));
        Assert.Equal(cover.Runs.Select(run => (run.Id, run.Length)), metricCover.Runs.Select(run => (run.Id, run.Length)));
        Assert.Equal(takeoff.Lines.Select(line => (line.Id, line.Quantity)), metricTakeoff.Lines.Select(line => (line.Id, line.Quantity)));
        foreach ((MaterialLine line, MaterialLine other) in takeoff.Lines.Zip(metricTakeoff.Lines))
            Assert.Equal(line.Parts.Select(part => (part.Quantity, part.Rule)), other.Parts.Select(part => (part.Quantity, part.Rule)));

        static object Exactly(Member member) => (member.Id, member.Role, member.Section, member.Start, member.End, member.CutLength, member.Bevel, member.MaySplice, string.Join(' ', member.NoJoints));
    }, iter: 500);

    private static void AssertMirrors(Plan plan)
    {
        Tunnel tunnel = SamplePlans.LayOut(plan), mirrored = SamplePlans.LayOut(Mirrored(plan));
        // Heights count from the left front corner, so they are compared over the foot of the first bow.
        Length lifted = mirrored.Stations[0].Base - tunnel.Stations[0].Base;
        var rest = mirrored.Members.ToList();
        foreach (Member member in tunnel.Members)
        {
            // A leaf that slides has no side of its own, so its braces may rise either way.
            bool eitherWay = member.Role == MemberRole.LeafBrace && tunnel.Ends.SelectMany(end => end.Doors).Any(door => door.Kind == DoorKind.Sliding && door.Leaves.Any(leaf => leaf.MemberIds.Contains(member.Id)));
            (TunnelPoint start, TunnelPoint end) = (Across(member.Start), Across(member.End));
            int at = rest.FindIndex(other => other.Role == member.Role && other.Section == member.Section
                && Math.Abs((other.CutLength - member.CutLength).Metres) < ToleranceM
                && (Joins(other, start, end) || (eitherWay && Joins(other, start with { X = end.X }, end with { X = start.X }))));
            Assert.True(at >= 0, $"{member.Id} ({member.CutLength.Metres} m) has no mirror image at {start} to {end}; of its kind there are " +
                string.Join("; ", rest.Where(other => other.Role == member.Role).Select(other => $"{other.Id} ({other.CutLength.Metres} m) {other.Start} to {other.End}")));
            rest.RemoveAt(at);
        }
        Assert.Empty(rest);

        TunnelPoint Across(TunnelPoint point) => new(tunnel.Span - point.X, point.Y, point.Z + lifted);

        bool Joins(Member member, TunnelPoint start, TunnelPoint end) =>
            (Near(member.Start, start) && Near(member.End, end)) || (Near(member.Start, end) && Near(member.End, start));

        bool Near(TunnelPoint one, TunnelPoint other) => one.DistanceTo(other).Metres < ToleranceM;
    }

    private static (Tunnel Tunnel, CoverPlan Cover, TakeoffList Takeoff) Counted(Plan plan)
    {
        var answers = new Answers(plan.Units!.Value);
        Tunnel tunnel = TunnelPlanner.LayOut(plan, answers).Tunnel!;
        CoverPlan cover = CoverPlanner.Plan(tunnel, answers).Plan;
        return (tunnel, cover, TakeoffPlanner.Plan(tunnel, cover, answers));
    }

    private static Plan Mirrored(Plan plan)
    {
        Length span = plan.Frame.Span!.Value.Value;
        Bow bow = plan.Frame.Bow;
        bool rightAcross = bow.Offsets.Length > 0 && bow.Offsets[^1].Across!.Value.Value > span * 0.75;
        return plan with
        {
            Site = plan.Site with { FallAcross = plan.Site.FallAcross is { } fall ? new Written<Ratio>("mirrored", Ratio.FromValue(-fall.Value.Value)) : null },
            Frame = plan.Frame with
            {
                // A table to the middle stands for both halves.
                Bow = rightAcross ? bow with { Offsets = [.. bow.Offsets.Reverse().Select(offset => offset with { Across = new Written<Length>("mirrored", span - offset.Across!.Value.Value) })] } : bow,
            },
            Ends = plan.Ends with { Front = MirroredEnd(plan.Ends.Front, span), Back = plan.Ends.Back is { } back ? MirroredEnd(back, span) : null },
            Sides = plan.Sides.Right is { } right ? plan.Sides with { Left = right, Right = plan.Sides.Left } : plan.Sides,
        };
    }

    private static End MirroredEnd(End end, Length span) => end with
    {
        Posts = [.. end.Posts.Reverse().Select(post => new Written<Length>("mirrored", span - post.Value))],
        Doors = [.. end.Doors.Reverse().Select(door => door with
        {
            Centre = door.Centre is { } centre ? new Written<Length>("mirrored", span - centre.Value) : null,
            // Left out, a door is hinged at its left.
            Hinge = door.Kind == DoorKind.Side ? door.Hinge == HingeSide.Right ? HingeSide.Left : HingeSide.Right : door.Hinge,
        })],
    };
}
