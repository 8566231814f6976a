using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Dxf;

/// <summary>Turns marks into entities at true size.</summary>
/// <param name="origin">Where zero lies on the paper.</param>
/// <param name="unitsPerMm">Units of the file in a millimetre of paper.</param>
/// <param name="layers">Takes the layers that are used.</param>
/// <param name="nextHandle">Gives a handle that no other has.</param>
internal sealed class DxfEntities(SheetPoint origin, double unitsPerMm, DxfLayers layers, Func<int> nextHandle)
{
    private static readonly string[] RoleNames = Enum.GetNames<LineRole>();

    /// <summary>A point of the paper in the file.</summary>
    public DxfPoint At(SheetPoint point) => new((point.XMm - origin.XMm) * unitsPerMm, (origin.YMm - point.YMm) * unitsPerMm);

    /// <summary>A mark of the drawing.</summary>
    public void Write(DxfPairs into, int owner, Mark mark)
    {
        switch (mark)
        {
            case LineMark line:
                Line(into, owner, line);
                break;
            case FillMark fill:
                Area(into, owner, fill.Layer, "fill", fill.Path, fill.Colour, null);
                break;
            case HatchMark { Kind: Hatch.Film } film:
                foreach (Mark part in HatchLines.Of(film)) Write(into, owner, part);
                break;
            case HatchMark hatch:
                SheetBox box = new Outline(hatch.Path).Bounds;
                Ink ink = hatch.Kind switch { Hatch.Earth => Ink.Earth, Hatch.Wood => Ink.Lumber, Hatch.Concrete or Hatch.Film => Ink.Black };
                Area(into, owner, hatch.Layer, "hatch", hatch.Path, ink, DxfPattern.Of(hatch.Kind, box.WidthMm >= box.HeightMm));
                break;
            case TextMark text:
                Text(into, owner, text);
                break;
        }
    }

    /// <summary>Begins an entity on its layer.</summary>
    public DxfPairs Begin(DxfPairs into, string kind, int owner, string layer)
    {
        return into.Add(0, kind).Handle(5, nextHandle()).Handle(330, owner).Add(100, "AcDbEntity").Add(8, layer);
    }

    private void Line(DxfPairs into, int owner, LineMark line)
    {
        (string layer, bool ownColour) = layers.Of(line.Layer, RoleNames[(int)line.Role], line.Colour, line.Role);
        if (Circle(line.Path) is { } circle)
        {
            Coloured("CIRCLE").Add(100, "AcDbCircle").Point(10, At(circle.Centre)).Add(40, circle.RadiusMm * unitsPerMm);
        }
        else if (line.Path is { Closed: false, Pieces: [{ Centre: { } centre } arc] })
        {
            double start = centre.DirectionRad(line.Path.Start), end = start + arc.SweepRad;
            if (arc.SweepRad < 0) (start, end) = (end, start);
            Coloured("ARC").Add(100, "AcDbCircle").Point(10, At(centre)).Add(40, centre.DistanceMm(line.Path.Start) * unitsPerMm)
                .Add(100, "AcDbArc").Add(50, Degrees(start)).Add(51, Degrees(end));
        }
        else if (line.Path is { Closed: false, Pieces: [{ Centre: null } straight] })
        {
            Coloured("LINE").Add(100, "AcDbLine").Point(10, At(line.Path.Start)).Point(11, At(straight.End));
        }
        else if (!line.Path.Pieces.IsEmpty)
        {
            (List<(DxfPoint At, double Bulge)> corners, bool closed) = Corners(line.Path);
            // 128: dashes run on around the corners.
            Coloured("LWPOLYLINE").Add(100, "AcDbPolyline").Add(90, corners.Count).Add(70, closed ? 129 : 128);
            foreach ((DxfPoint at, double bulge) in corners)
            {
                into.FlatPoint(10, at);
                if (bulge != 0) into.Add(42, bulge);
            }
        }

        DxfPairs Coloured(string kind)
        {
            Begin(into, kind, owner, layer);
            return ownColour ? into.InInk(line.Colour) : into;
        }
    }

    private void Area(DxfPairs into, int owner, string part, string what, SheetPath path, Ink colour, (string Name, DxfPatternLine[] Lines)? pattern)
    {
        (List<(DxfPoint At, double Bulge)> corners, _) = Corners(path.Close());
        if (corners.Count < 2) return;
        (string layer, bool ownColour) = layers.Of(part, what, colour, null);
        Begin(into, "HATCH", owner, layer);
        if (ownColour) into.InInk(colour);
        into.Add(100, "AcDbHatch").Point(10, default).Add(210, 0.0).Add(220, 0.0).Add(230, 1.0)
            .Add(2, pattern?.Name ?? "SOLID").Add(70, pattern is null ? 1 : 0).Add(71, 0).Add(91, 1)
            // One outer path, a polyline: 1 + 2.
            .Add(92, 3).Add(72, corners.Exists(corner => corner.Bulge != 0) ? 1 : 0).Add(73, 1).Add(93, corners.Count);
        foreach ((DxfPoint at, double bulge) in corners)
        {
            into.FlatPoint(10, at);
            if (corners.Exists(corner => corner.Bulge != 0)) into.Add(42, bulge);
        }
        into.Add(97, 0).Add(75, 0).Add(76, pattern is null ? 1 : 2);
        if (pattern is { } lines)
        {
            into.Add(52, 0.0).Add(41, 1.0).Add(77, 0).Add(78, lines.Lines.Length);
            foreach (DxfPatternLine line in lines.Lines)
            {
                double turn = line.AngleDeg * Math.PI / 180, cos = Math.Cos(turn), sin = Math.Sin(turn);
                into.Add(53, line.AngleDeg).Add(43, line.XMm * unitsPerMm).Add(44, line.YMm * unitsPerMm)
                    .Add(45, ((line.ShiftMm * cos) - (line.ApartMm * sin)) * unitsPerMm).Add(46, ((line.ShiftMm * sin) + (line.ApartMm * cos)) * unitsPerMm)
                    .Add(79, line.DashesMm.Length);
                foreach (double dash in line.DashesMm) into.Add(49, dash * unitsPerMm);
            }
        }
        into.Add(98, 0);
    }

    private void Text(DxfPairs into, int owner, TextMark text)
    {
        if (text.Text.Length == 0) return;
        (string layer, bool ownColour) = layers.Of(text.Layer, "text", text.Colour, null);
        Begin(into, "TEXT", owner, layer);
        if (ownColour) into.InInk(text.Colour);
        // The first point is where the line begins; with another alignment the second one counts.
        SheetPoint start = text.Anchor.Away(text.Align switch { TextAlign.Start => 0, TextAlign.Middle => -text.WidthMm / 2, TextAlign.End => -text.WidthMm }, text.Turn.Radians);
        into.Add(100, "AcDbText").Point(10, At(start)).Add(40, text.EmMm * Typeface.CapitalEm * unitsPerMm).Add(1, DxfText.Of(text.Text));
        if (text.Turn.Degrees != 0) into.Add(50, text.Turn.Degrees);
        into.Add(7, text.Weight == LetterWeight.Bold ? DxfTables.BoldStyle : DxfTables.Style);
        if (text.Align != TextAlign.Start) into.Add(72, text.Align == TextAlign.Middle ? 1 : 2).Point(11, At(text.Anchor));
        into.Add(100, "AcDbText");
    }

    /// <summary>The corners of a path, each with the bulge of the piece after it: the tangent of a quarter of an arc's turn.</summary>
    private (List<(DxfPoint At, double Bulge)> Corners, bool Closed) Corners(SheetPath path)
    {
        List<(DxfPoint At, double Bulge)> corners = [];
        SheetPoint at = path.Start;
        foreach (PathPiece piece in path.Pieces)
        {
            corners.Add((At(at), piece.Centre is null ? 0 : Math.Tan(piece.SweepRad / 4)));
            at = piece.End;
        }
        // A closed path whose last piece ends at the start needs no corner there again.
        if (!path.Closed || at.DistanceMm(path.Start) > 1e-9) corners.Add((At(at), 0));
        return (corners, path.Closed);
    }

    private static (SheetPoint Centre, double RadiusMm)? Circle(SheetPath path)
    {
        if (path is not { Pieces: [{ Centre: { } centre }, ..] } || path.Pieces.Any(piece => piece.Centre is not { } other || other.DistanceMm(centre) > 1e-9)) return null;
        return Math.Abs(Math.Abs(path.Pieces.Sum(piece => piece.SweepRad)) - (2 * Math.PI)) < 1e-9 ? (centre, centre.DistanceMm(path.Start)) : null;
    }

    private static double Degrees(double rad)
    {
        double degrees = rad * 180 / Math.PI % 360;
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
