using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Hardware of the doors by kind, and rigid sheet on their leaves.</summary>
internal static class DoorTakeoff
{
    public static void Add(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        foreach (DoorOpening door in tunnel.Ends.SelectMany(end => end.Doors))
        {
            switch (door.Kind)
            {
                case DoorKind.Side or DoorKind.Double:
                    Hinged(draft, door);
                    break;
                case DoorKind.Sliding:
                    Sliding(draft, door);
                    break;
                case DoorKind.Overhead:
                    Each(draft, Items.OverheadDoor, $"{TapeText.FeetAndInches(door.ClearWidth)} x {TapeText.FeetAndInches(door.ClearHeight)}", 1,
                        "An overhead door is bought whole, track and springs with it.", Citation.CommonPractice, door.Id);
                    break;
            }
            if (door.LeafCover == LeafCover.Sheet)
            {
                foreach (DoorLeaf leaf in door.Leaves) Sheet(draft, leaf, fasteners);
            }
        }
    }

    private static void Hinged(TakeoffDraft draft, DoorOpening door)
    {
        if (door.Leaves.IsEmpty) return;
        foreach (DoorLeaf leaf in door.Leaves)
            Each(draft, Items.Hinge, "heavy strap", leaf.Hinges, LayoutDefaults.TallLeaf.Says, LayoutDefaults.TallLeaf.Source, leaf.Id);
        Each(draft, Items.Latch, "", 1, "One latch to a hinged door.", Citation.CommonPractice, door.Id);
        if (door.Leaves.Length > 1)
            Each(draft, Items.DropBolt, "", 1, "A drop bolt holds the second leaf of a double door.", Citation.CommonPractice, door.Leaves[1].Id);
    }

    private static void Sliding(TakeoffDraft draft, DoorOpening door)
    {
        foreach (DoorLeaf leaf in door.Leaves)
        {
            Length track = leaf.Width * 2;
            draft.Add(BuildStage.Ends, MaterialUnit.Metres, Items.DoorTrack, "", (decimal)track.Metres,
                "A track twice as long as its leaf is wide.", Citation.CommonPractice, [leaf.Id]);
            Each(draft, Items.TrackBracket, "", CountRules.EndsIncluded(track, TakeoffDefaults.TrackBracketSpacing.Value),
                TakeoffDefaults.TrackBracketSpacing.Says, TakeoffDefaults.TrackBracketSpacing.Source, leaf.Id);
            Each(draft, Items.RollerHanger, "", TakeoffDefaults.HangersPerSlidingLeaf.Value,
                TakeoffDefaults.HangersPerSlidingLeaf.Says, TakeoffDefaults.HangersPerSlidingLeaf.Source, leaf.Id);
            Each(draft, Items.DoorHandle, "", 1, "One handle to a sliding leaf.", Citation.CommonPractice, leaf.Id);
        }
        if (!door.Leaves.IsEmpty) Each(draft, Items.Latch, "", 1, "One latch to a sliding door.", Citation.CommonPractice, door.Id);
    }

    private static void Sheet(TakeoffDraft draft, DoorLeaf leaf, FastenerAnswers fasteners)
    {
        Length wide = TakeoffDefaults.SheetWidth.Value, tall = TakeoffDefaults.SheetLength.Value;
        Each(draft, Items.RigidSheet, "4 x 8 ft", CountRules.Sheets(leaf.Width, leaf.Height, wide, tall),
            FormattableString.Invariant($"Whole sheets over each leaf, of {(leaf.Width * leaf.Height).SquareFeet:0.0} ft² here."), TakeoffDefaults.SheetWidth.Source, leaf.Id);
        RuleAsked<Length> spacing = fasteners.SheetScrewSpacing;
        draft.Add(BuildStage.Ends, MaterialUnit.Each, Items.SheetScrew, "#10 x 1 in with washer", CountRules.Around((leaf.Width + leaf.Height) * 2, spacing.Value),
            spacing.Says, spacing.Source, [leaf.Id], spacing.Path);
    }

    private static void Each(TakeoffDraft draft, string item, string size, int count, string rule, Citation source, string trace) =>
        draft.Add(BuildStage.Ends, MaterialUnit.Each, item, size, count, rule, source, [trace]);
}
