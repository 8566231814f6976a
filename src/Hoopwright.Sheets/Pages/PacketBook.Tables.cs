using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pages;

/// <content>Tables.</content>
public sealed partial class PacketBook
{
    private const double CellPadMm = 1.4, RowPadMm = 1;
    private const int FewRows = 3;

    /// <summary>
    /// A table. Its headings are repeated on every page; a row is never parted unless it is taller than a page. A table that
    /// one page holds is not begun where less than a third of it has room, and what goes over to the last page is never a
    /// row or two.
    /// </summary>
    public PacketBook Table(Table table)
    {
        double[] widthsMm = ColumnWidths.Of(table, TextWidthMm, 2 * CellPadMm, SmallEmMm);
        ImmutableArray<(TableRow Row, ImmutableArray<ImmutableArray<string>> Cells)> rows =
            [.. table.Rows.SelectMany(row => Parted(Wrapped(row, widthsMm)).Select(part => (row, part)))];
        double[] heightsMm = [.. rows.Select(row => HeightMm(row.Cells))];
        double headMm = HeightMm(Wrapped(Head(table), widthsMm));
        // A heading stays with the head of its table and the first row.
        HeadingOver(table.Title, headMm + Together(heightsMm, headMm + HeadingMm(table.Title)));
        TableHead(table, widthsMm);
        int goesOver = heightsMm.Length - FewRows;
        for (int at = 0; at < rows.Length; at++)
        {
            (TableRow row, ImmutableArray<ImmutableArray<string>> cells) = rows[at];
            bool isFull = topMm + heightsMm[at] > FloorMm;
            bool keepsFew = at == goesOver && at > 0 && topMm + heightsMm.Skip(at).Sum() > FloorMm && headMm + heightsMm.Skip(at).Sum() < FloorMm - MarginMm;
            if (isFull || keepsFew)
            {
                NewPage();
                TableHead(table, widthsMm);
            }
            if (row.IsTotal) Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Outline);
            Row(table, cells, widthsMm, row.IsTotal ? LetterWeight.Bold : LetterWeight.Regular);
            topMm += heightsMm[at];
            Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Texture, Ink.Zinc);
        }
        topMm += 4;
        return this;
    }

    /// <summary>How much of the rows must have room below the heading for the table to begin on this page.</summary>
    private double Together(double[] heightsMm, double aboveMm)
    {
        if (heightsMm.Length == 0) return 0;
        double allMm = heightsMm.Sum(), hereMm = sheets.Count == 0 ? 0 : FloorMm - topMm - aboveMm;
        bool fitsOnePage = aboveMm + allMm <= FloorMm - MarginMm;
        if (heightsMm.Length <= 2 * FewRows && fitsOnePage) return allMm;
        return fitsOnePage && hereMm < allMm / 3 ? allMm : heightsMm[0];
    }

    /// <summary>The row whole; in parts when it is taller than a page.</summary>
    private IEnumerable<ImmutableArray<ImmutableArray<string>>> Parted(ImmutableArray<ImmutableArray<string>> cells)
    {
        int lines = cells.Max(cell => cell.Length), most = (int)((FloorMm - MarginMm - 30) / SmallLeadMm);
        if (lines <= most) return [cells];
        return Enumerable.Range(0, (lines + most - 1) / most).Select(
            part => (ImmutableArray<ImmutableArray<string>>)[.. cells.Select(cell => (ImmutableArray<string>)[.. cell.Skip(part * most).Take(most)])]);
    }

    private static ImmutableArray<ImmutableArray<string>> Wrapped(TableRow row, double[] widthsMm) =>
        [.. row.Cells.Select((cell, index) => TextSetter.Lines(cell, widthsMm[index] - (2 * CellPadMm), SmallEmMm, row.IsTotal ? LetterWeight.Bold : LetterWeight.Regular))];

    private static TableRow Head(Table table) => new([.. table.Columns.Select(column => column.Name)], true);

    private static double HeightMm(ImmutableArray<ImmutableArray<string>> cells) => (cells.Max(cell => cell.Length) * SmallLeadMm) + (2 * RowPadMm) - 0.6;

    private void TableHead(Table table, double[] widthsMm)
    {
        ImmutableArray<ImmutableArray<string>> cells = Wrapped(Head(table), widthsMm);
        double heightMm = HeightMm(cells);
        Pen().Fill(SheetPath.Rectangle(new SheetBox(MarginMm, topMm, MarginMm + TextWidthMm, topMm + heightMm)), Ink.ZincTint);
        Row(table, cells, widthsMm, LetterWeight.Bold);
        topMm += heightMm;
        Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Outline);
    }

    private void Row(Table table, ImmutableArray<ImmutableArray<string>> cells, double[] widthsMm, LetterWeight weight)
    {
        double leftMm = MarginMm;
        for (int column = 0; column < cells.Length; column++)
        {
            TextAlign align = table.Columns[column].Align;
            double anchorMm = align switch
            {
                TextAlign.Start => leftMm + CellPadMm,
                TextAlign.Middle => leftMm + (widthsMm[column] / 2),
                TextAlign.End => leftMm + widthsMm[column] - CellPadMm,
            };
            double lineMm = topMm + RowPadMm;
            foreach (string line in cells[column])
            {
                Write(line, new SheetPoint(anchorMm, lineMm + (SmallLeadMm * 0.68)), SmallEmMm, weight, align);
                lineMm += SmallLeadMm;
            }
            leftMm += widthsMm[column];
        }
    }
}
