using System.Collections.Immutable;

namespace Hoopwright.Sheets.Xlsx;

/// <summary>A worksheet: a table with headings, a row of totals where columns have them, and remarks under it.</summary>
/// <param name="Name">Its name on the tab, at most 31 characters.</param>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows; each has a cell per column.</param>
internal sealed record Worksheet(string Name, ImmutableArray<SheetColumn> Columns, ImmutableArray<ImmutableArray<SheetCell>> Rows)
{
    /// <summary>Sentences under the table.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>The last row of the table; headings are row 1.</summary>
    public int LastRow => Rows.Length + 1;

    /// <summary>The letter of a column, by its heading.</summary>
    public string Letter(string column) => Letter(Columns.Select((each, index) => (each, index)).First(each => each.each.Name == column).index);

    /// <summary>The letter of a column; A is the first.</summary>
    public static string Letter(int index) => ((char)('A' + index)).ToString();
}
