using CsCheck;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Tests.Drawings;

public sealed class CollisionTests
{
    [Fact]
    public void Two_texts_on_each_other_are_found() =>
        Assert.Equal([CollisionKind.TextOnText], Kinds(pen => pen.Text(new(20, 20), "post").Text(new(22, 21), "door")));

    [Fact]
    public void Two_texts_side_by_side_are_not() =>
        Assert.Equal([], Kinds(pen => pen.Text(new(20, 20), "post", TextAlign.End).Text(new(20, 20), "door")));

    [Fact]
    public void Turned_texts_collide_only_where_their_letters_do()
    {
        Assert.Equal([], Kinds(pen => pen.Text(new(20, 60), "a long slanting text", turn: Angle.FromDegrees(45)).Text(new(26, 66), "beside")));
        Assert.Equal([CollisionKind.TextOnText], Kinds(pen => pen.Text(new(20, 60), "a long slanting text", turn: Angle.FromDegrees(45)).Text(new(24, 54), "upon")));
    }

    [Fact]
    public void A_text_off_the_paper_is_found() => Assert.Equal([CollisionKind.TextOffPaper], Kinds(pen => pen.Text(new(95, 20), "too far")));

    [Fact]
    public void A_text_on_an_edge_is_found_and_one_on_a_thin_line_where_the_line_does_not_stop_short_of_it()
    {
        Assert.Equal([CollisionKind.TextOnOutline], Kinds(pen => pen.Line(new(10, 19), new(60, 19)).Text(new(20, 20), "post")));
        Assert.Equal([CollisionKind.TextOnLine], Kinds(pen => pen.Line(new(10, 19), new(60, 19), LineRole.Dimension).Text(new(20, 20), "post")));
        Assert.Equal([], Kinds(pen => pen.Line(new(10, 19), new(60, 19), LineRole.Dimension).Text(new(20, 20), "post", clears: true)));
        Assert.Equal([], Kinds(pen => pen.Line(new(10, 19), new(60, 19), LineRole.Texture).Text(new(20, 20), "post")));
    }

    [Fact]
    public void Arrowheads_on_each_other_and_on_a_text_are_found()
    {
        SheetPath arrow = NotePlacer.Arrowhead(new(20, 20), new(40, 20)), beside = NotePlacer.Arrowhead(new(20, 22), new(40, 22)), across = NotePlacer.Arrowhead(new(21.4, 19), new(21.4, 40));
        Assert.Equal([], Arrows(pen => pen.Fill(arrow, Ink.Black).Fill(beside, Ink.Black)));
        Assert.Equal([CollisionKind.ArrowOnArrow], Arrows(pen => pen.Fill(arrow, Ink.Black).Fill(across, Ink.Black)));
        Assert.Equal([CollisionKind.ArrowOnText], Arrows(pen => pen.Fill(arrow, Ink.Black).Text(new(18, 21), "post")));

        static CollisionKind[] Arrows(Action<Pen> draw)
        {
            DrawingBuilder sheet = new("Trial", "", 100, 100);
            draw(sheet.On(NotePlacer.Layer));
            return [.. Collisions.In(sheet.Build()).Select(collision => collision.Kind)];
        }
    }

    [Fact]
    public void A_text_on_an_arc_is_found_where_the_arc_runs_and_not_on_its_chord()
    {
        SheetPath arc = SheetPath.Arc(new(50, 50), 30, Angle.Zero, Angle.FromDegrees(180));
        Assert.Equal([CollisionKind.TextOnOutline], Kinds(pen => pen.Path(arc).Text(new(50, 21), "top", TextAlign.Middle)));
        Assert.Equal([], Kinds(pen => pen.Path(arc).Text(new(50, 51), "chord", TextAlign.Middle)));
    }

    [Fact]
    public void A_line_off_the_paper_is_found() => Assert.Equal([CollisionKind.LineOffPaper], Kinds(pen => pen.Line(new(10, 10), new(110, 10))));

    [Fact]
    public void Boxes_that_share_a_sampled_point_meet() =>
        Gen.Select(Box, Box).Sample((one, other) =>
        {
            bool isShared = Enumerable.Range(0, 400).Any(index => Holds(one, PointOf(other, index)));
            if (isShared) Assert.True(one.Meets(other));
            Assert.Equal(one.Meets(other), other.Meets(one));
        });

    [Fact]
    public void A_line_that_enters_a_box_by_a_sampled_point_cuts_it() =>
        Gen.Select(Box, Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[0, 60]).Sample((box, x1, y1, x2, y2) =>
        {
            SheetPoint from = new(x1, y1), to = new(x2, y2);
            if (Enumerable.Range(0, 500).Any(index => Holds(box.Grown(-1e-6), from.Towards(to, index / 499.0)))) Assert.True(box.IsCutBy(from, to));
        });

    private static readonly Gen<TurnedBox> Box = Gen.Select(Gen.Double[10, 50], Gen.Double[10, 50], Gen.Double[0.5, 12], Gen.Double[0.5, 5], Gen.Double[0, 6.28])
        .Select((x, y, halfWidth, halfHeight, turn) => new TurnedBox(new SheetPoint(x, y), halfWidth, halfHeight, turn));

    private static SheetPoint PointOf(TurnedBox box, int index)
    {
        double along = ((index % 20 / 9.5) - 1) * box.HalfWidthMm * 0.999, across = ((index / 20 / 9.5) - 1) * box.HalfHeightMm * 0.999;
        return box.Middle.Away(along, box.TurnRad).Away(across, box.TurnRad + (Math.PI / 2));
    }

    private static bool Holds(TurnedBox box, SheetPoint point)
    {
        double dx = point.XMm - box.Middle.XMm, dy = box.Middle.YMm - point.YMm;
        double along = (dx * Math.Cos(box.TurnRad)) + (dy * Math.Sin(box.TurnRad)), across = (dy * Math.Cos(box.TurnRad)) - (dx * Math.Sin(box.TurnRad));
        return Math.Abs(along) < box.HalfWidthMm && Math.Abs(across) < box.HalfHeightMm;
    }

    private static CollisionKind[] Kinds(Action<Pen> draw)
    {
        DrawingBuilder sheet = new("Trial", "", 100, 100);
        draw(sheet.On("any"));
        return [.. Collisions.In(sheet.Build()).Select(collision => collision.Kind)];
    }
}
