using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cover;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Words;
using static Hoopwright.Sheets.Figures.FigureSheet;
using Side = Hoopwright.Sheets.Drawings.Side;

namespace Hoopwright.Sheets.Figures;

/// <summary>Details of a side, large and cut open: baseboard and hip board with their film and channel.</summary>
internal static class SideDetailFigure
{
    /// <summary>Draws the left side: its baseboard, and its hip board where there is one.</summary>
    public static Drawing Draw(DetailPanels panels, Tunnel tunnel, CoverPlan cover, FigureSheet sheet, string number)
    {
        SideWall side = tunnel.Left;
        Member? hip = tunnel.Members.FirstOrDefault(member => member.Role == MemberRole.HipBoard && member.Start.X < tunnel.Span / 2);
        CrewWords say = sheet.Words;
        DrawingBuilder builder = sheet.Start(say.Say("Details of a side"), say.Fill(hip is null ? "Baseboard of the left side of {0}, cut open, with film and channel." : "Baseboard and hip board of the left side of {0}, cut open, with film and channel.", sheet.Project), number);
        SheetBox left = hip is null ? builder.Room : builder.Room with { RightMm = builder.Room.Middle.XMm - 2 };
        Base(panels, tunnel, cover, side, sheet, builder, left);
        if (hip is not null) Hip(panels, tunnel, cover, side, hip, sheet, builder, builder.Room with { LeftMm = builder.Room.Middle.XMm + 2 });
        return builder.Build();
    }

    private static void Base(DetailPanels panels, Tunnel tunnel, CoverPlan cover, SideWall side, FigureSheet sheet, DrawingBuilder builder, SheetBox within)
    {
        CrewWords say = sheet.Words;
        Member member = tunnel.Members.First(each => each.Role == MemberRole.Baseboard && each.Start.X < tunnel.Span / 2);
        if (member.Section is not BoardSection board) return;
        Length x = member.Start.X, up = member.Start.Z - tunnel.Stations[0].Base, half = board.Thickness / 2, low = up - (board.Depth / 2), high = up + (board.Depth / 2), face = x - half;
        Length top = high + Length.FromInches(6), ground = tunnel.Stations[0].GroundLeft - tunnel.Stations[0].Base;
        Figure figure = builder.Figure(At(face - Length.FromInches(5), ground - Length.FromInches(4)), At(x + half + Length.FromInches(6), top), sheet.Units, within, spareMm: 3);
        GroundMarks.Ground(figure, face - Length.FromInches(5), ground, x + half + Length.FromInches(6), ground, Length.FromInches(3.5));
        panels.Bow(figure, Length.Max(Length.Zero, ground), top);
        GroundPost? post = tunnel.GroundPosts.FirstOrDefault(each => each.Left);
        if (post is not null && tunnel.Members.First(each => each.Id == post.MemberId) is { Section: TubeSection tube })
            DetailPanels.Tube(figure, "posts", At(post.Centre.X - (tube.Outside / 2), ground), At(post.Centre.X + (tube.Outside / 2), Length.Min(ground + post.Projection, top)), tube);
        DetailPanels.Board(figure, At(face, low), At(x + half, high));
        int bolts = int.TryParse(panels.Rule("boltsPerPost"), out int given) ? given : 2;
        if (post is not null)
        {
            for (int bolt = 0; bolt < bolts; bolt++)
            {
                Length at = low + (board.Depth * ((bolt + 0.5) / bolts));
                figure.On("bolts").Line(At(face - Length.FromInches(0.5), at), At(post.Centre.X + Length.FromInches(2), at), LineRole.Centre);
            }
        }
        ImmutableArray<FasteningRun> held = [.. cover.Runs.Where(run => run.OnMemberIds.Contains(member.Id))];
        Length filmFoot = side.Kind == SideKind.Fixed ? low - Length.FromInches(2) : high - side.OverlapBelow;
        Length off = Length.FromInches(held.IsEmpty ? 0.9 : 0.2);
        figure.On("film").Path(ModelPath.Through(At(face - off, top), At(face - off, Length.Max(filmFoot, ground))), LineRole.Outline, Ink.Film);
        if (held.FirstOrDefault(run => run.Kind == FasteningKind.Channel) is { } channel) DetailPanels.Channel(figure, face, up, channel.Wires);
        if (held.FirstOrDefault(run => run.Kind == FasteningKind.Batten) is not null)
            DetailPanels.Board(figure, At(face - off - Length.FromInches(0.5), up - Length.FromInches(0.75)), At(face - off, up + Length.FromInches(0.75)));
        figure.Caption = "C  " + say.Say("Baseboard at a post");
        figure.SurfaceCallout(At(x, low + (board.Depth * 0.2)), say.Fill("baseboard {0}", say.Say(board.Size)), Angle.FromDegrees(200));
        if (post is not null) figure.Callout(At(post.Centre.X + Length.FromInches(2), low + (board.Depth * (0.5 / bolts))), say.Fill("{0} bolts through board and post", bolts.ToString(CultureInfo.InvariantCulture)), Angle.FromDegrees(-20));
        string film = side.Kind == SideKind.Fixed ? say.Say("roof film") : say.Fill("curtain, {0} over the board", sheet.Tape(side.OverlapBelow));
        figure.Callout(At(face - off, top - Length.FromInches(2)), film, Angle.FromDegrees(160));
        figure.Overall(Side.Left, At(face, low), At(face, high), sheet.Tape);
        figure.Overall(Side.Below, At(face, low), At(x + half, low), length => TapeText.OfThickness(length, sheet.Units));
    }

    private static void Hip(DetailPanels panels, Tunnel tunnel, CoverPlan cover, SideWall side, Member hip, FigureSheet sheet, DrawingBuilder builder, SheetBox within)
    {
        if (hip.Section is not BoardSection board) return;
        CrewWords say = sheet.Words;
        Length x = hip.Start.X, up = hip.Start.Z - tunnel.Stations[0].Base, half = board.Thickness / 2, low = up - (board.Depth / 2), high = up + (board.Depth / 2), face = x - half;
        Length from = low - Length.FromInches(5), to = high + Length.FromInches(5);
        Figure figure = builder.Figure(At(face - Length.FromInches(4), from), At(x + half + Length.FromInches(6), to), sheet.Units, within, spareMm: 3);
        panels.Bow(figure, from, to);
        DetailPanels.Board(figure, At(face, low), At(x + half, high));
        FasteningRun? channel = cover.Runs.FirstOrDefault(run => run.Kind == FasteningKind.Channel && run.OnMemberIds.Contains(hip.Id));
        if (channel is not null) DetailPanels.Channel(figure, face, up, channel.Wires);
        Length skin = Length.FromInches(0.12), into = face - (DetailPanels.ChannelDeep * 0.55);
        PlanePoint[] over = [.. DetailPanels.Between(tunnel.Bow.FilmLine, high, to).Reverse().Select(point => At(point.Across - skin, point.Up))];
        figure.On("film").Path(ModelPath.Through(over.Concat([At(face - skin, high + skin), At(face - skin, up + DetailPanels.ChannelHalf), At(into, up), At(face - DetailPanels.ChannelDeep - skin, up - (DetailPanels.ChannelHalf * 1.6))])), LineRole.Outline, Ink.Film);
        Length hang = face - DetailPanels.ChannelDeep - (skin * 3);
        if (side.Kind != SideKind.Fixed)
            figure.On("film").Path(ModelPath.Through(At(into, up - (DetailPanels.ChannelHalf * 0.3)), At(hang, up - DetailPanels.ChannelHalf), At(hang, from)), LineRole.Outline, Ink.Film);
        figure.Caption = "D  " + say.Say("Hip board");
        figure.SurfaceCallout(At(x, low + (board.Depth * 0.15)), say.Fill("hip board {0},\n{1} screws to a bow", say.Say(board.Size), panels.Rule("hipScrewsPerBow") ?? "2"), Angle.FromDegrees(-20), Angle.FromDegrees(0));
        figure.Callout(over.Length > 2 ? over[over.Length / 3] : At(face, to), say.Say("roof film, comes down outside"), Angle.FromDegrees(165));
        if (side.Kind != SideKind.Fixed) figure.Callout(At(hang, from + Length.FromInches(1.5)), say.Say("curtain"), Angle.FromDegrees(180));
        if (channel is not null)
            figure.Callout(At(face - DetailPanels.ChannelDeep, up + DetailPanels.ChannelHalf), $"{say.Fill("lock channel, screws {0} apart", panels.Rule("channelScrewSpacing") ?? "")};\n{say.Say(channel.Wires == 2 ? "a wire for each film: wire doubles" : "one wire holds both films")}", Angle.FromDegrees(170), Angle.FromDegrees(200));
        if (DetailPanels.Between(tunnel.Bow.Underside, from, to) is [.., var tube]) figure.Callout(tube, say.Fill("bow {0}", tunnel.BowTube.Size), Angle.FromDegrees(-30));
        figure.Overall(Side.Right, At(x, low), At(x, high), sheet.Tape);
        figure.Overall(Side.Below, At(face, low), At(x + half, low), length => TapeText.OfThickness(length, sheet.Units));
    }
}
