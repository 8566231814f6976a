using System.Globalization;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Draws the frame and the title strip: scale bar, north arrow, names, sheet and date.</summary>
internal static class TitleStrip
{
    internal const double HeightMm = 19;
    private const string Layer = "title";
    private static readonly double SmallEmMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
    private const double BarCellMm = 74, NorthCellMm = 18, SheetCellMm = 42;

    internal static void Draw(List<Mark> marks, SheetBox frame, TitleBlock block, string title, DrawingScale? scale)
    {
        Pen pen = new(Layer, marks);
        SheetBox strip = frame with { TopMm = frame.BottomMm - HeightMm };
        double barEnd = strip.LeftMm + BarCellMm, northEnd = block.North is null ? barEnd : barEnd + NorthCellMm, sheetStart = strip.RightMm - SheetCellMm;
        pen.Path(SheetPath.Rectangle(frame), LineRole.Cut).Line(new(strip.LeftMm, strip.TopMm), new(strip.RightMm, strip.TopMm), LineRole.Cut);
        foreach (double x in ((double[])[barEnd, northEnd, sheetStart]).Distinct())
            pen.Line(new(x, strip.TopMm), new(x, strip.BottomMm), LineRole.Dimension);

        if (scale is not null)
            ScaleBar(pen, scale, block, new SheetBox(strip.LeftMm, strip.TopMm, barEnd, strip.BottomMm));
        else
            pen.Text(new(strip.LeftMm + 4, strip.Middle.YMm + 1.2), block.Words.Say("Not to scale"));
        if (block.North is { } north)
            NorthArrow(pen, north, new SheetPoint((barEnd + northEnd) / 2, strip.Middle.YMm));

        double middleMm = sheetStart - northEnd - 6;
        pen.Text(new(northEnd + 3, strip.TopMm + 7.6), TextSetter.Shortened(title, middleMm, Typeface.EmForCapitalsMm(3.4), LetterWeight.Bold), capitalMm: 3.4, weight: LetterWeight.Bold);
        pen.Text(new(northEnd + 3, strip.TopMm + 14.6), TextSetter.Shortened(block.Project, middleMm, SmallEmMm, LetterWeight.Regular));
        pen.Text(new(sheetStart + 3, strip.TopMm + 7.6), TextSetter.Shortened(block.Words.Fill("Sheet {0}", block.Sheet), SheetCellMm - 6, Typeface.EmForCapitalsMm(3), LetterWeight.Bold), capitalMm: 3, weight: LetterWeight.Bold);
        pen.Text(new(sheetStart + 3, strip.TopMm + 14.6), TextSetter.Shortened(block.Date, SheetCellMm - 6, SmallEmMm, LetterWeight.Regular));
    }

    private static void ScaleBar(Pen pen, DrawingScale scale, TitleBlock block, SheetBox cell)
    {
        UnitSystem units = block.Units;
        const int Parts = 4;
        const double RoomMm = 46;
        (Length step, string name) = units switch
        {
            UnitSystem.UsCustomary => Step([1 / 12.0, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200], Length.FromFeet, "ft"),
            UnitSystem.Metric => Step([0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50], Length.FromMetres, "m"),
        };
        // Parts of a foot are told in inches, which a tape has.
        bool isInches = units == UnitSystem.UsCustomary && step.Feet < 0.2;
        if (isInches) name = "in";
        double stepMm = scale.PaperMm(step), left = cell.LeftMm + 5, top = cell.TopMm + 8.2, per = isInches ? step.Inches : units == UnitSystem.UsCustomary ? step.Feet : step.Metres;
        pen.Text(new(left, cell.BottomMm - 2.6), block.Words.Fill("Scale {0}", block.Words.Say(scale.Name)));
        for (int part = 0; part < Parts; part++)
        {
            SheetBox piece = new(left + (part * stepMm), top, left + ((part + 1) * stepMm), top + 1.6);
            if (part % 2 == 0)
                pen.Fill(SheetPath.Rectangle(piece), Ink.Black);
            pen.Path(SheetPath.Rectangle(piece), LineRole.Dimension);
        }

        foreach (int mark in (int[])[0, 2, 4])
        {
            string text = (mark * per).ToString("0.###", CultureInfo.InvariantCulture) + (mark == Parts ? " " + name : "");
            pen.Text(new(left + (mark * stepMm) - (mark == 0 ? 0.9 : 0), top - 1.6), text, mark == Parts ? TextAlign.Start : mark == 0 ? TextAlign.Start : TextAlign.Middle);
        }

        (Length, string) Step(double[] steps, Func<double, Length> of, string unit) =>
            (of(steps.LastOrDefault(size => Parts * scale.PaperMm(of(size)) <= RoomMm, steps[0])), unit);
    }

    private static void NorthArrow(Pen pen, Angle north, SheetPoint centre)
    {
        double up = (Math.PI / 2) + north.Radians;
        SheetPoint tip = centre.Away(6.2, up), tail = centre.Away(-4, up);
        SheetPoint left = centre.Away(-4, up).Away(2.6, up + (Math.PI / 2)), right = centre.Away(-4, up).Away(2.6, up - (Math.PI / 2)), notch = centre.Away(-2.2, up);
        pen.Fill(SheetPath.Around(tip, left, notch), Ink.Black).Path(SheetPath.Around(tip, left, notch, right), LineRole.Dimension);
        SheetPoint letter = tail.Away(-1.9, up);
        pen.Text(letter.Moved(0, 1.25), "N", TextAlign.Middle, weight: LetterWeight.Bold);
    }
}
