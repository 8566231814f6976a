using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>What holds the posts and boards of the ends together.</summary>
internal static class EndTakeoff
{
    private const string LagDiameter = "3/8";

    private static readonly Length InLine = Length.FromInches(0.5);

    public static void Add(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        foreach (Member member in tunnel.Members) Screws(draft, tunnel, member, fasteners);
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (EndBoard board in end.Baseboards) Baseboard(draft, end, board, fasteners);
        }
    }

    private static void Screws(TakeoffDraft draft, Tunnel tunnel, Member member, FastenerAnswers fasteners)
    {
        switch (member.Role)
        {
            case MemberRole.EndPost when member.Bevel is null:
                draft.Count(BuildStage.Ends, Items.PostBracket, FormattableString.Invariant($"for {tunnel.BowTube.Outside.Inches:0.000} in"),
                    TakeoffDefaults.BracketsPerPost.Value, 1, TakeoffDefaults.BracketsPerPost, [member.Id]);
                draft.Count(BuildStage.Ends, Items.SelfDrillingScrew, FrameTakeoff.ScrewSize, fasteners.ScrewsPerBracket, 1, [member.Id]);
                Lags(draft, member, TakeoffDefaults.LagIntoPost.Value, fasteners.LagsPerPost);
                break;
            case MemberRole.EndPost:
                Lags(draft, member, tunnel.BowTube.Outside + TakeoffDefaults.LagIntoPost.Value, fasteners.LagsPerPost);
                break;
            case MemberRole.Cripple:
                Lags(draft, member, tunnel.BowTube.Outside + TakeoffDefaults.LagIntoPost.Value, fasteners.LagsPerCripple);
                Ends(draft, member, 1, fasteners.ScrewsPerBoardEnd);
                break;
            case MemberRole.Girt or MemberRole.VentRail or MemberRole.LeafRail or MemberRole.LeafBrace:
                Ends(draft, member, 2, fasteners.ScrewsPerBoardEnd);
                break;
            case MemberRole.Header:
                Ends(draft, member, 2, fasteners.ScrewsPerHeaderEnd);
                break;
            case MemberRole.Jamb:
                RuleAsked<Length> spacing = fasteners.JambScrewSpacing;
                draft.Add(BuildStage.Ends, MaterialUnit.Each, Items.LumberScrew, GroundTakeoff.ScrewSize,
                    CountRules.EndsIncluded(member.CutLength, spacing.Value), spacing.Says, spacing.Source, [member.Id], spacing.Path);
                break;
        }
    }

    private static void Lags(TakeoffDraft draft, Member member, Length least, RuleAsked<int> rule) =>
        draft.Count(BuildStage.Ends, Items.LagScrew, CountRules.ScrewSize(LagDiameter, least), rule, 1, [member.Id]);

    private static void Ends(TakeoffDraft draft, Member member, int ends, RuleAsked<int> rule) =>
        draft.Count(BuildStage.Ends, Items.LumberScrew, GroundTakeoff.ScrewSize, rule, ends, [member.Id]);

    /// <summary>A board flush between posts is held at its two ends; one that runs past them, at every post it crosses.</summary>
    private static void Baseboard(TakeoffDraft draft, EndWall end, EndBoard board, FastenerAnswers fasteners)
    {
        int places = board.BetweenPosts ? 2 : end.Posts.Count(post => post.Centre >= board.From - InLine && post.Centre <= board.To + InLine);
        draft.Count(BuildStage.Ends, Items.LumberScrew, GroundTakeoff.ScrewSize, fasteners.ScrewsPerBoardEnd, places, [board.MemberId]);
    }
}
