using System.Collections.Immutable;

namespace Hoopwright.Sheets.Tables;

/// <summary>A table as people read it; the same one goes on paper and into a CSV file.</summary>
/// <param name="Name">File name without its ending.</param>
/// <param name="Title">Its heading on paper.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows; each has a cell per column.</param>
public sealed record Table(string Name, string Title, ImmutableArray<Column> Columns, ImmutableArray<TableRow> Rows)
{
    /// <summary>The drawing that its rows are shown on, by name, such as front-end; null for none.</summary>
    public string? Drawing { get; init; }

    /// <summary>A blank at which a cell is never broken (no-break space).</summary>
    public const char Joiner = '\u00A0';
}
