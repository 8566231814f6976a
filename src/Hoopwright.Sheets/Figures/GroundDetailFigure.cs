using System.Globalization;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Words;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Details at the ground, large: a ground post with its concrete and the leg of its bow, and the foot of a corner brace.</summary>
internal static class GroundDetailFigure
{
    /// <summary>Draws both; the brace where there is one.</summary>
    public static Drawing Draw(DetailPanels panels, Tunnel tunnel, FigureSheet sheet, string number)
    {
        Member? brace = tunnel.Members.FirstOrDefault(member => member.Role == MemberRole.CornerBrace);
        CrewWords say = sheet.Words;
        DrawingBuilder builder = sheet.Start(say.Say("Details at the ground"), say.Fill(brace is null ? "How a ground post of {0} stands and the leg of a bow on it, cut open." : "How a ground post of {0} stands and the leg of a bow on it, cut open; the foot of a corner brace.", sheet.Project), number);
        SheetBox left = brace is null ? builder.Room : builder.Room with { RightMm = builder.Room.Middle.XMm - 2 };
        Post(panels, tunnel, sheet, builder.Figure(PostLow(tunnel), PostHigh(tunnel), sheet.Units, left, spareMm: 5));
        if (brace is not null) Brace(tunnel, sheet, builder, brace, builder.Room with { LeftMm = builder.Room.Middle.XMm + 2 });
        return builder.Build();
    }

    private static GroundPost Shown(Tunnel tunnel) => tunnel.GroundPosts.FirstOrDefault(post => post.Left && post.Bow > 1 && post.InConcrete) ?? tunnel.GroundPosts.First(post => post.Left);

    private static Length BaseOf(Tunnel tunnel, GroundPost post) => tunnel.Stations[post.Bow - 1].Base;

    private static ConcreteHole? HoleOf(Tunnel tunnel, GroundPost post) => tunnel.Holes.FirstOrDefault(hole => hole.PostId == post.MemberId);

    private static Length Reach(Tunnel tunnel, GroundPost post) => ((HoleOf(tunnel, post)?.Diameter ?? Length.FromInches(8)) / 2) + Length.FromInches(6);

    private static PlanePoint PostLow(Tunnel tunnel)
    {
        GroundPost post = Shown(tunnel);
        Length deep = Length.Max(post.Embedment, HoleOf(tunnel, post)?.Depth ?? Length.Zero);
        return At(post.Centre.X - Reach(tunnel, post), post.Centre.Z - BaseOf(tunnel, post) - deep - Length.FromInches(4));
    }

    private static PlanePoint PostHigh(Tunnel tunnel)
    {
        GroundPost post = Shown(tunnel);
        return At(post.Centre.X + Reach(tunnel, post), post.Top - BaseOf(tunnel, post) + Length.FromInches(9));
    }

    private static void Post(DetailPanels panels, Tunnel tunnel, FigureSheet sheet, Figure figure)
    {
        CrewWords say = sheet.Words;
        GroundPost post = Shown(tunnel);
        ConcreteHole? hole = HoleOf(tunnel, post);
        Member member = tunnel.Members.First(each => each.Id == post.MemberId);
        PlanePoint low = PostLow(tunnel), high = PostHigh(tunnel);
        Length ground = post.Centre.Z - BaseOf(tunnel, post), x = post.Centre.X, top = ground + post.Projection, foot = ground - post.Embedment;
        Length half = member.Section.Match(tube => tube.Outside, board => board.Thickness) / 2, edge = (hole?.Diameter / 2) ?? half;
        foreach ((Length from, Length to) in (ReadOnlySpan<(Length, Length)>)[(low.Across, x - edge), (x + edge, high.Across)])
            figure.On("earth").Hatch(ModelPath.Rectangle(At(from, low.Up), At(to, ground)), Hatch.Earth).Line(At(from, ground), At(to, ground), LineRole.Cut, Ink.Earth);
        figure.On("earth").Hatch(ModelPath.Rectangle(At(x - edge, low.Up), At(x + edge, ground - (hole?.Depth ?? post.Embedment))), Hatch.Earth);
        if (hole is not null) GroundMarks.Concrete(figure, hole, x, ground, half * 2);
        if (member.Section is TubeSection tube) DetailPanels.Tube(figure, "posts", At(x - half, foot), At(x + half, top), tube);
        else DetailPanels.Board(figure, At(x - half, foot), At(x + half, top));
        panels.Bow(figure, Length.Max(Length.Zero, ground), high.Up);
        if (tunnel.Members.FirstOrDefault(each => each.Role == MemberRole.Baseboard && each.Start.X < tunnel.Span / 2) is { Section: BoardSection board } base_)
        {
            Length up = base_.Start.Z - tunnel.Stations[0].Base;
            DetailPanels.Board(figure, At(base_.Start.X - (board.Thickness / 2), up - (board.Depth / 2)), At(base_.Start.X + (board.Thickness / 2), up + (board.Depth / 2)));
            figure.SurfaceCallout(At(base_.Start.X, up + (board.Depth / 4)), say.Fill("baseboard\n{0},\n{1} bolts to a post", say.Say(board.Size), panels.Rule("boltsPerPost") ?? "2"), Angle.FromDegrees(150), Angle.FromDegrees(180));
        }
        figure.Caption = "A  " + say.Say(hole is null ? "Post and leg, cut open" : "Post, concrete and leg, cut open");
        figure.Callout(At(x + half, top - (post.Projection * 0.1)), $"{say.Fill("post {0}", say.Say(member.Section.Size))}\n{say.Say(Leg(tunnel, member))}", Angle.FromDegrees(30));
        if (tunnel.BowTube.Outside.Metres > 0) figure.Callout(At(tunnel.BowTube.Outside, top + Length.FromInches(6)), say.Fill("bow {0}", tunnel.BowTube.Size), Angle.FromDegrees(25));
        if (hole is not null)
        {
            figure.SurfaceCallout(At(x - (edge * 0.6), ground - (hole.Depth * 0.55)), say.Fill("concrete {0},\npost {1} in", TapeText.Of(hole.Volume, sheet.Units), sheet.Tape(TapeText.RoundToMark(hole.PostDepth, sheet.Units))), Angle.FromDegrees(200));
            figure.Callout(At(x + half + ((edge - half) * 0.4), ground + (hole.CollarRise * 0.6)), say.Fill("collar {0} up,\nsheds water", sheet.Tape(hole.CollarRise)), Angle.FromDegrees(-10), Angle.FromDegrees(20));
            figure.Overall(Side.Below, At(x - edge, ground - hole.Depth), At(x + edge, ground - hole.Depth), sheet.Tape);
        }
        Length deepest = ground - (hole?.Depth ?? post.Embedment);
        figure.Chain(Side.Right, [At(x + half, foot), At(x + edge, ground), At(x + half, top)], length => sheet.Tape(TapeText.RoundToMark(length, sheet.Units)));
        if (hole is not null) figure.Overall(Side.Right, At(x + edge, deepest), At(x + edge, ground), sheet.Tape);
    }

    /// <summary>How leg and post go together, by their own sizes.</summary>
    private static string Leg(Tunnel tunnel, Member post) => post.Section.Match(
        tube => tube.Outside - (tube.Wall * 2) >= tunnel.BowTube.Outside ? "the leg stands in it" : tunnel.BowTube.Outside - (tunnel.BowTube.Wall * 2) >= tube.Outside ? "the leg stands over it" : "leg and post do not go into each other:\nask the maker how they join",
        _ => "the leg is held to it");

    private static void Brace(Tunnel tunnel, FigureSheet sheet, DrawingBuilder builder, Member brace, SheetBox within)
    {
        CrewWords say = sheet.Words;
        // Seen from outside, along the tunnel: the brace falls to the foot of its bow.
        Length y = brace.Start.Y, way = brace.End.Y - y;
        BowStation station = tunnel.Stations.MinBy(each => (each.Along - y).Abs())!;
        double sign = way.Metres < 0 ? -1 : 1;
        Length foot = brace.Start.Z - station.Base, rise = brace.End.Z - brace.Start.Z, shown = Length.Min(way.Abs() * 0.9, Length.FromInches(26));
        GroundPost? post = tunnel.GroundPosts.FirstOrDefault(each => each.Bow == station.Number && each.Left == (brace.Start.X < tunnel.Span / 2));
        Length ground = post is null ? Length.Zero : post.Centre.Z - station.Base, side = Length.FromInches(9);
        Length topShown = Length.Max((post?.Projection ?? Length.Zero) + ground, foot + (rise * (shown / way.Abs()))) + Length.FromInches(5);
        PlanePoint low = At(Length.Min(-side, shown * sign), ground - Length.FromInches(7)), high = At(Length.Max(side, shown * sign), topShown);
        Figure figure = builder.Figure(low, high, sheet.Units, within, spareMm: 6);
        Length leg = tunnel.BowTube.Outside / 2, half = ((TubeSection)brace.Section).Outside / 2;
        GroundMarks.Ground(figure, low.Across, ground, high.Across, ground, Length.FromInches(5));
        if (tunnel.Members.FirstOrDefault(each => each.Role == MemberRole.Baseboard) is { Section: BoardSection board })
            figure.On("boards").Fill(ModelPath.Rectangle(At(low.Across, Length.Zero), At(high.Across, board.Depth)), Ink.LumberTint).Rectangle(At(low.Across, Length.Zero), At(high.Across, board.Depth), LineRole.Outline, Ink.Lumber);
        figure.On("bow").Fill(ModelPath.Rectangle(At(-leg, Length.Zero), At(leg, topShown)), Ink.ZincTint).Line(At(-leg, Length.Zero), At(-leg, topShown)).Line(At(leg, Length.Zero), At(leg, topShown));
        if (post is not null && tunnel.Members.First(each => each.Id == post.MemberId) is { Section: TubeSection tube })
            figure.On("posts").Fill(ModelPath.Rectangle(At(tube.Outside / -2, ground), At(tube.Outside / 2, ground + post.Projection)), Ink.ZincTint).Rectangle(At(tube.Outside / -2, ground), At(tube.Outside / 2, ground + post.Projection));
        double slope = Math.Atan2(rise.Metres, way.Metres), dx = -Math.Sin(slope), dy = Math.Cos(slope);
        Length length = shown / Math.Abs(Math.Cos(slope));
        PlanePoint end = At(length * Math.Cos(slope), foot + (length * Math.Sin(slope)));
        PlanePoint[] band = [At(half * dx, foot + (half * dy)), At(end.Across + (half * dx), end.Up + (half * dy)), At(end.Across - (half * dx), end.Up - (half * dy)), At(half * -dx, foot - (half * dy))];
        figure.On("braces").Fill(ModelPath.Around(band), Ink.Paper).Line(band[0], band[1]).Line(band[2], band[3]).Line(band[3], band[0]);
        figure.On("centre").Line(At(Length.Zero, foot), end, LineRole.Centre);
        figure.Caption = "B  " + say.Say("Foot of the brace, seen from the side");
        figure.SurfaceCallout(At(end.Across * 0.7, foot + ((end.Up - foot) * 0.7)), say.Fill("corner brace {0},\n{1} from middle to middle,\n{2} off level", brace.Section.Size, sheet.Tape(TapeText.RoundToMark(brace.CutLength, sheet.Units)), TapeText.Of(Angle.FromRadians(sign < 0 ? Math.PI - slope : slope))), Angle.FromDegrees(sign < 0 ? 110 : 70));
        figure.Callout(At(leg * sign * -1, topShown - Length.FromInches(2)), say.Fill("bow {0}", station.Number.ToString(CultureInfo.InvariantCulture)), Angle.FromDegrees(sign < 0 ? 0 : 180));
        figure.Overall(sign < 0 ? Side.Right : Side.Left, At(Length.Zero, Length.Zero), At(Length.Zero, foot), sheet.Tape);
    }
}
