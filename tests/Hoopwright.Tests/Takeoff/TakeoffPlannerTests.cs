using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sources;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Tests.Orders;

namespace Hoopwright.Tests.Takeoff;

/// <summary>Counts of a 20 ft by 48 ft round tunnel with bows at 4 ft: 13 bows, 26 legs, worked out by hand.</summary>
public class TakeoffPlannerTests
{
    private const int Bows = 13;

    [Fact]
    public void Tubes_are_held_at_every_crossing_and_leg()
    {
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(frame: "\"bowPieces\": 2, \"purlins\": { \"count\": 3 }, \"braces\": { \"corners\": 4 }, \"tie\": { \"height\": \"9 ft\" }"));
        Assert.Equal(3 * Bows, Count(all, Items.CrossClamp));
        Assert.Equal((2 * 4) + (2 * (Bows - 2)), Count(all, Items.EndClamp));
        Assert.Equal(Bows, Count(all, Items.TubeSleeve, "for 1.660 in"));
        // Two a leg and four a sleeve of a bow; the sleeves of the purlins come with the cut lists.
        Assert.Equal((2 * 2 * Bows) + (4 * Bows), Count(all, Items.SelfDrillingScrew));
    }

    // Experiential High Tunnel Training, Plant Health Instructor 24 (2024), University of Kentucky: two self-drilling screws
    // hold a bow leg to its post.
    [Fact]
    public void A_leg_takes_the_published_two_screws()
    {
        MaterialLine line = WholeOrder.Of(SamplePlans.Simple()).Takeoff.Of(Items.SelfDrillingScrew).Single(line => line.Stage == BuildStage.Frame);
        QuantityPart legs = line.Parts.Single(part => part.Source.Standing == Standing.Published);
        Assert.Equal(2 * 2 * Bows, legs.Quantity);
    }

    [Fact]
    public void Baseboards_are_bolted_to_every_post_and_bolts_reach_through()
    {
        MaterialLine bolts = Assert.Single(WholeOrder.Of(SamplePlans.Simple(rest: "\"ground\": { \"postTube\": { \"outside\": \"1.9 in\", \"wall\": \"0.095 in\" } }")).Takeoff.Of(Items.CarriageBolt));
        Assert.Equal(2 * 2 * Bows, bolts.Quantity);
        // 1-1/2 in of board, 1.9 in of tube and 5/8 in for washer and nut.
        Assert.Equal("3/8 x 4-1/2 in", bolts.Size);
        Assert.Equal((2 * Bows) + 2, bolts.TraceIds.Length);
    }

    [Fact]
    public void Bows_on_boards_take_hangers_instead_of_posts()
    {
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(bow: "\"shape\": \"round\", \"sideHeight\": \"0 in\", \"peakHeight\": \"10 ft\"", rest: "\"ground\": { \"anchor\": \"boards\", \"hangersPerLeg\": 3 }"));
        Assert.Equal(3 * 2 * Bows, Count(all, Items.ConduitHanger));
        Assert.Equal(0, Count(all, Items.CarriageBolt));
        Assert.DoesNotContain(all.Takeoff.Lines, line => line.Stage == BuildStage.Frame && line.Item == Items.SelfDrillingScrew && line.Rule.Contains("ground post", StringComparison.Ordinal));
    }

    [Fact]
    public void End_posts_take_two_lags_and_brackets_where_they_are_cut_square()
    {
        WholeOrder sloped = WholeOrder.Of(Ends("\"postTop\": \"bow\""));
        int posts = sloped.Tunnel.Members.Count(member => member.Role == MemberRole.EndPost), cripples = sloped.Tunnel.Members.Count(member => member.Role == MemberRole.Cripple);
        Assert.Equal((2 * posts) + cripples, Count(sloped, Items.LagScrew));
        Assert.Equal(0, Count(sloped, Items.PostBracket));

        WholeOrder square = WholeOrder.Of(Ends("\"postTop\": \"bracket\""));
        Assert.Equal(posts, Count(square, Items.PostBracket));
        Assert.Equal((2 * posts) + cripples, Count(square, Items.LagScrew));
    }

    [Fact]
    public void Hardware_follows_the_kind_of_door()
    {
        WholeOrder tall = WholeOrder.Of(Ends("\"doors\": [{ \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\" }]", "\"doors\": [{ \"kind\": \"side\", \"width\": \"3 ft\", \"height\": \"5' 6\\\"\" }]"));
        // Two leaves over 6 ft with three hinges, one lower leaf with two.
        Assert.Equal((2 * 3) + 2, Count(tall, Items.Hinge));
        Assert.Equal(2, Count(tall, Items.Latch));
        Assert.Equal(1, Count(tall, Items.DropBolt));

        WholeOrder other = WholeOrder.Of(Ends("\"doors\": [{ \"kind\": \"sliding\", \"width\": \"5 ft\", \"height\": \"7 ft\", \"leafCover\": \"sheet\" }]", "\"doors\": [{ \"kind\": \"overhead\", \"width\": \"8 ft\", \"height\": \"7 ft\" }]"));
        DoorLeaf leaf = Assert.Single(other.Tunnel.Front.Doors[0].Leaves);
        Assert.Equal(2 * leaf.Width.Metres, (double)Count(other, Items.DoorTrack), 1e-9);
        Assert.Equal(2, Count(other, Items.RollerHanger));
        Assert.Equal(1, Count(other, Items.OverheadDoor, "8' 0\" x 7' 0\""));
        // 5' 6" by 7' 2": two sheets of 4 ft by 8 ft upright.
        Assert.Equal(2, Count(other, Items.RigidSheet));
    }

    [Theory]
    [InlineData("screwsPerLeg", 3, Items.SelfDrillingScrew, 2 * Bows)]
    [InlineData("clampsPerCrossing", 2, Items.CrossClamp, Bows)]
    [InlineData("clampsPerBrace", 3, Items.EndClamp, 4)]
    [InlineData("boltsPerPost", 1, Items.CarriageBolt, -2 * Bows)]
    [InlineData("hipScrewsPerBow", 4, Items.BoardToTubeScrew, 2 * 2 * Bows)]
    [InlineData("pinsPerPost", 0, Items.ReinforcingPin, null)]
    public void A_count_that_the_plan_gives_is_counted_in_the_place_of_the_usual_one(string field, int given, string item, int? more)
    {
        const string Sides = "\"sides\": { \"left\": { \"kind\": \"rollUp\" } }";
        WholeOrder usual = WholeOrder.Of(SamplePlans.Simple(rest: Sides)), own = WholeOrder.Of(SamplePlans.Simple(rest: $"{Sides}, \"fasteners\": {{ \"{field}\": {given} }}"));
        if (more is null) Assert.Equal(0, Count(own, item));
        else Assert.Equal(Count(usual, item) + more, Count(own, item));
        // A rule of none leaves no line behind.
        if (given > 0) Assert.Contains(own.Takeoff.Of(item), line => line.RulePaths.Contains("fasteners." + field) && line.Rule.Contains($"the plan has {given} instead", StringComparison.Ordinal));
        Assert.Equal((decimal)usual.Takeoff.Lines.Length - (given == 0 ? usual.Takeoff.Of(item).Length : 0), own.Takeoff.Lines.Length);
    }

    [Fact]
    public void Plates_and_spacings_that_the_plan_gives_are_counted()
    {
        WholeOrder own = WholeOrder.Of(SamplePlans.Simple(length: "72 ft", rest: "\"fasteners\": { \"platesPerJoint\": 1, \"screwsPerPlate\": 6, \"jambScrewSpacing\": \"8 in\" }, \"ends\": { \"front\": { \"doors\": [{ \"kind\": \"side\" }] }, \"back\": { \"closing\": \"open\" } }"));
        decimal plates = own.Cuts.JointLines.Where(line => line.Item == Items.MendingPlate).Sum(line => line.Quantity);
        Assert.True(plates > 0);
        Assert.Equal(6 * plates, own.Cuts.JointLines.Where(line => line.Item == Items.LumberScrew).Sum(line => line.Quantity));
        // Two jambs of 7 ft with a screw every 8 in, both ends included.
        QuantityPart jambs = Assert.Single(own.Takeoff.Of(Items.LumberScrew).SelectMany(line => line.Parts), part => part.Rule.Contains("8 in", StringComparison.Ordinal));
        Assert.Equal(2 * 12, jambs.Quantity);
    }

    [Fact]
    public void Every_hole_gives_its_concrete_and_its_post_a_pin()
    {
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(rest: "\"ground\": { \"postConcrete\": \"corners\", \"bagMass\": \"60 lb\" }"));
        MaterialLine[] concrete = [.. all.Takeoff.Of(Items.DryConcrete)];
        Assert.All(concrete, line => Assert.Equal("60 lb bag", line.Size));
        Assert.Equal(all.Tunnel.Holes.Sum(hole => hole.Volume.CubicMetres), (double)concrete.Sum(line => line.Quantity), 1e-9);
        Assert.Equal(all.Tunnel.Holes.Select(hole => hole.Id).Order(), concrete.SelectMany(line => line.TraceIds).Order());
        Assert.Equal(4, all.Takeoff.Of(Items.ReinforcingPin).Single(line => line.Stage == BuildStage.Ground).Quantity);
    }

    [Fact]
    public void A_roll_up_side_takes_its_crank_clips_eyes_and_lacing()
    {
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(rest: "\"sides\": { \"left\": { \"kind\": \"rollUp\" }, \"right\": { \"kind\": \"fixed\" } }"));
        Assert.Equal(1, Count(all, Items.Crank));
        // 49 ft of tube, clips at most 30 in apart: 20 gaps, 21 clips.
        Assert.Equal(21, Count(all, Items.RollClip));
        Assert.Equal(Bows + (Bows - 1), Count(all, Items.RopeEye));
        Assert.Equal(2 * Bows, Count(all, Items.BoardToTubeScrew));
        Assert.True(Count(all, Items.Lacing) > 0);
    }

    [Fact]
    public void A_drop_side_takes_a_winch_and_a_pulley_at_every_bow()
    {
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(rest: "\"sides\": { \"left\": { \"kind\": \"drop\" }, \"right\": { \"kind\": \"fixed\" } }"));
        Assert.Equal((1m, Bows, 0m), (Count(all, Items.CurtainWinch), (int)Count(all, Items.Pulley), Count(all, Items.Crank)));
    }

    [Fact]
    public void What_holds_the_film_is_counted_run_by_run_with_the_rules_of_the_cover()
    {
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(rest: "\"sides\": { \"left\": { \"kind\": \"rollUp\" } }, \"cover\": { \"wirePerChannel\": \"1.5\" }"));
        FasteningRun[] battens = [.. all.Cover.Runs.Where(run => run.Kind == FasteningKind.Batten)], channels = [.. all.Cover.Runs.Where(run => run.Kind == FasteningKind.Channel)];
        int nails = battens.Sum(run => BattenFastening.Marks(run.Length, CoverDefaults.BattenFirst.Value, CoverDefaults.BattenSpacing.Value).Length);
        Assert.Equal(nails, Count(all, Items.Nail));
        Assert.Equal(nails - battens.Length, Count(all, Items.Staple));
        Assert.Equal(channels.Length, Count(all, Items.LockChannel));
        double wireM = channels.Sum(run => run.Length.Metres * run.Wires * 1.5) + (all.Cover.TemporaryWires * 0.3048);
        Assert.Equal(wireM, (double)Count(all, Items.SpringWire), 1e-6);
        Assert.Equal(all.Cover.Pieces.Select(piece => piece.Id).Order(), all.Takeoff.Of(Items.Film).Single().TraceIds.Order());
        Assert.Equal(all.Cover.Ropes.Count, all.Takeoff.Of(Items.PullingRope).Single().Pieces.Length);
        Assert.Equal(all.Cover.Ropes.Count, Count(all, Items.PullingBall));
    }

    private static decimal Count(WholeOrder all, string item) => all.Takeoff.Of(item).Sum(line => line.Quantity);

    private static decimal Count(WholeOrder all, string item, string size) => all.Takeoff.Of(item).Where(line => line.Size == size).Sum(line => line.Quantity);

    private static Plan Ends(string front, string? back = null) =>
        SamplePlans.Simple(rest: $"\"ends\": {{ \"front\": {{ {front} }}{(back is null ? "" : $", \"back\": {{ {back} }}")} }}");
}
