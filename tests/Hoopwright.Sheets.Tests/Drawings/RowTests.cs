using CsCheck;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Tests.Drawings.SampleSheets;

namespace Hoopwright.Sheets.Tests.Drawings;

public sealed class RowTests
{
    private static readonly Gen<double[]> Gaps = Gen.Double[0.02, 9].Array[1, 14];

    [Fact]
    public void Random_chains_and_running_marks_have_no_collisions() =>
        Gen.Select(Gaps, Gaps, Gaps, Gen.Bool, Gen.Enum<Side>()).Sample((below, left, more, isRunning, side) =>
        {
            double wide = below.Sum(), high = left.Sum();
            DrawingBuilder sheet = Sheet();
            Figure figure = sheet.Figure(At(0, 0), At(wide, high), UnitSystem.UsCustomary);
            figure.On("edge").Rectangle(At(0, 0), At(wide, high));
            figure.Chain(Side.Below, Stations(below).Select(x => At(x, 0)), Tape).Overall(Side.Below, At(0, 0), At(wide, 0), Tape);
            figure.Chain(Side.Left, Stations(left).Select(y => At(0, y)), Tape).Overall(Side.Left, At(0, 0), At(0, high), Tape);
            double along = side is Side.Above or Side.Below ? wide : high, sum = more.Sum();
            var points = Stations(more).Select(s => s / sum * along).Select(s => side is Side.Above or Side.Below ? At(s, 0) : At(0, s)).ToList();
            if (isRunning) figure.Running(side, points, Tape);
            else figure.Chain(side, points, Tape);
            NoCollisions(sheet.Build());
        }, iter: 400);

    [Fact]
    public void Random_callouts_and_labels_have_no_collisions() =>
        Gen.Select(Gen.Select(Gen.Double[0, 40], Gen.Double[0, 20], Gen.Int[1, 3], Gen.Bool).Array[1, 14], Gen.Double[0, 6.2]).Sample((notes, towards) =>
        {
            DrawingBuilder sheet = Sheet();
            Figure figure = sheet.Figure(At(0, 0), At(40, 20), UnitSystem.UsCustomary, spareMm: 12);
            figure.On("edge").Rectangle(At(0, 0), At(40, 20)).Line(At(0, 0), At(40, 20));
            figure.Overall(Side.Below, At(0, 0), At(40, 0), Tape).Overall(Side.Left, At(0, 0), At(0, 20), Tape);
            foreach ((double x, double y, int lines, bool isLabel) in notes)
            {
                if (isLabel) figure.Label(At(x, y), "P12");
                else figure.Callout(At(x, y), string.Join('\n', Enumerable.Repeat("post 4x4", lines)), Angle.FromRadians(towards));
            }

            NoCollisions(sheet.Build());
        }, iter: 300);

    [Fact]
    public void A_gap_wide_enough_keeps_its_text_and_a_narrow_one_sends_it_out()
    {
        DrawingBuilder sheet = Sheet();
        Figure figure = sheet.Figure(At(0, 0), At(40, 10), UnitSystem.UsCustomary);
        figure.Chain(Side.Below, [At(0, 0), At(39, 0), At(39.3, 0)], Tape);
        TextMark[] texts = [.. sheet.Build().Marks.OfType<TextMark>().Where(text => text.Layer == "dimensions")];
        Assert.Equal(["39' 0\"", "3\u200A⁵⁄₈\""], texts.Select(text => text.Text));
        Assert.True(texts[1].Anchor.YMm > texts[0].Anchor.YMm + 5);
    }

    [Fact]
    public void Equal_narrow_gaps_are_gathered_with_their_sum()
    {
        DrawingBuilder sheet = Sheet();
        Figure figure = sheet.Figure(At(0, 0), At(40, 10), UnitSystem.UsCustomary);
        figure.Chain(Side.Above, Enumerable.Range(0, 41).Select(x => At(x, 10)), Tape);
        Assert.Equal("40 × 1' 0\" = 40' 0\"", Assert.Single(sheet.Build().Marks.OfType<TextMark>(), text => text.Layer == "dimensions").Text);
    }

    [Fact]
    public void Rows_lie_outside_the_figure()
    {
        Drawing drawing = EndWall(Sheets.Pages.Paper.Letter);
        SheetBox bow = SheetBox.AroundAll(drawing.Marks.OfType<LineMark>().Where(mark => mark.Layer == "bow").SelectMany(mark => mark.Path.Flattened()));
        foreach (TextMark text in drawing.Marks.OfType<TextMark>().Where(mark => mark.Layer == "dimensions" && (mark.Turn.Degrees == 90 || mark.Text.Contains('='))))
            Assert.False(bow.Inset(0.5).Meets(text.Box.Bounds), text.Text);
    }

    [Fact]
    public void Running_marks_are_written_from_the_first_point_and_not_added_up()
    {
        DrawingBuilder sheet = Sheet();
        Figure figure = sheet.Figure(At(0, 0), At(30, 10), UnitSystem.UsCustomary);
        double third = 10.0 / 3;
        figure.Running(Side.Below, Enumerable.Range(0, 10).Select(index => At(index * third, 0)), length => TapeText.FeetAndInches(length, 1));
        Assert.Contains("30' 0\"", sheet.Build().Marks.OfType<TextMark>().Select(text => text.Text));
    }

    private static DrawingBuilder Sheet() => new("Trial", "Random dimensions.", 261.4, 192.9, new TitleBlock("Trial", "1 of 1", "2026-03-01", UnitSystem.UsCustomary));

    private static IEnumerable<double> Stations(double[] gaps)
    {
        double at = 0;
        yield return 0;
        foreach (double gap in gaps) yield return at += gap;
    }

    private static void NoCollisions(Drawing drawing) => Assert.Equal([], Collisions.In(drawing));
}
