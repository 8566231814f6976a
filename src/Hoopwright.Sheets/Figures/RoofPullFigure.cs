using System.Globalization;
using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using static Hoopwright.Sheets.Figures.FigureSheet;
using Side = Hoopwright.Sheets.Drawings.Side;

namespace Hoopwright.Sheets.Figures;

/// <summary>The tunnel from above on the morning the roof film is pulled: roll, ropes, people, stakes, and in which order it is fastened.</summary>
internal static class RoofPullFigure
{
    private const double PersonMm = 3.5, LeadMm = 4.8;
    private static readonly Length Aside = Length.FromFeet(5), RollOff = Length.FromFeet(3), RollWide = Length.FromFeet(1.5);

    public static Drawing Draw(Tunnel tunnel, CoverPlan cover, FasteningPlan plan, FigureSheet sheet, string number)
    {
        CrewWords say = sheet.Words;
        Length span = tunnel.Span, length = tunnel.Length, front = FasteningPlanner.PastEnd(cover, tunnel.Front), back = FasteningPlanner.PastEnd(cover, tunnel.Back);
        Angle? north = tunnel.Plan.Site.FrontFaces is { } faces ? Angle.FromDegrees(90 + faces.Value.Degrees) : null;
        DrawingBuilder builder = sheet.Start(say.Say("Roof film: ropes, people, stakes"), say.Fill("The roof of {0} from above while its film is pulled over, with ropes, people and stakes.", sheet.Project), number, north);
        string[] words =
        [
            say.Fill("Roll on the {0}: {1}.", say.Say(plan.RollSide.Name + " side"), say.Say(plan.RollSide.Why.Pattern)),
            say.Fill("{0} people: {1} on ropes (P), {2} feed (F), others at the ends. One gives the word.", Number(plan.People), Number(cover.Ropes.Count), Number(plan.Stands.Length - cover.Ropes.Count)),
            say.Fill("Fasten in this order: sides from bow {0} out (1, 2), then ends from the ridge down (3).", Number(Middle(tunnel).Number)),
        ];
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), atMm = builder.Room.TopMm + 5;
        foreach (string line in words.SelectMany(text => TextSetter.Lines(text, builder.Room.WidthMm - 6, emMm, LetterWeight.Regular)))
        {
            builder.On("words").Text(new SheetPoint(builder.Room.LeftMm + 3, atMm), line);
            atMm += LeadMm;
        }

        // The paper has the left side at the top.
        double outwards = plan.RollSide.IsLeft ? 1 : -1;
        Length rollEdge = plan.RollSide.IsLeft ? span : Length.Zero, farEdge = span - rollEdge;
        Length lowest = -Aside - RollOff, highest = span + Aside + RollOff;
        Figure figure = builder.Figure(At(-front - Length.FromFeet(2), lowest), At(length + back + Length.FromFeet(2), highest), sheet.Units, builder.Room.Inset(0, atMm - builder.Room.TopMm, 0, 0), spareMm: 4);
        figure.On("sheet").Fill(ModelPath.Rectangle(At(-front, Length.Zero), At(length + back, span)), Ink.FilmTint).Rectangle(At(-front, Length.Zero), At(length + back, span), LineRole.Hidden, Ink.Film);
        foreach (BowStation station in tunnel.Stations) figure.On("bows").Line(At(station.Along, Length.Zero), At(station.Along, span), LineRole.Dimension);
        figure.On("frame").Line(At(Length.Zero, Length.Zero), At(length, Length.Zero), LineRole.Dimension).Line(At(Length.Zero, span), At(length, span), LineRole.Dimension)
            .Line(At(Length.Zero, span / 2), At(length, span / 2), LineRole.Centre);

        Length rollFrom = rollEdge + (RollOff * outwards);
        ModelPath roll = ModelPath.Rectangle(At(-front, rollFrom), At(length + back, rollFrom + (RollWide * outwards)));
        figure.On("roll").Hatch(roll, Hatch.Film).Path(roll, LineRole.Outline, Ink.Film);

        foreach (Stand stand in plan.Stands.Where(stand => stand.RopeNumber > 0))
        {
            Length hand = farEdge - (Aside * outwards);
            figure.On("ropes").Line(At(stand.Along, rollFrom), At(stand.Along, hand), LineRole.Dimension, Ink.Brick).OnPaper((view, pen) =>
            {
                SheetPoint ball = view.At(At(stand.Along, rollFrom)), tip = view.At(At(stand.Along, hand)), middle = view.At(At(stand.Along, (rollEdge + farEdge) / 2));
                pen.Fill(SheetPath.Circle(ball, 1.1), Ink.Black);
                pen.Fill(NotePlacer.Arrowhead(middle.Towards(tip, 0.6), middle), Ink.Black);
            });
            Person(figure, stand, hand - (Length.FromFeet(1) * outwards), -outwards);
        }
        foreach (Stand stand in plan.Stands.Where(stand => stand.RopeNumber == 0)) Person(figure, stand, rollFrom + (RollWide * outwards), outwards);
        foreach (PlaneCorner corner in Corners(length, span, front, back))
        {
            figure.On("stakes").OnPaper((view, pen) =>
            {
                SheetPoint at = view.At(At(corner.Along, corner.Across));
                pen.Line(at.Moved(-1.4, -1.4), at.Moved(1.4, 1.4), LineRole.Cut).Line(at.Moved(-1.4, 1.4), at.Moved(1.4, -1.4), LineRole.Cut);
            });
        }
        Order(figure, tunnel, plan);

        Length before = -front;
        Length marks = rollFrom + (RollWide * outwards);
        figure.Running(outwards > 0 ? Side.Above : Side.Below, [At(before, marks), .. plan.Stands.Where(stand => stand.RopeNumber > 0).Select(stand => At(stand.Along, marks)), At(length + back, marks)], sheet.Tape);
        figure.SurfaceCallout(At(length * 0.62, rollFrom + (RollWide * outwards / 2)), say.Say("roof film, rolled out"), Angle.FromDegrees(40 * outwards));
        figure.SurfaceCallout(At(length + back + Length.FromFeet(1), -Length.FromFeet(1)), say.Say("stake"), Angle.FromDegrees(-40));
        figure.Label(At(length * 0.06, span * 0.25), say.Say("front"), bold: true);
        figure.Label(At(length * 0.94, span * 0.25), say.Say("back"), bold: true);
        figure.Label(At(length * 0.8, span * 0.92), say.Say("left side"));
        figure.Label(At(length * 0.8, span * 0.08), say.Say("right side"));
        Wind(builder, tunnel, say);
        return builder.Build();
    }

    private static BowStation Middle(Tunnel tunnel) => tunnel.Stations[tunnel.Stations.Length / 2];

    private static void Person(Figure figure, Stand stand, Length at, double away) => figure.On("people").OnPaper((view, pen) =>
    {
        SheetPoint middle = view.At(At(stand.Along, at)).Moved(0, -away * (PersonMm + 0.4));
        pen.Fill(SheetPath.Circle(middle, PersonMm), Ink.Paper).Circle(middle, PersonMm, LineRole.Outline);
        pen.Text(middle.Moved(0, TextMark.LeastCapitalMm / 2), stand.Id, TextAlign.Middle, weight: LetterWeight.Bold, clears: true);
    });

    /// <summary>Arrows along both sides from the middle bow out, and at both ends from the ridge down, each with its number.</summary>
    private static void Order(Figure figure, Tunnel tunnel, FasteningPlan plan)
    {
        Length middle = Middle(tunnel).Along, span = tunnel.Span, inside = span * 0.12, reach = Length.Min(middle, tunnel.Length - middle) * 0.55;
        foreach ((bool left, string name) in ((bool, string)[])[(plan.RollSide.IsLeft, "1"), (!plan.RollSide.IsLeft, "2")])
        {
            Length up = left ? span - inside : inside;
            foreach (double way in (double[])[-1, 1]) Arrow(figure, At(middle + (reach * 0.12 * way), up), At(middle + (reach * way), up));
            figure.On("order").OnPaper((view, pen) =>
            {
                SheetPoint at = view.At(At(middle, up));
                // Beside a rope that runs over the middle bow.
                bool isRoped = plan.Stands.Any(stand => stand.RopeNumber > 0 && Math.Abs(view.At(At(stand.Along, up)).XMm - at.XMm) < 3);
                pen.Text(at.Moved(isRoped ? 4.5 : 0, TextMark.LeastCapitalMm / 2), name, TextAlign.Middle, weight: LetterWeight.Bold, clears: true);
            });
        }
        foreach (EndWall end in tunnel.Ends)
        {
            Length along = end.IsFront ? -FasteningInset : tunnel.Length + FasteningInset;
            foreach (double way in (double[])[-1, 1]) Arrow(figure, At(along, (span / 2) + (span * 0.06 * way)), At(along, (span / 2) + (span * 0.3 * way)));
            figure.On("order").OnPaper((view, pen) => pen.Text(view.At(At(along, span / 2)).Moved(0, TextMark.LeastCapitalMm / 2), "3", TextAlign.Middle, weight: LetterWeight.Bold, clears: true));
        }
    }

    private static readonly Length FasteningInset = Length.FromInches(8);

    private static void Arrow(Figure figure, Geometry.PlanePoint from, Geometry.PlanePoint to) => figure.On("order").OnPaper((view, pen) =>
    {
        SheetPoint start = view.At(from), end = view.At(to);
        pen.Line(start, end, LineRole.Dimension).Fill(NotePlacer.Arrowhead(end, start), Ink.Black);
    });

    /// <summary>Where the wind comes from, in the upper right corner; nothing where the plan does not say.</summary>
    private static void Wind(DrawingBuilder builder, Tunnel tunnel, CrewWords say)
    {
        if (tunnel.Plan is not { CoverDay.WindFrom: { } wind, Site.FrontFaces: { } faces }) return;
        // The paper's left is the way out by the front; bearings go clockwise.
        double from = Math.PI - Angle.FromDegrees(wind.Value.Degrees - faces.Value.Degrees).Radians;
        SheetPoint middle = new(builder.Room.RightMm - 16, builder.Room.TopMm + 12), tail = middle.Away(8, from), tip = middle.Away(-6, from);
        builder.On("wind").Line(tail, tip, LineRole.Cut).Fill(NotePlacer.Arrowhead(tip, tail), Ink.Black);
        builder.Callout(tail, say.Fill("wind from {0}", wind.Text), Angle.FromDegrees(180));
    }

    private static IEnumerable<PlaneCorner> Corners(Length length, Length span, Length front, Length back)
    {
        foreach (Length along in (Length[])[-front - Length.FromFeet(1), length + back + Length.FromFeet(1)])
        {
            yield return new PlaneCorner(along, -Length.FromFeet(1));
            yield return new PlaneCorner(along, span + Length.FromFeet(1));
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private readonly record struct PlaneCorner(Length Along, Length Across);
}
