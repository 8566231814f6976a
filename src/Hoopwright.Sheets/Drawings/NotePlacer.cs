using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Drawings;

/// <summary>
/// Finds room for callouts and labels: tries places around the target, near ones and asked-for directions first, and
/// takes the one that disturbs least. Always the same place for the same drawing.
/// </summary>
internal sealed class NotePlacer
{
    internal const string Layer = "notes";
    private const double ShelfMm = 2.5, LeadingEm = 1.3, ApartMm = 0.9, OnTextCost = 4000, OnEdgeCost = 1000, OnThinLineCost = 60, ThroughTextCost = 500;
    private static readonly double[] DistancesMm = [8, 11, 14, 18, 23, 29, 36, 44, 53, 64, 77, 92];
    private static readonly double EmMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
    private readonly Taken taken;
    private readonly List<Mark> marks;

    internal NotePlacer(Taken taken, List<Mark> marks) => (this.taken, this.marks) = (taken, marks);

    internal void Place(NoteRequest note)
    {
        taken.Release(note.Target);
        if (note.Kind == NoteKind.Label)
            PlaceLabel(note);
        else
            PlaceCallout(note);
    }

    private void PlaceCallout(NoteRequest note)
    {
        (double widthMm, double heightMm, string[] lines) = Measure(note);
        (double Cost, SheetPoint Elbow, bool IsRight)? best = null;
        Try(Candidates(note));
        // Where all places nearby are bad, any clear place on the sheet is better, however long its leader.
        if (best is null || best.Value.Cost >= ThroughTextCost)
            Try(Everywhere(note));

        (_, SheetPoint bend, bool right) = best ?? (0, note.Target.Away(DistancesMm[0], note.DirectionsRad[0]), true);
        SheetPoint end = bend.Moved(right ? ShelfMm : -ShelfMm, 0);
        Add(new LineMark(Layer, SheetPath.Through(note.Target, bend, end), LineRole.Dimension));
        taken.AddLeader([note.Target, bend, end]);
        if (note.Kind == NoteKind.Arrow)
        {
            SheetPath head = Arrowhead(note.Target, bend);
            Add(new FillMark(Layer, head, Ink.Black));
            taken.AddArrow(head);
        }
        else
            Add(new FillMark(Layer, SheetPath.Circle(note.Target, 0.55), Ink.Black));
        SheetBox paper = BoxAt(end, right, widthMm, heightMm);
        Write(lines, new SheetPoint(right ? paper.LeftMm : paper.RightMm, paper.TopMm), right ? TextAlign.Start : TextAlign.End, note.IsBold);

        void Try(IEnumerable<(double DistanceMm, double DirectionRad, double Whim)> places)
        {
            foreach ((double distance, double direction, double whim) in places)
            {
                // All else only adds to the cost.
                if (best is not null && distance + whim >= best.Value.Cost - 1e-9)
                    continue;
                SheetPoint elbow = note.Target.Away(distance, direction);
                bool isRight = Math.Cos(direction) >= -1e-9;
                SheetPoint shelf = elbow.Moved(isRight ? ShelfMm : -ShelfMm, 0);
                TurnedBox box = TurnedBox.Of(BoxAt(shelf, isRight, widthMm, heightMm));
                if (!taken.IsFreeOfTexts(box.Grown(ApartMm)))
                    continue;
                // What is quickly told goes first, and a place that is worse already is left there.
                double most = best is null ? double.MaxValue : best.Value.Cost - 1e-9, cost = distance + whim;
                if (taken.RunsThroughText(note.Target, elbow) || taken.RunsThroughText(elbow, shelf)) cost += ThroughTextCost;
                if (note.Kind == NoteKind.Arrow && taken.IsArrowTaken(Arrowhead(note.Target, elbow))) cost += ThroughTextCost;
                if (cost < most && !taken.IsFreeOfEdges(box)) cost += OnEdgeCost;
                if (cost < most && !taken.IsFreeOfThinLines(box)) cost += OnThinLineCost;
                if (cost < most) cost += taken.Disturbance(note.Target.Away(0.6, direction), elbow) + taken.Disturbance(elbow, shelf);
                if (cost < most) best = (cost, elbow, isRight);
            }
        }
    }

    private void PlaceLabel(NoteRequest note)
    {
        (double widthMm, double heightMm, string[] lines) = Measure(note);
        (double Cost, SheetBox Box)? best = null;
        foreach ((double distance, double direction, double whim) in Candidates(note).Prepend((0, 0, 0)))
        {
            if (best is not null && distance + whim >= best.Value.Cost - 1e-9)
                continue;
            SheetPoint middle = note.Target.Away(distance * 0.6, direction);
            SheetBox box = new(middle.XMm - (widthMm / 2), middle.YMm - (heightMm / 2), middle.XMm + (widthMm / 2), middle.YMm + (heightMm / 2));
            TurnedBox turned = TurnedBox.Of(box);
            bool isFree = taken.IsFreeOfTexts(turned);
            if (best is not null && !isFree)
                continue;
            double cost = distance + whim + (isFree ? 0 : OnTextCost) + (taken.IsFreeOfEdges(turned) ? 0 : OnEdgeCost)
                + (taken.IsFreeOfThinLines(turned) ? 0 : OnThinLineCost);
            if (best is null || cost < best.Value.Cost - 1e-9)
                best = (cost, box);
        }

        SheetBox chosen = best!.Value.Box;
        Write(lines, new SheetPoint(chosen.Middle.XMm, chosen.TopMm), TextAlign.Middle, note.IsBold);
    }

    private static IEnumerable<(double DistanceMm, double DirectionRad, double Whim)> Candidates(NoteRequest note)
    {
        const int Directions = 24;
        (double DirectionRad, double Whim)[] around =
        [
            .. note.DirectionsRad.Select(direction => (direction, 0.0)),
            .. Enumerable.Range(0, Directions).Select(step => 2 * Math.PI * (step + 0.5) / Directions)
                .Select(direction => (direction, (6 * note.DirectionsRad.Min(wanted => Math.Abs(Math.IEEERemainder(direction - wanted, 2 * Math.PI)))) + 2)),
        ];
        foreach (double distance in DistancesMm)
        {
            foreach ((double direction, double whim) in around)
                yield return (distance, direction, whim);
        }
    }

    /// <summary>Places on a grid over the whole room.</summary>
    private IEnumerable<(double DistanceMm, double DirectionRad, double Whim)> Everywhere(NoteRequest note)
    {
        const double StepMm = 3;
        for (double y = taken.Room.TopMm; y <= taken.Room.BottomMm; y += StepMm)
        {
            for (double x = taken.Room.LeftMm; x <= taken.Room.RightMm; x += StepMm)
            {
                SheetPoint elbow = new(x, y);
                yield return (note.Target.DistanceMm(elbow), note.Target.DirectionRad(elbow), 10);
            }
        }
    }

    private static (double WidthMm, double HeightMm, string[] Lines) Measure(NoteRequest note)
    {
        string[] lines = [.. TapeFractions.Set(note.Text).Split('\n')];
        Typeface face = Typeface.Of(note.IsBold ? LetterWeight.Bold : LetterWeight.Regular);
        double heightMm = EmMm * (Typeface.RiseEm + Typeface.FallEm + (LeadingEm * (lines.Length - 1)));
        return (lines.Max(line => face.WidthMm(line, EmMm)), heightMm, lines);
    }

    private static SheetBox BoxAt(SheetPoint shelf, bool isRight, double widthMm, double heightMm)
    {
        double left = isRight ? shelf.XMm + 0.8 : shelf.XMm - 0.8 - widthMm;
        double top = shelf.YMm - (EmMm * (Typeface.RiseEm - (Typeface.CapitalEm / 2)));
        return new SheetBox(left, top, left + widthMm, top + heightMm);
    }

    private void Write(string[] lines, SheetPoint top, TextAlign align, bool isBold)
    {
        for (int line = 0; line < lines.Length; line++)
        {
            TextMark text = new(Layer, top.Moved(0, EmMm * (Typeface.RiseEm + (LeadingEm * line))), lines[line])
            {
                Align = align,
                Weight = isBold ? LetterWeight.Bold : LetterWeight.Regular,
            };
            // On a plain tint the letters stand as they are; a white patch is only for lines and textures under them.
            Add(text with { Clears = taken.IsDrawnOver(text.Box) });
        }
    }

    private void Add(Mark mark)
    {
        marks.Add(mark);
        if (mark is TextMark)
            taken.Add(mark);
    }

    internal static SheetPath Arrowhead(SheetPoint tip, SheetPoint from)
    {
        double back = tip.DirectionRad(from);
        return SheetPath.Around(tip, tip.Away(2.4, back + 0.17), tip.Away(2.4, back - 0.17));
    }
}
