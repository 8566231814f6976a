using System.Collections.Immutable;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace Hoopwright.Sheets.Xlsx;

/// <summary>
/// Writes worksheets as one XLSX file (ISO/IEC 29500): typed cells, a frozen row of headings with filters, totals that are worked out anew
/// when rows are filtered or changed. The same tables give the same bytes.
/// </summary>
internal static class XlsxWriter
{
    /// <summary>The file's bytes.</summary>
    /// <param name="sheets">The worksheets.</param>
    /// <param name="print">How they are printed.</param>
    public static byte[] Write(ImmutableArray<Worksheet> sheets, XlsxPrint print)
    {
        using MemoryStream stream = new();
        // Into memory nothing is waited for.
        WriteAsync(stream, sheets).GetAwaiter().GetResult();
        return print.Finish(stream.ToArray(), sheets);
    }

    private static async Task WriteAsync(Stream stream, ImmutableArray<Worksheet> sheets)
    {
        // Without properties there is no time in the file.
        SpreadCheetahOptions options = new() { DocumentProperties = null };
        await using Spreadsheet book = await Spreadsheet.CreateNewAsync(stream, options);
        Dictionary<(NumberKind, bool), StyleId> styles = [];
        StyleId leftHeading = book.AddStyle(Heading(HorizontalAlignment.Left)), rightHeading = book.AddStyle(Heading(HorizontalAlignment.Right));
        foreach (Worksheet sheet in sheets)
        {
            WorksheetOptions page = new() { FrozenRows = 1, AutoFilter = new AutoFilterOptions($"A1:{Worksheet.Letter(sheet.Columns.Length - 1)}{sheet.LastRow.ToString(System.Globalization.CultureInfo.InvariantCulture)}") };
            for (int column = 0; column < sheet.Columns.Length; column++) page.Column(column + 1).Width = sheet.Columns[column].WidthEm;
            await book.StartWorksheetAsync(sheet.Name, page);
            await book.AddRowAsync([.. sheet.Columns.Select(column => new Cell(column.Name, column.Kind == NumberKind.Words ? leftHeading : rightHeading))]);
            foreach (ImmutableArray<SheetCell> row in sheet.Rows)
                await book.AddRowAsync([.. row.Select((cell, column) => CellOf(cell, StyleOf(book, styles, sheet.Columns[column].Kind, bold: false)))]);
            if (sheet.Columns.Any(column => column.HasTotal))
                await book.AddRowAsync([.. sheet.Columns.Select((column, index) => CellOf(Total(sheet, column, index), StyleOf(book, styles, column.Kind, bold: true)))]);
            foreach (string remark in sheet.Remarks)
                await book.AddRowAsync([new Cell(XlsxText.Of(remark))]);
        }
        await book.FinishAsync();
    }

    private static Style Heading(HorizontalAlignment align) => new()
    {
        Font = new Font { Bold = true },
        Alignment = new Alignment { WrapText = true, Horizontal = align, Vertical = VerticalAlignment.Bottom },
    };

    private static SheetCell Total(Worksheet sheet, SheetColumn column, int index)
    {
        if (!column.HasTotal) return index == 0 ? SheetCell.Of("Total shown") : SheetCell.Empty;
        string letter = Worksheet.Letter(index);
        // 9 sums what a filter shows.
        return SheetCell.Calculated(FormattableString.Invariant($"SUBTOTAL(9,{letter}2:{letter}{sheet.LastRow})"), sheet.Rows.Sum(row => row[index].Number ?? 0));
    }

    private static Cell CellOf(SheetCell cell, StyleId style) => cell switch
    {
        { Formula: { } formula, Words: { } gives } => new Cell(new Formula(formula), gives, style),
        { Formula: { } formula } => new Cell(new Formula(formula), cell.Number, style),
        { Words: { } words } => new Cell(XlsxText.Of(words), style),
        _ => new Cell(cell.Number, style),
    };

    private static StyleId StyleOf(Spreadsheet book, Dictionary<(NumberKind, bool), StyleId> known, NumberKind kind, bool bold)
    {
        if (known.TryGetValue((kind, bold), out StyleId? style)) return style;
        Style made = new()
        {
            Font = new Font { Bold = bold },
            Alignment = new Alignment { WrapText = kind == NumberKind.Words, Vertical = VerticalAlignment.Top },
            Format = kind switch
            {
                // Text, so that what is typed over it is no formula either.
                NumberKind.Words => NumberFormat.Custom("@"),
                NumberKind.Count => NumberFormat.Custom("0"),
                NumberKind.Amount => NumberFormat.Custom("0.##"),
                NumberKind.Part => NumberFormat.Custom("0.0000"),
                NumberKind.TapeInches => NumberFormat.Custom("# ??/??"),
                NumberKind.Millimetres => NumberFormat.Custom("0"),
                NumberKind.Money => NumberFormat.Custom("0.00"),
                NumberKind.Degrees => NumberFormat.Custom("0.0"),
            },
        };
        return known[(kind, bold)] = book.AddStyle(made);
    }
}
