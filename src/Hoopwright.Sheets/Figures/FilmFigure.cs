using System.Collections.Immutable;
using Hoopwright.Cuts.Film;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Rolls of film unrolled, with the running marks at which they are cut.</summary>
internal static class FilmFigure
{
    /// <summary>Rolls on one sheet; more would make them too small to read.</summary>
    private const int PerSheet = 2;

    public static ImmutableArray<Func<string, Drawing>> Sheets(FilmCutPlan film, FigureSheet sheet) =>
    [
        .. film.Rolls.Chunk(PerSheet).Select((rolls, index) => (Func<string, Drawing>)(number => Draw(rolls, index * PerSheet, film.Rolls.Length, sheet, number))),
    ];

    private static Drawing Draw(CutRoll[] rolls, int before, int all, FigureSheet sheet, string number)
    {
        string title = all == 1 ? "Film cut plan" : FormattableString.Invariant($"Film cut plan, {(rolls.Length == 1 ? $"roll {before + 1}" : $"rolls {before + 1} to {before + rolls.Length}")} of {all}");
        DrawingBuilder builder = sheet.Start(title, "Film rolled out, with running marks from its start and the piece between each two marks.", number);
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
        Figure figure = builder.Figure(At(Length.Zero, Length.Zero), At(length, width), sheet.Units, room, spareMm: 4);
        figure.Caption = FormattableString.Invariant($"Roll {number}: {sheet.Tape(width)} × {sheet.Tape(length)}{(roll.Offer.OnHand ? ", on hand" : "")}");
        figure.On("roll").Rectangle(At(Length.Zero, Length.Zero), At(length, width), LineRole.Outline);
        foreach (FilmLevel level in roll.Levels)
        {
            foreach (PlacedPiece piece in level.Pieces)
            {
                ModelPath outline = ModelPath.Rectangle(At(level.From, piece.Offset), At(level.From + piece.Along, piece.Offset + piece.Across));
                figure.On("pieces").Fill(outline, Ink.FilmTint).Path(outline, LineRole.Dimension, Ink.Film);
                figure.SurfaceCallout(At(level.From + (piece.Along / 2), piece.Offset + (piece.Across / 2)),
                    $"{piece.Label}\n{sheet.Tape(piece.Along)} × {sheet.Tape(piece.Across)}", Angle.FromDegrees(80), Angle.FromDegrees(100));
            }
            figure.On("cuts").Line(At(level.To, Length.Zero), At(level.To, width), LineRole.Cut, Ink.Brick);
        }
        figure.Running(Side.Below, [At(Length.Zero, Length.Zero), .. roll.Marks.Select(mark => At(mark, Length.Zero))], sheet.Tape);
        figure.Overall(Side.Left, At(Length.Zero, Length.Zero), At(Length.Zero, width), sheet.Tape);
        if (roll.Remainder > Length.FromInches(1) && !roll.Levels.IsEmpty)
            figure.SurfaceCallout(At(length - (roll.Remainder / 2), width * 0.2), $"left on the roll {sheet.Tape(roll.Remainder)}", Angle.FromDegrees(70));
    }
}
