using Hoopwright.Cover;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using static Hoopwright.Tests.AsBuilt.SiteBookSamples;

namespace Hoopwright.Tests.AsBuilt;

public sealed class RefitTests
{
    // Doubles and sixty halvings leave far less; a tape shows far more.
    private const double CloseM = 1e-5;

    private static readonly PlannedTunnel Plain = TunnelWorks.Plan(SamplePlans.Example("gothic-26ft"));

    [Fact]
    public void A_site_book_without_measurements_leaves_every_byte_as_it_is()
    {
        Plan plan = SamplePlans.Example("gothic-26ft");
        byte[] plain = ResultsJson.Write(Plain);
        Plan noted = plan with { SiteBook = [new SiteBookEntry { Id = IdOf(0), Kind = SiteBookKind.Note, Of = "film", Value = "windy" }] };
        Assert.Equal(plain, ResultsJson.Write(TunnelWorks.Plan(noted)));
    }

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void A_bow_that_came_7_inches_longer_stands_higher_and_widens_the_film_by_7_inches(string example)
    {
        Plan plan = SamplePlans.Example(example);
        PlannedTunnel before = TunnelWorks.Plan(plan);
        Length longer = before.Tunnel!.Bow.FilmLine.Length + Length.FromInches(7);
        PlannedTunnel after = TunnelWorks.Plan(With(plan, (MeasureNames.BowLength(1), Inches(longer)), (MeasureNames.BowLength(3), Inches(longer))));
        Assert.Equal(longer.Metres, after.Tunnel!.Bow.FilmLine.Length.Metres, 0.001);
        Assert.Equal(before.Tunnel.Span, after.Tunnel.Span);
        Assert.True(after.Tunnel.Bow.PeakHeight > before.Tunnel.Bow.PeakHeight);
        Assert.Equal(Length.FromInches(7).Metres, (after.Cover!.Pieces[0].AcrossRoll - before.Cover!.Pieces[0].AcrossRoll).Metres, 0.001);
        // Tube is cut before the bow can be measured.
        Assert.Equal(before.Tunnel.Members.First(member => member.Role == MemberRole.Bow).CutLength.Metres, after.Tunnel.Members.First(member => member.Role == MemberRole.Bow).CutLength.Metres, CloseM);
    }

    [Fact]
    public void A_wider_span_with_the_tube_it_has_lowers_the_peak_and_leaves_the_film_as_wide()
    {
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan, (MeasureNames.BowSpan(4), "26' 3\"")));
        Assert.Equal(Length.FromInches(315).Metres, after.Tunnel!.Span.Metres, CloseM);
        Assert.True(after.Tunnel.Bow.PeakHeight < Plain.Tunnel!.Bow.PeakHeight);
        Assert.Equal(Plain.Tunnel.Bow.FilmLine.Length.Metres, after.Tunnel.Bow.FilmLine.Length.Metres, CloseM);
    }

    [Fact]
    public void Length_span_and_height_together_are_met_by_the_legs()
    {
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan,
            (MeasureNames.BowLength(1), Inches(Plain.Tunnel!.Bow.FilmLine.Length + Length.FromInches(4))), (MeasureNames.BowHeight(1), "12' 7\""), (MeasureNames.BowSpan(1), "26 ft")));
        BowShape front = after.Tunnel!.Front.Bow;
        Assert.Equal(Length.FromInches(151).Metres, front.PeakHeight.Metres, CloseM);
        Assert.Equal(Plain.Tunnel.Bow.FilmLine.Length.Inches + 4, front.FilmLine.Length.Inches, 0.07);
        Assert.True(front.SideHeight > Plain.Tunnel.Bow.SideHeight);
    }

    [Fact]
    public void Each_end_follows_its_own_bow_and_the_roof_the_longest()
    {
        Length planned = Plain.Tunnel!.Bow.FilmLine.Length;
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan,
            (MeasureNames.BowLength(1), Inches(planned)), (MeasureNames.BowLength(10), Inches(planned + Length.FromInches(5))), (MeasureNames.BowLength(19), Inches(planned + Length.FromInches(2)))));
        Assert.Equal(planned.Inches + 5, after.Tunnel!.Bow.FilmLine.Length.Inches, 0.07);
        Assert.Equal(planned.Inches, after.Tunnel.Front.Bow.FilmLine.Length.Inches, 0.07);
        Assert.Equal(planned.Inches + 2, after.Tunnel.Back.Bow.FilmLine.Length.Inches, 0.07);
        Assert.Equal(Plain.Tunnel.Front.Posts.Select(post => post.Centre), after.Tunnel.Front.Posts.Select(post => post.Centre));
        foreach ((EndPost was, EndPost now) in Plain.Tunnel.Back.Posts.Zip(after.Tunnel.Back.Posts)) Assert.True(now.TopPoint > was.TopPoint);
        Assert.Equal(Plain.Tunnel.Front.Posts.Select(post => post.TopPoint.Inches), after.Tunnel.Front.Posts.Select(post => post.TopPoint.Inches), (one, other) => Math.Abs(one - other) < 0.05);
        FasteningRun channel = after.Cover!.Runs.First(run => run.Id == "back-bow-channel"), plannedChannel = Plain.Cover!.Runs.First(run => run.Id == "back-bow-channel");
        Assert.Equal(2, (channel.Length - plannedChannel.Length).Inches, 0.1);
    }

    [Fact]
    public void The_longest_side_makes_boards_bays_and_film_longer_and_no_bay_more()
    {
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan, (MeasureNames.Square("left"), "72' 2\""), (MeasureNames.Square("right"), "72' 3\""), (MeasureNames.BowMark(10), "36' 1/2\"")));
        Assert.Equal(Plain.Tunnel!.Stations.Length, after.Tunnel!.Stations.Length);
        Assert.Equal(Length.FromInches(867).Metres, after.Tunnel.Length.Metres, CloseM);
        Assert.Equal(432.5, after.Tunnel.Stations[9].Along.Inches, 1e-6);
        // Half a mark of bow 10 at bow 2 to 10, then evenly on to the last.
        Assert.Equal(48 + (0.5 / 9), after.Tunnel.Stations[1].Along.Inches, 1e-6);
        Assert.Equal(480 + 0.5 + (2.5 / 9), after.Tunnel.Stations[10].Along.Inches, 1e-6);
        Assert.Equal(867, after.Tunnel.Members.First(member => member.Id == "left-baseboard").CutLength.Inches, 0.01);
    }

    [Fact]
    public void A_post_follows_the_height_measured_at_it_and_a_door_its_opening()
    {
        EndPost post = Plain.Tunnel!.Front.Posts[0];
        DoorOpening door = Plain.Tunnel.Front.Doors[0];
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan,
            (MeasureNames.PostHeight(post.MemberId), Inches(post.TopPoint - post.Ground + Length.FromInches(0.75))), (MeasureNames.DoorRough(door.Id), Inches(door.RoughWidth - Length.FromInches(1)))));
        Member was = Plain.Tunnel.Members.First(member => member.Id == post.MemberId), now = after.Tunnel!.Members.First(member => member.Id == post.MemberId);
        Assert.Equal(0.75, (now.CutLength - was.CutLength).Inches, 1.0 / 16);
        DoorOpening narrower = after.Tunnel.Front.Doors[0];
        Assert.Equal(-1, (narrower.RoughWidth - door.RoughWidth).Inches, 1.0 / 16);
        Assert.Equal(-1, narrower.Leaves.Sum(leaf => leaf.Width.Inches) - door.Leaves.Sum(leaf => leaf.Width.Inches), 1.0 / 16);
        Assert.Equal(door.Centre, narrower.Centre);
    }

    [Fact]
    public void A_hole_that_is_not_deep_enough_lets_its_post_stand_less_deep()
    {
        EndPost post = Plain.Tunnel!.Front.Posts[0];
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan, (MeasureNames.HoleDepth("hole-" + post.MemberId), "32 in"), (MeasureNames.HoleDepth("hole-left-post-01"), "44 in"), (MeasureNames.Depth("left-post-02"), "34 in")));
        Assert.Equal(32, after.Tunnel!.Front.Posts[0].Embedment.Inches, 1e-9);
        Assert.Equal(44, after.Tunnel.Holes.First(hole => hole.Id == "hole-left-post-01").Depth.Inches, 1e-9);
        Assert.Equal(34, after.Tunnel.GroundPosts.First(each => each.MemberId == "left-post-02").Embedment.Inches, 1e-9);
        Assert.Equal(36, after.Tunnel.GroundPosts.First(each => each.MemberId == "left-post-01").Embedment.Inches, 1e-9);
    }

    [Fact]
    public void What_does_not_go_together_leaves_the_planned_tunnel_and_says_so()
    {
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan, (MeasureNames.DoorHeight("front-door-1"), "9 ft"), (MeasureNames.DoorRough("front-door-1"), "12 ft"), (MeasureNames.DoorRough("front-door-1"), "12 ft")));
        Assert.True(after.AsBuilt!.DoesNotFit);
        Assert.Contains(after.Diagnostics, found => found is { Code: "site-book.does-not-fit", Severity: Severity.Warning });
        Assert.Equal(Plain.Tunnel!.Front.Doors[0].RoughWidth, after.Tunnel!.Front.Doors[0].RoughWidth);
        Assert.NotNull(after.Orders);
    }

    [Fact]
    public void Where_length_and_height_cannot_be_together_the_length_is_kept_and_it_is_told()
    {
        // Shorter, and higher than even straight rafters from the ground would be.
        Length shorter = Plain.Tunnel!.Bow.FilmLine.Length - Length.FromFeet(1);
        PlannedTunnel after = TunnelWorks.Plan(With(Plain.Plan, (MeasureNames.BowLength(1), Inches(shorter)), (MeasureNames.BowHeight(1), "15 ft"), (MeasureNames.BowHeight(1), "15 ft")));
        Assert.Contains(after.Diagnostics, found => found.Code == "site-book.height-does-not-fit");
        Assert.Equal(shorter.Inches, after.Tunnel!.Front.Bow.FilmLine.Length.Inches, 0.07);
    }

    private static string Inches(Length length) => (Math.Round(length.Inches * 16) / 16).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " in";
}
