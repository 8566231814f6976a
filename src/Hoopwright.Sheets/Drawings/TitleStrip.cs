using System.Globalization;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Draws the frame and the title strip: scale bar, north arrow, names, sheet and date.</summary>
internal static class TitleStrip
{
    private const string Layer = "title";
    private static readonly double SmallEmMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
    private const double BarCellMm = 74, NorthCellMm = 18, SheetCellMm = 42;

    // Upright sheets have a row of its own for the check of the print.
    private const double CellsMm = 20, CheckRowMm = 9, WideMm = 210;

    /// <summary>How high the strip is on a sheet with a frame of that width, mm.</summary>
    internal static double HeightMm(double frameWidthMm) => frameWidthMm < WideMm ? CellsMm + CheckRowMm : CellsMm;

    internal static void Draw(List<Mark> marks, SheetBox frame, TitleBlock block, string title, DrawingScale? scale)
    {
        Pen pen = new(Layer, marks);
        SheetBox strip = frame with { TopMm = frame.BottomMm - HeightMm(frame.WidthMm) };
        if (frame.WidthMm < WideMm)
        {
            SheetBox row = strip with { TopMm = strip.TopMm + CellsMm };
            strip = strip with { BottomMm = row.TopMm };
            pen.Line(new(row.LeftMm, row.TopMm), new(row.RightMm, row.TopMm), LineRole.Dimension);
            PrintCheck(pen, block, new SheetPoint(row.LeftMm + 5, row.BottomMm - 2.4), row.WidthMm - 10);
        }
        double barEnd = strip.LeftMm + BarCellMm, northEnd = block.North is null ? barEnd : barEnd + NorthCellMm, sheetStart = strip.RightMm - SheetCellMm;
        pen.Path(SheetPath.Rectangle(frame), LineRole.Cut).Line(new(strip.LeftMm, strip.TopMm), new(strip.RightMm, strip.TopMm), LineRole.Cut);
        foreach (double x in ((double[])[barEnd, northEnd, sheetStart]).Distinct())
            pen.Line(new(x, strip.TopMm), new(x, strip.BottomMm), LineRole.Dimension);

        pen.Text(new(strip.LeftMm + 5, strip.BottomMm - 2.4), block.Words.Say("Do not scale off a screen"));
        if (scale is not null)
            ScaleBar(pen, scale, block, new SheetBox(strip.LeftMm, strip.TopMm, barEnd, strip.BottomMm));
        else
            pen.Text(new(strip.LeftMm + 5, strip.TopMm + 8), block.Words.Say("Not to scale"));
        if (block.North is { } north)
            NorthArrow(pen, north, new SheetPoint((barEnd + northEnd) / 2, strip.Middle.YMm));

        double middleMm = sheetStart - northEnd - 6;
        pen.Text(new(northEnd + 3, strip.TopMm + 6.4), TextSetter.Shortened(title, middleMm, Typeface.EmForCapitalsMm(3.4), LetterWeight.Bold), capitalMm: 3.4, weight: LetterWeight.Bold);
        pen.Text(new(northEnd + 3, strip.TopMm + 11.8), TextSetter.Shortened(block.Project, middleMm, SmallEmMm, LetterWeight.Regular));
        if (frame.WidthMm >= WideMm) PrintCheck(pen, block, new SheetPoint(northEnd + 3, strip.BottomMm - 2.4), middleMm);
        CrewWords words = block.Words;
        string units = words.Say(block.Units switch { UnitSystem.UsCustomary => "ft and in", UnitSystem.Metric => "mm" });
        pen.Text(new(sheetStart + 3, strip.TopMm + 6.4), TextSetter.Shortened(words.Fill("Sheet {0}", block.Sheet), SheetCellMm - 6, Typeface.EmForCapitalsMm(3), LetterWeight.Bold), capitalMm: 3, weight: LetterWeight.Bold);
        string[] lines = [block.Revision is { Length: > 0 } revision ? $"{block.Date}, {words.Fill("rev. {0}", revision)}" : block.Date, block.Paper is { } paper ? $"{words.Say(paper)}, {units}" : units];
        for (int line = 0; line < lines.Length; line++)
            pen.Text(new(sheetStart + 3, strip.TopMm + 11.8 + (line * 5.4)), TextSetter.Shortened(lines[line], SheetCellMm - 6, SmallEmMm, LetterWeight.Regular));
    }

    /// <summary>A line of a length that any tape has, to see whether the sheet was printed at its size.</summary>
    private static void PrintCheck(Pen pen, TitleBlock block, SheetPoint from, double roomMm)
    {
        (double lengthMm, string says) = (block.Units, roomMm) switch
        {
            (UnitSystem.UsCustomary, >= 118) => (101.6, "4 in"),
            (UnitSystem.UsCustomary, _) => (50.8, "2 in"),
            (UnitSystem.Metric, >= 118) => (100, "100 mm"),
            (UnitSystem.Metric, _) => (50, "50 mm"),
        };
        SheetPoint to = from.Moved(lengthMm, 0);
        pen.Line(from, to, LineRole.Dimension);
        foreach (SheetPoint end in (ReadOnlySpan<SheetPoint>)[from, to]) pen.Line(end.Moved(0, -2), end.Moved(0, 1.2), LineRole.Dimension);
        pen.Text(to.Moved(2, 0.9), says);
        string note = block.Words.Fill("must measure {0}", says);
        pen.Text(from.Moved(2, -1), TextSetter.Shortened(note, lengthMm - 4, SmallEmMm, LetterWeight.Regular));
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
        double stepMm = scale.PaperMm(step), left = cell.LeftMm + 5, top = cell.TopMm + 6.6, per = isInches ? step.Inches : units == UnitSystem.UsCustomary ? step.Feet : step.Metres;
        pen.Text(new(left, cell.TopMm + 12.4), block.Words.Fill("Scale {0}", block.Words.Say(scale.Name)));
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
