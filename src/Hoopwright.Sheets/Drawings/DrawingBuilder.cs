using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Drawings;

/// <summary>
/// Makes a sheet. Draw on it with pens (millimetres of paper) or in figures (the thing's own measures, to scale); ask for
/// dimensions, callouts and labels without saying where; <see cref="Build"/> then finds scale and places.
/// </summary>
public sealed class DrawingBuilder
{
    private readonly string title, description;
    private readonly SheetBox paper;
    private readonly TitleBlock? block;
    private readonly List<Mark> marks = [];
    private readonly List<Figure> figures = [];
    private readonly List<NoteRequest> notes = [];

    /// <summary>A new sheet.</summary>
    /// <param name="title">Its name.</param>
    /// <param name="description">One sentence for those who cannot see it.</param>
    /// <param name="widthMm">Width of the paper, mm.</param>
    /// <param name="heightMm">Height of the paper, mm.</param>
    /// <param name="block">The title strip; null for a bare picture without frame.</param>
    public DrawingBuilder(string title, string description, double widthMm, double heightMm, TitleBlock? block = null)
    {
        (this.title, this.description, this.block) = (title, description, block);
        paper = new SheetBox(0, 0, widthMm, heightMm);
        SheetBox frame = Frame;
        Room = block is null ? paper.Inset(1) : frame.Inset(3, 3, 3, TitleStrip.HeightMm(frame.WidthMm) + 3);
    }

    /// <summary>The part of the paper that is free to draw on.</summary>
    public SheetBox Room { get; }

    private SheetBox Frame => paper.Inset(0.25);

    /// <summary>A pen on a layer.</summary>
    public Pen On(string layer) => new(layer, marks);

    /// <summary>A figure to scale between two opposite corners of the thing.</summary>
    /// <param name="low">Lower left of what is drawn.</param>
    /// <param name="high">Upper right of what is drawn.</param>
    /// <param name="units">Whose scales to choose from.</param>
    /// <param name="within">Which part of the paper it may take; the whole room when null.</param>
    /// <param name="spareMm">Room kept free around figure and rows, for callouts, mm.</param>
    public Figure Figure(PlanePoint low, PlanePoint high, UnitSystem units, SheetBox? within = null, double spareMm = 0)
    {
        Figure figure = new(low, high, within ?? Room, units, spareMm);
        figures.Add(figure);
        return figure;
    }

    /// <summary>A note with a leader to a point of the paper.</summary>
    public DrawingBuilder Callout(SheetPoint target, string text, params ImmutableArray<Angle> towards)
    {
        notes.Add(new NoteRequest(text, target, NoteKind.Arrow, towards.IsDefaultOrEmpty ? [Math.PI / 4] : [.. towards.Select(angle => angle.Radians)]));
        return this;
    }

    /// <summary>The finished drawing. Building twice gives the same.</summary>
    public Drawing Build()
    {
        List<Mark> drawn = [.. marks];
        // A sheet has one scale, so that its scale bar is true of everything on it.
        DrawingScale? scale = figures.Count == 0 ? null : figures.Select(figure => figure.LargestScale()).MaxBy(largest => largest.Denominator);
        List<Dimension> dimensions = [];
        List<(ModelView View, IReadOnlyList<Action<ModelView, FigureNotes>> Notes)> placed = [.. figures.Select(figure => figure.DrawInto(drawn, dimensions, scale!))];
        if (block is not null)
            TitleStrip.Draw(drawn, Frame, block, title, scale);

        Taken taken = new(Room);
        foreach (Mark mark in drawn)
            taken.Add(mark);
        foreach ((Figure figure, ModelView view) in figures.Zip(placed.Select(each => each.View)))
        {
            foreach (PlanePoint target in figure.Targets)
                taken.Reserve(view.At(target));
        }

        foreach (NoteRequest note in notes)
            taken.Reserve(note.Target);
        FigureNotes placer = new(taken, drawn, dimensions);
        foreach ((ModelView view, IReadOnlyList<Action<ModelView, FigureNotes>> asked) in placed)
        {
            foreach (Action<ModelView, FigureNotes> note in asked)
                note(view, placer);
        }

        foreach (NoteRequest note in notes)
            placer.Note(note);

        return new Drawing
        {
            Title = title,
            Description = description,
            WidthMm = paper.WidthMm,
            HeightMm = paper.HeightMm,
            // Texts last: where they clear the paper behind them they must clear it of every line.
            Marks = [.. drawn.Where(mark => mark is not TextMark), .. drawn.Where(mark => mark is TextMark)],
            Scale = scale,
            Sheet = block?.Sheet,
            Views = [.. placed.Select(each => each.View)],
            Dimensions = [.. dimensions],
        };
    }
}
