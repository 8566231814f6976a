using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>The snow and the wind that govern, as profiles along the film line: wind square to the film, snow from above over the plan.</summary>
internal static class StrengthLoadsFigure
{
    private const double ShareOfSpan = 0.12, LeadMm = 4.8;
    private const int Steps = 48;

    public static Drawing Draw(Tunnel tunnel, StrengthReport report, ImmutableArray<ShownLoad> shown, FigureSheet sheet, string number)
    {
        DrawingBuilder builder = sheet.Start("Loads that govern", "Load profiles on the film line of a bow, of the snow case and the wind case that govern.", number);
        double widthMm = builder.Room.WidthMm / shown.Length;
        for (int index = 0; index < shown.Length; index++)
        {
            SheetBox panel = builder.Room with { LeftMm = builder.Room.LeftMm + (index * widthMm) + 2, RightMm = builder.Room.LeftMm + ((index + 1) * widthMm) - 2 };
            if (index > 0) builder.On("panels").Line(new SheetPoint(panel.LeftMm - 2, panel.TopMm), new SheetPoint(panel.LeftMm - 2, panel.BottomMm), LineRole.Dimension);
            Panel(tunnel, report, shown[index], builder, panel, sheet);
        }
        return builder.Build();
    }

    private static void Panel(Tunnel tunnel, StrengthReport report, ShownLoad shown, DrawingBuilder builder, SheetBox panel, FigureSheet sheet)
    {
        double atMm = Write(builder, panel, shown.Load.Words, LetterWeight.Bold, panel.TopMm + 4);
        atMm = Write(builder, panel, string.Create(CultureInfo.InvariantCulture, $"{shown.At(report, sheet.Units)}, on bow {shown.Limit.Bow}, without factors"), LetterWeight.Regular, atMm);
        ImmutableArray<LoadArrow> arrows = [.. ArrowsOf(tunnel, shown)];
        double mostPa = Math.Max(1e-9, arrows.Select(arrow => Math.Abs(arrow.Value.Pascals)).DefaultIfEmpty().Max()), perPa = ShareOfSpan * tunnel.Span.Metres / mostPa;
        PlanePoint[] tips = [.. arrows.Select(arrow => arrow.Tip(perPa))];
        Length reach = tunnel.Span * ShareOfSpan;
        Figure figure = builder.Figure(At(-reach, Length.Zero), At(tunnel.Span + reach, tunnel.Bow.PeakHeight + reach), sheet.Units, panel with { TopMm = atMm + 12, BottomMm = panel.BottomMm - 14, LeftMm = panel.LeftMm + 5, RightMm = panel.RightMm - 5 });
        for (int index = 0; index < arrows.Length; index++)
        {
            LoadArrow arrow = arrows[index];
            if (index > 0 && arrow.Kind == arrows[index - 1].Kind)
                figure.On("profile").Fill(ModelPath.Around(arrows[index - 1].Foot, arrow.Foot, tips[index], tips[index - 1]), arrow.Value.Pascals + arrows[index - 1].Value.Pascals < 0 ? Ink.LumberTint : Ink.FilmTint)
                    .Line(tips[index - 1], tips[index], LineRole.Dimension);
            if (index % 2 == 0) Arrow(figure, arrow, tips[index]);
        }
        figure.On("film").Path(Trace(tunnel.Bow.FilmLine), LineRole.Outline);
        foreach (int index in Extremes(arrows, mostPa))
            figure.Callout(arrows[index].Foot, arrows[index].Words(sheet.Units), Angle.FromRadians(arrows[index].OutwardRad + Math.PI));
    }

    private static double Write(DrawingBuilder builder, SheetBox panel, string text, LetterWeight weight, double atMm)
    {
        foreach (string line in TextSetter.Lines(text, panel.WidthMm - 6, Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), weight))
        {
            builder.On("words").Text(new SheetPoint(panel.LeftMm + 3, atMm), line, weight: weight);
            atMm += LeadMm;
        }
        return atMm;
    }

    private static void Arrow(Figure figure, LoadArrow arrow, PlanePoint tip) => figure.On("arrows").OnPaper((view, pen) =>
    {
        SheetPoint foot = view.At(arrow.Foot), end = view.At(tip);
        if (foot.DistanceMm(end) < 3) return;
        (SheetPoint from, SheetPoint to) = arrow.Value.Pascals > 0 ? (end, foot) : (foot, end);
        pen.Line(from, to, LineRole.Dimension).Fill(SheetPath.Around(to, to.Away(1.6, to.DirectionRad(from) + 0.25), to.Away(1.6, to.DirectionRad(from) - 0.25)), Ink.Black);
    });

    /// <summary>All loads of a kind together, as the bow gets them from half the bay on either side.</summary>
    private static IEnumerable<LoadArrow> ArrowsOf(Tunnel tunnel, ShownLoad shown)
    {
        int at = shown.Limit.Bow - 1;
        Length here = tunnel.Stations[at].Along;
        Length from = at > 0 ? (tunnel.Stations[at - 1].Along + here) / 2 : here, to = at + 1 < tunnel.Stations.Length ? (tunnel.Stations[at + 1].Along + here) / 2 : here;
        SurfaceLoad[] loads = [.. shown.Load.Surfaces.Select(surface => surface.Times(surface.FactorBetween(from, to)))];
        return Enum.GetValues<LoadArrowKind>().SelectMany(kind => Arrows(tunnel.Bow.FilmLine, [.. loads.Select(load => ProfileOf(load, kind)).Where(profile => !profile.IsNone)], kind));
    }

    private static LoadProfile ProfileOf(SurfaceLoad load, LoadArrowKind kind) => kind switch
    {
        LoadArrowKind.SquareToFilm => load.Normal,
        LoadArrowKind.OverPlan => load.PlanGravity,
        LoadArrowKind.Sideways => load.Sideways,
    };

    private static IEnumerable<LoadArrow> Arrows(PlanePath film, ImmutableArray<LoadProfile> profiles, LoadArrowKind kind)
    {
        if (profiles.IsEmpty) yield break;
        SortedSet<double> placesM = [.. profiles.SelectMany(profile => profile.Points).Select(point => point.Distance.Metres), .. Enumerable.Range(0, Steps + 1).Select(step => film.Length.Metres * step / Steps)];
        foreach (double atM in placesM.Where(each => each >= 0 && each <= film.Length.Metres))
        {
            Length at = Length.FromMetres(atM);
            Pressure before = Pressure.FromPascals(profiles.Sum(profile => profile.Before(at).Pascals)), after = Pressure.FromPascals(profiles.Sum(profile => profile.At(at).Pascals));
            double outwardRad = kind switch
            {
                LoadArrowKind.SquareToFilm => film.DirectionAt(at).Radians + (Math.PI / 2),
                LoadArrowKind.OverPlan => Math.PI / 2,
                LoadArrowKind.Sideways => Math.PI,
            };
            PlanePoint foot = film.PointAt(at);
            if (atM > 0 && Math.Abs((before - after).Pascals) > 1e-6) yield return new LoadArrow(foot, before, outwardRad, kind);
            yield return new LoadArrow(foot, after, outwardRad, kind);
        }
    }

    /// <summary>The greatest load of every stretch between jumps and changes of sign, but for those that are small.</summary>
    private static IEnumerable<int> Extremes(ImmutableArray<LoadArrow> arrows, double mostPa)
    {
        for (int from = 0, to; from < arrows.Length; from = to)
        {
            for (to = from + 1; to < arrows.Length && arrows[to].Kind == arrows[from].Kind && arrows[to].Foot != arrows[to - 1].Foot && Math.Sign(arrows[to].Value.Pascals) == Math.Sign(arrows[from].Value.Pascals);) to++;
            double peakPa = Enumerable.Range(from, to - from).Max(index => Math.Abs(arrows[index].Value.Pascals));
            int[] alike = [.. Enumerable.Range(from, to - from).Where(index => Math.Abs(arrows[index].Value.Pascals) > peakPa * (1 - 1e-6))];
            if (to - from > 2 && peakPa >= 0.08 * mostPa) yield return alike[alike.Length / 2];
        }
    }
}
