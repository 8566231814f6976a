using System.Collections.Immutable;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Turns a textured area into plain lines and fills, for writers that have no textures of their own.</summary>
internal static class HatchLines
{
    /// <summary>The marks that make the texture, cut off at the outline. The same area gives the same marks.</summary>
    internal static ImmutableArray<Mark> Of(HatchMark hatch)
    {
        Outline outline = new(hatch.Path);
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        switch (hatch.Kind)
        {
            case Hatch.Concrete:
                Concrete(hatch.Layer, outline, marks);
                break;
            case Hatch.Earth:
                Earth(hatch.Layer, outline, marks);
                break;
            case Hatch.Wood:
                Wood(hatch.Layer, outline, marks);
                break;
            case Hatch.Film:
                marks.Add(new FillMark(hatch.Layer, hatch.Path, Ink.FilmTint));
                Sheen(hatch.Layer, outline, marks);
                break;
        }

        return marks.ToImmutable();
    }

    private static void Concrete(string layer, Outline outline, ImmutableArray<Mark>.Builder marks)
    {
        const double CellMm = 1.7;
        foreach ((int column, int row, SheetPoint corner) in outline.Cells(CellMm))
        {
            SheetPoint at = corner.Moved(CellMm * Chance(column, row, 1), CellMm * Chance(column, row, 2));
            double size = 0.45 + (0.35 * Chance(column, row, 3)), turn = 2 * Math.PI * Chance(column, row, 4);
            bool isStone = Chance(column, row, 5) < 0.3;
            SheetPoint[] stone = [at.Away(size, turn), at.Away(size, turn + 2.2), at.Away(size, turn + 4.1)];
            if (isStone && stone.All(outline.Holds))
                marks.Add(new LineMark(layer, SheetPath.Around(stone), LineRole.Texture));
            else if (outline.Holds(at))
                marks.Add(new FillMark(layer, SheetPath.Circle(at, 0.13), Ink.Black));
        }
    }

    private static void Earth(string layer, Outline outline, ImmutableArray<Mark>.Builder marks)
    {
        const double CellMm = 4;
        foreach ((int column, int row, SheetPoint corner) in outline.Cells(CellMm))
        {
            bool rises = ((column + row) & 1) == 0;
            for (int stroke = 0; stroke < 3; stroke++)
            {
                double shift = 0.7 + (0.9 * stroke);
                SheetPoint from = corner.Moved(shift, rises ? 3.2 : 0.4), to = corner.Moved(shift + 1.4, rises ? 0.9 : 2.7);
                Add(layer, outline, from, to, Ink.Earth, marks);
            }
        }
    }

    private static void Wood(string layer, Outline outline, ImmutableArray<Mark>.Builder marks)
    {
        SheetBox box = outline.Bounds;
        bool isWide = box.WidthMm >= box.HeightMm;
        double across = isWide ? box.HeightMm : box.WidthMm, pitch = Math.Max(0.7, across / Math.Max(2, Math.Round(across / 1.1)));
        int line = 0;
        for (double at = pitch * 0.5; at < across; at += pitch, line++)
        {
            double wander = pitch * 0.3 * (Chance(line, 7, 1) - 0.5);
            (SheetPoint from, SheetPoint to) = isWide
                ? (new SheetPoint(box.LeftMm - 1, box.TopMm + at + wander), new SheetPoint(box.RightMm + 1, box.TopMm + at - wander))
                : (new SheetPoint(box.LeftMm + at + wander, box.TopMm - 1), new SheetPoint(box.LeftMm + at - wander, box.BottomMm + 1));
            Add(layer, outline, from, to, Ink.Lumber, marks);
        }
    }

    private static void Sheen(string layer, Outline outline, ImmutableArray<Mark>.Builder marks)
    {
        SheetBox box = outline.Bounds;
        double reach = Math.Min(Math.Min(box.WidthMm, box.HeightMm) * 0.35, 14);
        for (int stroke = 0; stroke < 2; stroke++)
        {
            double length = reach * (1 - (0.4 * stroke));
            SheetPoint middle = new(box.LeftMm + (box.WidthMm * 0.3) + (2.2 * stroke), box.TopMm + (box.HeightMm * 0.4) + (1.2 * stroke));
            Add(layer, outline, middle.Moved(-length / 2, length / 2), middle.Moved(length / 2, -length / 2), Ink.Film, marks);
        }
    }

    private static void Add(string layer, Outline outline, SheetPoint from, SheetPoint to, Ink colour, ImmutableArray<Mark>.Builder marks)
    {
        foreach ((SheetPoint start, SheetPoint end) in outline.Inside(from, to))
            marks.Add(new LineMark(layer, SheetPath.Through(start, end), LineRole.Texture, colour));
    }

    /// <summary>A number from 0 to 1 that looks like chance and is the same every time.</summary>
    private static double Chance(int column, int row, int which)
    {
        uint mix = unchecked(((uint)column * 0x9E3779B1u) ^ ((uint)row * 0x85EBCA77u) ^ ((uint)which * 0xC2B2AE3Du));
        mix = unchecked((mix ^ (mix >> 15)) * 0x2C1B3C6Du);
        mix = unchecked((mix ^ (mix >> 12)) * 0x297A2D39u);
        return (mix ^ (mix >> 15)) / (double)uint.MaxValue;
    }
}
