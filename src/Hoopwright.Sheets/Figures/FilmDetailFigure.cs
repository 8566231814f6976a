using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Words;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Details of how film is held, large: a batten with its nails and staples, lock channel with its wires, and the foot of a door leaf.</summary>
internal static class FilmDetailFigure
{
    /// <summary>Draws those that the tunnel has.</summary>
    public static Drawing Draw(DetailPanels panels, Tunnel tunnel, CoverPlan cover, FigureSheet sheet, string number)
    {
        CrewWords say = sheet.Words;
        DrawingBuilder builder = sheet.Start(say.Say("Details of film and doors"), say.Fill("How film is held, large: battens, lock channel and the foot of a door leaf of {0}.", sheet.Project), number);
        (EndWall End, DoorOpening Door, DoorLeaf Leaf)? leaf = Leaf(tunnel);
        SheetBox room = builder.Room;
        bool hasBattens = Has(cover, FasteningKind.Batten), hasChannel = Has(cover, FasteningKind.Channel);
        double partMm = room.TopMm + (room.HeightMm * 0.38);
        if (hasBattens) Batten(panels, cover, sheet, builder, room with { BottomMm = partMm });
        SheetBox lower = room with { TopMm = hasBattens ? partMm + 2 : room.TopMm };
        if (hasChannel) Channel(panels, cover, say, builder, leaf is null ? lower : lower with { RightMm = lower.Middle.XMm - 4 });
        if (leaf is { } hung) Foot(tunnel, hung, sheet, builder, hasChannel ? lower with { LeftMm = lower.Middle.XMm + 4 } : lower);
        return builder.Build();
    }

    /// <summary>Whether the sheet has anything to show.</summary>
    public static bool IsNeeded(Tunnel tunnel, CoverPlan cover) => !cover.Runs.IsEmpty || Leaf(tunnel) is not null;

    private static bool Has(CoverPlan cover, FasteningKind kind) => cover.Runs.Any(run => run.Kind == kind);

    private static (EndWall End, DoorOpening Door, DoorLeaf Leaf)? Leaf(Tunnel tunnel)
    {
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (DoorOpening door in end.Doors.Where(door => !door.Leaves.IsEmpty)) return (end, door, door.Leaves[0]);
        }
        return null;
    }

    private static void Batten(DetailPanels panels, CoverPlan cover, FigureSheet sheet, DrawingBuilder builder, SheetBox within)
    {
        CrewWords say = sheet.Words;
        Length first = panels.LengthOf("battenFirst")!.Value, apart = panels.LengthOf("battenSpacing")!.Value;
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
        figure.Caption = "E  " + say.Say("Batten over film, from its end");
        figure.Chain(Side.Below, nails.Prepend(Length.Zero).Select(nail => At(nail, Length.Zero)), sheet.Tape);
        figure.Callout(At(nails[1], wide / 2), say.Fill("nail {0}", say.Say(panels.SizeOf("nail"))), Angle.FromDegrees(60));
        figure.Callout(At((nails[2] + nails[3]) / 2, wide / 2), say.Say("a staple between each pair of nails"), Angle.FromDegrees(50));
        figure.SurfaceCallout(At(end * 0.93, wide * 1.6), say.Fill("film {0}", TapeText.OfThickness(cover.Thickness, sheet.Units)), Angle.FromDegrees(20));
    }

    /// <summary>Lock channel, many times larger than all else on the sheet, as its shape differs by maker.</summary>
    private static void Channel(DetailPanels panels, CoverPlan cover, CrewWords say, DrawingBuilder builder, SheetBox within)
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
        pen.Text(new SheetPoint(within.LeftMm + 3, y + 42), "F  " + say.Say("Lock channel, cut across; not to scale, makers differ"), TextAlign.Start, 2.8, Fonts.LetterWeight.Bold);
        builder.Callout(new SheetPoint(x + half - 8 - (wires - 1), y - 5.5 - ((wires - 1) * 4.2) - 1.5), say.Say(wires == 2 ? "where two films end, wire doubles:\none wire for each film" : "one wire"), Angle.FromDegrees(40));
        builder.Callout(new SheetPoint(x + half + 12, y - deep - 2.6), say.Say(cover.Layers > 1 ? "two layers of film" : wires == 2 ? "two films" : "film"), Angle.FromDegrees(-15));
        builder.Callout(new SheetPoint(x, y + 10), say.Fill("screw every {0}, wire by pieces of {1};\na lap of two pieces takes a screw with a washer", panels.Rule("channelScrewSpacing") ?? "", panels.Rule("wirePiece") ?? ""), Angle.FromDegrees(-60));
    }

    private static void Foot(Tunnel tunnel, (EndWall End, DoorOpening Door, DoorLeaf Leaf) hung, FigureSheet sheet, DrawingBuilder builder, SheetBox within)
    {
        CrewWords say = sheet.Words;
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
            figure.SurfaceCallout(At(post.Centre, top - Length.FromInches(2)), say.Say("post beside the door"), Angle.FromDegrees(120));
        }
        ModelPath upStile = ModelPath.Rectangle(At(leaf.Left, leaf.Bottom), At(leaf.Left + stile, top)), lowRail = ModelPath.Rectangle(At(leaf.Left + stile, leaf.Bottom), At(right, leaf.Bottom + rail));
        figure.On("leaf").Fill(upStile, Ink.LumberTint).Hatch(upStile, Hatch.Wood).Fill(lowRail, Ink.LumberTint).Hatch(lowRail, Hatch.Wood);
        figure.On("leaf").Path(ModelPath.Through(At(leaf.Left, top), At(leaf.Left, leaf.Bottom), At(right, leaf.Bottom)), LineRole.Outline, Ink.Lumber).Line(At(leaf.Left + stile, leaf.Bottom), At(leaf.Left + stile, top), LineRole.Outline, Ink.Lumber).Line(At(leaf.Left + stile, leaf.Bottom + rail), At(right, leaf.Bottom + rail), LineRole.Outline, Ink.Lumber);
        figure.Caption = "G  " + say.Fill("Foot of {0}, from outside", say.Say(door.Id));
        figure.SurfaceCallout(At(leaf.Left + stile + Length.FromInches(4), leaf.Bottom + (rail / 2)), say.Say("lowest rail of the leaf"), Angle.FromDegrees(50));
        figure.Callout(At(right - Length.FromInches(2), ground), say.Say("no board in the way: pack the ground\nhard and let it fall away from the door"), Angle.FromDegrees(-30), Angle.FromDegrees(230));
        figure.Chain(Side.Right, [At(right, ground), At(right, leaf.Bottom), At(right, leaf.Bottom + rail)], sheet.Tape);
    }
}
