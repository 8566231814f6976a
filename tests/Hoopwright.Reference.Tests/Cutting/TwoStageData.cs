using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Hoopwright.Cuts.Film;
using Hoopwright.Cutting.TwoStage;
using Hoopwright.Testing;

namespace Hoopwright.Reference.Tests.Cutting;

/// <summary>
/// Published rectangles to cut in two stages. Sheets of several sizes with high demands: Cintra, Miyazawa, Wakabayashi, Xavier,
/// EJOR 191 (2008) 61-85, from the gcut set of OR-Library (MIT, J E Beasley). One sheet and at most so many of each piece: sets of
/// Hifi, Tschöke, Cung, Fayard and Oliveira. Both as they stand in github.com/fontanf/packingsolver (MIT). Orders of film were made for
/// this purpose, optima worked out with CP-SAT (OR-Tools 9.15), most of them by a second model as well.
/// </summary>
internal static class TwoStageData
{
    /// <summary>The names of the sheets-of-several-sizes set with what is recorded of each.</summary>
    public static IReadOnlyList<CsvRows> SeveralSheets() => CsvRows.Of(Path.Combine(CuttingData.Folder(Path.Combine("film2stage", "cintra2008")), "best_known.csv"));

    /// <summary>One of them; first cuts run across the width.</summary>
    public static TwoStageJob ReadSeveralSheets(string name, bool turn)
    {
        var folder = CuttingData.Folder(Path.Combine("film2stage", "cintra2008"));
        return new TwoStageJob(
            [.. CsvRows.Of(Path.Combine(folder, name + "_items.csv")).Select(row => new TwoStagePiece(Number(row, "WIDTH"), Number(row, "HEIGHT"), (int)Number(row, "COPIES"), turn))],
            [.. CsvRows.Of(Path.Combine(folder, name + "_bins.csv")).Select(row => new TwoStageStock(Number(row, "WIDTH"), Number(row, "HEIGHT"), Number(row, "COST")))]);
    }

    /// <summary>The names of the one-sheet set with the most profit either way.</summary>
    public static IReadOnlyList<CsvRows> OneSheet() => CsvRows.Of(Path.Combine(CuttingData.Folder(Path.Combine("film2stage", "one_sheet")), "optimum.csv"));

    /// <summary>One of them as a job of least cost: what is left out costs its profit.</summary>
    public static TwoStageJob ReadOneSheet(string name, bool firstCutsAcross)
    {
        var folder = CuttingData.Folder(Path.Combine("film2stage", "one_sheet"));
        var (across, along) = firstCutsAcross ? ("WIDTH", "HEIGHT") : ("HEIGHT", "WIDTH");
        return new TwoStageJob(
            [.. CsvRows.Of(Path.Combine(folder, name + "_items.csv")).Select(row => new TwoStagePiece(Number(row, across), Number(row, along), Copies(row), LeftOut: Profit(row)))],
            [.. CsvRows.Of(Path.Combine(folder, name + "_bins.csv")).Select(row => new TwoStageStock(Number(row, across), Number(row, along), 0, 1))]);
    }

    /// <summary>An order of film: rolls by width and length, pieces that may be turned.</summary>
    public static TwoStageJob ReadFilmOrder(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        return new TwoStageJob(
            [
                .. document.RootElement.GetProperty("pieces").EnumerateArray().Select(piece => new TwoStagePiece(
                    piece.GetProperty("across").GetInt64(), piece.GetProperty("along").GetInt64(), piece.GetProperty("count").GetInt32(), piece.GetProperty("rotate").GetBoolean())),
            ],
            [
                .. document.RootElement.GetProperty("rolls").EnumerateArray().Select(roll => new TwoStageStock(
                    roll.GetProperty("width").GetInt64(), roll.GetProperty("length").GetInt64(), roll.GetProperty("price").GetInt64(),
                    roll.GetProperty("supply").ValueKind == JsonValueKind.Null ? null : roll.GetProperty("supply").GetInt32())),
            ]);
    }

    /// <summary>A job as the search over all sets of pieces takes it.</summary>
    public static (ImmutableArray<FilmSize> Sizes, ImmutableArray<SearchOffer> Offers) ForSets(TwoStageJob job) =>
    (
        [.. job.Pieces.Select((piece, order) => new FilmSize(piece.Across, piece.Along, order, piece.Count, piece.MayTurn))],
        [.. job.Stock.Select(sheet => new SearchOffer(sheet.Width, sheet.Length, sheet.Price, OnHand: false, sheet.Limit))]
    );

    private static int Copies(CsvRows row) => row.Has("COPIES") ? (int)Number(row, "COPIES") : 1;

    private static long Profit(CsvRows row) => row.Has("PROFIT") ? Number(row, "PROFIT") : Number(row, "WIDTH") * Number(row, "HEIGHT");

    private static long Number(CsvRows row, string name) => long.Parse(row.Text(name), CultureInfo.InvariantCulture);
}
