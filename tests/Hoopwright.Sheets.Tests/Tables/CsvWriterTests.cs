using CsCheck;
using Hoopwright.Sheets.Tables;
using Microsoft.VisualBasic.FileIO;

namespace Hoopwright.Sheets.Tests.Tables;

public sealed class CsvWriterTests
{
    /// <summary>Read back with the framework's own reader of delimited text, not with ours.</summary>
    [Fact]
    public void What_is_written_is_read_back_by_another_reader() =>
        Gen.Char["ab 0,\";'½″\n"].Array[0, 8].Select(letters => "x" + new string(letters).Replace("\n", "\ny", StringComparison.Ordinal) + "x").Array[3].Array[1, 8].Sample(rows =>
        {
            string csv = CsvWriter.Write(new Table("t", "t", [new Column("a", 1), new Column("b", 1), new Column("c", 1)], [.. rows.Select(row => TableRow.Of([.. row]))]));
            using TextFieldParser parser = new(new StringReader(csv)) { TextFieldType = FieldType.Delimited, Delimiters = [","], HasFieldsEnclosedInQuotes = true, TrimWhiteSpace = false };
            Assert.Equal(["a", "b", "c"], parser.ReadFields()!);
            // That reader gives a line break within a cell as \r\n, and drops an empty line, so there is a letter after each break.
            foreach (string[] row in rows) Assert.Equal(row, parser.ReadFields()!.Select(cell => cell.ReplaceLineEndings("\n")));
            Assert.True(parser.EndOfData);
        });

    [Theory]
    [InlineData("=SUM(A1)")]
    [InlineData("+1 more")]
    [InlineData("-a")]
    [InlineData("@home")]
    [InlineData("\uFF1D1")]
    public void Words_that_a_spreadsheet_would_run_begin_with_an_apostrophe(string cell) =>
        Assert.Equal("a\r\n'" + cell + "\r\n", CsvWriter.Write(new Table("t", "t", [new Column("a", 1)], [TableRow.Of(cell)])));

    [Theory]
    [InlineData("\t=1", "' =1")]
    [InlineData("a\u0000b\u001b", "a b ")]
    public void What_no_text_holds_becomes_a_blank(string cell, string written) =>
        Assert.Equal("a\r\n" + written + "\r\n", CsvWriter.Write(new Table("t", "t", [new Column("a", 1)], [TableRow.Of(cell)])));

    [Theory]
    [InlineData("-4")]
    [InlineData("+0.25")]
    [InlineData("-1234.5")]
    public void Numbers_keep_their_sign(string cell) =>
        Assert.Equal("a\r\n" + cell + "\r\n", CsvWriter.Write(new Table("t", "t", [new Column("a", 1)], [TableRow.Of(cell)])));
}
