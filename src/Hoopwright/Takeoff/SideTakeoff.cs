using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Hip boards, roll-up parts and drop parts of the sides.</summary>
internal static class SideTakeoff
{
    public static void Add(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        foreach (Member board in tunnel.Members.Where(member => member.Role == MemberRole.HipBoard)) HipBoard(draft, tunnel, board, fasteners);
        foreach (SideWall side in tunnel.Sides)
        {
            switch (side.Kind)
            {
                case SideKind.Fixed:
                    break;
                case SideKind.RollUp:
                    RollUp(draft, tunnel, side, fasteners);
                    break;
                case SideKind.Drop:
                    Drop(draft, tunnel, side);
                    break;
            }
        }
    }

    /// <summary>
    /// Rope in a zig-zag over the curtain: from an eye at each bow on the hip board down to an eye at mid-bay on the
    /// baseboard and up again.
    /// </summary>
    /// <param name="bays">Widths of the bays.</param>
    /// <param name="height">From hip board to baseboard.</param>
    /// <param name="tie">What each end of the rope takes to tie off.</param>
    public static Length LacingOf(IEnumerable<Length> bays, Length height, Length tie) => Length.FromMetres(
        bays.Sum(bay => 2 * Math.Sqrt((bay.Metres * bay.Metres / 4) + (height.Metres * height.Metres)))
        + (2 * tie.Metres));

    private static void HipBoard(TakeoffDraft draft, Tunnel tunnel, Member board, FastenerAnswers fasteners)
    {
        Length thickness = board.Section.Match(tube => tube.Outside, section => section.Thickness);
        draft.Count(BuildStage.Cover, Items.BoardToTubeScrew, CountRules.ScrewSize(ScrewKind.BoardToTube, thickness + TakeoffDefaults.ScrewIntoTube.ValueIn(tunnel.Units), tunnel.Units),
            fasteners.HipScrewsPerBow, GroundTakeoff.BowsAlong(tunnel, board), [board.Id]);
    }

    /// <summary>What rolls a curtain up and keeps it from flapping.</summary>
    public static void RollUp(TakeoffDraft draft, Tunnel tunnel, SideWall side, FastenerAnswers fasteners)
    {
        ImmutableArray<Member> tubes = [.. tunnel.Members.Where(member => member.Role == MemberRole.RollTube && IsOn(tunnel, member, side))];
        foreach (Member tube in tubes)
        {
            string size = "for " + ((TubeSection)tube.Section).WidthText;
            Each(draft, Items.Crank, size, 1, "One crank to a roll-up side.", Citation.CommonPractice, tube.Id);
            RuleAsked<Length> spacing = fasteners.RollClipSpacing;
            draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.RollClip, size, CountRules.EndsIncluded(tube.CutLength, spacing.Value),
                spacing.Says, spacing.Source, [tube.Id], spacing.Path);
        }
        Each(draft, Items.RopeEye, "", tunnel.Stations.Length, "An eye for the lacing on the hip board at each bow.", Citation.CommonPractice, side.Name + " side");
        Each(draft, Items.RopeEye, "", tunnel.Bays, "An eye for the lacing on the baseboard in the middle of each bay.", Citation.CommonPractice, side.Name + " side");
        IEnumerable<Length> bays = tunnel.Stations.Zip(tunnel.Stations.Skip(1), (one, next) => next.Along - one.Along);
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.Lacing, "", (decimal)LacingOf(bays, side.HipHeight - side.BaseboardHeight, TakeoffDefaults.LacingTie.ValueIn(tunnel.Units)).Metres,
            "Rope in a zig-zag over the curtain, hip board at each bow to baseboard at mid-bay, with both ends to tie off.", Citation.CommonPractice, [side.Name + " side"]);
    }

    /// <summary>What lets a curtain down.</summary>
    public static void Drop(TakeoffDraft draft, Tunnel tunnel, SideWall side)
    {
        string trace = side.Name + " side";
        int cords = tunnel.Stations.Length;
        Each(draft, Items.CurtainWinch, "", 1, "One winch to a drop side.", Citation.FromMemory, trace);
        Each(draft, Items.Pulley, "", cords, "A pulley under the hip board at each bow.", Citation.FromMemory, trace);
        // Every cord runs down at its bow; one cord along the hip board gathers them at the winch.
        Length cord = ((side.HipHeight - side.BaseboardHeight) * cords) + tunnel.Length + (TakeoffDefaults.CordTail.ValueIn(tunnel.Units) * (cords + 1));
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.CurtainCord, "", (decimal)cord.Metres,
            "A cord down at each bow and one along the hip board to the winch.", TakeoffDefaults.CordTail.Source, [trace]);
    }

    private static bool IsOn(Tunnel tunnel, Member member, SideWall side) => member.Start.X < tunnel.Span / 2 == side.IsLeft;

    private static void Each(TakeoffDraft draft, string item, string size, int count, string rule, Citation source, string trace) =>
        draft.Add(BuildStage.Cover, MaterialUnit.Each, item, size, count, rule, source, [trace]);
}
