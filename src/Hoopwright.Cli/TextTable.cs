using System.Collections.Immutable;

namespace Hoopwright.Cli;

/// <summary>Prints a table with columns as wide as their texts.</summary>
internal static class TextTable
{
    public static void Print(TextWriter to, ImmutableArray<string> heads, ImmutableArray<ImmutableArray<string>> rows)
    {
        int[] widths = [.. heads.Select((head, column) => rows.Select(row => row[column].Length).Append(head.Length).Max())];
        Line(heads);
        Line([.. widths.Select(width => new string('-', width))]);
        foreach (ImmutableArray<string> row in rows) Line(row);

        void Line(ImmutableArray<string> cells) => to.WriteLine(string.Join("  ", cells.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd());
    }
}
