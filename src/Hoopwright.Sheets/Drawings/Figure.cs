using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Drawings;

/// <summary>
/// One thing drawn to scale on a sheet, in its own measures. It takes the largest standard scale at which it and its rows
/// of dimensions fit their room. Dimensions, callouts and labels find their own places when the sheet is built.
/// </summary>
public sealed class Figure
{
    private readonly List<Action<ModelView, List<Mark>>> strokes = [];
    private readonly List<RowRequest> rows = [];
    private readonly List<Action<ModelView, FigureNotes>> notes = [];
    private readonly List<PlanePoint> targets = [];
    private readonly PlanePoint low, high;
    private readonly SheetBox room;
    private readonly UnitSystem units;
    private readonly double spareMm;

    internal Figure(PlanePoint low, PlanePoint high, SheetBox room, UnitSystem units, double spareMm) =>
        (this.low, this.high, this.room, this.units, this.spareMm) = (low, high, room, units, spareMm);

    /// <summary>A name under the figure, for sheets with more than one; null for none.</summary>
    public string? Caption { get; set; }

    /// <summary>A pen on a layer.</summary>
    public FigurePen On(string layer) => new(layer, strokes);

    /// <summary>A chain of dimensions between neighbouring points, in order along a side. Runs of equal narrow gaps are gathered as n × gap.</summary>
    public Figure Chain(Side side, IEnumerable<PlanePoint> points, Func<Length, string> write) => Row(side, [.. points], write, false);

    /// <summary>A chain with texts of its own, one per gap; an empty text leaves its gap unwritten.</summary>
    public Figure Chain(Side side, IEnumerable<PlanePoint> points, IEnumerable<string> texts)
    {
        rows.Add(new RowRequest(side, [.. points], [.. texts], false, null));
        return this;
    }

    /// <summary>One dimension from one point to another, on a side.</summary>
    public Figure Overall(Side side, PlanePoint from, PlanePoint to, Func<Length, string> write) => Row(side, [from, to], write, false);

    /// <summary>Running marks: each point's distance from the first, as a tape laid along the side reads it.</summary>
    public Figure Running(Side side, IEnumerable<PlanePoint> points, Func<Length, string> write) => Row(side, [.. points], write, true);

    /// <summary>Texts of their own, turned, each beside its point; the points after the first. For heights and names of what stands in a row.</summary>
    public Figure Marks(Side side, IEnumerable<PlanePoint> points, IEnumerable<string> texts)
    {
        rows.Add(new RowRequest(side, [.. points], [.. texts], true, null) { IsPlain = true });
        return this;
    }

    /// <summary>A dimension along a slanting line, beside it; a positive offset lies to the left of the way from one point to the other.</summary>
    public Figure Aligned(PlanePoint from, PlanePoint to, string text, double offsetMm = 8)
    {
        notes.Add((view, placer) => placer.Aligned(view.At(from), view.At(to), text, offsetMm));
        return this;
    }

    /// <summary>A text along a line that is drawn already, such as a diagonal: beside it and clear of others.</summary>
    public Figure Along(PlanePoint from, PlanePoint to, string text)
    {
        notes.Add((view, placer) => placer.Along(view.At(from), view.At(to), text));
        return this;
    }

    /// <summary>The radius of an arc, its arrow on the arc at a point and pointing from the centre.</summary>
    public Figure Radius(PlanePoint centre, PlanePoint onArc, string text)
    {
        targets.Add(onArc);
        notes.Add((view, placer) => placer.Radius(view.At(centre), view.At(onArc), text));
        return this;
    }

    /// <summary>The angle between two directions from a corner, counted anticlockwise.</summary>
    public Figure AngleAt(PlanePoint corner, Angle from, Angle sweep, string text)
    {
        notes.Add((view, placer) => placer.AngleAt(view.At(corner), from.Radians, sweep.Radians, text));
        return this;
    }

    /// <summary>A note with a leader to an edge; \n parts its lines. Directions, anticlockwise from the right, say where to look first.</summary>
    public Figure Callout(PlanePoint target, string text, params ImmutableArray<Angle> towards) => Note(target, text, NoteKind.Arrow, towards, false);

    /// <summary>A note with a leader to a surface.</summary>
    public Figure SurfaceCallout(PlanePoint target, string text, params ImmutableArray<Angle> towards) => Note(target, text, NoteKind.Dot, towards, false);

    /// <summary>A name near a point, such as of a post or a piece.</summary>
    public Figure Label(PlanePoint near, string text, bool bold = false, params ImmutableArray<Angle> towards) =>
        Note(near, text, NoteKind.Label, towards, bold);

    private Figure Note(PlanePoint target, string text, NoteKind kind, ImmutableArray<Angle> towards, bool bold)
    {
        ImmutableArray<double> directions = towards.IsDefaultOrEmpty ? [Math.PI / 4] : [.. towards.Select(angle => angle.Radians)];
        targets.Add(target);
        notes.Add((view, placer) => placer.Note(new NoteRequest(text, view.At(target), kind, directions, bold)));
        return this;
    }

    private Figure Row(Side side, ImmutableArray<PlanePoint> points, Func<Length, string> write, bool isRunning)
    {
        Length Between(int from, int to) => side is Side.Above or Side.Below
            ? (points[to].Across - points[from].Across).Abs()
            : (points[to].Up - points[from].Up).Abs();
        ImmutableArray<string> texts =
            [.. Enumerable.Range(1, Math.Max(0, points.Length - 1)).Select(index => write(Between(isRunning ? 0 : index - 1, index)))];
        if (points.Length >= 2)
            rows.Add(new RowRequest(side, points, texts, isRunning, (from, to) => write(Between(from, to))) { AddsUp = AddsUp });
        // Marks of a tape, gap by gap and over all.
        bool AddsUp(int from, int to) => (TapeText.RoundToMark(Between(from, from + 1), units) * (to - from) - TapeText.RoundToMark(Between(from, to), units)).Abs().Millimetres < 1e-6;
        return this;
    }

    /// <summary>What the notes point at.</summary>
    internal IReadOnlyList<PlanePoint> Targets => targets;

    /// <summary>The largest standard scale at which the figure and its rows fit their room; the smallest there is when none does.</summary>
    internal DrawingScale LargestScale()
    {
        SheetBox inner = Inner;
        foreach (DrawingScale scale in DrawingScale.Of(units))
        {
            // A figure that does not even fit without its rows needs none laid to be told so.
            SheetBox bare = Bounds(ModelView.At(scale, low, high, inner));
            if (bare.WidthMm > inner.WidthMm || bare.HeightMm > inner.HeightMm) continue;
            (_, SheetBox box, RowPlacer placed, SheetBox left) = LaidOut(scale);
            if (box.WidthMm <= left.WidthMm && box.HeightMm <= left.HeightMm && room.Holds(WithRows(box, placed))) return scale;
        }

        return DrawingScale.Of(units)[^1];
    }

    /// <summary>Draws at a scale: lines first, then rows, into the marks. The notes come later, when all else is known.</summary>
    internal (ModelView View, IReadOnlyList<Action<ModelView, FigureNotes>> Notes) DrawInto(List<Mark> marks, List<Dimension> dimensions, DrawingScale scale)
    {
        (ModelView view, SheetBox box, RowPlacer placed, _) = LaidOut(scale);
        foreach (Action<ModelView, List<Mark>> stroke in strokes)
            stroke(view, marks);
        marks.AddRange(placed.Marks);
        dimensions.AddRange(placed.Dimensions);
        if (Caption is { } caption)
            new Pen("captions", marks).Text(
                new SheetPoint(box.Middle.XMm, WithRows(box, placed).BottomMm + 7), caption, TextAlign.Middle, 2.8, Fonts.LetterWeight.Bold);
        return (view, notes);
    }

    private SheetBox Inner => room.Inset(spareMm, spareMm, spareMm, spareMm + (Caption is null ? 0 : 9));

    private (ModelView View, SheetBox Box, RowPlacer Rows, SheetBox Left) LaidOut(DrawingScale scale)
    {
        SheetBox inner = Inner;
        ModelView view = ModelView.At(scale, low, high, inner);
        // The rows' depth depends on the scale and the place depends on the depth: lay them once to learn the depth.
        RowPlacer probe = LayRows(view, Bounds(view));
        SheetBox left = inner.Inset(probe.DepthMm(Side.Left), probe.DepthMm(Side.Above), probe.DepthMm(Side.Right), probe.DepthMm(Side.Below));
        view = ModelView.At(scale, low, high, left);
        SheetBox box = Bounds(view);
        return (view, box, LayRows(view, box), left);
    }

    private SheetBox Bounds(ModelView view) => SheetBox.AroundAll([view.At(low), view.At(high)]);

    private RowPlacer LayRows(ModelView view, SheetBox figure)
    {
        RowPlacer placer = new(figure, room);
        foreach (RowRequest row in rows)
            placer.Place(row, view);
        return placer;
    }

    private static SheetBox WithRows(SheetBox box, RowPlacer rows) => box.Inset(
        -rows.DepthMm(Side.Left), -rows.DepthMm(Side.Above), -rows.DepthMm(Side.Right), -rows.DepthMm(Side.Below));
}
