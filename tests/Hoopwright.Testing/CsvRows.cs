using System.Globalization;

namespace Hoopwright.Testing;

/// <summary>Rows of a plain table of numbers and words, by column name. No quotes, no commas within cells.</summary>
public sealed class CsvRows
{
    private readonly IReadOnlyDictionary<string, string> cells;

    private CsvRows(IReadOnlyDictionary<string, string> cells) => this.cells = cells;

    /// <summary>Every row of a table.</summary>
    public static IReadOnlyList<CsvRows> Of(string file)
    {
        string[] lines = File.ReadAllLines(file);
        string[] names = lines[0].Split(',');
        return [.. lines.Skip(1).Where(line => line.Length > 0).Select(line => new CsvRows(names.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second)))];
    }

    /// <summary>True when the table has a column of this name.</summary>
    public bool Has(string column) => cells.ContainsKey(column);

    /// <summary>A cell as text.</summary>
    public string Text(string column) => cells[column];

    /// <summary>A cell as a number.</summary>
    public double Number(string column) => double.Parse(cells[column], CultureInfo.InvariantCulture);
}
