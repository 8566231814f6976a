using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Layout;

public sealed class DoorTests
{
    [Theory]
    [InlineData("left")]
    [InlineData("right")]
    public void The_braces_of_a_side_door_rise_from_its_hinges(string hinge)
    {
        Tunnel tunnel = SamplePlans.LayOut(WithDoor($"\"kind\": \"side\", \"hinge\": \"{hinge}\""));
        DoorLeaf leaf = Assert.Single(Assert.Single(tunnel.Front.Doors).Leaves);
        Assert.Equal(hinge == "left", leaf.HingeLeft);
        Member[] braces = [.. tunnel.Members.Where(member => member.Role == MemberRole.LeafBrace && leaf.MemberIds.Contains(member.Id))];
        Assert.Equal(2, braces.Length);
        Assert.All(braces, brace => Assert.Equal(hinge == "left", brace.Start.Z < brace.End.Z));
    }

    [Fact]
    public void A_side_of_hinges_not_given_is_an_assumption()
    {
        var answers = new Answers(UnitSystem.UsCustomary);
        Tunnel tunnel = TunnelPlanner.LayOut(WithDoor("\"kind\": \"side\""), answers).Tunnel!;
        Assert.Equal(HingeSide.Left, Assert.Single(tunnel.Front.Doors).Hinge);
        Assert.Equal("left", Assert.Single(answers.Assumptions, found => found.Path == "ends.front.doors[0].hinge").Accepted);
        answers = new Answers(UnitSystem.UsCustomary);
        Assert.Null(Assert.Single(TunnelPlanner.LayOut(WithDoor("\"kind\": \"double\""), answers).Tunnel!.Front.Doors).Hinge);
        Assert.DoesNotContain(answers.Rules, rule => rule.Path.EndsWith(".hinge", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("left", true, false)]
    [InlineData("right", false, true)]
    public void A_leaf_swings_out_over_a_flush_baseboard_at_its_hinges_even_when_bought_whole(string hinge, bool leftFlush, bool rightFlush)
    {
        EndWall front = SamplePlans.LayOut(WithDoor($"\"kind\": \"side\", \"swing\": \"out\", \"leafCover\": \"none\", \"hinge\": \"{hinge}\"")).Front;
        DoorOpening door = Assert.Single(front.Doors);
        Assert.Equal((leftFlush, rightFlush),
            (front.Baseboards.Where(board => board.To <= door.Centre).All(board => board.BetweenPosts), front.Baseboards.Where(board => board.From >= door.Centre).All(board => board.BetweenPosts)));
    }

    [Theory]
    [InlineData("\"kind\": \"double\", \"hinge\": \"right\"", "ends.door.hinge-unused", ".hinge", "right")]
    [InlineData("\"kind\": \"sliding\", \"hinge\": \"left\"", "ends.door.hinge-unused", ".hinge", "left")]
    [InlineData("\"kind\": \"sliding\", \"swing\": \"in\"", "ends.door.swing-unused", ".swing", "in")]
    [InlineData("\"kind\": \"overhead\", \"swing\": \"out\"", "ends.door.swing-unused", ".swing", "out")]
    public void What_a_kind_of_door_cannot_use_is_said(string door, string code, string field, string seen)
    {
        LayoutOutcome outcome = TunnelPlanner.LayOut(WithDoor(door), new Answers(UnitSystem.UsCustomary));
        Assert.NotNull(outcome.Tunnel);
        Diagnostic found = Assert.Single(outcome.Diagnostics, each => each.Code.StartsWith("ends.door.", StringComparison.Ordinal) && each.Code.EndsWith("-unused", StringComparison.Ordinal));
        Assert.Equal((code, Severity.Warning, "ends.front.doors[0]" + field, seen), (found.Code, found.Severity, found.Path, found.Seen));
    }

    private static Plan WithDoor(string door) => SamplePlans.Simple(
        span: "26 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"5 ft\", \"peakHeight\": \"14 ft\"",
        rest: $"\"ends\": {{ \"front\": {{ \"doors\": [ {{ {door} }} ] }}, \"back\": {{ \"closing\": \"framed\" }} }}");
}
