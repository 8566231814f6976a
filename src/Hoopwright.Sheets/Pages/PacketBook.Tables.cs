using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pages;

/// <content>Tables.</content>
public sealed partial class PacketBook
{
    private const double CellPadMm = 1.4;

    /// <summary>A table. Its headings are repeated on every page; a row is never parted unless it is taller than a page.</summary>
    public PacketBook Table(Table table)
    {
        double[] widthsMm = Widths(table);
        // A heading stays with the head of its table and the first row.
        double firstMm = table.Rows.IsEmpty ? 0 : HeightMm(Wrapped(table.Rows[0], widthsMm));
        HeadingOver(table.Title, HeightMm(Wrapped(Head(table), widthsMm)) + firstMm);
        TableHead(table, widthsMm);
        foreach ((TableRow row, ImmutableArray<ImmutableArray<string>> cells) in table.Rows.SelectMany(row => Parted(Wrapped(row, widthsMm)).Select(part => (row, part))))
        {
            double heightMm = HeightMm(cells);
            if (topMm + heightMm > FloorMm)
            {
                NewPage();
                TableHead(table, widthsMm);
            }
            if (row.IsTotal) Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Outline);
            Row(table, cells, widthsMm, row.IsTotal ? LetterWeight.Bold : LetterWeight.Regular);
            topMm += heightMm;
            Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Texture, Ink.Zinc);
        }
        topMm += 4;
        return this;
    }

    /// <summary>
    /// Widths of the columns. Where all fit without a break each gets what it needs and the rest goes by their shares;
    /// else the longest columns are broken, never within a word while there is room for it.
    /// </summary>
    private double[] Widths(Table table)
    {
        double[] whole = new double[table.Columns.Length], least = new double[table.Columns.Length];
        foreach (TableRow row in table.Rows.Prepend(Head(table)))
        {
            Typeface face = Typeface.Of(row.IsTotal ? LetterWeight.Bold : LetterWeight.Regular);
            for (int column = 0; column < row.Cells.Length; column++)
            {
                string text = TapeFractions.Set(row.Cells[column]);
                double pads = (2 * CellPadMm) + 0.01;
                whole[column] = Math.Max(whole[column], text.Split('\n').Max(line => face.WidthMm(line, SmallEmMm)) + pads);
                least[column] = Math.Max(least[column], text.Split(' ', '\n').Max(word => face.WidthMm(word, SmallEmMm)) + pads);
            }
        }

        double spare = TextWidthMm - whole.Sum(), shares = table.Columns.Sum(column => column.Share);
        if (spare >= 0) return [.. whole.Select((width, column) => width + (spare * table.Columns[column].Share / shares))];
        if (least.Sum() > TextWidthMm) return [.. least.Select(width => TextWidthMm * width / least.Sum())];

        // One limit for all, as large as the page allows: short columns stay whole and only long ones are broken.
        double low = 0, high = TextWidthMm;
        for (int halving = 0; halving < 40; halving++)
        {
            double limit = (low + high) / 2;
            if (Limited(limit).Sum() <= TextWidthMm) low = limit;
            else high = limit;
        }

        return [.. Limited(low)];

        IEnumerable<double> Limited(double limit) => whole.Select((width, column) => Math.Max(least[column], Math.Min(width, limit)));
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

    private static double HeightMm(ImmutableArray<ImmutableArray<string>> cells) => (cells.Max(cell => cell.Length) * SmallLeadMm) + (2 * CellPadMm) - 0.6;

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
            double lineMm = topMm + CellPadMm;
            foreach (string line in cells[column])
            {
                Write(line, new SheetPoint(anchorMm, lineMm + (SmallLeadMm * 0.68)), SmallEmMm, weight, align);
                lineMm += SmallLeadMm;
            }
            leftMm += widthsMm[column];
        }
    }
}
