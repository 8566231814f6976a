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
                    Sliding(draft, tunnel, door);
                    break;
                case DoorKind.Overhead:
                    Each(draft, Items.OverheadDoor, $"{TapeText.Of(door.ClearWidth, tunnel.Units)} x {TapeText.Of(door.ClearHeight, tunnel.Units)}", 1,
                        "An overhead door is bought whole, track and springs with it.", Citation.CommonPractice, door.Id);
                    break;
            }
            if (door.LeafCover == LeafCover.Sheet)
            {
                foreach (DoorLeaf leaf in door.Leaves) Sheet(draft, tunnel, leaf, fasteners);
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

    private static void Sliding(TakeoffDraft draft, Tunnel tunnel, DoorOpening door)
    {
        foreach (DoorLeaf leaf in door.Leaves)
        {
            Length track = leaf.Width * 2;
            draft.Add(BuildStage.Ends, MaterialUnit.Metres, Items.DoorTrack, "", (decimal)track.Metres,
                "A track twice as long as its leaf is wide.", Citation.CommonPractice, [leaf.Id]);
            Each(draft, Items.TrackBracket, "", CountRules.EndsIncluded(track, TakeoffDefaults.TrackBracketSpacing.ValueIn(tunnel.Units)),
                TakeoffDefaults.TrackBracketSpacing.Says, TakeoffDefaults.TrackBracketSpacing.Source, leaf.Id);
            Each(draft, Items.RollerHanger, "", TakeoffDefaults.HangersPerSlidingLeaf.Value,
                TakeoffDefaults.HangersPerSlidingLeaf.Says, TakeoffDefaults.HangersPerSlidingLeaf.Source, leaf.Id);
            Each(draft, Items.DoorHandle, "", 1, "One handle to a sliding leaf.", Citation.CommonPractice, leaf.Id);
        }
        if (!door.Leaves.IsEmpty) Each(draft, Items.Latch, "", 1, "One latch to a sliding door.", Citation.CommonPractice, door.Id);
    }

    private static void Sheet(TakeoffDraft draft, Tunnel tunnel, DoorLeaf leaf, FastenerAnswers fasteners)
    {
        Length wide = TakeoffDefaults.SheetWidth.ValueIn(tunnel.Units), tall = TakeoffDefaults.SheetLength.ValueIn(tunnel.Units);
        Each(draft, Items.RigidSheet, tunnel.Units switch { UnitSystem.UsCustomary => "4 x 8 ft", UnitSystem.Metric => FormattableString.Invariant($"{wide.Millimetres:0} x {tall.Millimetres:0} mm") }, CountRules.Sheets(leaf.Width, leaf.Height, wide, tall),
            $"Whole sheets over each leaf, of {TapeText.Of(leaf.Width * leaf.Height, tunnel.Units)} here.", TakeoffDefaults.SheetWidth.Source, leaf.Id);
        RuleAsked<Length> spacing = fasteners.SheetScrewSpacing;
        draft.Add(BuildStage.Ends, MaterialUnit.Each, Items.SheetScrew, CountRules.Size("#10 x 1 in", "4.8 x 25 mm", tunnel.Units) + " with washer", CountRules.Around((leaf.Width + leaf.Height) * 2, spacing.Value),
            spacing.Says, spacing.Source, [leaf.Id], spacing.Path);
    }

    private static void Each(TakeoffDraft draft, string item, string size, int count, string rule, Citation source, string trace) =>
        draft.Add(BuildStage.Ends, MaterialUnit.Each, item, size, count, rule, source, [trace]);
}
