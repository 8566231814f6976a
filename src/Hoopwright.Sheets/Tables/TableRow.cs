using System.Collections.Immutable;

namespace Hoopwright.Sheets.Tables;

/// <summary>A row of a table.</summary>
/// <param name="Cells">Its cells, one per column.</param>
/// <param name="IsTotal">True for a row that sums others up: set in bold.</param>
public sealed record TableRow(ImmutableArray<string> Cells, bool IsTotal = false)
{
    /// <summary>What it tells of, by the name of a drawing, a table or a chapter, and where it leads to in a document that has it; null for what the table says.</summary>
    public string? LeadsTo { get; init; }

    /// <summary>A row of cells.</summary>
    public static TableRow Of(params ImmutableArray<string> cells) => new(cells);

    /// <summary>A row that sums others up.</summary>
    public static TableRow Total(params ImmutableArray<string> cells) => new(cells, true);
}
