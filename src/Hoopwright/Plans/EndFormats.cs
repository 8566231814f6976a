using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;
using static Hoopwright.Plans.PlanRanges;

namespace Hoopwright.Plans;

/// <summary>Ground, ends, doors and sides.</summary>
internal static class EndFormats
{
    public static PlanFormat<Ground> Ground { get; } = new(
        Choice<Ground, AnchorKind>("anchor", ground => ground.Anchor, (ground, value) => ground with { Anchor = value }),
        Group<Ground, Tube>("postTube", FrameFormats.Tube, ground => ground.PostTube, (ground, value) => ground with { PostTube = value }),
        Quantity<Ground, Length>(
            "postLength", PlanQuantities.Length.Within("12 in", "360 in", "310 mm", "9000 mm").Like("72 in", "1800 mm"),
            ground => ground.PostLength, (ground, value) => ground with { PostLength = value }),
        Quantity<Ground, Length>("postEmbedment", Depths, ground => ground.PostEmbedment, (ground, value) => ground with { PostEmbedment = value }),
        Choice<Ground, PostConcrete>("postConcrete", ground => ground.PostConcrete, (ground, value) => ground with { PostConcrete = value }),
        Quantity<Ground, Length>("holeDiameter", Hole, ground => ground.HoleDiameter, (ground, value) => ground with { HoleDiameter = value }),
        Quantity<Ground, Length>("holeDepth", Depths, ground => ground.HoleDepth, (ground, value) => ground with { HoleDepth = value }),
        Quantity<Ground, Length>(
            "collarRise", PlanQuantities.Length.Within("0 in", "12 in", "0 mm", "300 mm").Like("1 in", "25 mm"),
            ground => ground.CollarRise, (ground, value) => ground with { CollarRise = value }),
        Count<Ground>("hangersPerLeg", 0, 20, ground => ground.HangersPerLeg, (ground, value) => ground with { HangersPerLeg = value }),
        Choice<Ground, LegBase>("legBase", ground => ground.LegBase, (ground, value) => ground with { LegBase = value }),
        Group<Ground, Board>("baseboard", FrameFormats.Board, ground => ground.Baseboard, (ground, value) => ground with { Baseboard = value }),
        Quantity<Ground, Mass>(
            "bagMass", PlanQuantities.Mass.Within("10 lb", "200 lb", "5 kg", "90 kg").Like("80 lb", "25 kg"), ground => ground.BagMass, (ground, value) => ground with { BagMass = value }));

    public static PlanFormat<Door> Door { get; } = new(
        Choice<Door, DoorKind>("kind", door => door.Kind, (door, value) => door with { Kind = value }),
        Quantity<Door, Length>(
            "width", PlanQuantities.Length.Within("1 ft", "60 ft", "0.31 m", "18.2 m").Like("3 ft", "0.9 m"), door => door.Width, (door, value) => door with { Width = value }),
        Quantity<Door, Length>(
            "height", PlanQuantities.Length.Within("1 ft", "40 ft", "0.31 m", "12 m").Like("7 ft", "2.1 m"), door => door.Height, (door, value) => door with { Height = value }),
        Quantity<Door, Length>("centre", Across, door => door.Centre, (door, value) => door with { Centre = value }),
        Choice<Door, DoorSwing>("swing", door => door.Swing, (door, value) => door with { Swing = value }),
        Choice<Door, HingeSide>("hinge", door => door.Hinge, (door, value) => door with { Hinge = value }),
        Choice<Door, LeafCover>("leafCover", door => door.LeafCover, (door, value) => door with { LeafCover = value }),
        Group<Door, Board>("leafBoard", FrameFormats.Board, door => door.LeafBoard, (door, value) => door with { LeafBoard = value }),
        Quantity<Door, Length>(
            "gap", PlanQuantities.Length.Within("0 in", "3 in", "0 mm", "75 mm").Like("1/4 in", "6 mm"), door => door.Gap, (door, value) => door with { Gap = value }),
        Quantity<Door, Length>(
            "bottomGap", PlanQuantities.Length.Within("0 in", "12 in", "0 mm", "300 mm").Like("1 in", "25 mm"),
            door => door.BottomGap, (door, value) => door with { BottomGap = value }),
        Quantity<Door, Length>(
            "ventHeight", PlanQuantities.Length.Within("2 in", "240 in", "60 mm", "6000 mm").Like("18 in", "450 mm"),
            door => door.VentHeight, (door, value) => door with { VentHeight = value }));

    public static PlanFormat<End> End { get; } = new(
        Choice<End, EndClosing>("closing", end => end.Closing, (end, value) => end with { Closing = value }),
        Lumber<End>("postSize", "4x4", end => end.PostSize, (end, value) => end with { PostSize = value }),
        Choice<End, WoodSpecies>("woodSpecies", end => end.WoodSpecies, (end, value) => end with { WoodSpecies = value }),
        Choice<End, WoodGrade>("woodGrade", end => end.WoodGrade, (end, value) => end with { WoodGrade = value }),
        Quantity<End, Length>(
            "postSpacing", PlanQuantities.Length.Within("1 ft", "50 ft", "0.31 m", "15 m").Like("4 ft", "1.2 m"),
            end => end.PostSpacing, (end, value) => end with { PostSpacing = value }),
        Quantities<End, Length>("posts", Across, end => end.Posts, (end, value) => end with { Posts = value }),
        Choice<End, PostTop>("postTop", end => end.PostTop, (end, value) => end with { PostTop = value }),
        Quantity<End, Length>("embedment", Depths, end => end.Embedment, (end, value) => end with { Embedment = value }),
        Quantity<End, Length>("holeDiameter", Hole, end => end.HoleDiameter, (end, value) => end with { HoleDiameter = value }),
        Quantity<End, Length>("holeDepth", Depths, end => end.HoleDepth, (end, value) => end with { HoleDepth = value }),
        Group<End, Board>("baseboard", FrameFormats.Board, end => end.Baseboard, (end, value) => end with { Baseboard = value }),
        Quantities<End, Length>("girts", Heights, end => end.Girts, (end, value) => end with { Girts = value }),
        YesNo<End>("withoutGirts", end => end.WithoutGirts, (end, value) => end with { WithoutGirts = value }),
        Group<End, Board>("frameBoard", FrameFormats.Board, end => end.FrameBoard, (end, value) => end with { FrameBoard = value }),
        Group<End, Board>("headerBoard", FrameFormats.Board, end => end.HeaderBoard, (end, value) => end with { HeaderBoard = value }),
        Groups<End, Door>("doors", Door, end => end.Doors, (end, value) => end with { Doors = value }));

    public static PlanFormat<Ends> Ends { get; } = new(
        Group<Ends, End>("front", End, ends => ends.Front, (ends, value) => ends with { Front = value }),
        MaybeGroup<Ends, End>("back", End, ends => ends.Back, (ends, value) => ends with { Back = value }));

    public static PlanFormat<Side> Side { get; } = new(
        Choice<Side, SideKind>("kind", side => side.Kind, (side, value) => side with { Kind = value }),
        Quantity<Side, Length>("hipHeight", Heights, side => side.HipHeight, (side, value) => side with { HipHeight = value }),
        Group<Side, Board>("hipBoard", FrameFormats.Board, side => side.HipBoard, (side, value) => side with { HipBoard = value }),
        Group<Side, Tube>("rollTube", FrameFormats.Tube, side => side.RollTube, (side, value) => side with { RollTube = value }),
        Quantity<Side, Length>(
            "overlapBelow", PlanQuantities.Length.Within("0 in", "60 in", "0 mm", "1500 mm").Like("6 in", "150 mm"),
            side => side.OverlapBelow, (side, value) => side with { OverlapBelow = value }));

    public static PlanFormat<Sides> Sides { get; } = new(
        Group<Sides, Side>("left", Side, sides => sides.Left, (sides, value) => sides with { Left = value }),
        MaybeGroup<Sides, Side>("right", Side, sides => sides.Right, (sides, value) => sides with { Right = value }));
}
