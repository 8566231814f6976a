using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>What holds the posts and boards of the ends together.</summary>
internal static class EndTakeoff
{
    private const string LagDiameter = "3/8";

    private static readonly Length InLine = Length.FromInches(0.5);

    public static void Add(TakeoffDraft draft, Tunnel tunnel)
    {
        foreach (Member member in tunnel.Members) Screws(draft, tunnel, member);
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (EndBoard board in end.Baseboards) Baseboard(draft, end, board);
        }
    }

    private static void Screws(TakeoffDraft draft, Tunnel tunnel, Member member)
    {
        switch (member.Role)
        {
            case MemberRole.EndPost when member.Bevel is null:
                draft.Count(BuildStage.Ends, Items.PostBracket, FormattableString.Invariant($"for {tunnel.BowTube.Outside.Inches:0.000} in"),
                    TakeoffDefaults.BracketsPerPost.Value, 1, TakeoffDefaults.BracketsPerPost, [member.Id]);
                draft.Count(BuildStage.Ends, Items.SelfDrillingScrew, FrameTakeoff.ScrewSize, TakeoffDefaults.ScrewsPerBracket.Value, 1, TakeoffDefaults.ScrewsPerBracket, [member.Id]);
                Lags(draft, member, TakeoffDefaults.LagIntoPost.Value, TakeoffDefaults.LagsPerPost);
                break;
            case MemberRole.EndPost:
                Lags(draft, member, tunnel.BowTube.Outside + TakeoffDefaults.LagIntoPost.Value, TakeoffDefaults.LagsPerPost);
                break;
            case MemberRole.Cripple:
                Lags(draft, member, tunnel.BowTube.Outside + TakeoffDefaults.LagIntoPost.Value, TakeoffDefaults.LagsPerCripple);
                Ends(draft, member, 1, TakeoffDefaults.ScrewsPerBoardEnd);
                break;
            case MemberRole.Girt or MemberRole.VentRail or MemberRole.LeafRail or MemberRole.LeafBrace:
                Ends(draft, member, 2, TakeoffDefaults.ScrewsPerBoardEnd);
                break;
            case MemberRole.Header:
                Ends(draft, member, 2, TakeoffDefaults.ScrewsPerHeaderEnd);
                break;
            case MemberRole.Jamb:
                draft.Add(BuildStage.Ends, MaterialUnit.Each, Items.LumberScrew, GroundTakeoff.ScrewSize,
                    CountRules.EndsIncluded(member.CutLength, TakeoffDefaults.JambScrewSpacing.Value), TakeoffDefaults.JambScrewSpacing.Says, TakeoffDefaults.JambScrewSpacing.Source, [member.Id]);
                break;
        }
    }

    private static void Lags(TakeoffDraft draft, Member member, Length least, Usual<int> rule) =>
        draft.Count(BuildStage.Ends, Items.LagScrew, CountRules.ScrewSize(LagDiameter, least), rule.Value, 1, rule, [member.Id]);

    private static void Ends(TakeoffDraft draft, Member member, int ends, Usual<int> rule) =>
        draft.Count(BuildStage.Ends, Items.LumberScrew, GroundTakeoff.ScrewSize, rule.Value, ends, rule, [member.Id]);

    /// <summary>A board flush between posts is held at its two ends; one that runs past them, at every post it crosses.</summary>
    private static void Baseboard(TakeoffDraft draft, EndWall end, EndBoard board)
    {
        int places = board.BetweenPosts ? 2 : end.Posts.Count(post => post.Centre >= board.From - InLine && post.Centre <= board.To + InLine);
        draft.Count(BuildStage.Ends, Items.LumberScrew, GroundTakeoff.ScrewSize, TakeoffDefaults.ScrewsPerBoardEnd.Value, places, TakeoffDefaults.ScrewsPerBoardEnd, [board.MemberId]);
    }
}
