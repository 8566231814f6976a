using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

internal sealed partial class EndPlanner
{
    private ImmutableArray<DoorOpening> Doors()
    {
        BoardSection post = PostBoard;
        BoardSection frame = Frame;
        var doors = ImmutableArray.CreateBuilder<DoorOpening>(end.Doors.Length);
        for (int index = 0; index < end.Doors.Length; index++)
        {
            string doorPath = FormattableString.Invariant($"{path}.doors[{index}]");
            DoorOpening door = Door(index, doorPath, end.Doors[index], frame);
            if (Fits(doorPath, end.Doors[index], door, WidthOf(post), frame.Depth)) doors.Add(door);
        }
        doors.Sort((one, other) => one.Centre.CompareTo(other.Centre));
        for (int index = 1; index < doors.Count; index++)
        {
            Length between = doors[index].RoughLeft - doors[index - 1].RoughRight;
            // One post each, or they would share a place.
            if (between < WidthOf(post) * 2)
            {
                draft.Error("ends.door.too-close", path + ".doors", "Two doors stand too close for a post beside each.",
                    $"{draft.Tape(between)} between {doors[index - 1].Id} and {doors[index].Id}", $"at least {draft.Tape(WidthOf(post) * 2)}");
                return [];
            }
        }
        return doors.ToImmutable();
    }

    private DoorOpening Door(int index, string doorPath, Door asked, BoardSection frame)
    {
        DoorKind kind = draft.Answers.Take(doorPath + ".kind", new Usual<DoorKind>(DoorKind.Side, "The door has one leaf hinged at its side.", Sources.Citation.CommonPractice, true), asked.Kind);
        Length clear = draft.Answers.Take(doorPath + ".width", LayoutDefaults.DoorWidth(kind), asked.Width);
        Length height = draft.Answers.Take(doorPath + ".height", LayoutDefaults.DoorHeight, asked.Height);
        Length centre = draft.Answers.Take(doorPath + ".centre", new Usual<Length>(bow.Span / 2, "The door stands in the middle.", Sources.Citation.CommonPractice) { Metric = MetricWay.AsItIs }, asked.Centre);
        DoorSwing swing = kind is DoorKind.Side or DoorKind.Double ? draft.Answers.Take(doorPath + ".swing", LayoutDefaults.Swing, asked.Swing) : DoorSwing.Out;
        HingeSide? hinge = kind == DoorKind.Side ? draft.Answers.Take(doorPath + ".hinge", LayoutDefaults.Hinge, asked.Hinge) : null;
        WarnOfUnused(doorPath, kind, asked);
        LeafCover cover = draft.Answers.Take(doorPath + ".leafCover",
            kind == DoorKind.Overhead ? LayoutDefaults.LeafCover with { Value = LeafCover.None, Says = "An overhead door is bought whole." } : LayoutDefaults.LeafCover, asked.LeafCover);
        // A sliding leaf laps past its opening; every other door closes against jambs that line the posts.
        Length rough = kind == DoorKind.Sliding ? clear : clear + (frame.Thickness * 2);
        if (draft.Built is { } built)
        {
            Length jambs = rough - clear;
            clear = built.Of(MeasureNames.DoorWidth(DoorId(index))) ?? built.Of(MeasureNames.DoorRough(DoorId(index))) - jambs ?? clear;
            rough = draft.Measured(MeasureNames.DoorRough(DoorId(index)), clear + jambs);
            height = draft.Measured(MeasureNames.DoorHeight(DoorId(index)), height);
            centre = built.Of(MeasureNames.Place(DoorId(index))) ?? (isFront ? built.Planned.Front : built.Planned.Back).Doors.First(door => door.Id == DoorId(index)).Centre;
        }
        BoardSection header = HeaderOver(rough);
        Length headerTop = height + header.Depth;
        Length vent = asked.VentHeight?.Value ?? Length.Zero;
        string id = DoorId(index);
        return new DoorOpening
        {
            Id = id,
            Kind = kind,
            Swing = swing,
            Hinge = hinge,
            LeafCover = cover,
            Centre = centre,
            ClearWidth = clear,
            ClearHeight = height,
            RoughWidth = rough,
            HeaderTop = headerTop,
            VentHeight = vent,
            FrameTop = vent > Length.Zero ? headerTop + vent + frame.Depth : headerTop,
            Leaves = cover == LeafCover.None ? [] : Leaves(id, kind, hinge, doorPath, asked, centre, clear, height),
        };
    }

    private string DoorId(int index) => FormattableString.Invariant($"{name}-door-{index + 1}");

    /// <summary>Says so where the plan gives a side of hinges, or a swing, to a door that has none.</summary>
    private void WarnOfUnused(string doorPath, DoorKind kind, Door asked)
    {
        if (asked.Hinge is { } hinge && kind != DoorKind.Side)
        {
            draft.Warn("ends.door.hinge-unused", doorPath + ".hinge",
                kind == DoorKind.Double ? "A double door is hinged at both sides, so this is not used." : "This kind of door has no hinges, so this is not used.",
                hinge == HingeSide.Left ? "left" : "right", "leave it out, or kind: side");
        }
        if (asked.Swing is { } swing && kind is (DoorKind.Sliding or DoorKind.Overhead))
        {
            draft.Warn("ends.door.swing-unused", doorPath + ".swing", "This kind of door does not swing, so this is not used.",
                swing == DoorSwing.Out ? "out" : "in", "leave it out, or kind: side or double");
        }
    }

    private BoardSection HeaderOver(Length roughWidth) =>
        draft.Board(path + ".headerBoard", end.HeaderBoard, LayoutDefaults.Header(roughWidth), LayoutDefaults.TreatedFrame);

    private ImmutableArray<DoorLeaf> Leaves(string doorId, DoorKind kind, HingeSide? hinge, string doorPath, Door asked, Length centre, Length clear, Length height)
    {
        Length gap = draft.Answers.Take(doorPath + ".gap", LayoutDefaults.LeafGap, asked.Gap);
        Length bottom = draft.Answers.Take(doorPath + ".bottomGap", LayoutDefaults.LeafBottomGap, asked.BottomGap);
        Length left = centre - (clear / 2);
        string first = doorId + "-leaf-1", second = doorId + "-leaf-2";
        Length hungHeight = height - gap - bottom;
        Length half = (clear - (gap * 3)) / 2;
        Length lap = LayoutDefaults.SlideOverlap.ValueIn(draft.Units);
        return kind switch
        {
            DoorKind.Side => [new DoorLeaf(first, left + gap, bottom, clear - (gap * 2), hungHeight, hinge == HingeSide.Left, LeafMemberIds(first))],
            DoorKind.Double =>
            [
                new DoorLeaf(first, left + gap, bottom, half, hungHeight, true, LeafMemberIds(first)),
                new DoorLeaf(second, left + (gap * 2) + half, bottom, half, hungHeight, false, LeafMemberIds(second)),
            ],
            DoorKind.Sliding => [new DoorLeaf(first, left - lap, bottom, clear + (lap * 2), height + lap - bottom, null, LeafMemberIds(first))],
            DoorKind.Overhead => [],
        };
    }

    private static ImmutableArray<string> LeafMemberIds(string leaf) =>
    [
        leaf + "-stile-left", leaf + "-stile-right", leaf + "-rail-bottom", leaf + "-rail-middle", leaf + "-rail-top",
        leaf + "-brace-lower", leaf + "-brace-upper",
    ];

    /// <summary>Whether the framed opening, posts included, stands under the bow and within the legs.</summary>
    private bool Fits(string doorPath, Door asked, DoorOpening door, Length postWidth, Length railDepth)
    {
        Length top = door.FrameTop;
        string seen = $"{asked.Width?.Text ?? draft.Tape(door.ClearWidth)} wide, {asked.Height?.Text ?? draft.Tape(door.ClearHeight)} high";
        if (door.ClearWidth <= Length.Zero || door.ClearHeight <= Length.FromFeet(1)) return Refuse("ends.door.too-small", doorPath, "The door is too small to go through.", seen, "a door of a person's size");

        Length extra = top - door.ClearHeight;
        Length halfRough = door.RoughWidth / 2;
        Length widest = WidestAt(door.Centre, top);
        if (halfRough <= widest) return RoomToSlide(doorPath, door, postWidth);

        // The opening is symmetric about its middle, so the nearer side of the bow decides.
        Length roughLessClear = door.RoughWidth - door.ClearWidth;
        Length fitWidth = TapeText.RoundDownForLimit((widest * 2) - roughLessClear, draft.Units);
        Length? lowerSide = LowestOver(door.Centre - halfRough, door.Centre + halfRough);
        Length fitHeight = TapeText.RoundDownForLimit((lowerSide ?? Length.Zero) - extra, draft.Units);
        string accepted = (fitWidth > Length.FromFeet(1), fitHeight > Length.FromFeet(4)) switch
        {
            (true, true) => $"up to {draft.Tape(fitWidth)} wide at this height, or up to {draft.Tape(fitHeight)} high at this width",
            (true, false) => $"up to {draft.Tape(fitWidth)} wide at this height",
            (false, true) => $"up to {draft.Tape(fitHeight)} high at this width",
            (false, false) => "a lower or narrower door, or one nearer the middle",
        };
        return Refuse("ends.door.does-not-fit", doorPath + (asked.Width is null ? ".height" : ".width"),
            door.VentHeight > Length.Zero ? "The door with its header and vent does not fit under the bow." : "The door with its header does not fit under the bow.", seen, accepted);
    }

    private bool Refuse(string code, string at, string message, string seen, string accepted)
    {
        draft.Error(code, at, message, seen, accepted);
        return false;
    }

    /// <summary>Half the rough width that fits at a height about a middle.</summary>
    private Length WidestAt(Length centre, Length top)
    {
        if (top >= bow.Underside.Highest()) return -Length.FromFeet(1);
        (Length left, Length right) = bow.Underside.AcrossAt(top);
        return Length.Min(centre - left, right - centre);
    }

    private Length? LowestOver(Length from, Length to) =>
        bow.UndersideAt(from) is { } left && bow.UndersideAt(to) is { } right ? Length.Min(left, right) : null;

    private bool RoomToSlide(string doorPath, DoorOpening door, Length postWidth)
    {
        if (door.Kind != DoorKind.Sliding || door.Leaves.IsEmpty) return true;
        DoorLeaf leaf = door.Leaves[0];
        (Length left, Length right) = bow.FilmLine.AcrossAt(leaf.Bottom + leaf.Height);
        Length room = Length.Max(leaf.Left - left, right - (leaf.Left + leaf.Width));
        if (room + postWidth < leaf.Width)
        {
            draft.Warn("ends.door.no-room-to-slide", doorPath + ".width", "The leaf has no room to slide clear of its opening within the end wall; the track must run past the bow on posts of its own.",
                $"{draft.Tape(leaf.Width)} of leaf, {draft.Tape(Length.Max(room, Length.Zero))} of wall", "a narrower door, or one to the side");
        }
        return true;
    }

    private void FrameDoor(DoorOpening door)
    {
        BoardSection frame = Frame;
        BoardSection header = HeaderOver(door.RoughWidth);
        string place = $"{name} end, {door.Id}";
        Length headerMiddle = door.ClearHeight + (header.Depth / 2);
        foreach (string layer in (ReadOnlySpan<string>)["outer", "inner"])
        {
            AddBoard($"{door.Id}-header-{layer}", MemberRole.Header, header, InPlane(door.RoughLeft, headerMiddle, header.Thickness * (layer == "outer" ? 1 : 3)),
                InPlane(door.RoughRight, headerMiddle, header.Thickness * (layer == "outer" ? 1 : 3)), place + ", header", end.HeaderBoard);
        }
        if (door.RoughWidth > door.ClearWidth)
        {
            foreach (bool left in (ReadOnlySpan<bool>)[true, false])
            {
                Length across = left ? door.RoughLeft + (frame.Thickness / 2) : door.RoughRight - (frame.Thickness / 2);
                AddBoard($"{door.Id}-jamb-{GroundPlanner.SideName(left)}", MemberRole.Jamb, frame, InPlane(across, Length.Zero, frame.Depth),
                    InPlane(across, door.ClearHeight, frame.Depth), $"{place}, {GroundPlanner.SideName(left)} jamb", end.FrameBoard);
            }
        }
        if (door.VentHeight > Length.Zero)
        {
            Length middle = door.FrameTop - (frame.Depth / 2);
            AddBoard(door.Id + "-vent-rail", MemberRole.VentRail, frame, InPlane(door.RoughLeft, middle, frame.Thickness), InPlane(door.RoughRight, middle, frame.Thickness),
                place + ", over the vent", end.FrameBoard);
        }
        Cripples(door, frame, place);
        foreach (DoorLeaf leaf in door.Leaves) FrameLeaf(door, leaf, place);
    }

    private void Cripples(DoorOpening door, BoardSection frame, string place)
    {
        Length spacing = draft.Answers.Take(path + ".postSpacing", LayoutDefaults.EndPostSpacing, end.PostSpacing);
        int bays = Math.Max(1, (int)Math.Ceiling((door.RoughWidth / spacing) - Tolerances.WholeNumber));
        for (int bay = 1; bay < bays; bay++)
        {
            Length centre = door.RoughLeft + (door.RoughWidth * bay / bays);
            if (TopOf(centre, frame.Depth) is not { } heights || heights.Least - door.FrameTop < Length.FromInches(3)) continue;
            Angle tilt = Angle.FromRadians(Math.Atan2(heights.Point.Metres - heights.Least.Metres, RunOfSlope(heights, frame.Depth).Metres));
            draft.Members.Add(new Member
            {
                Id = FormattableString.Invariant($"{door.Id}-cripple-{bay}"),
                Role = MemberRole.Cripple,
                Section = frame,
                Start = InPlane(centre, door.FrameTop, frame.Thickness),
                End = InPlane(centre, heights.Point, frame.Thickness),
                CutLength = heights.Point - door.FrameTop,
                Place = place + ", over the door",
                Bevel = new Bevel(tilt, heights.Left - door.FrameTop, heights.Right - door.FrameTop, heights.Point - door.FrameTop),
                StockLengths = LayoutDraft.StockLengths(end.FrameBoard.StockLengths),
            });
        }
    }

    private void FrameLeaf(DoorOpening door, DoorLeaf leaf, string place)
    {
        Door asked = end.Doors[DoorIndex(door)];
        BoardSection board = draft.Board(FormattableString.Invariant($"{path}.doors[{DoorIndex(door)}].leafBoard"), asked.LeafBoard, LayoutDefaults.LeafBoard, LayoutDefaults.TreatedFrame);
        // The leaf's boards lie flat: their depth is seen from outside.
        Length face = board.Depth, flat = board.Thickness;
        Length left = leaf.Left, right = leaf.Left + leaf.Width, bottom = leaf.Bottom, top = leaf.Bottom + leaf.Height;
        if (leaf.Width < face * 3 || leaf.Height < face * 5)
        {
            draft.Error("ends.door.leaf-too-small", FormattableString.Invariant($"{path}.doors[{DoorIndex(door)}].width"), "The leaf is too small for its own frame.",
                $"{draft.Tape(leaf.Width)} by {draft.Tape(leaf.Height)}", $"at least {draft.Tape(face * 3)} wide");
            return;
        }
        Length middle = (bottom + top) / 2;
        string label = $"{place}, {(door.Leaves.Length == 1 ? "leaf" : leaf.HingeLeft == true ? "left leaf" : "right leaf")}";
        Add("-stile-left", MemberRole.LeafStile, (left + (face / 2), bottom), (left + (face / 2), top));
        Add("-stile-right", MemberRole.LeafStile, (right - (face / 2), bottom), (right - (face / 2), top));
        Add("-rail-bottom", MemberRole.LeafRail, (left + face, bottom + (face / 2)), (right - face, bottom + (face / 2)));
        Add("-rail-middle", MemberRole.LeafRail, (left + face, middle), (right - face, middle));
        Add("-rail-top", MemberRole.LeafRail, (left + face, top - (face / 2)), (right - face, top - (face / 2)));
        // A leaf hangs from its hinges, so each brace rises from the hinge side to carry the free side in compression.
        bool rises = leaf.HingeLeft ?? true;
        foreach ((string part, Length low, Length high) in (ReadOnlySpan<(string, Length, Length)>)
            [("-brace-lower", bottom + face, middle - (face / 2)), ("-brace-upper", middle + (face / 2), top - face)])
        {
            Add(part, MemberRole.LeafBrace, (left + face, rises ? low : high), (right - face, rises ? high : low));
        }

        void Add(string part, MemberRole role, (Length Across, Length Up) from, (Length Across, Length Up) to) =>
            AddBoard(leaf.Id + part, role, board, InPlane(from.Across, from.Up, flat), InPlane(to.Across, to.Up, flat), label, asked.LeafBoard);
    }

    private static int DoorIndex(DoorOpening door) =>
        int.Parse(door.Id[(door.Id.LastIndexOf('-') + 1)..], System.Globalization.CultureInfo.InvariantCulture) - 1;
}
