using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>A bow seen along the tunnel, with heights for checking it, its posts and purlins.</summary>
internal static class BowFigure
{
    public static Drawing Draw(Tunnel tunnel, FigureSheet sheet, string number)
    {
        Length span = tunnel.Span, peak = tunnel.Bow.PeakHeight;
        DrawingBuilder builder = sheet.Start("Bow", $"A bow of {sheet.Project} seen along the tunnel, with heights, bends, posts and purlins.", number);
        var remarks = new Remarks(builder, sheet);
        HashSet<string> shown = [.. tunnel.GroundPosts.Where(post => post.Bow == 1).Select(post => post.MemberId)];
        Length deepest = tunnel.Stations[0].Base - GroundMarks.Lowest(tunnel, [tunnel.Stations[0]], shown.Contains);
        Figure figure = builder.Figure(At(-Length.FromFeet(1.5), -deepest), At(span + Length.FromFeet(1.5), peak), sheet.Units, remarks.Room.Inset(0, 17, 0, 0), spareMm: 9);
        GroundMarks.Ground(figure, -Length.FromFeet(1.5), tunnel.Stations[0].GroundLeft - tunnel.Stations[0].Base, span + Length.FromFeet(1.5),
            tunnel.Stations[0].GroundRight - tunnel.Stations[0].Base, Length.FromInches(5));

        foreach (GroundPost post in tunnel.GroundPosts.Where(post => post.Bow == 1)) DrawPost(tunnel, figure, post);
        figure.On("bow").Path(Trace(tunnel.Bow.FilmLine), LineRole.Outline).Path(Trace(tunnel.Bow.Underside), LineRole.Outline);
        figure.On("centre").Path(Trace(tunnel.Bow.CentreLine), LineRole.Centre);
        foreach (Member purlin in tunnel.Members.Where(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin))
        {
            Length radius = purlin.Section.Match(tube => tube.Outside, board => board.Depth) / 2;
            figure.On("purlins").Circle(At(purlin.Start.X, purlin.Start.Z - tunnel.Stations[0].Base), radius, LineRole.Cut);
        }
        foreach (PurlinCrossing crossing in PurlinCrossing.Of(tunnel).Where(crossing => crossing.Across > (span / 2) + Length.FromInches(1)))
            remarks.Edge(figure, At(crossing.Across, crossing.Up), $"purlin, {sheet.Tape(crossing.FromRidge)} from the ridge\nover the bow", Angle.FromDegrees(235), Angle.FromDegrees(260), Angle.FromDegrees(210));
        if (tunnel.Members.FirstOrDefault(member => member.Role == MemberRole.Tie) is { } tie)
        {
            Length up = tie.Start.Z - tunnel.Stations[1].Base;
            figure.On("tie").Line(At(tie.Start.X, up), At(tie.End.X, up), LineRole.Hidden);
            remarks.Edge(figure, At(span / 2, up), $"tie {sheet.Tape(tie.CutLength)} at {sheet.Tape(up)}", Angle.FromDegrees(-70));
        }
        foreach (Member hip in tunnel.Members.Where(member => member.Role == MemberRole.HipBoard)) Board(figure, hip, tunnel.Stations[0].Base);
        foreach (Member board in tunnel.Members.Where(member => member.Role == MemberRole.Baseboard)) Board(figure, board, tunnel.Stations[0].Base);

        Heights(tunnel, sheet, figure);
        figure.Overall(Side.Below, At(Length.Zero, Length.Zero), At(span, Length.Zero), sheet.Tape);
        Length[] ups = tunnel.Bow.SideHeight.Metres > 0.05 ? [Length.Zero, tunnel.Bow.SideHeight, peak] : [Length.Zero, peak];
        figure.Chain(Side.Left, ups.Select(up => At(Length.Zero, up)), sheet.Tape);
        figure.Overall(Side.Left, At(Length.Zero, Length.Zero), At(Length.Zero, peak), sheet.Tape);
        if (!tunnel.GroundPosts.IsEmpty)
        {
            GroundPost right = tunnel.GroundPosts.First(post => post.Bow == 1 && !post.Left);
            Length ground = right.Centre.Z - tunnel.Stations[0].Base;
            figure.Chain(Side.Right, [At(span, ground - right.Embedment), At(span, ground), At(span, ground + right.Projection)], sheet.Tape);
        }
        Bends(tunnel, sheet, remarks, figure);
        // Where the sheets of details cut the bow open.
        if (tunnel.GroundPosts.FirstOrDefault(post => post.Bow == 1 && post.Left) is { } cut)
            remarks.Edge(figure, At(cut.Centre.X, cut.Centre.Z - tunnel.Stations[0].Base - (cut.Embedment / 2)), "details A and C", Angle.FromDegrees(-20), Angle.FromDegrees(20));
        if (tunnel.Left.HipHeight > Length.Zero) remarks.Edge(figure, At(tunnel.Bow.FilmLine.AcrossAt(tunnel.Left.HipHeight).Left, tunnel.Left.HipHeight), "detail D", Angle.FromDegrees(-15), Angle.FromDegrees(15));
        string pieces = tunnel.BowPieces == 1 ? "in one piece" : $"in {tunnel.BowPieces} pieces of {sheet.Tape(tunnel.Bow.CentreLine.Length / tunnel.BowPieces)}";
        string[] lines = [$"film line {sheet.Tape(tunnel.Bow.FilmLine.Length)}", $"tube {tunnel.BowTube.Size}, {sheet.Tape(tunnel.Bow.CentreLine.Length)}, {pieces}", $"section {SetOutFigure.Section} of the set-out, seen towards the back"];
        for (int line = 0; line < lines.Length; line++)
            builder.On("notes").Text(new SheetPoint(builder.Room.LeftMm + 2, builder.Room.TopMm + 5 + (line * 5)), TapeFractions.Set(lines[line]));
        remarks.Write();
        return builder.Build();
    }

    private static void DrawPost(Tunnel tunnel, Figure figure, GroundPost post)
    {
        Member member = tunnel.Members.First(each => each.Id == post.MemberId);
        Length width = member.Section.Match(tube => tube.Outside, board => board.Depth), up = tunnel.Stations[0].Base;
        if (tunnel.Holes.FirstOrDefault(hole => hole.PostId == post.MemberId) is { } hole)
            GroundMarks.Concrete(figure, hole, post.Centre.X, post.Centre.Z - up, width);
        figure.On("posts").Rectangle(At(post.Centre.X - (width / 2), member.Start.Z - up), At(post.Centre.X + (width / 2), member.End.Z - up), LineRole.Outline, Ink.Zinc);
    }

    private static void Board(Figure figure, Member member, Length up)
    {
        BoardSection section = member.Section.Match(_ => throw new InvalidOperationException("A board is no tube."), board => board);
        ModelPath outline = ModelPath.Rectangle(At(member.Start.X - (section.Thickness / 2), member.Start.Z - up - (section.Depth / 2)),
            At(member.Start.X + (section.Thickness / 2), member.Start.Z - up + (section.Depth / 2)));
        figure.On("boards").Fill(outline, Ink.LumberTint).Path(outline, LineRole.Cut, Ink.Lumber);
    }

    /// <summary>Heights of the film line at even steps from the left, written over the bow along a line at the top.</summary>
    private static void Heights(Tunnel tunnel, FigureSheet sheet, Figure figure)
    {
        var ordinates = BowOrdinates.Of(tunnel);
        foreach (BowOrdinates.Ordinate ordinate in ordinates.Where(each => each.Film > Length.Zero && each.Across > Length.Zero))
            figure.On("ordinates").Line(At(ordinate.Across, Length.Zero), At(ordinate.Across, ordinate.Film), LineRole.Dimension);
        PlanePoint[] places = [At(Length.Zero, tunnel.Bow.PeakHeight), .. ordinates.Where(each => each.Across > Length.Zero).Select(each => At(each.Across, each.Film))];
        figure.Marks(Side.Above, places, [.. ordinates.Where(each => each.Across > Length.Zero).Select(each => $"{sheet.Tape(each.Across)} : {sheet.Tape(each.Film)}")]);
    }

    private static void Bends(Tunnel tunnel, FigureSheet sheet, Remarks remarks, Figure figure)
    {
        foreach (PathBend bend in tunnel.Bow.CentreLine.Bends().Take(2))
        {
            if ((bend.From + bend.To) / 2 > (tunnel.Bow.CentreLine.Length / 2) + Length.FromInches(1)) continue;
            // The right half mirrors the left one; its room is free.
            PlanePoint at = tunnel.Bow.Underside.PointAt(tunnel.Bow.Underside.Length - (((bend.From + bend.To) / 2) * (tunnel.Bow.Underside.Length / tunnel.Bow.CentreLine.Length)));
            remarks.Edge(figure, at, $"bend, radius {sheet.Tape(bend.Radius)} at the middle\nof the tube, turns {TapeText.Of(Angle.FromRadians(Math.Abs(bend.Turned.Radians)))}", Angle.FromDegrees(215), Angle.FromDegrees(240));
        }
    }
}
