using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Hoopwright.Cutting;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>Published cutting instances, kept outside the repository because their licences allow tests and not shipping.</summary>
internal static class CuttingData
{
    /// <summary>The folder; where it is not there, an exception that skips a test.</summary>
    public static string Folder(string set) => OutsideData.Folder("cutting", set);

    /// <summary>The rows of a set's table of optima: instance file under the set, and the row's cells by column name.</summary>
    public static IEnumerable<(string File, IReadOnlyDictionary<string, string> Row)> Optima(string set)
    {
        var folder = Folder(set);
        var lines = File.ReadAllLines(Path.Combine(folder, "optimum.csv"));
        var names = lines[0].Split(',');
        foreach (var line in lines.Skip(1))
        {
            var row = names.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second);
            yield return (Path.Combine(Folder(""), row["file"]), row);
        }
    }

    /// <summary>One stock length: item kinds, capacity, then length and demand.</summary>
    public static UnitlessCutJob ReadOneLength(string file)
    {
        var numbers = Numbers(file);
        return new UnitlessCutJob { Stock = [new("bar", numbers[1], 1)], Pieces = Pairs(numbers[2..]) };
    }

    /// <summary>Several: stock kinds, then length, supply and cost; item kinds, then length and demand.</summary>
    public static UnitlessCutJob ReadSeveralLengths(string file)
    {
        var numbers = Numbers(file);
        var kinds = (int)numbers[0];
        return new UnitlessCutJob
        {
            Stock =
            [
                .. Enumerable.Range(0, kinds).Select(kind => new UnitlessCutStock(
                    $"s{kind}", numbers[1 + (3 * kind)], numbers[3 + (3 * kind)], (int)Math.Min(int.MaxValue, numbers[2 + (3 * kind)]))),
            ],
            Pieces = Pairs(numbers[(2 + (3 * kinds))..]),
        };
    }

    /// <summary>A realistic order.</summary>
    public static UnitlessCutJob ReadOrder(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        var order = document.RootElement;
        var leftover = order.GetProperty("leftover");
        return new UnitlessCutJob
        {
            Kerf = order.GetProperty("kerf").GetDecimal(),
            Trim = order.GetProperty("endTrim").GetDecimal(),
            Stock =
            [
                .. order.GetProperty("stock").EnumerateArray().Select((bar, index) => new UnitlessCutStock(
                    $"s{index}", bar.GetProperty("length").GetDecimal(), bar.GetProperty("price").GetDecimal(),
                    bar.GetProperty("supply").ValueKind == JsonValueKind.Null ? null : bar.GetProperty("supply").GetInt32())),
            ],
            Pieces =
            [
                .. order.GetProperty("pieces").EnumerateArray().Select((piece, index) => new UnitlessCutPiece(
                    $"p{index}", piece.GetProperty("length").GetDecimal(), piece.GetProperty("count").GetInt32())),
            ],
            Leftover = leftover.ValueKind == JsonValueKind.Null
                ? null
                : new(leftover.GetProperty("minLength").GetDecimal(), leftover.GetProperty("centsPer1000Units").GetDecimal()),
        };
    }

    private static ImmutableArray<UnitlessCutPiece> Pairs(decimal[] numbers) =>
        [.. numbers.Chunk(2).Select((pair, index) => new UnitlessCutPiece($"p{index}", pair[0], (int)pair[1]))];

    private static decimal[] Numbers(string file) =>
    [
        .. File.ReadAllText(file).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(word => decimal.Parse(word, CultureInfo.InvariantCulture)),
    ];
}
