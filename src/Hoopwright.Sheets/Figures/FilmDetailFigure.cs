using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Details of how film is held, large: a batten with its nails and staples, lock channel with its wires, and the foot of a door leaf.</summary>
internal static class FilmDetailFigure
{
    /// <summary>Draws them; the leaf where there is one.</summary>
    public static Drawing Draw(DetailPanels panels, PlannedTunnel planned, Tunnel tunnel, CoverPlan cover, FigureSheet sheet, string number)
    {
        DrawingBuilder builder = sheet.Start("Details of film and doors", $"A batten with its nails, lock channel with its wires{(Leaf(tunnel) is null ? "" : ", the foot of a door leaf")}: {sheet.Project}.", number);
        SheetBox room = builder.Room;
        double partMm = room.TopMm + (room.HeightMm * 0.38);
        Batten(panels, planned, cover, sheet, builder, room with { BottomMm = partMm });
        SheetBox lower = room with { TopMm = partMm + 2 };
        (EndWall End, DoorOpening Door, DoorLeaf Leaf)? leaf = Leaf(tunnel);
        Channel(panels, cover, builder, leaf is null ? lower : lower with { RightMm = lower.Middle.XMm - 4 });
        if (leaf is { } hung) Foot(tunnel, hung, sheet, builder, lower with { LeftMm = lower.Middle.XMm + 4 });
        return builder.Build();
    }

    private static (EndWall End, DoorOpening Door, DoorLeaf Leaf)? Leaf(Tunnel tunnel)
    {
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (DoorOpening door in end.Doors.Where(door => !door.Leaves.IsEmpty)) return (end, door, door.Leaves[0]);
        }
        return null;
    }

    private static void Batten(DetailPanels panels, PlannedTunnel planned, CoverPlan cover, FigureSheet sheet, DrawingBuilder builder, SheetBox within)
    {
        Length first = planned.Plan.Cover.BattenFirst?.Value ?? Length.FromInches(4), apart = planned.Plan.Cover.BattenSpacing?.Value ?? Length.FromInches(6);
        Length end = (first * 2) + (apart * 2.5), wide = Length.FromInches(1.5);
        Figure figure = builder.Figure(At(Length.Zero, -wide), At(end, wide * 2), sheet.Units, within, spareMm: 3);
        figure.On("film").Fill(ModelPath.Rectangle(At(Length.Zero, -wide), At(end, wide * 2)), Ink.FilmTint);
        ModelPath batten = ModelPath.Rectangle(At(Length.Zero, Length.Zero), At(end, wide));
        figure.On("batten").Fill(batten, Ink.LumberTint).Hatch(batten, Hatch.Wood).Line(At(Length.Zero, Length.Zero), At(end, Length.Zero)).Line(At(Length.Zero, wide), At(end, wide)).Line(At(Length.Zero, Length.Zero), At(Length.Zero, wide));
        Length[] nails = [first, first * 2, (first * 2) + apart, (first * 2) + (apart * 2)];
        foreach (Length nail in nails) figure.On("nails").OnPaper((view, pen) => pen.Fill(SheetPath.Circle(view.At(At(nail, wide / 2)), 0.9), Ink.Black));
        for (int gap = 1; gap < nails.Length; gap++)
        {
            Length middle = (nails[gap - 1] + nails[gap]) / 2;
            figure.On("staples").OnPaper((view, pen) => pen.Line(view.At(At(middle, wide / 2)).Moved(-1.5, 0), view.At(At(middle, wide / 2)).Moved(1.5, 0), LineRole.Outline));
        }
        figure.Caption = "E  Batten over film, from its end";
        figure.Chain(Side.Below, nails.Prepend(Length.Zero).Select(nail => At(nail, Length.Zero)), sheet.Tape);
        figure.Callout(At(nails[1], wide / 2), $"nail {TapeText.OfThickness(planned.Plan.Cover.BattenNailLength?.Value ?? Length.FromInches(1.5), sheet.Units)} long", Angle.FromDegrees(60));
        figure.Callout(At((nails[2] + nails[3]) / 2, wide / 2), "a staple between each pair of nails", Angle.FromDegrees(50));
        figure.SurfaceCallout(At(end * 0.93, wide * 1.6), $"film {TapeText.OfThickness(cover.Thickness, sheet.Units)}", Angle.FromDegrees(20));
    }

    /// <summary>Lock channel, many times larger than all else on the sheet, as its shape differs by maker.</summary>
    private static void Channel(DetailPanels panels, CoverPlan cover, DrawingBuilder builder, SheetBox within)
    {
        int wires = cover.Runs.Where(run => run.Kind == FasteningKind.Channel).Select(run => run.Wires).DefaultIfEmpty(1).Max();
        Pen pen = builder.On("channel");
        double x = within.LeftMm + 40, y = within.TopMm + 38, half = 22, deep = 15;
        pen.Fill(SheetPath.Rectangle(new SheetBox(x - half - 12, y + 1.5, x + half + 12, y + 13)), Ink.LumberTint).Hatch(SheetPath.Rectangle(new SheetBox(x - half - 12, y + 1.5, x + half + 12, y + 13)), Hatch.Wood);
        pen.Line(new SheetPoint(x - half - 12, y + 1.5), new SheetPoint(x + half + 12, y + 1.5), LineRole.Cut);
        pen.Path(SheetPath.Through(new SheetPoint(x - half + 6, y - deep), new SheetPoint(x - half, y - deep + 3), new SheetPoint(x - half, y), new SheetPoint(x + half, y), new SheetPoint(x + half, y - deep + 3), new SheetPoint(x + half - 6, y - deep)), LineRole.Cut);
        Pen film = builder.On("film");
        for (int layer = 0; layer < Math.Max(wires, cover.Layers); layer++)
        {
            double lift = 1.6 + (layer * 1.8);
            film.Path(SheetPath.Through(new SheetPoint(x - half - 14, y - deep - 1 - lift), new SheetPoint(x - half + 4, y - deep - 1 - lift), new SheetPoint(x - half + 3 + lift, y - lift), new SheetPoint(x + half - 3 - lift, y - lift),
                new SheetPoint(x + half - 4, y - deep - 1 - lift), new SheetPoint(x + half + 14, y - deep - 1 - lift)), LineRole.Outline, Ink.Film);
        }
        Pen wire = builder.On("wire");
        for (int layer = 0; layer < wires; layer++)
        {
            double bottom = y - 5.5 - (layer * 4.2);
            wire.Circle(new SheetPoint(x - half + 8 + layer, bottom), 1.5, LineRole.Outline).Circle(new SheetPoint(x + half - 8 - layer, bottom), 1.5, LineRole.Outline);
        }
        pen.Line(new SheetPoint(x, y - 1), new SheetPoint(x, y + 10), LineRole.Outline);
        pen.Line(new SheetPoint(x - 2.2, y - 1), new SheetPoint(x + 2.2, y - 1), LineRole.Cut);
        pen.Text(new SheetPoint(within.LeftMm + 3, y + 42), "F  Lock channel, cut across; not to scale, makers differ", TextAlign.Start, 2.8, Fonts.LetterWeight.Bold);
        builder.Callout(new SheetPoint(x + half - 8 - (wires - 1), y - 5.5 - ((wires - 1) * 4.2) - 1.5), wires == 2 ? "where two films end, wire doubles:\none wire for each film" : "one wire", Angle.FromDegrees(40));
        builder.Callout(new SheetPoint(x + half + 12, y - deep - 2.6), wires == 2 || cover.Layers > 1 ? "two layers of film" : "film", Angle.FromDegrees(-15));
        builder.Callout(new SheetPoint(x, y + 10), $"screw every {panels.Rule("channelScrewSpacing") ?? ""}, wire by pieces of {panels.Rule("wirePiece") ?? ""};\na lap of two pieces takes a screw with a washer", Angle.FromDegrees(-60));
    }

    private static void Foot(Tunnel tunnel, (EndWall End, DoorOpening Door, DoorLeaf Leaf) hung, FigureSheet sheet, DrawingBuilder builder, SheetBox within)
    {
        (EndWall end, DoorOpening door, DoorLeaf leaf) = hung;
        ImmutableArray<Member> frame = [.. leaf.MemberIds.Select(id => tunnel.Members.First(member => member.Id == id))];
        Length rail = frame.First(member => member.Role == MemberRole.LeafRail).Section.Match(tube => tube.Outside, board => board.Depth);
        Length stile = frame.First(member => member.Role == MemberRole.LeafStile).Section.Match(tube => tube.Outside, board => board.Depth);
        EndPost? post = end.Posts.Where(each => each.DoorId == door.Id && each.Centre < door.Centre).OrderByDescending(each => each.Centre).FirstOrDefault();
        Length left = post is null ? leaf.Left - Length.FromInches(2) : post.Centre - (post.Width / 2), right = leaf.Left + stile + Length.FromInches(9), ground = post?.Ground ?? Length.Zero, top = leaf.Bottom + rail + Length.FromInches(6);
        Figure figure = builder.Figure(At(left - Length.FromInches(2), ground - Length.FromInches(4)), At(right, top), sheet.Units, within, spareMm: 5);
        GroundMarks.Ground(figure, left - Length.FromInches(2), ground, right, ground, Length.FromInches(3));
        if (post is not null)
        {
            ModelPath upright = ModelPath.Rectangle(At(left, ground), At(post.Centre + (post.Width / 2), top));
            figure.On("posts").Fill(upright, Ink.LumberTint).Line(At(left, ground), At(left, top)).Line(At(post.Centre + (post.Width / 2), ground), At(post.Centre + (post.Width / 2), top));
            figure.SurfaceCallout(At(post.Centre, top - Length.FromInches(2)), "post beside the door", Angle.FromDegrees(120));
        }
        ModelPath upStile = ModelPath.Rectangle(At(leaf.Left, leaf.Bottom), At(leaf.Left + stile, top)), lowRail = ModelPath.Rectangle(At(leaf.Left + stile, leaf.Bottom), At(right, leaf.Bottom + rail));
        figure.On("leaf").Fill(upStile, Ink.LumberTint).Hatch(upStile, Hatch.Wood).Fill(lowRail, Ink.LumberTint).Hatch(lowRail, Hatch.Wood);
        figure.On("leaf").Path(ModelPath.Through(At(leaf.Left, top), At(leaf.Left, leaf.Bottom), At(right, leaf.Bottom)), LineRole.Outline, Ink.Lumber).Line(At(leaf.Left + stile, leaf.Bottom), At(leaf.Left + stile, top), LineRole.Outline, Ink.Lumber).Line(At(leaf.Left + stile, leaf.Bottom + rail), At(right, leaf.Bottom + rail), LineRole.Outline, Ink.Lumber);
        figure.Caption = $"G  Foot of {door.Id}, from outside";
        figure.SurfaceCallout(At(leaf.Left + stile + Length.FromInches(4), leaf.Bottom + (rail / 2)), "lowest rail of the leaf", Angle.FromDegrees(50));
        figure.Callout(At(right - Length.FromInches(2), ground), "no board in the way: pack the ground\nhard and let it fall away from the door", Angle.FromDegrees(-30), Angle.FromDegrees(230));
        figure.Chain(Side.Right, [At(right, ground), At(right, leaf.Bottom), At(right, leaf.Bottom + rail)], sheet.Tape);
    }
}
