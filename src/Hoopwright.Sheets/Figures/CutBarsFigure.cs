using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Cut lists as bars to scale, longest first, with the number that is written on each piece.</summary>
internal static class CutBarsFigure
{
    private const double PitchMm = 12.5, BarMm = 6.4, LabelMm = 46;

    /// <summary>Sheets of bars; each sheet is of one item, and an item with many patterns takes several.</summary>
    public static ImmutableArray<(string Name, Func<string, Drawing> Draw)> Sheets(CutSheets cuts, FigureSheet sheet)
    {
        int perSheet = Math.Max(1, (int)((sheet.HeightMm - 34) / PitchMm));
        var sheets = ImmutableArray.CreateBuilder<(string, Func<string, Drawing>)>();
        foreach (CutSheet item in cuts.Sheets)
        {
            CutSheetPattern[][] pages = [.. item.Patterns.Chunk(perSheet)];
            for (int page = 0; page < pages.Length; page++)
            {
                string title = pages.Length == 1 ? $"Cuts: {item.Name}" : string.Create(CultureInfo.InvariantCulture, $"Cuts: {item.Name}, {page + 1} of {pages.Length}");
                CutSheetPattern[] rows = pages[page];
                sheets.Add((title, number => Draw(title, item, rows, sheet, number)));
            }
        }
        return sheets.ToImmutable();
    }

    private static Drawing Draw(string title, CutSheet item, CutSheetPattern[] rows, FigureSheet sheet, string number)
    {
        string proof = item.Proven ? "proven least cost" : $"at most {item.Gap.Percent.ToString("0.#", CultureInfo.InvariantCulture)} % over the least possible";
        if (item.Cost is null) proof = item.Proven ? "proven least length, no price known" : "least length found, no price known";
        DrawingBuilder builder = sheet.Start($"{title} ({proof})", $"Bars of {item.Name} and the pieces cut from them.", number);
        SheetBox room = builder.Room.Inset(LabelMm, 2, 4, 2);
        Length longest = item.Bars.Max(bar => bar.Stock);
        DrawingScale scale = DrawingScale.ToFit(longest, Length.Zero, room.WidthMm, room.HeightMm, sheet.Units);
        Length pitch = Length.FromMillimetres(PitchMm * scale.Denominator), high = Length.FromMillimetres(BarMm * scale.Denominator);
        Figure figure = builder.Figure(At(Length.Zero, -pitch * rows.Length), At(longest, Length.Zero), sheet.Units, room);
        for (int row = 0; row < rows.Length; row++) Row(figure, rows[row].First, rows[row].Times, -pitch * row, high, sheet, item);
        return builder.Build();
    }

    private static void Row(Figure figure, CutBar bar, int times, Length top, Length high, FigureSheet sheet, CutSheet item)
    {
        string label = string.Create(CultureInfo.InvariantCulture, $"{times} × {sheet.Tape(bar.Stock)}{(bar.OnHand ? " on hand" : "")}");
        figure.On("labels").OnPaper((view, pen) => pen.Text(view.At(At(Length.Zero, top)).Moved(-2, BarMm * 0.68), label, TextAlign.End));
        figure.On("bars").Rectangle(At(Length.Zero, top), At(bar.Stock, top - high), LineRole.Outline);
        Length from = item.Trim;
        foreach (CutBarPiece piece in bar.Pieces)
        {
            ModelPath outline = ModelPath.Rectangle(At(from, top), At(from + piece.Length, top - high));
            figure.On("pieces").Fill(outline, Ink.LumberTint).Path(outline, LineRole.Outline);
            Length middle = from + (piece.Length / 2);
            // Bars cut alike carry the numbers of the first; the table has them all.
            string name = piece.Number;
            Write(figure, middle, piece.Length, top, [$"{name}: {sheet.Tape(piece.Length)}", sheet.Tape(piece.Length), name]);
            from = from + piece.Length + item.Kerf;
        }
        if (bar.Leftover.Metres > 0.02) Write(figure, bar.Stock - (bar.Leftover / 2), bar.Leftover, top, [$"{(bar.LeftoverUseful ? "keep " : "left ")}{sheet.Tape(bar.Leftover)}", sheet.Tape(bar.Leftover)]);
    }

    private static void Write(Figure figure, Length middle, Length width, Length top, string[] texts) => figure.On("texts").OnPaper((view, pen) =>
    {
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), roomMm = view.PaperMm(width) - 1.6;
        string? fits = Array.Find(texts, text => Typeface.Of(LetterWeight.Regular).WidthMm(TapeFractions.Set(text), emMm) <= roomMm);
        if (fits is not null) pen.Text(view.At(At(middle, top)).Moved(0, (BarMm / 2) + 1.25), fits, TextAlign.Middle);
    });
}
