using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Words;
using static Hoopwright.Sheets.Figures.FigureSheet;
using DoorSwing = Hoopwright.Plans.DoorSwing;

namespace Hoopwright.Sheets.Figures;

/// <summary>
/// The tunnel on the ground, seen from above: front end on the left of the paper, left side at the top, since one enters
/// by the front.
/// </summary>
internal static class SetOutFigure
{
    /// <summary>What the section through a bay is called.</summary>
    internal const string Section = "1";

    public static Drawing Draw(Tunnel tunnel, FigureSheet sheet, string number)
    {
        CrewWords say = sheet.Words;
        Length span = tunnel.Span, length = tunnel.Length;
        Angle? north = tunnel.Plan.Site.FrontFaces is { } faces
            // The paper's left is the way out by the front; north lies that bearing clockwise from it.
            ? Angle.FromDegrees(90 + faces.Value.Degrees)
            : null;
        DrawingBuilder builder = sheet.Start(say.Say("Set-out"), say.Fill("Plan of strings, posts, diagonals and batter boards of {0}.", sheet.Project), number, north);
        // Room for batter boards and for the widest leaf that swings.
        Length around = tunnel.Ends.SelectMany(end => end.Doors).SelectMany(door => door.Leaves).Where(leaf => leaf.HingeLeft is not null).Select(leaf => leaf.Width).Append(Length.FromFeet(4)).Max();
        SquareTriangle triangle = tunnel.SetOut.Triangle;
        // Notes stand over the figure: within it a small tunnel has no room for them.
        string[] notes =
        [
            say.Fill("diagonals {0}, both alike", sheet.Tape(TapeText.RoundToMark(tunnel.SetOut.Diagonal, sheet.Units))),
            say.Fill("3-4-5 check at the front left corner: {0} across, {1} along, {2} between", sheet.Tape(triangle.Across), sheet.Tape(triangle.Along), sheet.Tape(triangle.Diagonal)),
            say.Fill("section {0}, seen as the arrows point: drawing of a bow", Section),
            .. tunnel.SetOut.GroundFall.Metres > 0.005 ? (string[])[say.Fill("ground falls {0} over the corners", sheet.Tape(tunnel.SetOut.GroundFall))] : [],
        ];
        Figure figure = builder.Figure(At(-around, -around), At(length + around, span + around), sheet.Units, builder.Room.Inset(0, 2 + (notes.Length * 5), 0, 0), spareMm: 4);

        figure.On("strings").Rectangle(At(Length.Zero, Length.Zero), At(length, span), LineRole.Centre);
        figure.On("strings").Line(At(Length.Zero, span), At(length, Length.Zero), LineRole.Centre).Line(At(Length.Zero, Length.Zero), At(length, span), LineRole.Centre);
        foreach (BatterBoard board in tunnel.SetOut.BatterBoards)
            figure.On("batter boards").Line(On(board.From), On(board.To), LineRole.Outline, Ink.Lumber).Line(On(board.StringAt), Nearest(board.StringAt), LineRole.Centre);

        if (tunnel.GroundPosts.IsEmpty)
        {
            foreach (BowStation station in tunnel.Stations)
                figure.On("bows").Line(At(station.Along, Length.Zero), At(station.Along, span), LineRole.Dimension);
        }
        foreach (GroundPost post in tunnel.GroundPosts)
        {
            figure.On("posts").Circle(At(post.Mark, span - post.Centre.X), tunnel.BowTube.Outside, LineRole.Outline);
            if (post.InConcrete && tunnel.Holes.FirstOrDefault(hole => hole.PostId == post.MemberId) is { } hole)
                figure.On("concrete").Circle(At(post.Mark, span - post.Centre.X), hole.Diameter / 2, LineRole.Hidden);
        }
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (EndPost post in end.Posts)
            {
                Length half = post.Width / 2;
                figure.On("posts").Rectangle(At(end.Along - half, span - post.Centre - half), At(end.Along + half, span - post.Centre + half), LineRole.Outline, Ink.Lumber);
            }
            foreach (DoorOpening door in end.Doors)
            {
                if (door.Leaves.Any(leaf => leaf.HingeLeft is not null))
                {
                    foreach (DoorLeaf leaf in door.Leaves) Swing(figure, end, door, leaf, span);
                    continue;
                }
                Length outwards = end.IsFront ? -Length.FromInches(18) : Length.FromInches(18);
                figure.On("doors").Line(At(end.Along + outwards, span - door.RoughLeft), At(end.Along + outwards, span - door.RoughRight), LineRole.Dimension, Ink.Lumber);
            }
        }

        figure.On("triangle").Line(At(Length.Zero, span), At(triangle.Along, span), LineRole.Outline, Ink.Film)
            .Line(At(Length.Zero, span), At(Length.Zero, span - triangle.Across), LineRole.Outline, Ink.Film)
            .Line(At(triangle.Along, span), At(Length.Zero, span - triangle.Across), LineRole.Outline, Ink.Film);

        SectionMarks(figure, tunnel, around);
        figure.Running(Side.Above, tunnel.Stations.Select(station => At(station.Along, span)), sheet.Tape);
        figure.Overall(Side.Below, At(Length.Zero, Length.Zero), At(length, Length.Zero), sheet.Tape);
        figure.Running(Side.Left, [At(Length.Zero, span), .. tunnel.Front.Posts.Select(post => At(Length.Zero, span - post.Centre)), At(Length.Zero, Length.Zero)], sheet.Tape);
        figure.Running(Side.Right, [At(length, span), .. tunnel.Back.Posts.Select(post => At(length, span - post.Centre)), At(length, Length.Zero)], sheet.Tape);
        for (int line = 0; line < notes.Length; line++)
            builder.On("notes").Text(new SheetPoint(builder.Room.LeftMm + 2, builder.Room.TopMm + 5 + (line * 5)), TapeFractions.Set(notes[line]));
        figure.Label(At(length * 0.72, span * 0.22), say.Say("right side"));
        figure.Label(At(length * 0.5, span * 0.9), say.Say("left side"));
        figure.Label(At(Length.FromFeet(3), span * 0.3), say.Say("front"), bold: true);
        figure.Label(At(length - Length.FromFeet(3), span * 0.5), say.Say("back"), bold: true);
        return builder.Build();

        PlanePoint On(TunnelPoint point) => At(point.Y, span - point.X);

        PlanePoint Nearest(TunnelPoint point) => At(
            Length.Max(Length.Zero, Length.Min(length, point.Y)), span - Length.Max(Length.Zero, Length.Min(span, point.X)));
    }

    /// <summary>Both ends of the plane that the drawing of a bow cuts through a bay, with arrows to where it looks: towards the back.</summary>
    private static void SectionMarks(Figure figure, Tunnel tunnel, Length around)
    {
        const double ReachMm = 6, ArrowMm = 4, HeadMm = 1.6, NameMm = 2.6, RoomyBayMm = 9;
        // A third along, clear of the middle of the row of dimensions.
        int bay = (tunnel.Stations.Length - 1) / 3;
        Length from = tunnel.Stations[bay].Along, to = tunnel.Stations[bay + 1].Along, along = (from + to) / 2;
        foreach (bool left in (bool[])[true, false])
        {
            figure.On("sections").OnPaper((view, pen) =>
            {
                double outwards = left ? -1 : 1, reachMm = Math.Min(ReachMm, view.PaperMm(around) * 0.8);
                SheetPoint edge = view.At(At(along, left ? tunnel.Span : Length.Zero));
                SheetPoint corner = new(edge.XMm, edge.YMm + (outwards * reachMm)), tip = new(edge.XMm + ArrowMm, corner.YMm);
                pen.Line(new SheetPoint(edge.XMm, edge.YMm + (outwards * 1)), corner, LineRole.Cut).Line(corner, tip, LineRole.Dimension)
                    .Fill(SheetPath.Around(tip, new SheetPoint(tip.XMm - HeadMm, tip.YMm - (HeadMm / 3)), new SheetPoint(tip.XMm - HeadMm, tip.YMm + (HeadMm / 3))), Ink.Black);
                // Among the marks of close bows there is no room for its name; at the other end there always is.
                if (!left || view.PaperMm(to - from) >= RoomyBayMm) pen.Text(new SheetPoint(corner.XMm - NameMm, corner.YMm), Section, TextAlign.Middle, TextMark.LeastCapitalMm, LetterWeight.Bold, default, Ink.Black, false);
            });
        }
    }

    /// <summary>A leaf open square to its end, and the quarter circle that its free edge runs.</summary>
    private static void Swing(Figure figure, EndWall end, DoorOpening door, DoorLeaf leaf, Length span)
    {
        bool isLeft = leaf.HingeLeft == true, isOut = door.Swing == DoorSwing.Out;
        PlanePoint hinge = At(end.Along, span - (isLeft ? leaf.Left : leaf.Left + leaf.Width));
        double closedDeg = isLeft ? -90 : 90, openDeg = end.IsFront == isOut ? 180 : 0, sweepDeg = Math.IEEERemainder(openDeg - closedDeg, 360);
        Length reach = end.IsFront == isOut ? -leaf.Width : leaf.Width;
        figure.On("doors").Line(hinge, At(hinge.Across + reach, hinge.Up), LineRole.Dimension, Ink.Lumber)
            .Path(ModelPath.Arc(hinge, leaf.Width, Angle.FromDegrees(closedDeg), Angle.FromDegrees(sweepDeg)), LineRole.Dimension, Ink.Lumber);
    }
}
