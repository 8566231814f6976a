using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Counts what a tunnel is made of. Every count follows from members, film pieces, runs or holes by a rule.</summary>
public static partial class TakeoffPlanner
{
    /// <summary>The takeoff of a tunnel.</summary>
    /// <param name="tunnel">The exact tunnel.</param>
    /// <param name="cover">Its film and how it is held.</param>
    /// <param name="answers">Collects the rules used.</param>
    public static TakeoffList Plan(Tunnel tunnel, CoverPlan cover, Answers answers)
    {
        var builder = new TakeoffBuilder();
        Members(builder, tunnel);
        SetOut(builder, tunnel);
        Ground(builder, tunnel, answers);
        Frame(builder, tunnel);
        Ends(builder, tunnel);
        Sides(builder, tunnel);
        Film(builder, tunnel, cover, answers);
        return builder.ToList();
    }

    /// <summary>The stage a member belongs to.</summary>
    public static BuildStage StageOf(MemberRole role) => role switch
    {
        MemberRole.Bow or MemberRole.Tie or MemberRole.RidgePurlin or MemberRole.Purlin or MemberRole.CornerBrace => BuildStage.Frame,
        MemberRole.GroundPost or MemberRole.Baseboard => BuildStage.Ground,
        MemberRole.HipBoard or MemberRole.RollTube => BuildStage.Cover,
        MemberRole.EndPost or MemberRole.Cripple or MemberRole.Girt or MemberRole.EndBaseboard or MemberRole.Header or MemberRole.Jamb
            or MemberRole.VentRail or MemberRole.LeafStile or MemberRole.LeafRail or MemberRole.LeafBrace => BuildStage.Ends,
    };

    private static void Members(TakeoffBuilder builder, Tunnel tunnel)
    {
        foreach (Member member in tunnel.Members)
        {
            Length length = TapeText.RoundForMember(member.CutLength, tunnel.Units);
            builder.Cut(StageOf(member.Role), member.Section.Item, member.Section.Size, new PieceNeed(member.Id, member.Id, length)
            {
                Place = member.Place,
                Joining = member.MaySplice ? new Joining(member.NoJoints, TakeoffDefaults.ShortestPiece, Joint(member)) : null,
            }, "one piece a member, at its longest edge; long runs joined end to end", Citation.Geometry, member.Section, member.StockLengths);
        }
    }

    private static System.Collections.Immutable.ImmutableArray<JointHardware> Joint(Member member) => member.Section.Match<System.Collections.Immutable.ImmutableArray<JointHardware>>(
        tube: _ => [new JointHardware(Items.TubeSleeve, member.Section.Size, 1, "a sleeve a joint", Citation.CommonPractice),
            new JointHardware(Items.SelfDrillingScrew, "", TakeoffDefaults.ScrewsPerSleeve, "four screws a sleeve", Citation.CommonPractice)],
        board: _ => [new JointHardware(Items.MendingPlate, "", 1, "a plate a joint", Citation.CommonPractice),
            new JointHardware(Items.LumberScrew, "", TakeoffDefaults.ScrewsPerBoardJoint, "eight screws a joint", Citation.CommonPractice)]);

    private static void SetOut(TakeoffBuilder builder, Tunnel tunnel)
    {
        int boards = tunnel.SetOut.BatterBoards.Length;
        IEnumerable<string> ids = tunnel.SetOut.BatterBoards.Select(board => board.Id);
        Length run = (tunnel.Length * 2) + (tunnel.Span * 2) + (Length.FromFeet(6) * 4) + (tunnel.SetOut.Diagonal * 2);
        builder.Add(BuildStage.Site, Items.StringLine, "", MaterialUnit.Metres, (decimal)run.Metres, "two side strings, two end strings, two diagonals, and to the batter boards", Citation.Geometry, ids);
        builder.Add(BuildStage.Site, Items.Stake, "", MaterialUnit.Each, boards * 2, "two a batter board", Citation.CommonPractice, ids);
        foreach (BatterBoard board in tunnel.SetOut.BatterBoards)
        {
            builder.Cut(BuildStage.Site, Items.Board, "1x4", new PieceNeed(board.Id, board.Id, TapeText.RoundForMember(Length.FromFeet(4), tunnel.Units)) { Place = "batter board" },
                "4 ft a batter board", Citation.CommonPractice, null, []);
        }
    }

    private static void Ground(TakeoffBuilder builder, Tunnel tunnel, Answers answers)
    {
        Member[] boards = [.. tunnel.Members.Where(member => member.Role == MemberRole.Baseboard)];
        int legs = tunnel.Stations.Length * 2;
        if (tunnel.Anchor == AnchorKind.Posts)
        {
            builder.Add(BuildStage.Ground, Items.CarriageBolt, "rated for treated lumber", MaterialUnit.Each, legs * TakeoffDefaults.BoltsPerBoardAndPost,
                "two where a baseboard passes a ground post (the board is bolted to the posts; the count is from memory)", TakeoffDefaults.BoltedBoard, boards.Select(board => board.Id).Concat(tunnel.GroundPosts.Select(post => post.MemberId)));
            builder.Add(BuildStage.Frame, Items.SelfDrillingScrew, "", MaterialUnit.Each, legs * TakeoffDefaults.ScrewsPerBowLeg, "two where a leg of a bow meets its post", TakeoffDefaults.BowScrews,
                tunnel.GroundPosts.Select(post => post.MemberId));
        }
        else
        {
            int hangers = answers.Take("ground.hangersPerLeg", TakeoffDefaults.HangersPerLeg, tunnel.Plan.Ground.HangersPerLeg);
            builder.Add(BuildStage.Frame, Items.ConduitHanger, "", MaterialUnit.Each, legs * hangers, $"{hangers} a leg of a bow", TakeoffDefaults.HangersPublished,
                tunnel.Members.Where(member => member.Role == MemberRole.Bow).Select(member => member.Id), "ground.hangersPerLeg");
        }
        if (!tunnel.Holes.IsEmpty)
        {
            Mass bag = answers.Take("ground.bagMass", TakeoffDefaults.BagMass, tunnel.Plan.Ground.BagMass);
            builder.Add(BuildStage.Ground, Items.DryConcrete, TapeText.Of(bag, tunnel.Units) + " bag", MaterialUnit.CubicMetres, (decimal)tunnel.Holes.Sum(hole => hole.Volume.CubicMetres),
                "hole less post, with a sloped collar that sheds water", ConcreteVolume.Formula.Source, tunnel.Holes.Select(hole => hole.Id), "ground.holeDiameter", "ground.holeDepth", "ground.collarRise", "ground.bagMass");
        }
    }

    private static void Frame(TakeoffBuilder builder, Tunnel tunnel)
    {
        Member[] bows = [.. tunnel.Members.Where(member => member.Role == MemberRole.Bow)];
        int joints = tunnel.Stations.Length * (tunnel.BowPieces - 1);
        builder.Add(BuildStage.Frame, Items.TubeSleeve, tunnel.BowTube.Size, MaterialUnit.Each, joints, "one a joint within a bow", Citation.CommonPractice, bows.Select(bow => bow.Id), "frame.bowPieces");
        builder.Add(BuildStage.Frame, Items.SelfDrillingScrew, "", MaterialUnit.Each, joints * TakeoffDefaults.ScrewsPerSleeve, "four a joint within a bow", Citation.CommonPractice, bows.Select(bow => bow.Id));
        foreach (Member purlin in tunnel.Members.Where(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin))
        {
            builder.Add(BuildStage.Frame, Items.CrossClamp, $"{tunnel.BowTube.Size} to {purlin.Section.Size}", MaterialUnit.Each, tunnel.Stations.Length, "one where a purlin passes a bow", Citation.CommonPractice, [purlin.Id]);
        }
        foreach (Member member in tunnel.Members.Where(member => member.Role is MemberRole.Tie or MemberRole.CornerBrace))
        {
            builder.Add(BuildStage.Frame, Items.EndClamp, $"{tunnel.BowTube.Size} to {member.Section.Size}", MaterialUnit.Each, 2, "one at each end of a tie or brace", Citation.CommonPractice, [member.Id]);
        }
    }

    private static void Sides(TakeoffBuilder builder, Tunnel tunnel)
    {
        foreach (Member board in tunnel.Members.Where(member => member.Role == MemberRole.HipBoard))
        {
            builder.Add(BuildStage.Cover, Items.BoardToTubeScrew, "", MaterialUnit.Each, tunnel.Stations.Length * TakeoffDefaults.ScrewsPerHipBoardAndBow, "two where a hip board passes a bow", Citation.CommonPractice, [board.Id]);
        }
        foreach (SideWall side in tunnel.Sides.Where(side => side.Kind != SideKind.Fixed))
        {
            string board = side.Name + "-hip-board";
            builder.Add(BuildStage.Cover, Items.RopeEye, "", MaterialUnit.Each, tunnel.Stations.Length * 2, "one a bow on the hip board and one on the baseboard", Citation.CommonPractice, [board, side.Name + "-baseboard"]);
            // The rope runs in a zig-zag from eye to eye.
            double bayM = (tunnel.Length / tunnel.Bays).Metres, riseM = side.HipHeight.Metres;
            builder.Add(BuildStage.Cover, Items.Lacing, "", MaterialUnit.Metres, (decimal)(tunnel.Bays * Math.Sqrt((bayM * bayM) + (riseM * riseM))), "zig-zag from eye to eye, hip board to baseboard, a slant a bay", Citation.Geometry, [board]);
            if (side.Kind == SideKind.RollUp)
            {
                builder.Add(BuildStage.Cover, Items.Crank, "", MaterialUnit.Each, 1, "one a roll-up side", Citation.CommonPractice, [side.Name + "-roll-tube"]);
                builder.Add(BuildStage.Cover, Items.RollClip, "", MaterialUnit.Each, Spaces(tunnel.Length, TakeoffDefaults.RollClipSpacing) + 1, "one every 30 in of the roll tube and one more", Citation.CommonPractice, [side.Name + "-roll-tube"]);
            }
            else
            {
                builder.Add(BuildStage.Cover, Items.CurtainWinch, "", MaterialUnit.Each, 1, "one a drop side", Citation.CommonPractice, [board]);
                builder.Add(BuildStage.Cover, Items.Pulley, "", MaterialUnit.Each, tunnel.Stations.Length, "one a bow", Citation.CommonPractice, [board]);
                builder.Add(BuildStage.Cover, Items.CurtainCord, "", MaterialUnit.Metres, (decimal)((tunnel.Length * 2) + (side.HipHeight * tunnel.Stations.Length)).Metres, "twice the length and a drop a bow", Citation.CommonPractice, [board]);
            }
        }
    }

    private static int Spaces(Length run, Length spacing) => Math.Max(1, (int)Math.Ceiling((run / spacing) - 1e-9));
}
