using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using Hoopwright.Strength;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>A bow under its worst combination: on the left how it moves, how far its strength is used and what the ground puts on its feet; on the right its bending moment.</summary>
internal static class StrengthBowFigure
{
    // Parts of the span that the greatest movement and the greatest moment take on paper.
    private const double MomentShare = 0.13, LeadMm = 4.8;

    public static Drawing Draw(BowDiagram diagram, StrengthReport report, FigureSheet sheet, string number)
    {
        CombinationStrength worst = report.Combinations.First(each => each.Code == diagram.Code);
        bool buckles = report.Combinations[0].Utilisation is null;
        string title = string.Create(CultureInfo.InvariantCulture, $"Bow {diagram.Bow}, worst combination{(buckles ? " short of buckling" : "")}");
        DrawingBuilder builder = sheet.Start(title, $"{title}: {diagram.Words}. Shape, movement, use of strength, reactions of the ground and bending moment.", number);
        string worse = buckles ? " (Under worse ones the bow buckles.)" : "";
        string elastic = worst.Utilisation is { Value: > 1 } ? " Over 1, forces and movement are those of steel that never yields: the bow gives way before." : "";
        double topMm = Words(builder, $"{diagram.Words}.{worse}{elastic}");
        double middleMm = builder.Room.Middle.XMm;
        SheetBox left = builder.Room with { TopMm = topMm, RightMm = middleMm - 3 }, right = builder.Room with { TopMm = topMm, LeftMm = middleMm + 3 };
        builder.On("panels").Line(new SheetPoint(middleMm, topMm), new SheetPoint(middleMm, builder.Room.BottomMm), LineRole.Dimension);
        Moved(diagram, worst, builder, left, sheet);
        Moments(diagram, builder, right, sheet);
        return builder.Build();
    }

    /// <summary>The combination in words over the whole width; returns where the panels begin.</summary>
    private static double Words(DrawingBuilder builder, string words)
    {
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), atMm = builder.Room.TopMm + 4;
        foreach (string line in TextSetter.Lines(words, builder.Room.WidthMm - 6, emMm, LetterWeight.Bold))
        {
            builder.On("words").Text(new SheetPoint(builder.Room.LeftMm + 3, atMm), line, weight: LetterWeight.Bold);
            atMm += LeadMm;
        }
        return atMm;
    }

    private static void Moved(BowDiagram diagram, CombinationStrength worst, DrawingBuilder builder, SheetBox panel, FigureSheet sheet)
    {
        ImmutableArray<BowDiagramPoint> points = diagram.Points;
        double times = diagram.TimesDrawn;
        PlanePoint[] moved = [.. points.Select(point => At(point.Place.Across + (point.MovedAcross * times), point.Place.Up + (point.MovedUp * times)))];
        Heading(builder, panel, "Use of strength, reactions of the ground",
            string.Create(CultureInfo.InvariantCulture, $"dashed: movement × {times:0.###}; it moves {TapeText.OfMovement(diagram.MostMoved, sheet.Units)} at most"));
        Figure figure = builder.Figure(Low(points.Select(point => point.Place).Concat(moved)), High(points.Select(point => point.Place).Concat(moved)), sheet.Units, panel.Inset(14, 24, 14, 36));
        UseBands.Draw(figure, points);
        figure.On("bow").Path(ModelPath.Through(points.Select(point => point.Place)), LineRole.Outline);
        figure.On("moved").Path(ModelPath.Through(moved), LineRole.Hidden);
        if (worst.Utilisation is { } used)
            figure.Callout(At(worst.Across, worst.Up), string.Create(CultureInfo.InvariantCulture, $"worst: {used.Value:0.00}\nof its strength"), Angle.FromDegrees(worst.Across.Metres * 2 < SpanM(points) ? -45 : 225), Angle.FromDegrees(270));
        Foot(figure, points[0].Place, diagram.LeftFoot, -1);
        Foot(figure, points[^1].Place, diagram.RightFoot, 1);
        Reaction(builder, new SheetPoint(panel.LeftMm + 3, panel.BottomMm - 19), "left foot", diagram.LeftFoot, sheet.Units);
        Reaction(builder, new SheetPoint(panel.Middle.XMm + 3, panel.BottomMm - 19), "right foot", diagram.RightFoot, sheet.Units);
        UseBands.Legend(builder, panel);
    }

    /// <summary>Arrows of what the ground puts on a foot; a foot that is pulled out has its upright arrow pointing down.</summary>
    private static void Foot(Figure figure, PlanePoint place, FootReaction foot, int outward) => figure.On("reactions").OnPaper((view, pen) =>
    {
        const double NearMm = 2, FarMm = 12;
        SheetPoint at = view.At(place);
        if (Math.Abs(foot.Up.Newtons) >= 0.5) Arrow(pen, at.Moved(0, FarMm), at.Moved(0, NearMm), foot.Up.Newtons > 0);
        if (Math.Abs(foot.Across.Newtons) >= 0.5) Arrow(pen, at.Moved(outward * FarMm, 0), at.Moved(outward * NearMm, 0), foot.Across.Newtons * outward < 0);
    });

    private static void Arrow(Pen pen, SheetPoint far, SheetPoint near, bool inwards)
    {
        (SheetPoint tail, SheetPoint tip) = inwards ? (far, near) : (near, far);
        pen.Line(tail, tip, LineRole.Dimension).Fill(NotePlacer.Arrowhead(tip, tail), Ink.Black);
    }

    private static void Reaction(DrawingBuilder builder, SheetPoint at, string name, FootReaction foot, UnitSystem units)
    {
        string[] lines =
        [
            $"{name}: {TapeText.Of(Magnitude(foot.Up), units)} {(foot.Up.Newtons < 0 ? "down" : "up")}",
            $"{TapeText.Of(Magnitude(foot.Across), units)} to the {(foot.Across.Newtons < 0 ? "left" : "right")}",
            $"turning {TapeText.Of(Moment.FromNewtonMetres(Math.Abs(foot.Turning.NewtonMetres)), units)}",
        ];
        for (int line = 0; line < lines.Length; line++) builder.On("reactions").Text(at.Moved(0, line * LeadMm), lines[line]);
    }

    private static Force Magnitude(Force force) => Force.FromNewtons(Math.Abs(force.Newtons));

    private static void Moments(BowDiagram diagram, DrawingBuilder builder, SheetBox panel, FigureSheet sheet)
    {
        ImmutableArray<BowDiagramPoint> points = diagram.Points;
        Heading(builder, panel, "Bending moment", "drawn on the side of the bow that it stretches");
        double mostNm = Math.Max(1e-9, points.Max(point => Math.Abs(point.Moment.NewtonMetres))), perNm = MomentShare * SpanM(points) / mostNm;
        PlanePoint[] ends = [.. points.Select((point, index) => Inwards(points, index, point.Moment.NewtonMetres * perNm))];
        PlanePoint[] all = [.. points.Select(point => point.Place), .. ends];
        Figure figure = builder.Figure(Low(all), High(all), sheet.Units, panel.Inset(14, 24, 14, 36));
        for (int index = 0; index + 1 < points.Length; index++)
            figure.On("moment").Fill(ModelPath.Around(points[index].Place, points[index + 1].Place, ends[index + 1], ends[index]), Ink.FilmTint);
        for (int index = 0; index < points.Length; index++) figure.On("moment").Line(points[index].Place, ends[index], LineRole.Texture);
        figure.On("moment").Path(ModelPath.Through(ends), LineRole.Dimension);
        figure.On("bow").Path(ModelPath.Through(points.Select(point => point.Place)), LineRole.Outline);
        foreach (int index in Extremes(points, mostNm))
        {
            double inward = points[index].Moment.NewtonMetres < 0 ? Math.PI : 0;
            figure.Callout(ends[index], TapeText.Of(Moment.FromNewtonMetres(Math.Abs(points[index].Moment.NewtonMetres)), sheet.Units), Angle.FromRadians(InwardRad(points, index) + inward));
        }
    }

    /// <summary>The greatest moment of every stretch of one sign, but for those that are small.</summary>
    private static IEnumerable<int> Extremes(ImmutableArray<BowDiagramPoint> points, double mostNm)
    {
        for (int from = 0, to; from < points.Length; from = to)
        {
            for (to = from + 1; to < points.Length && Math.Sign(points[to].Moment.NewtonMetres) == Math.Sign(points[from].Moment.NewtonMetres);) to++;
            int most = Enumerable.Range(from, to - from).MaxBy(index => Math.Abs(points[index].Moment.NewtonMetres));
            if (Math.Abs(points[most].Moment.NewtonMetres) >= 0.1 * mostNm) yield return most;
        }
    }

    private static PlanePoint Inwards(ImmutableArray<BowDiagramPoint> points, int index, double byM)
    {
        double towards = InwardRad(points, index);
        return At(points[index].Place.Across + Length.FromMetres(byM * Math.Cos(towards)), points[index].Place.Up + Length.FromMetres(byM * Math.Sin(towards)));
    }

    // From the left foot on, the inside lies to the right of the way.
    private static double InwardRad(ImmutableArray<BowDiagramPoint> points, int index)
    {
        PlanePoint before = points[Math.Max(0, index - 1)].Place, after = points[Math.Min(points.Length - 1, index + 1)].Place;
        return Math.Atan2((after.Up - before.Up).Metres, (after.Across - before.Across).Metres) - (Math.PI / 2);
    }

    private static void Heading(DrawingBuilder builder, SheetBox panel, string name, string words)
    {
        builder.On("headings").Text(new SheetPoint(panel.LeftMm + 3, panel.TopMm + 4), name, weight: LetterWeight.Bold)
            .Text(new SheetPoint(panel.LeftMm + 3, panel.TopMm + 4 + LeadMm), words);
    }

    private static double SpanM(ImmutableArray<BowDiagramPoint> points) => Math.Abs((points[^1].Place.Across - points[0].Place.Across).Metres);

    private static PlanePoint Low(IEnumerable<PlanePoint> points) => At(points.Min(point => point.Across), points.Min(point => point.Up));

    private static PlanePoint High(IEnumerable<PlanePoint> points) => At(points.Max(point => point.Across), points.Max(point => point.Up));
}
