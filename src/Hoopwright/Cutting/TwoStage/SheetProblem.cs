namespace Hoopwright.Cutting.TwoStage;

/// <summary>
/// A two-stage job as the engine sees it: a bar is a sheet and weighs are areas, which by themselves only say what cannot fit;
/// what does fit is known by the lays. Largest pieces first.
/// </summary>
internal sealed class SheetProblem : CutProblem
{
    /// <summary>Every way that a piece can lie, longest first.</summary>
    public required Lay[] Lays { get; init; }

    /// <summary>The lengths that a level can have, longest first.</summary>
    public required long[] LevelLengths { get; init; }

    /// <summary>For each of them the first lay that is no longer; it is as long.</summary>
    public required int[] FirstLay { get; init; }

    /// <summary>The width of each sheet.</summary>
    public required long[] Widths { get; init; }

    /// <summary>The length of each sheet.</summary>
    public required long[] Lengths { get; init; }

    /// <summary>False when a level may hold one piece only.</summary>
    public required bool Slit { get; init; }

    /// <summary>For each bar the type that it leaves out; −1 for a sheet.</summary>
    public required int[] LeavesOut { get; init; }

    /// <summary>The engine's numbers of the job's pieces, largest first; those that are not wanted are left away.</summary>
    public required int[] PieceOfType { get; init; }

    /// <summary>Money units of the job to one of the engine's.</summary>
    public required long Coin { get; init; }

    /// <summary>The engine's view of a job; every piece wanted must fit some sheet, and some sheet must be there.</summary>
    public static SheetProblem Of(TwoStageJob job)
    {
        int[] pieces =
        [
            .. Enumerable.Range(0, job.Pieces.Length).Where(piece => job.Pieces[piece].Count > 0)
                .OrderByDescending(piece => AreaOf(job.Pieces[piece])).ThenBy(piece => piece),
        ];
        int[] stock = [.. Enumerable.Range(0, job.Stock.Length).Where(sheet => job.Stock[sheet].Limit is null or > 0)];
        var (widest, longest) = (stock.Max(sheet => job.Stock[sheet].Width), stock.Max(sheet => job.Stock[sheet].Length));
        Lay[] lays =
        [
            .. pieces.SelectMany((piece, type) => LaysOf(job.Pieces[piece], type)).Where(lay => lay.Across <= widest && lay.Along <= longest)
                .OrderByDescending(lay => lay.Along).ThenByDescending(lay => lay.Across).ThenBy(lay => lay.Type),
        ];
        long[] lengths = [.. lays.Select(lay => lay.Along).Distinct()];
        int[] leftOut = [.. Enumerable.Range(0, pieces.Length).Where(type => job.Pieces[pieces[type]].LeftOut is not null)];
        var prices = stock.Select(sheet => job.Stock[sheet].Price).Concat(leftOut.Select(type => job.Pieces[pieces[type]].LeftOut!.Value));
        var coin = Math.Max(1, prices.Aggregate(0L, WholeSolver.Divisor));
        var grain = pieces.Select(piece => AreaOf(job.Pieces[piece])).Aggregate(0L, WholeSolver.Divisor);
        long[] weight = [.. pieces.Select(piece => AreaOf(job.Pieces[piece]) / grain)];
        int[] demand = [.. pieces.Select(piece => job.Pieces[piece].Count)];
        var total = weight.Zip(demand, (one, count) => (Int128)one * count).Aggregate(Int128.Zero, (a, b) => a + b);
        return new SheetProblem
        {
            Weight = weight,
            Demand = demand,
            Bars =
            [
                .. stock.Select(sheet => BarOf(sheet, (Int128)job.Stock[sheet].Width * job.Stock[sheet].Length / grain, job.Stock[sheet].Price, job.Stock[sheet].Limit)),
                .. leftOut.Select(type => BarOf(-1, weight[type], job.Pieces[pieces[type]].LeftOut!.Value, null)),
            ],
            Grain = grain,
            Worth = null,
            Lays = lays,
            LevelLengths = lengths,
            FirstLay = [.. lengths.Select(length => Array.FindIndex(lays, lay => lay.Along == length))],
            Widths = [.. stock.Select(sheet => job.Stock[sheet].Width)],
            Lengths = [.. stock.Select(sheet => job.Stock[sheet].Length)],
            Slit = job.Slit,
            LeavesOut = [.. stock.Select(_ => -1), .. leftOut],
            PieceOfType = pieces,
            Coin = coin,
        };

        CutBar BarOf(int line, Int128 area, long price, int? limit)
        {
            var capacity = (long)Int128.Min(area, total);
            return new CutBar(line, capacity, capacity, price / coin, limit ?? int.MaxValue, Missing: false);
        }
    }

    /// <summary>How many bars are sheets; they come first.</summary>
    public int Sheets => Widths.Length;

    public override Mixture? Complete(int[] wanted, int[] limits, CutMethod method, WorkMeter meter) =>
        SheetGreedy.Complete(this, wanted, limits, method, meter);

    /// <summary>A pattern that leaves one piece out.</summary>
    public SheetPattern LeftOut(int bar) => SheetPattern.Of(this, bar, [new Level([Array.FindIndex(Lays, lay => lay.Type == LeavesOut[bar])], [1])]);

    private static long AreaOf(TwoStagePiece piece) => piece.Across * piece.Along;

    private static IEnumerable<Lay> LaysOf(TwoStagePiece piece, int type)
    {
        yield return new Lay(type, piece.Across, piece.Along, Turned: false);
        if (piece.MayTurn && piece.Across != piece.Along)
            yield return new Lay(type, piece.Along, piece.Across, Turned: true);
    }
}
