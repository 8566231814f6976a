using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Figures;

/// <summary>The drawings of a tunnel, in the order of the packet.</summary>
public static class TunnelFigures
{
    /// <summary>Set-out, bow, sides, ends and door leaves.</summary>
    /// <param name="tunnel">What to draw.</param>
    /// <param name="sheet">Paper, names and units.</param>
    public static ImmutableArray<TunnelFigure> Of(Tunnel tunnel, FigureSheet sheet)
    {
        List<(string Name, Func<string, Drawing> Draw)> wanted =
        [
            ("set-out", number => SetOutFigure.Draw(tunnel, sheet, number)),
            ("bow", number => BowFigure.Draw(tunnel, sheet, number)),
            ("left-side", number => SideFigure.Draw(tunnel, sheet, number, tunnel.Left)),
        ];
        if (tunnel.Right.Kind != tunnel.Left.Kind || tunnel.Right.HipHeight != tunnel.Left.HipHeight)
            wanted.Add(("right-side", number => SideFigure.Draw(tunnel, sheet, number, tunnel.Right)));
        foreach (EndWall end in tunnel.Ends.Where(end => end.Closing != EndClosing.Open))
        {
            wanted.Add((end.Name + "-end", number => EndFigure.Draw(tunnel, sheet, number, end)));
            foreach (DoorOpening door in end.Doors.Where(door => !door.Leaves.IsEmpty))
                wanted.Add((door.Id + "-leaf", number => LeafFigure.Draw(tunnel, sheet, number, end, door, door.Leaves[0])));
        }
        return
        [
            .. wanted.Select((each, index) => new TunnelFigure(
                string.Create(CultureInfo.InvariantCulture, $"{index + 1:00}-{each.Name}"),
                each.Draw(string.Create(CultureInfo.InvariantCulture, $"{index + 1} of {wanted.Count}")))),
        ];
    }
}
