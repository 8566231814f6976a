using Hoopwright.Quantities;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Places the notes of a figure once everything else is drawn: slanting dimensions, radii, angles, callouts, labels.</summary>
internal sealed class FigureNotes
{
    private const double BaseMm = 1.2;
    private static readonly double EmMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
    private readonly Taken taken;
    private readonly List<Mark> marks;
    private readonly List<Dimension> dimensions;

    internal FigureNotes(Taken taken, List<Mark> marks, List<Dimension> dimensions) => (this.taken, this.marks, this.dimensions) = (taken, marks, dimensions);

    internal void Note(NoteRequest note) => new NotePlacer(taken, marks).Place(note);

    internal void Aligned(SheetPoint from, SheetPoint to, string text, double offsetMm)
    {
        double direction = from.DirectionRad(to), side = offsetMm < 0 ? -1 : 1, across = direction + (Math.PI / 2);
        TextMark? chosen = null;
        double chosenOffset = offsetMm;
        for (int step = 0; step < 8; step++)
        {
            double offset = offsetMm + (side * 3 * step);
            TextMark trial = Beside(from.Away(offset, across), to.Away(offset, across), text, 0.5, BaseMm);
            if (chosen is not null && !IsFree(trial))
                continue;
            (chosen, chosenOffset) = (trial, offset);
            if (IsFree(trial))
                break;
        }

        SheetPoint start = from.Away(chosenOffset, across), end = to.Away(chosenOffset, across);
        double past = side * 1.5;
        int before = marks.Count;
        Stroke(start, end);
        Stroke(from.Away(side * 1.2, across), start.Away(past, across));
        Stroke(to.Away(side * 1.2, across), end.Away(past, across));
        foreach (SheetPoint tip in (SheetPoint[])[start, end])
            Add(new LineMark(RowPlacer.Layer, SheetPath.Through(tip.Away(1.5, direction + (Math.PI / 4)), tip.Away(-1.5, direction + (Math.PI / 4))), LineRole.Outline));
        Add(chosen!);
        for (int mark = before; mark < marks.Count; mark++)
            marks[mark] = marks[mark] with { IsDimension = true };
        dimensions.Add(new Dimension(DimensionKind.Aligned, from, to, end, chosen!, [.. marks.Skip(before)]));
    }

    internal void Along(SheetPoint from, SheetPoint to, string text)
    {
        TextMark[] trials = [.. AlongTrials(from, to, text)];
        // Where there is no clear place, a thin line may stop short of the text, but no text and no edge may meet it.
        Add(Array.Find(trials, IsFree) ?? Array.Find(trials, IsReadable) ?? trials[0]);
    }

    private static IEnumerable<TextMark> AlongTrials(SheetPoint from, SheetPoint to, string text)
    {
        foreach (double further in (double[])[0, 4, 8])
        {
            for (int step = 0; step <= 18; step++)
            {
                // From the middle outward, by turns to either end.
                double part = 0.5 + (0.05 * ((step + 1) / 2) * (step % 2 == 0 ? 1 : -1));
                yield return Beside(from, to, text, part, BaseMm + further);
                yield return Beside(from, to, text, part, -BaseMm - further - (Typeface.CapitalEm * EmMm));
            }
        }
    }

    internal void Radius(SheetPoint centre, SheetPoint onArc, string text)
    {
        double outward = centre.DirectionRad(onArc);
        Note(new NoteRequest(text, onArc, NoteKind.Arrow, [outward + Math.PI, outward]));
    }

    internal void AngleAt(SheetPoint corner, double fromRad, double sweepRad, string text)
    {
        TextMark? chosen = null;
        double chosenRadius = 0, middle = fromRad + (sweepRad / 2);
        foreach (double radius in (double[])[9, 12, 15, 19, 24, 30, 37])
        {
            SheetPoint at = corner.Away(radius + 2 + (Typeface.Of(LetterWeight.Regular).WidthMm(text, EmMm) / 2 * Math.Abs(Math.Cos(middle))), middle);
            TextMark trial = new(RowPlacer.Layer, at.Moved(0, Typeface.CapitalEm * EmMm / 2), text) { Align = TextAlign.Middle, Clears = true };
            if (chosen is null || IsFree(trial))
                (chosen, chosenRadius) = (trial, radius);
            if (IsFree(trial))
                break;
        }

        Add(new LineMark(RowPlacer.Layer, SheetPath.Arc(corner, chosenRadius, Angle.FromRadians(fromRad), Angle.FromRadians(sweepRad)), LineRole.Dimension));
        foreach ((double at, double turn) in ((double, double)[])[(fromRad, 1), (fromRad + sweepRad, -1)])
        {
            SheetPoint tip = corner.Away(chosenRadius, at);
            double along = at + (turn * Math.Sign(sweepRad) * Math.PI / 2);
            Add(new FillMark(RowPlacer.Layer, NotePlacer.Arrowhead(tip, tip.Away(3, along - (turn * Math.Sign(sweepRad) * -1.2 / chosenRadius))), Ink.Black));
            Stroke(corner.Away(1.2, at), corner.Away(chosenRadius + 1.5, at));
        }

        Add(chosen!);
    }

    /// <summary>A text along a line, never upside down, so far off it.</summary>
    private static TextMark Beside(SheetPoint from, SheetPoint to, string text, double part, double offMm)
    {
        double direction = from.DirectionRad(to);
        if (Math.Cos(direction) < -1e-9 || (Math.Abs(Math.Cos(direction)) <= 1e-9 && Math.Sin(direction) < 0))
            direction += Math.PI;
        return new TextMark(RowPlacer.Layer, from.Towards(to, part).Away(offMm, direction + (Math.PI / 2)), TapeFractions.Set(text))
        {
            Align = TextAlign.Middle,
            Turn = Angle.FromRadians(direction),
            Clears = true,
        };
    }

    private bool IsFree(TextMark text) => IsReadable(text) && taken.IsFreeOfThinLines(text.Box.Grown(-0.45));

    private bool IsReadable(TextMark text)
    {
        TurnedBox box = text.Box.Grown(-0.45);
        return taken.IsFreeOfTexts(box) && taken.IsFreeOfEdges(box);
    }

    private void Stroke(SheetPoint from, SheetPoint to) => Add(new LineMark(RowPlacer.Layer, SheetPath.Through(from, to), LineRole.Dimension));

    private void Add(Mark mark)
    {
        marks.Add(mark);
        taken.Add(mark);
    }
}
