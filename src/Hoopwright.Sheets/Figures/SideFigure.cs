using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Figures.FigureSheet;
using Side = Hoopwright.Sheets.Drawings.Side;

namespace Hoopwright.Sheets.Figures;

/// <summary>A side along its length, always with the front end on the left: so the left one is seen from inside, the right one from outside.</summary>
internal static class SideFigure
{
    public static Drawing Draw(Tunnel tunnel, FigureSheet sheet, string number, SideWall side)
    {
        Length length = tunnel.Length, peak = tunnel.Bow.PeakHeight;
        DrawingBuilder builder = sheet.Start($"{(side.IsLeft ? "Left side, seen from inside" : "Right side, seen from outside")}: front end on the left",
            $"The {side.Name} side of {sheet.Project} along its length.", number);
        var remarks = new Remarks(builder, sheet);
        HashSet<string> shown = [.. tunnel.GroundPosts.Where(post => post.Left == side.IsLeft).Select(post => post.MemberId)];
        Length deepest = -GroundMarks.Lowest(tunnel, [tunnel.Stations[0], tunnel.Stations[^1]], shown.Contains);
        Length highest = tunnel.Stations.Max(station => station.Base) + peak;
        Length pad = Length.FromFeet(2);
        Figure figure = builder.Figure(At(-pad, -deepest), At(length + pad, highest), sheet.Units, remarks.Room, spareMm: 6);
        GroundMarks.Ground(figure, -pad, GroundAt(tunnel.Stations[0]), length + pad, GroundAt(tunnel.Stations[^1]), Length.FromInches(8));

        foreach (GroundPost post in tunnel.GroundPosts.Where(post => post.Left == side.IsLeft))
        {
            Member member = tunnel.Members.First(each => each.Id == post.MemberId);
            Length half = member.Section.Match(tube => tube.Outside, board => board.Depth) / 2;
            if (tunnel.Holes.FirstOrDefault(hole => hole.PostId == post.MemberId) is { } hole)
                GroundMarks.Concrete(figure, hole, post.Mark, post.Centre.Z, half * 2);
            figure.On("posts").Rectangle(At(post.Mark - half, member.Start.Z), At(post.Mark + half, member.End.Z), LineRole.Outline, Ink.Zinc);
        }
        Length tubeHalf = tunnel.BowTube.Outside / 2;
        foreach (BowStation station in tunnel.Stations)
        {
            figure.On("bows").Line(At(station.Along - tubeHalf, station.Base), At(station.Along - tubeHalf, station.Base + peak))
                .Line(At(station.Along + tubeHalf, station.Base), At(station.Along + tubeHalf, station.Base + peak));
        }
        foreach (Member member in tunnel.Members)
        {
            switch (member.Role)
            {
                case MemberRole.RidgePurlin:
                case MemberRole.Purlin:
                    if (member.Role == MemberRole.RidgePurlin || member.Id.Contains(side.Name, StringComparison.Ordinal)) Strip(member, LineRole.Hidden, Ink.Black);
                    break;
                case MemberRole.Baseboard:
                case MemberRole.HipBoard:
                    if (member.Id.StartsWith(side.Name, StringComparison.Ordinal)) Strip(member, LineRole.Outline, Ink.Lumber);
                    break;
                case MemberRole.RollTube:
                    if (member.Id.StartsWith(side.Name, StringComparison.Ordinal)) Strip(member, LineRole.Outline, Ink.Film);
                    break;
                case MemberRole.CornerBrace:
                    if (member.Id.EndsWith(side.Name, StringComparison.Ordinal))
                    {
                        figure.On("braces").Line(At(member.Start.Y, member.Start.Z), At(member.End.Y, member.End.Z), LineRole.Outline);
                        bool atFront = member.End.Y < member.Start.Y;
                        remarks.Edge(figure, At((member.Start.Y + member.End.Y) / 2, (member.Start.Z + member.End.Z) / 2), $"brace {sheet.Tape(member.CutLength)}",
                            Angle.FromDegrees(atFront ? 115 : 65));
                    }
                    break;
                case MemberRole.Bow or MemberRole.Tie or MemberRole.GroundPost or MemberRole.EndPost or MemberRole.Cripple or MemberRole.Girt
                    or MemberRole.EndBaseboard or MemberRole.Header or MemberRole.Jamb or MemberRole.VentRail or MemberRole.LeafStile
                    or MemberRole.LeafRail or MemberRole.LeafBrace:
                    break;
            }
        }

        figure.Chain(Side.Below, tunnel.Stations.Select(station => At(station.Along, -deepest)), sheet.Tape);
        figure.Overall(Side.Below, At(Length.Zero, -deepest), At(length, -deepest), sheet.Tape);
        Length up = tunnel.Stations[0].Base;
        Length[] heights = side.Kind == SideKind.Fixed ? [up, up + peak] : [up, up + side.HipHeight, up + peak];
        figure.Chain(Side.Left, heights.Select(height => At(-pad, height)), sheet.Tape);
        if (side.Kind != SideKind.Fixed)
        {
            remarks.Edge(figure, At(length * 0.42, up + side.HipHeight), $"hip board, middle {sheet.Tape(side.HipHeight)} over the ground line", Angle.FromDegrees(70), Angle.FromDegrees(110));
            if (side.Kind == SideKind.RollUp) remarks.Edge(figure, At(length, tunnel.Stations[^1].Base + side.BaseboardHeight), "roll tube,\nshown down", Angle.FromDegrees(25));
        }
        remarks.Edge(figure, At(length, tunnel.Stations[^1].Base + (side.BaseboardHeight / 3)), "baseboard,\njoints off\nthe bows", Angle.FromDegrees(-25));
        remarks.Write();
        return builder.Build();

        Length GroundAt(BowStation station) => side.IsLeft ? station.GroundLeft : station.GroundRight;

        void Strip(Member member, LineRole role, Ink ink)
        {
            Length half = member.Section.Match(tube => tube.Outside, board => board.Depth) / 2;
            figure.On(member.Role.ToString()).Path(ModelPath.Around(At(member.Start.Y, member.Start.Z - half), At(member.End.Y, member.End.Z - half),
                At(member.End.Y, member.End.Z + half), At(member.Start.Y, member.Start.Z + half)), role, ink);
        }
    }
}
