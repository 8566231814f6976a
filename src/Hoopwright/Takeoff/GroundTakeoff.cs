using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>What holds the boards and bows at the ground, and concrete hole by hole.</summary>
internal static class GroundTakeoff
{
    /// <summary>The one size of screw rated for treated lumber that boards 1-1/2 in or 45 mm thick are joined with.</summary>
    public static string ScrewSize(UnitSystem units) => CountRules.Size("#10 x 3 in", "5 x 80 mm", units);

    // Boards that end this near to the side meet the side board there.
    private static readonly Length AtCorner = Length.FromInches(6);

    // A post in line with the end of a board is crossed by it.
    private static readonly Length InLine = Length.FromInches(0.5);

    public static void Add(TakeoffDraft draft, Tunnel tunnel, Answers answers, FastenerAnswers fasteners)
    {
        switch (tunnel.Anchor)
        {
            case AnchorKind.Posts:
                BaseboardBolts(draft, tunnel, fasteners);
                break;
            case AnchorKind.Boards:
                Hangers(draft, tunnel, answers);
                break;
        }
        Corners(draft, tunnel, fasteners);
        Concrete(draft, tunnel, answers, fasteners);
    }

    /// <summary>The members a leg of each bow belongs to: its first and last piece.</summary>
    public static ImmutableArray<string> LegIds(Tunnel tunnel) =>
    [
        .. tunnel.Members.Where(member => member.Role == MemberRole.Bow)
            .GroupBy(member => member.Start.Y)
            .OrderBy(bow => bow.Key)
            .SelectMany(bow => (ImmutableArray<string>)[bow.MinBy(piece => piece.Start.X)!.Id, bow.MaxBy(piece => piece.End.X)!.Id])
            .Distinct(),
    ];

    /// <summary>How many bows stand along a stretch of the length, its ends included.</summary>
    public static int BowsAlong(Tunnel tunnel, Member member)
    {
        Length from = Length.Min(member.Start.Y, member.End.Y) - InLine, to = Length.Max(member.Start.Y, member.End.Y) + InLine;
        return tunnel.Stations.Count(station => station.Along >= from && station.Along <= to);
    }

    private static void BaseboardBolts(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        foreach (Member board in tunnel.Members.Where(member => member.Role == MemberRole.Baseboard))
        {
            bool left = board.Start.X < tunnel.Span / 2;
            ImmutableArray<GroundPost> posts = [.. tunnel.GroundPosts.Where(post => post.Left == left && Crossed(board, post))];
            if (posts.IsEmpty) continue;
            Length tube = tunnel.Members.First(member => member.Id == posts[0].MemberId).Section.Match(section => section.Outside, section => section.Depth);
            Length thickness = board.Section.Match(section => section.Outside, section => section.Thickness);
            draft.Count(BuildStage.Ground, Items.CarriageBolt, CountRules.ScrewSize(ScrewKind.Bolt, thickness + tube + TakeoffDefaults.BoltPastBoard.ValueIn(tunnel.Units), tunnel.Units),
                fasteners.BoltsPerPost, posts.Length, posts.Select(post => post.MemberId).Append(board.Id));
        }

        static bool Crossed(Member board, GroundPost post) =>
            post.Mark >= Length.Min(board.Start.Y, board.End.Y) - InLine && post.Mark <= Length.Max(board.Start.Y, board.End.Y) + InLine;
    }

    private static void Hangers(TakeoffDraft draft, Tunnel tunnel, Answers answers)
    {
        int each = answers.Take("ground.hangersPerLeg", LayoutDefaults.HangersPerLeg, tunnel.Plan.Ground.HangersPerLeg);
        draft.Count(BuildStage.Ground, Items.ConduitHanger, tunnel.BowTube.WidthText,
            each, 2 * tunnel.Stations.Length, LayoutDefaults.HangersPerLeg, LegIds(tunnel), "ground.hangersPerLeg");
    }

    private static void Corners(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (EndBoard board in end.Baseboards)
            {
                int corners = (board.From < AtCorner ? 1 : 0) + (board.To > tunnel.Span - AtCorner ? 1 : 0);
                draft.Count(BuildStage.Ground, Items.LumberScrew, ScrewSize(tunnel.Units), fasteners.ScrewsPerCorner, corners, [board.MemberId]);
            }
        }
    }

    private static void Concrete(TakeoffDraft draft, Tunnel tunnel, Answers answers, FastenerAnswers fasteners)
    {
        if (tunnel.Holes.IsEmpty) return;
        Mass bag = answers.Take("ground.bagMass", TakeoffDefaults.BagMass(tunnel.Units), tunnel.Plan.Ground.BagMass);
        Dictionary<string, Member> members = tunnel.Members.ToDictionary(member => member.Id, StringComparer.Ordinal);
        foreach (ConcreteHole hole in tunnel.Holes)
        {
            BuildStage stage = members.TryGetValue(hole.PostId, out Member? post) ? MemberTakeoff.StageOf(post.Role) : BuildStage.Ground;
            draft.Add(stage, MaterialUnit.CubicMetres, Items.DryConcrete, ConcreteBags.SizeName(bag), (decimal)hole.Volume.CubicMetres,
                "Each hole less its post, with a collar that slopes away from the post.", ConcreteBags.Formula.Source, [hole.Id], "ground.bagMass");
            draft.Count(stage, Items.ReinforcingPin, CountRules.Size("1/2 x 6 in", "12 x 150 mm", tunnel.Units), fasteners.PinsPerPost, 1, [hole.PostId]);
        }
    }
}
