using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Figures.FigureSheet;
using Side = Hoopwright.Sheets.Drawings.Side;

namespace Hoopwright.Sheets.Figures;

/// <summary>A door leaf with its own frame.</summary>
internal static class LeafFigure
{
    public static Drawing Draw(Tunnel tunnel, FigureSheet sheet, string number, EndWall end, DoorOpening door, DoorLeaf leaf)
    {
        DrawingBuilder builder = sheet.Start($"Door leaf, {end.Name} end{(door.Leaves.Length > 1 ? $", make {door.Leaves.Length}" : "")}", $"A leaf of {door.Id} of {sheet.Project}.", number);
        var remarks = new Remarks(builder, sheet);
        Length pad = Length.FromInches(4);
        Figure figure = builder.Figure(At(-pad, -pad), At(leaf.Width + pad, leaf.Height + pad), sheet.Units, remarks.Room, spareMm: 12);
        Member[] members = [.. leaf.MemberIds.Select(id => tunnel.Members.First(member => member.Id == id))];
        foreach (Member member in members.OrderBy(member => member.Role == MemberRole.LeafBrace ? 0 : 1))
        {
            Length half = member.Section.Match(tube => tube.Outside, board => board.Depth) / 2;
            Length x1 = member.Start.X - leaf.Left, x2 = member.End.X - leaf.Left;
            Length z1 = member.Start.Z - end.Base - leaf.Bottom, z2 = member.End.Z - end.Base - leaf.Bottom;
            ModelPath outline = member.Role switch
            {
                MemberRole.LeafStile => ModelPath.Rectangle(At(x1 - half, z1), At(x2 + half, z2)),
                MemberRole.LeafRail => ModelPath.Rectangle(At(x1, z1 - half), At(x2, z2 + half)),
                _ => Slanting(x1, z1, x2, z2, half),
            };
            figure.On(member.Role.ToString()).Fill(outline, Ink.LumberTint).Path(outline, LineRole.Outline, Ink.Lumber);
            // One text per kind: the others are its like.
            if (member.Id.EndsWith("-stile-right", StringComparison.Ordinal)) remarks.Surface(figure, At(x1, leaf.Height * 0.62), $"2 stiles {sheet.Tape(member.CutLength)}", Angle.FromDegrees(0));
            if (member.Id.EndsWith("-rail-middle", StringComparison.Ordinal)) remarks.Surface(figure, At(x2 - (half * 2), z1), $"3 rails {sheet.Tape(member.CutLength)}", Angle.FromDegrees(-10));
            if (member.Id.EndsWith("-brace-lower", StringComparison.Ordinal)) remarks.Surface(figure, At((x1 + x2) / 2, (z1 + z2) / 2), $"2 braces {sheet.Tape(member.CutLength)}, cut to fit{(leaf.HingeLeft is null ? "" : ";\nfoot at the hinge side")}", Angle.FromDegrees(-5));
        }
        HingeMarks.Draw(figure, leaf, At(Length.Zero, Length.Zero));
        figure.Overall(Side.Below, At(Length.Zero, Length.Zero), At(leaf.Width, Length.Zero), sheet.Tape);
        figure.Overall(Side.Left, At(Length.Zero, Length.Zero), At(Length.Zero, leaf.Height), sheet.Tape);
        string cover = door.LeafCover switch { LeafCover.Film => "covered with film, wrapped round the edges", LeafCover.Sheet => "covered with rigid sheet", LeafCover.None => "not covered" };
        string hinge = leaf.HingeLeft switch { true => "hinges at the left stile", false => "hinges at the right stile", null => "hangs from rollers at the top rail" };
        if (door.Leaves.Length > 1) hinge += ",\nthose of the other leaf at its right stile";
        remarks.Edge(figure, At(leaf.HingeLeft == false ? leaf.Width : Length.Zero, leaf.Height * 0.85), $"{hinge};\n{cover}", Angle.FromDegrees(leaf.HingeLeft == false ? 10 : 170));
        remarks.Write();
        return builder.Build();
    }

    private static ModelPath Slanting(Length x1, Length z1, Length x2, Length z2, Length half)
    {
        double dx = (x2 - x1).Metres, dz = (z2 - z1).Metres, size = Math.Sqrt((dx * dx) + (dz * dz));
        Length offX = half * (-dz / size), offZ = half * (dx / size);
        return ModelPath.Around(At(x1 + offX, z1 + offZ), At(x2 + offX, z2 + offZ), At(x2 - offX, z2 - offZ), At(x1 - offX, z1 - offZ));
    }
}
