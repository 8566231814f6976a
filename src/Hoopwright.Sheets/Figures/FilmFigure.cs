using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts.Film;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Rolls of film unrolled, with the running marks at which they are cut.</summary>
internal static class FilmFigure
{
    /// <summary>Rolls on one sheet; more would make them too small to read.</summary>
    private const int PerSheet = 2;

    private const double ListMm = 72;

    public static ImmutableArray<Func<string, Drawing>> Sheets(FilmCutPlan film, FigureSheet sheet) =>
    [
        .. film.Rolls.Chunk(PerSheet).Select((rolls, index) => (Func<string, Drawing>)(number => Draw(rolls, index * PerSheet, film.Rolls.Length, sheet, number))),
    ];

    private static Drawing Draw(CutRoll[] rolls, int before, int all, FigureSheet sheet, string number)
    {
        string title = sheet.Words.Say(all == 1 ? "Film cut plan" : FormattableString.Invariant($"Film cut plan, {(rolls.Length == 1 ? $"roll {before + 1}" : $"rolls {before + 1} to {before + rolls.Length}")} of {all}"));
        DrawingBuilder builder = sheet.Start(title, sheet.Words.Say("Film rolled out, with running marks from its start and the piece between each two marks."), number);
        double stepMm = builder.Room.HeightMm / rolls.Length;
        for (int index = 0; index < rolls.Length; index++)
        {
            SheetBox room = new(builder.Room.LeftMm, builder.Room.TopMm + (index * stepMm), builder.Room.RightMm, builder.Room.TopMm + ((index + 1) * stepMm));
            Roll(builder, room, rolls[index], before + index + 1, sheet);
        }
        return builder.Build();
    }

    private static void Roll(DrawingBuilder builder, SheetBox room, CutRoll roll, int number, FigureSheet sheet)
    {
        Length width = roll.Offer.Width, length = roll.Offer.Length;
        // The list of pieces has a column of its own, so that no name has to fit into a narrow piece.
        SheetBox drawn = room with { RightMm = room.RightMm - ListMm };
        Figure figure = builder.Figure(At(Length.Zero, Length.Zero), At(length, width), sheet.Units, drawn, spareMm: 4);
        figure.Caption = $"{sheet.Words.Say(FormattableString.Invariant($"Roll {number}"))}: {sheet.Tape(width)} × {sheet.Tape(length)}{(roll.Offer.OnHand ? ", " + sheet.Words.Say("on hand") : "")}";
        figure.On("roll").Rectangle(At(Length.Zero, Length.Zero), At(length, width), LineRole.Outline);
        List<string> lines = [];
        int piece = 0;
        foreach (FilmLevel level in roll.Levels)
        {
            foreach (PlacedPiece placed in level.Pieces)
            {
                piece++;
                ModelPath outline = ModelPath.Rectangle(At(level.From, placed.Offset), At(level.From + placed.Along, placed.Offset + placed.Across));
                figure.On("pieces").Fill(outline, Ink.FilmTint).Path(outline, LineRole.Dimension, Ink.Film);
                string name = piece.ToString(CultureInfo.InvariantCulture);
                figure.On("numbers").OnPaper((view, pen) =>
                {
                    // A number that would run out of its piece is left to the list, which is in the order of the pieces.
                    double nameEmMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), halfCapitalMm = TextMark.LeastCapitalMm / 2;
                    double widthMm = Typeface.Of(LetterWeight.Bold).WidthMm(name, nameEmMm);
                    double heightMm = 2 * Math.Max((Typeface.RiseEm * nameEmMm) - halfCapitalMm, (Typeface.FallEm * nameEmMm) + halfCapitalMm);
                    if (view.PaperMm(placed.Along) < widthMm + 1 || view.PaperMm(placed.Across) < heightMm + 0.2) return;
                    SheetPoint middle = view.At(At(level.From + (placed.Along / 2), placed.Offset + (placed.Across / 2)));
                    pen.Text(middle.Moved(0, TextMark.LeastCapitalMm / 2), name, TextAlign.Middle, weight: LetterWeight.Bold);
                });
                lines.Add($"{name}  {sheet.Words.Say(placed.Label)}");
                lines.Add($"    {sheet.Tape(placed.Along)} × {(placed.Across >= width ? sheet.Words.Say("full width") : sheet.Tape(TapeText.RoundUpForOpening(placed.Across, sheet.Units)))}");
            }
            figure.On("cuts").Line(At(level.To, Length.Zero), At(level.To, width), LineRole.Cut, Ink.Brick);
        }
        if (roll.Remainder > Length.FromInches(1)) lines.Add(sheet.Words.Fill("left on the roll {0}", sheet.Tape(roll.Remainder)));
        // On the cut plan itself, since a piece that has left the roll no longer shows which face is treated.
        lines.Add(sheet.Words.Say("on every piece: 'this side in', on the treated face"));
        figure.Running(Side.Below, [At(Length.Zero, Length.Zero), .. roll.Marks.Select(mark => At(mark, Length.Zero))], sheet.Tape);
        figure.Overall(Side.Left, At(Length.Zero, Length.Zero), At(Length.Zero, width), sheet.Tape);

        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
        string[] set = [.. lines.SelectMany(line => TextSetter.Lines(line, ListMm - 4, emMm, LetterWeight.Regular))];
        double leadMm = Math.Min(4.6, (room.HeightMm - 4) / Math.Max(1, set.Length));
        for (int line = 0; line < set.Length; line++)
            builder.On("list").Text(new SheetPoint(room.RightMm - ListMm + 4, room.TopMm + 4 + (line * leadMm)), set[line]);
    }
}
