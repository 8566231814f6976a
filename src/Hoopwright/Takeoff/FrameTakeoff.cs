using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Sleeves, clamps and screws of the tubes.</summary>
internal static class FrameTakeoff
{
    /// <summary>The one size of self-drilling screw that tubes are joined with.</summary>
    public static string ScrewSize(UnitSystem units) => FilmFasteners.ScrewInTube(units);

    public static void Add(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        ImmutableArray<string> bows = [.. tunnel.Members.Where(member => member.Role == MemberRole.Bow).Select(member => member.Id)];
        int sleeves = (tunnel.BowPieces - 1) * tunnel.Stations.Length;
        draft.Add(BuildStage.Frame, MaterialUnit.Each, Items.TubeSleeve, MemberTakeoff.SleeveSize(tunnel.BowTube), sleeves,
            "A sleeve at each joint of a bow.", Citation.CommonPractice, bows);
        draft.Count(BuildStage.Frame, Items.SelfDrillingScrew, ScrewSize(tunnel.Units), fasteners.ScrewsPerSleeve, sleeves, bows);
        if (tunnel.Anchor == AnchorKind.Posts)
        {
            draft.Count(BuildStage.Frame, Items.SelfDrillingScrew, ScrewSize(tunnel.Units), fasteners.ScrewsPerLeg, 2 * tunnel.Stations.Length, GroundTakeoff.LegIds(tunnel));
        }
        foreach (Member member in tunnel.Members) Clamps(draft, tunnel, member, fasteners);
    }

    private static void Clamps(TakeoffDraft draft, Tunnel tunnel, Member member, FastenerAnswers fasteners)
    {
        switch (member.Role)
        {
            case MemberRole.RidgePurlin or MemberRole.Purlin:
                draft.Count(BuildStage.Frame, Items.CrossClamp, ClampSize(tunnel, member), fasteners.ClampsPerCrossing, GroundTakeoff.BowsAlong(tunnel, member), [member.Id]);
                break;
            case MemberRole.CornerBrace:
                draft.Count(BuildStage.Frame, Items.EndClamp, ClampSize(tunnel, member), fasteners.ClampsPerBrace, 1, [member.Id]);
                break;
            case MemberRole.Tie:
                draft.Count(BuildStage.Frame, Items.EndClamp, ClampSize(tunnel, member), fasteners.ClampsPerTie, 1, [member.Id]);
                break;
        }
    }

    /// <summary>A clamp is named by the bow's tube, then the other.</summary>
    private static string ClampSize(Tunnel tunnel, Member member) => TubeSection.WidthsText(tunnel.BowTube, (TubeSection)member.Section);
}
