using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Figures.FigureSheet;
using Side = Hoopwright.Sheets.Drawings.Side;

namespace Hoopwright.Sheets.Figures;

/// <summary>An end wall with its posts, doors and boards. Left is left as seen entering by the front end, on both ends.</summary>
internal static class EndFigure
{
    public static Drawing Draw(Tunnel tunnel, FigureSheet sheet, string number, EndWall end)
    {
        Length span = end.Bow.Span, peak = end.Bow.PeakHeight;
        string seen = end.IsFront ? "seen from outside" : "seen from inside";
        DrawingBuilder builder = sheet.Start($"{(end.IsFront ? "Front" : "Back")} end, {seen}", $"The {end.Name} end wall of {sheet.Project}.", number);
        var remarks = new Remarks(builder, sheet);
        BowStation station = end.IsFront ? tunnel.Stations[0] : tunnel.Stations[^1];
        HashSet<string> standing = [.. end.Posts.Select(post => post.MemberId)];
        Length deepest = station.Base - GroundMarks.Lowest(tunnel, [station], standing.Contains);
        Length pad = Length.FromFeet(1.5);
        Figure figure = builder.Figure(At(-pad, -deepest), At(span + pad, peak), sheet.Units, remarks.Room, spareMm: 6);
        GroundMarks.Ground(figure, -pad, station.GroundLeft - end.Base, span + pad, station.GroundRight - end.Base, Length.FromInches(5));
        figure.On("bow").Path(Trace(end.Bow.FilmLine), LineRole.Outline).Path(Trace(end.Bow.Underside), LineRole.Outline);

        foreach (EndPost post in end.Posts) Post(tunnel, figure, end, post);
        foreach (Member member in tunnel.Members.Where(member => IsOf(member, end))) DrawBoard(figure, member, end.Base);
        foreach (EndBoard board in end.Baseboards) Baseboard(figure, board, end.BaseboardHeight);
        foreach (DoorOpening door in end.Doors) Door(sheet, remarks, figure, door);

        if (!end.Posts.IsEmpty)
        {
            figure.Running(Side.Below, [At(Length.Zero, -deepest), .. end.Posts.Select(post => At(post.Centre, -deepest)), At(span, -deepest)], sheet.Tape);
            figure.Marks(Side.Above, [At(Length.Zero, peak), .. end.Posts.Select(post => At(post.Centre, post.TopPoint))],
                [.. end.Posts.Select(post => $"{Short(post)}: top {sheet.Tape(post.TopPoint)}")]);
        }
        figure.Overall(Side.Below, At(Length.Zero, -deepest), At(span, -deepest), sheet.Tape);
        figure.Overall(Side.Right, At(span + pad, Length.Zero), At(span + pad, peak), sheet.Tape);
        DoorOpening? shown = end.Doors.FirstOrDefault();
        if (shown is not null)
        {
            Length[] ups = shown.VentHeight > Length.Zero
                ? [Length.Zero, shown.ClearHeight, shown.HeaderTop, shown.HeaderTop + shown.VentHeight, shown.FrameTop]
                : [Length.Zero, shown.ClearHeight, shown.HeaderTop];
            figure.Chain(Side.Left, ups.Select(up => At(-pad, up)), sheet.Tape);
        }
        if (end.Posts.FirstOrDefault() is { } first && tunnel.Holes.FirstOrDefault(hole => hole.PostId == first.MemberId) is { } hole)
        {
            remarks.Edge(figure, At(first.Centre - (hole.Diameter / 2), first.Ground - (hole.Depth / 2)),
                $"hole {sheet.Tape(hole.Diameter)} wide, {sheet.Tape(hole.Depth)} deep,\npost {sheet.Tape(hole.PostDepth)} in; concrete slopes\naway {sheet.Tape(hole.CollarRise)} from the post", Angle.FromDegrees(190), Angle.FromDegrees(170));
        }
        remarks.Write();
        return builder.Build();
    }

    /// <summary>"P3" for "front-post-3".</summary>
    private static string Short(EndPost post) => "P" + post.MemberId[(post.MemberId.LastIndexOf('-') + 1)..];

    private static bool IsOf(Member member, EndWall end) => member.Id.StartsWith(end.Name + "-", StringComparison.Ordinal)
        && member.Role is MemberRole.Girt or MemberRole.Header or MemberRole.Jamb or MemberRole.VentRail or MemberRole.Cripple;

    private static void Post(Tunnel tunnel, Figure figure, EndWall end, EndPost post)
    {
        Length left = post.Centre - (post.Width / 2), right = post.Centre + (post.Width / 2), foot = post.Ground - post.Embedment;
        if (tunnel.Holes.FirstOrDefault(hole => hole.PostId == post.MemberId) is { } hole)
            GroundMarks.Concrete(figure, hole, post.Centre, post.Ground, post.Width);
        ModelPath outline = post.TopPoint > Length.Max(post.TopLeft, post.TopRight)
            ? ModelPath.Around(At(left, foot), At(left, post.TopLeft), At(end.Bow.Span / 2, post.TopPoint), At(right, post.TopRight), At(right, foot))
            : ModelPath.Around(At(left, foot), At(left, post.TopLeft), At(right, post.TopRight), At(right, foot));
        figure.On("posts").Fill(outline, Ink.LumberTint).Path(outline, LineRole.Outline, Ink.Lumber);
    }

    private static void DrawBoard(Figure figure, Member member, Length up)
    {
        BoardSection section = member.Section.Match(_ => throw new InvalidOperationException("A board is no tube."), board => board);
        bool upright = member.Role is MemberRole.Jamb or MemberRole.Cripple;
        Length half = (member.Role == MemberRole.Jamb ? section.Thickness : section.Depth) / 2;
        ModelPath outline = upright
            ? ModelPath.Rectangle(At(member.Start.X - half, member.Start.Z - up), At(member.End.X + half, member.End.Z - up))
            : ModelPath.Rectangle(At(member.Start.X, member.Start.Z - up - half), At(member.End.X, member.End.Z - up + half));
        figure.On("frame").Fill(outline, Ink.LumberTint).Path(outline, LineRole.Outline, Ink.Lumber);
    }

    private static void Baseboard(Figure figure, EndBoard board, Length height)
    {
        ModelPath outline = ModelPath.Rectangle(At(board.From, Length.Zero), At(board.To, height));
        if (!board.BetweenPosts) figure.On("baseboards").Fill(outline, Ink.LumberTint);
        figure.On("baseboards").Hatch(outline, Hatch.Wood).Path(outline, LineRole.Outline, Ink.Lumber);
    }

    private static void Door(FigureSheet sheet, Remarks remarks, Figure figure, DoorOpening door)
    {
        foreach (DoorLeaf leaf in door.Leaves)
        {
            PlanePoint low = At(leaf.Left, leaf.Bottom), high = At(leaf.Left + leaf.Width, leaf.Bottom + leaf.Height);
            figure.On("leaves").Rectangle(low, high, LineRole.Dimension, Ink.Film);
            if (leaf.HingeLeft is { } hingeLeft)
            {
                // The lines of the swing meet at the hinge side.
                Length hinge = hingeLeft ? low.Across : high.Across, free = hingeLeft ? high.Across : low.Across;
                PlanePoint middle = At(hinge, (low.Up + high.Up) / 2);
                LineRole role = door.Swing == DoorSwing.Out ? LineRole.Dimension : LineRole.Hidden;
                figure.On("swing").Line(At(free, low.Up), middle, role, Ink.Film).Line(At(free, high.Up), middle, role, Ink.Film);
                HingeMarks.Draw(figure, leaf, low);
            }
        }
        remarks.Surface(figure, At(door.Centre + (door.ClearWidth * 0.3), door.ClearHeight * 0.86),
            $"{Kind(door)}\nclear {sheet.Tape(door.ClearWidth)} × {sheet.Tape(door.ClearHeight)}\nrough {sheet.Tape(TapeText.RoundUpForOpening(door.RoughWidth, sheet.Units))} post to post", Angle.FromDegrees(20), Angle.FromDegrees(35), Angle.FromDegrees(160));
        if (door.VentHeight > Length.Zero)
            remarks.Surface(figure, At(door.Centre + (door.RoughWidth * 0.25), door.HeaderTop + (door.VentHeight / 2)), $"vent {sheet.Tape(door.VentHeight)} clear", Angle.FromDegrees(30), Angle.FromDegrees(150));
    }

    private static string Kind(DoorOpening door) => door.Kind switch
    {
        DoorKind.Side => $"side door, {Swings(door)},\nhinged at the {(door.Hinge == HingeSide.Right ? "right" : "left")}",
        DoorKind.Double => $"double door, {Swings(door)}",
        DoorKind.Sliding => "sliding door",
        DoorKind.Overhead => "overhead door",
    };

    private static string Swings(DoorOpening door) => door.Swing switch { DoorSwing.Out => "swings out", DoorSwing.In => "swings in" };
}
