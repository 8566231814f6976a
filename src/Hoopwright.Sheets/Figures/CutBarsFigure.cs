using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Cut lists as bars to scale, longest first, with the number that is written on each piece.</summary>
internal static class CutBarsFigure
{
    private const double PitchMm = 12.5, BarMm = 6.4, LabelMm = 46, HeadingLeadMm = 4.6;

    /// <summary>Sheets of bars, item after item; an item with many patterns goes on over several sheets.</summary>
    public static ImmutableArray<(string Name, Func<string, Drawing> Draw)> Sheets(CutSheets cuts, FigureSheet sheet)
    {
        ImmutableArray<CutSheet> sawn = [.. cuts.Sheets.Where(item => item.IsSawn)];
        if (sawn.IsEmpty) return [];
        int perSheet = Math.Max(3, (int)((sheet.HeightMm - 34) / PitchMm));
        List<List<(CutSheet Item, CutBar? First, int Times)>> pages = [[]];
        foreach (CutSheet item in sawn)
        {
            // A heading never stands alone at the foot of a sheet, and a reel of rope would shrink boards beside it to nothing.
            if (pages[^1].Count + 2 > perSheet || (pages[^1].Count > 0 && !AreOfOneScale(Longest(pages[^1]), LongestOf(item)))) pages.Add([]);
            pages[^1].Add((item, null, 0));
            foreach (CutSheetPattern pattern in item.Patterns)
            {
                if (pages[^1].Count == perSheet)
                {
                    pages.Add([]);
                    pages[^1].Add((item, null, 0));
                }
                pages[^1].Add((item, pattern.First, pattern.Times));
            }
        }
        return
        [
            .. pages.Select((rows, index) => (pages.Count == 1 ? "Cut lists" : string.Create(CultureInfo.InvariantCulture, $"Cut lists, {index + 1} of {pages.Count}"),
                (Func<string, Drawing>)(number => Draw(rows, index, pages.Count, Longest(rows), sheet, number)))),
        ];
    }

    private static Length Longest(List<(CutSheet Item, CutBar? First, int Times)> rows) => rows.Max(row => LongestOf(row.Item));

    private static Length LongestOf(CutSheet item) => item.Bars.IsEmpty ? Length.FromFeet(1) : item.Bars.Max(bar => bar.Stock);

    private static bool AreOfOneScale(Length one, Length other) => Length.Max(one, other) <= Length.Min(one, other) * 3.2;

    private static Drawing Draw(List<(CutSheet Item, CutBar? First, int Times)> rows, int index, int all, Length longest, FigureSheet sheet, string number)
    {
        string title = sheet.Words.Say(all == 1 ? "Cut lists" : string.Create(CultureInfo.InvariantCulture, $"Cut lists, {index + 1} of {all}"));
        DrawingBuilder builder = sheet.Start(title, sheet.Words.Say("Bars and the numbered pieces cut from them, to scale."), number);
        SheetBox room = builder.Room.Inset(LabelMm, 2, 4, 2);
        DrawingScale scale = DrawingScale.ToFit(longest, Length.Zero, room.WidthMm, room.HeightMm, sheet.Units);
        Length pitch = Length.FromMillimetres(PitchMm * scale.Denominator), high = Length.FromMillimetres(BarMm * scale.Denominator);
        Figure figure = builder.Figure(At(Length.Zero, -pitch * rows.Count), At(longest, Length.Zero), sheet.Units, room);
        for (int row = 0; row < rows.Count; row++)
        {
            (CutSheet item, CutBar? first, int times) = rows[row];
            Length top = -pitch * row;
            if (first is not null) Row(figure, first, times, top, high, sheet, item);
            else Heading(figure, item, top, builder.Room.WidthMm - 8, sheet.Words);
        }
        return builder.Build();
    }

    /// <summary>The item and what is proven of its cut list, over as many lines as it takes; two have room over the first bar.</summary>
    private static void Heading(Figure figure, CutSheet item, Length top, double widthMm, CrewWords words) => figure.On("headings").OnPaper((view, pen) =>
    {
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
        ImmutableArray<string> lines = TextSetter.Lines($"{PacketTableMaker.NameOf(item, words)}: {words.Say(item.Proof)}", widthMm, emMm, LetterWeight.Bold);
        SheetPoint last = view.At(At(Length.Zero, top)).Moved(0, BarMm * (lines.Length > 1 ? 1.4 : 0.9));
        for (int line = 0; line < lines.Length; line++)
            pen.Text(new SheetPoint(view.At(At(Length.Zero, top)).XMm - LabelMm + 3, last.YMm - ((lines.Length - 1 - line) * HeadingLeadMm)), lines[line], weight: LetterWeight.Bold);
    });

    private static void Row(Figure figure, CutBar bar, int times, Length top, Length high, FigureSheet sheet, CutSheet item)
    {
        string label = string.Create(CultureInfo.InvariantCulture, $"{times} × {sheet.Tape(bar.Stock)}{(bar.OnHand ? " " + sheet.Words.Say("on hand") : "")}");
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
        if (bar.Leftover.Metres > 0.02) Write(figure, bar.Stock - (bar.Leftover / 2), bar.Leftover, top, Left(bar, sheet));
    }

    /// <summary>What to write on what is left, the shorter where the longer has no room: of what is kept that it is kept, of the rest how much it is.</summary>
    internal static string[] Left(CutBar bar, FigureSheet sheet) => bar.LeftoverUseful
        ? [$"{sheet.Words.Say("keep")} {sheet.Tape(bar.Leftover)}", sheet.Words.Say("keep")]
        : [$"{sheet.Words.Say("left")} {sheet.Tape(bar.Leftover)}", sheet.Tape(bar.Leftover)];

    private static void Write(Figure figure, Length middle, Length width, Length top, string[] texts) => figure.On("texts").OnPaper((view, pen) =>
    {
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), roomMm = view.PaperMm(width) - 1.6;
        string? fits = Array.Find(texts, text => Typeface.Of(LetterWeight.Regular).WidthMm(TapeFractions.Set(text), emMm) <= roomMm);
        if (fits is not null) pen.Text(view.At(At(middle, top)).Moved(0, (BarMm / 2) + 1.25), fits, TextAlign.Middle);
    });
}
