using System.Collections.Immutable;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Finds what cannot be read in a finished drawing. A drawing with a collision is a fault of ours.</summary>
public static class Collisions
{
    // Letters do not fill the box of their line to its edge.
    private const double TouchMm = 0.02, BesideMm = 0.4;

    /// <summary>Every pair of texts that overlap, text on a line, arrowhead on another or on a text, and mark that leaves the paper, in the order drawn.</summary>
    public static ImmutableArray<Collision> In(Drawing drawing)
    {
        ImmutableArray<Collision>.Builder found = ImmutableArray.CreateBuilder<Collision>();
        TextMark[] texts = [.. drawing.Marks.OfType<TextMark>().Where(text => text.Text.Length > 0)];
        TurnedBox[] boxes = [.. texts.Select(text => text.Box.Grown(-TouchMm))];
        SheetBox[] bounds = [.. boxes.Select(box => box.Bounds)];
        Segments edges = new(), thin = new();
        foreach (LineMark line in drawing.Marks.OfType<LineMark>())
        {
            ImmutableArray<SheetPoint> points = line.Path.Flattened();
            if (line.Role is LineRole.Cut or LineRole.Outline)
                edges.Add(line.Layer, points);
            else if (line.Role is LineRole.Dimension or LineRole.Hidden or LineRole.Centre)
                thin.Add(line.Layer, points);
            if (!drawing.Paper.Inset(-TouchMm).Holds(SheetBox.AroundAll(points)))
                found.Add(new Collision(CollisionKind.LineOffPaper, "", line.Layer, points[0]));
        }

        for (int one = 0; one < texts.Length; one++)
        {
            if (!drawing.Paper.Holds(bounds[one]))
                found.Add(new Collision(CollisionKind.TextOffPaper, texts[one].Text, "", boxes[one].Middle));
            for (int other = one + 1; other < texts.Length; other++)
            {
                if (bounds[one].Meets(bounds[other]) && boxes[one].Meets(boxes[other]))
                    found.Add(new Collision(CollisionKind.TextOnText, texts[one].Text, texts[other].Text, boxes[one].Middle));
            }

            if (edges.Cutting(boxes[one]) is { } layer)
                found.Add(new Collision(CollisionKind.TextOnOutline, texts[one].Text, layer, boxes[one].Middle));
            else if (!texts[one].Clears && thin.Cutting(boxes[one].Grown(-BesideMm)) is { } line)
                found.Add(new Collision(CollisionKind.TextOnLine, texts[one].Text, line, boxes[one].Middle));
        }

        SheetPoint[][] arrows = [.. drawing.Marks.OfType<FillMark>().Where(fill => fill is { Layer: NotePlacer.Layer, Path.Pieces.Length: 2 }).Select(fill => ConvexOutline.BodyOf(fill.Path))];
        for (int one = 0; one < arrows.Length; one++)
        {
            for (int other = one + 1; other < arrows.Length; other++)
            {
                if (ConvexOutline.Meet(arrows[one], arrows[other])) found.Add(new Collision(CollisionKind.ArrowOnArrow, "", NotePlacer.Layer, arrows[one][0]));
            }
            for (int text = 0; text < texts.Length; text++)
            {
                if (ConvexOutline.Meet(arrows[one], boxes[text].Grown(-BesideMm).Corners())) found.Add(new Collision(CollisionKind.ArrowOnText, texts[text].Text, NotePlacer.Layer, arrows[one][0]));
            }
        }

        return found.ToImmutable();
    }
}
