using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pages;

/// <content>Tables.</content>
public sealed partial class PacketBook
{
    private const double CellPadMm = 1.4, RowPadMm = 1;
    private const int FewRows = 3;

    /// <summary>A cell that tells the page to which its row leads.</summary>
    internal const string PageCell = "·····";

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
        HeadingOver(table.Title, headMm + Together(heightsMm, headMm + HeadingMm(table.Title)), SheetOf(table));
        places.TryAdd(table.Name, sheets.Count);
        Open(PdfRole.Table);
        TableHead(table, widthsMm, isRepeated: false);
        int goesOver = heightsMm.Length - FewRows;
        for (int at = 0; at < rows.Length; at++)
        {
            (TableRow row, ImmutableArray<ImmutableArray<string>> cells) = rows[at];
            bool isFull = topMm + heightsMm[at] > FloorMm;
            bool keepsFew = at == goesOver && at > 0 && topMm + heightsMm.Skip(at).Sum() > FloorMm && headMm + heightsMm.Skip(at).Sum() < FloorMm - MarginMm;
            if (isFull || keepsFew)
            {
                NewPage();
                TableHead(table, widthsMm, isRepeated: true);
            }
            if (row.IsTotal) Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Outline);
            Open(PdfRole.TableRow);
            Row(table, cells, widthsMm, row.IsTotal ? LetterWeight.Bold : LetterWeight.Regular, PdfRole.TableCell, row.LeadsTo ?? (row.IsTotal ? null : table.Drawing));
            Close();
            topMm += heightsMm[at];
            Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Texture, Ink.Zinc);
        }
        Close();
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

    /// <summary>The sheet that a table is shown on, in words; null for none.</summary>
    private string? SheetOf(Table table) => table.Drawing is { } drawing && Drawings.TryGetValue(drawing, out string? number) ? words.Fill("Sheet {0}", number) : null;

    private static TableRow Head(Table table) => new([.. table.Columns.Select(column => column.Name)], true);

    private static double HeightMm(ImmutableArray<ImmutableArray<string>> cells) => (cells.Max(cell => cell.Length) * SmallLeadMm) + (2 * RowPadMm) - 0.6;

    private void TableHead(Table table, double[] widthsMm, bool isRepeated)
    {
        ImmutableArray<ImmutableArray<string>> cells = Wrapped(Head(table), widthsMm);
        double heightMm = HeightMm(cells);
        Pen().Fill(SheetPath.Rectangle(new SheetBox(MarginMm, topMm, MarginMm + TextWidthMm, topMm + heightMm)), Ink.ZincTint);
        Open(isRepeated ? PdfRole.Artifact : PdfRole.TableRow);
        Row(table, cells, widthsMm, LetterWeight.Bold, isRepeated ? null : PdfRole.TableHeading);
        Close();
        topMm += heightMm;
        Pen().Line(new SheetPoint(MarginMm, topMm), new SheetPoint(MarginMm + TextWidthMm, topMm), LineRole.Outline);
    }

    private void Row(Table table, ImmutableArray<ImmutableArray<string>> cells, double[] widthsMm, LetterWeight weight, PdfRole? each, string? leadsTo = null)
    {
        double leftMm = MarginMm;
        bool leads = false;
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
            if (each is { } role) Open(role);
            // One link a row, held by the first cell that says something.
            bool isLink = leadsTo is not null && !leads && cells[column].Any(line => line.Length > 0);
            if (isLink) Lead(leadsTo!, new SheetBox(MarginMm, topMm, MarginMm + TextWidthMm, topMm + HeightMm(cells)));
            leads |= isLink;
            foreach (string line in cells[column])
            {
                if (leadsTo is not null && line == PageCell) Current.Leads[^1] = Current.Leads[^1] with { PageMark = Current.Marks.Count };
                Write(line, new SheetPoint(anchorMm, lineMm + (SmallLeadMm * 0.68)), SmallEmMm, weight, align);
                lineMm += SmallLeadMm;
            }
            if (isLink) Close();
            if (each is not null) Close();
            leftMm += widthsMm[column];
        }
    }

    private void Lead(string name, SheetBox area)
    {
        Current.Tags.Add(new PdfTag(Current.Marks.Count, PdfRole.Link, null, Current.Leads.Count));
        Current.Leads.Add((area, name, null));
    }
}
