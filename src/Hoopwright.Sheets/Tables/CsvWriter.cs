using System.Text;

namespace Hoopwright.Sheets.Tables;

/// <summary>
/// Writes a table as comma-separated values by RFC 4180, UTF-8, lines ending in \r\n. A cell of words that a spreadsheet
/// would run as a formula gets an apostrophe before it, which spreadsheets take for "this is text". Blanks that hold words
/// together on paper are plain ones here, and so are control characters.
/// </summary>
public static class CsvWriter
{
    /// <summary>The file's text.</summary>
    public static string Write(Table table)
    {
        var csv = new StringBuilder();
        Line(csv, table.Columns.Select(column => column.Name));
        foreach (TableRow row in table.Rows) Line(csv, row.Cells);
        return csv.ToString();
    }

    private static void Line(StringBuilder csv, IEnumerable<string> cells)
    {
        csv.AppendJoin(',', cells.Select(Cell)).Append("\r\n");
    }

    private static string Cell(string text)
    {
        text = text.Replace(Table.Joiner, ' ');
        // The wide forms of these signs too: some spreadsheets take them for the same.
        string harmless = XmlText.Clean(text.Length > 0 && "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20".Contains(text[0], StringComparison.Ordinal) && !IsNumber(text) ? "'" + text : text);
        return harmless.AsSpan().IndexOfAny("\",\r\n") >= 0 ? "\"" + harmless.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : harmless;
    }

    private static bool IsNumber(string text) =>
        decimal.TryParse(text, System.Globalization.NumberStyles.AllowLeadingSign | System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out _);
}
