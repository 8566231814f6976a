using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Tests.Pages;

/// <summary>Widths of columns, held against every other way to deal the width out.</summary>
public sealed class ColumnWidthsTests
{
    private const double WholeMm = 120, PadsMm = 2.8, EmMm = 3.5;

    private static readonly Gen<string> Cell = Gen.Int[1, 9].Array[1, 16].Select(lengths => string.Join(' ', lengths.Select(length => new string('n', length))));

    private static readonly Gen<Table> Tables = Gen.Int[2, 3].SelectMany(columns => Cell.Array[columns].Array[1, 12]).Select(rows =>
        new Table("t", "Trial", [.. rows[0].Select((_, column) => new Column("nn", column + 1))], [.. rows.Select(row => TableRow.Of([.. row]))]));

    [Fact]
    public void The_columns_fill_the_width_and_no_word_is_broken() => Tables.Sample(table =>
    {
        double[] widths = ColumnWidths.Of(table, WholeMm, PadsMm, EmMm);
        Assert.Equal(WholeMm, widths.Sum(), 9);
        foreach (TableRow row in table.Rows)
        {
            for (int column = 0; column < widths.Length; column++)
                Assert.Equal(row.Cells[column], string.Join(' ', Lines(row.Cells[column], widths[column])));
        }
    }, iter: 300);

    [Fact]
    public void No_other_way_to_deal_out_the_width_sets_the_cells_lower() => Tables.Sample(table =>
    {
        double[] widths = ColumnWidths.Of(table, WholeMm, PadsMm, EmMm);
        double own = Cost(table, widths);
        int columns = table.Columns.Length;
        for (double first = 10; first < WholeMm - 10; first += 5)
        {
            for (double second = columns == 2 ? WholeMm - first : 10; second <= (columns == 2 ? WholeMm - first : WholeMm - first - 10); second += 5)
            {
                double[] other = columns == 2 ? [first, second] : [first, second, WholeMm - first - second];
                // A width between two steps of the search may save a line that the search does not see: as much as one step more would.
                if (IsWhole(table, other)) Assert.True(own <= Cost(table, [.. other.Select(width => width - 1.5)]), $"{own} against {Cost(table, other)} at {string.Join(", ", other)}");
            }
        }
    }, iter: 100);

    [Fact]
    public void A_joiner_holds_words_together_and_is_a_plain_blank_on_paper()
    {
        string[] lines = [.. Lines($"one two{Table.Joiner}three", 20)];
        Assert.Equal(["one", "two three"], lines);
        Assert.Equal("Head\r\na b\r\n", CsvWriter.Write(new Table("t", "Trial", [new Column("Head", 1)], [TableRow.Of($"a{Table.Joiner}b")])));
    }

    private static bool IsWhole(Table table, double[] widths) => table.Rows.All(row => row.Cells.Select((cell, column) => (cell, column))
        .All(each => each.cell.Split(' ').All(word => Typeface.Of(LetterWeight.Regular).WidthMm(word, EmMm) + PadsMm <= widths[each.column] - 1.6)));

    private static double Cost(Table table, double[] widths) =>
        table.Rows.Sum(row => row.Cells.Select((cell, column) => Math.Pow(Lines(cell, widths[column]).Length, 3)).Sum());

    private static ImmutableArray<string> Lines(string text, double widthMm) => TextSetter.Lines(text, widthMm - PadsMm, EmMm, LetterWeight.Regular);
}
