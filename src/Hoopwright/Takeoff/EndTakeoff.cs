using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>What holds the posts and boards of the ends together.</summary>
internal static class EndTakeoff
{
    private static readonly Length InLine = Length.FromInches(0.5);

    public static void Add(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        foreach (Member member in tunnel.Members) Screws(draft, tunnel, member, fasteners);
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (EndBoard board in end.Baseboards) Baseboard(draft, tunnel, end, board, fasteners);
        }
    }

    private static void Screws(TakeoffDraft draft, Tunnel tunnel, Member member, FastenerAnswers fasteners)
    {
        switch (member.Role)
        {
            case MemberRole.EndPost when member.Bevel is null:
                draft.Count(BuildStage.Ends, Items.PostBracket, "for " + tunnel.BowTube.WidthText,
                    TakeoffDefaults.BracketsPerPost.Value, 1, TakeoffDefaults.BracketsPerPost, [member.Id]);
                draft.Count(BuildStage.Ends, Items.SelfDrillingScrew, FrameTakeoff.ScrewSize(tunnel.Units), fasteners.ScrewsPerBracket, 1, [member.Id]);
                Lags(draft, tunnel, member, TakeoffDefaults.LagIntoPost.ValueIn(tunnel.Units), fasteners.LagsPerPost);
                break;
            case MemberRole.EndPost:
                Lags(draft, tunnel, member, tunnel.BowTube.Outside + TakeoffDefaults.LagIntoPost.ValueIn(tunnel.Units), fasteners.LagsPerPost);
                break;
            case MemberRole.Cripple:
                Lags(draft, tunnel, member, tunnel.BowTube.Outside + TakeoffDefaults.LagIntoPost.ValueIn(tunnel.Units), fasteners.LagsPerCripple);
                Ends(draft, tunnel, member, 1, fasteners.ScrewsPerBoardEnd);
                break;
            case MemberRole.Girt or MemberRole.VentRail or MemberRole.LeafRail or MemberRole.LeafBrace:
                Ends(draft, tunnel, member, 2, fasteners.ScrewsPerBoardEnd);
                break;
            case MemberRole.Header:
                Ends(draft, tunnel, member, 2, fasteners.ScrewsPerHeaderEnd);
                break;
            case MemberRole.Jamb:
                RuleAsked<Length> spacing = fasteners.JambScrewSpacing;
                draft.Add(BuildStage.Ends, MaterialUnit.Each, Items.LumberScrew, GroundTakeoff.ScrewSize(tunnel.Units),
                    CountRules.EndsIncluded(member.CutLength, spacing.Value), spacing.Says, spacing.Source, [member.Id], spacing.Path);
                break;
        }
    }

    private static void Lags(TakeoffDraft draft, Tunnel tunnel, Member member, Length least, RuleAsked<int> rule) =>
        draft.Count(BuildStage.Ends, Items.LagScrew, CountRules.ScrewSize(ScrewKind.Lag, least, tunnel.Units), rule, 1, [member.Id]);

    private static void Ends(TakeoffDraft draft, Tunnel tunnel, Member member, int ends, RuleAsked<int> rule) =>
        draft.Count(BuildStage.Ends, Items.LumberScrew, GroundTakeoff.ScrewSize(tunnel.Units), rule, ends, [member.Id]);

    /// <summary>A board flush between posts is held at its two ends; one that runs past them, at every post it crosses.</summary>
    private static void Baseboard(TakeoffDraft draft, Tunnel tunnel, EndWall end, EndBoard board, FastenerAnswers fasteners)
    {
        int places = board.BetweenPosts ? 2 : end.Posts.Count(post => post.Centre >= board.From - InLine && post.Centre <= board.To + InLine);
        draft.Count(BuildStage.Ends, Items.LumberScrew, GroundTakeoff.ScrewSize(tunnel.Units), fasteners.ScrewsPerBoardEnd, places, [board.MemberId]);
    }
}
