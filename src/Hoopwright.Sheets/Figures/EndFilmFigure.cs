using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Words;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>An end with the film on it: in which order it is fastened, from where to where, and where short wires hold it for the time being.</summary>
internal static class EndFilmFigure
{
    public static Drawing Draw(Tunnel tunnel, CoverPlan cover, FasteningPlan plan, EndHold hold, FigureSheet sheet, string number)
    {
        CrewWords say = sheet.Words;
        EndWall end = tunnel.Ends.First(each => each.Name == hold.End);
        DrawingBuilder builder = sheet.Start(say.Say(end.IsFront ? "Front end: film, in this order" : "Back end: film, in this order"), say.Fill("The end wall of {0} with the order in which its film is fastened.", sheet.Project), number);
        BowStation station = end.IsFront ? tunnel.Stations[0] : tunnel.Stations[^1];
        PlanePath film = end.Bow.FilmLine;
        Length span = end.Bow.Span, peak = end.Bow.PeakHeight, pad = Length.FromFeet(1.5);
        Figure figure = builder.Figure(At(-pad, Length.Min(station.GroundLeft, station.GroundRight) - end.Base - Length.FromInches(8)), At(span + pad, peak + pad), sheet.Units, builder.Room, spareMm: 16);
        GroundMarks.Ground(figure, -pad, station.GroundLeft - end.Base, span + pad, station.GroundRight - end.Base, Length.FromInches(5));
        figure.On("film").Fill(FigureSheet.Trace(film), Ink.FilmTint);
        foreach (EndPost post in end.Posts)
            figure.On("posts").Rectangle(At(post.Centre - (post.Width / 2), post.Ground), At(post.Centre + (post.Width / 2), Length.Min(post.TopLeft, post.TopRight)), LineRole.Dimension, Ink.Lumber);
        figure.On("bow").Path(FigureSheet.Trace(film), LineRole.Outline);

        int step = 0;
        ImmutableArray<FasteningStep> steps = [.. plan.Steps.Where(each => each.Id.StartsWith(end.Name + "-", StringComparison.Ordinal) && each.Part == CoverPart.Ends)];
        foreach (FasteningStep each in steps)
        {
            step++;
            string name = step.ToString(CultureInfo.InvariantCulture), title = $"{name}  {say.Fill(each.Title.Pattern, [.. each.Title.Values.Select(say.Say)])}";
            switch (each.Id[(end.Name.Length + 1)..])
            {
                case "hang":
                    figure.Callout(At(span / 2, peak), title, Angle.FromDegrees(60), Angle.FromDegrees(120));
                    break;
                case "foot":
                    Foot(figure, end, title, span);
                    break;
                case "temporary":
                    foreach (Length at in hold.Temporary) Tick(figure, film, at);
                    Down(figure, film, hold);
                    // Callouts of both halves in turn, so that they do not crowd.
                    Length named = hold.Temporary[Math.Min(1, hold.Temporary.Length - 1)];
                    figure.Callout(film.PointAt(named), title, Angle.FromDegrees(150));
                    break;
                case "bow" or "clamp":
                    Down(figure, film, hold);
                    figure.Callout(film.PointAt(hold.From + ((hold.To - hold.From) * 0.3)), title, Angle.FromDegrees(150));
                    break;
                case "legs":
                    // On a fixed side the fastening over the ridge goes down to the baseboard, and no leg is left.
                    bool left = hold.From > end.BaseboardHeight * 1.5, right = film.Length - hold.To > end.BaseboardHeight * 1.5;
                    if (right) figure.On("order").Path(ModelPath.Through(film.PointAt(hold.To), film.PointAt(film.Length - (end.BaseboardHeight * 0.8))), LineRole.Cut, Ink.Brick);
                    if (left) figure.On("order").Path(ModelPath.Through(film.PointAt(hold.From), film.PointAt(end.BaseboardHeight * 0.8)), LineRole.Cut, Ink.Brick);
                    figure.Callout(film.PointAt(right ? (hold.To + film.Length) / 2 : hold.From / 2), title, Angle.FromDegrees(right ? 20 : 160));
                    break;
                case "doors":
                    foreach (DoorOpening door in end.Doors)
                    {
                        ModelPath around = ModelPath.Through(At(door.RoughLeft, Length.Zero), At(door.RoughLeft, door.FrameTop), At(door.RoughRight, door.FrameTop), At(door.RoughRight, Length.Zero));
                        figure.On("order").Path(around, LineRole.Cut, Ink.Brick);
                    }
                    figure.Callout(At(end.Doors[0].RoughLeft, end.Doors[0].FrameTop * 0.55), title, Angle.FromDegrees(25), Angle.FromDegrees(-25));
                    break;
            }
        }
        if (cover.Order == CoverOrder.EndsFirst)
            figure.Callout(film.PointAt(hold.From + ((hold.To - hold.From) * 0.72)), $"{(step + 1).ToString(CultureInfo.InvariantCulture)}  {say.Say("roof film over it, from the ridge down")}", Angle.FromDegrees(30));
        return builder.Build();
    }

    /// <summary>The bottom batten in its stretches, with arrows from the middle of each out.</summary>
    private static void Foot(Figure figure, EndWall end, string title, Length span)
    {
        Length up = end.BaseboardHeight / 2;
        foreach (EndBoard board in end.Baseboards)
            figure.On("boards").Rectangle(At(board.From, Length.Zero), At(board.To, end.BaseboardHeight), LineRole.Dimension, Ink.Lumber);
        foreach (IGrouping<int, EndBoard> stretch in end.Baseboards.GroupBy(board => end.Doors.Count(door => door.Centre < board.From)))
        {
            Length from = stretch.Min(board => board.From), to = stretch.Max(board => board.To), middle = (from + to) / 2;
            figure.On("order").Line(At(from, up), At(to, up), LineRole.Cut, Ink.Brick);
            foreach (Length tip in (Length[])[from, to]) Head(figure, At(middle, up), At(tip, up));
        }
        Length at = end.Baseboards.IsEmpty ? span / 4 : (end.Baseboards[0].From + (end.Baseboards[0].To * 3)) / 4;
        figure.Callout(At(at, up), title, Angle.FromDegrees(250), Angle.FromDegrees(200));
    }

    /// <summary>Arrows inside the bow from the ridge down to both sides.</summary>
    private static void Down(Figure figure, PlanePath film, EndHold hold)
    {
        // Where one side is held at its hip board and the other at the ground, the ridge is not the middle of what is held.
        Length ridge = film.Length / 2;
        foreach (Length end in (Length[])[hold.From, hold.To])
        {
            PlanePoint[] line = [.. Enumerable.Range(0, 13).Select(part => Inside(film, ridge + ((end - ridge) * (0.05 + (0.07 * part)))))];
            figure.On("order").Path(ModelPath.Through(line), LineRole.Dimension);
            Head(figure, line[^2], line[^1]);
        }
    }

    private static PlanePoint Inside(PlanePath film, Length at)
    {
        PlanePoint on = film.PointAt(at);
        double inward = film.DirectionAt(at).Radians - (Math.PI / 2);
        Length off = Length.FromInches(9);
        return At(on.Across + (off * Math.Cos(inward)), on.Up + (off * Math.Sin(inward)));
    }

    private static void Tick(Figure figure, PlanePath film, Length at) => figure.On("temporary").OnPaper((view, pen) =>
    {
        SheetPoint on = view.At(film.PointAt(at));
        double along = film.DirectionAt(at).Radians;
        pen.Line(on.Away(-2.2, along), on.Away(2.2, along), LineRole.Cut, Ink.Brick).Fill(SheetPath.Circle(on, 0.9), Ink.Brick);
    });

    private static void Head(Figure figure, PlanePoint from, PlanePoint to) =>
        figure.On("order").OnPaper((view, pen) => pen.Fill(NotePlacer.Arrowhead(view.At(to), view.At(from)), Ink.Black));
}
