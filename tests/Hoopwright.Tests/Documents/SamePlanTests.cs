using System.Globalization;
using System.Text;
using CsCheck;
using Hoopwright.Cover;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;
using PlanEdit = Hoopwright.Sweeps.PlanEdit;

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

    // Usual lengths that no field gives: where a brace is footed, how far roll tubes run past, sliding leaves lap and bracketed posts stop short.
    private static readonly MemberRole[] Tucked =
        [MemberRole.CornerBrace, MemberRole.RollTube, MemberRole.EndPost, MemberRole.LeafStile, MemberRole.LeafRail, MemberRole.LeafBrace];

    [Fact]
    public void The_units_change_no_measure_that_the_plan_gives()
    {
        int compared = 0;
        Generate.ValidPlanText.Sample(text =>
        {
            if (WithAllSaid(text) is not { } plan) return;
            (Tunnel tunnel, CoverPlan cover) = Counted(plan with { Units = UnitSystem.UsCustomary });
            (Tunnel metric, CoverPlan metricCover) = Counted(plan with { Units = UnitSystem.Metric });
            Assert.Equal(tunnel.Members.Where(member => !Tucked.Contains(member.Role)).Select(Exactly), metric.Members.Where(member => !Tucked.Contains(member.Role)).Select(Exactly));
            Assert.Equal(tunnel.Members.Select(member => (member.Id, member.Section)), metric.Members.Select(member => (member.Id, member.Section)));
            foreach ((Member one, Member other) in tunnel.Members.Zip(metric.Members)) Assert.Equal(one.CutLength.Metres, other.CutLength.Metres, 0.012);
            Assert.Equal(tunnel.GroundPosts, metric.GroundPosts);
            Assert.Equal(tunnel.Holes, metric.Holes);
            Assert.Equal(tunnel.SetOut.SideMarks, metric.SetOut.SideMarks);
            Assert.Equal(Cut(cover), Cut(metricCover));
            Interlocked.Increment(ref compared);
        }, iter: 300);
        Assert.True(compared > 200, $"Only {compared} plans were compared.");

        static object Exactly(Member member) => (member.Id, member.Role, member.Section, member.Start, member.End, member.CutLength, member.Bevel, member.MaySplice);

        static object[] Cut(CoverPlan cover) => [.. cover.Pieces.Where(piece => piece.Role != CoverRole.DoorLeaf).Select(piece => (object)(piece.Id, piece.Count, piece.AlongRoll, piece.AcrossRoll))];
    }

    /// <summary>The plan with everything written into it that a plan in feet and inches takes as usual, tube by the length too; null where that, to the sixteenth of an inch, does not lay out.</summary>
    private static Plan? WithAllSaid(string text)
    {
        Plan plan = PlanReader.Read(Encoding.UTF8.GetBytes(text)).Plan with { Units = UnitSystem.UsCustomary };
        var answers = new Answers(UnitSystem.UsCustomary);
        LayoutOutcome outcome = TunnelPlanner.LayOut(plan, answers);
        _ = CoverPlanner.Plan(outcome.Tunnel!, answers);
        IEnumerable<(string, string)> said = answers.Rules.Where(rule => !rule.Given).Select(rule => (rule.Path, Json(rule.Path, rule.Text)));
        // The bends of a bow are told as assumptions of its shape.
        IEnumerable<(string, string)> bends = outcome.Diagnostics.Where(found => found.Code is "assumed.frame.bow.shoulder-radius" or "assumed.frame.bow.arch-radius").Select(found => (found.Path, PlanEdit.AsText(found.Accepted!)));
        PlanReading reading = PlanReader.Read(PlanEdit.With(PlanEdit.Text(Encoding.UTF8.GetBytes(text))!, said.Concat(bends).Append(("frame.bowTube.stockLengths", "[ \"24 ft\" ]")))!);
        Assert.True(reading.IsUsable, string.Join('\n', reading.Diagnostics));
        return TunnelPlanner.LayOut(reading.Plan, new Answers(UnitSystem.UsCustomary)).Tunnel is null ? null : reading.Plan;
    }

    private static string Json(string path, string text) => text switch
    {
        "yes" => "true",
        "no" => "false",
        _ when path.EndsWith(".girts", StringComparison.Ordinal) => $"[ {PlanEdit.AsText(text)} ]",
        _ when int.TryParse(text, CultureInfo.InvariantCulture, out _) => text,
        _ => PlanEdit.AsText(text),
    };

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

    private static (Tunnel Tunnel, CoverPlan Cover) Counted(Plan plan)
    {
        var answers = new Answers(plan.Units!.Value);
        LayoutOutcome outcome = TunnelPlanner.LayOut(plan, answers);
        Tunnel tunnel = outcome.Tunnel ?? throw new InvalidOperationException(string.Join('\n', outcome.Diagnostics));
        CoverPlan cover = CoverPlanner.Plan(tunnel, answers).Plan;
        return (tunnel, cover);
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
