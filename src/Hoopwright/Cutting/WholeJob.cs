using System.Collections.Immutable;

namespace Hoopwright.Cutting;

/// <summary>A job whose lengths and prices are whole numbers of some unit, in the order it was given.</summary>
internal sealed record WholeJob(
    ImmutableArray<WholeStock> Stock, ImmutableArray<WholePiece> Pieces, long Kerf, long Trim, WholeWorth? Worth);

/// <summary>A stock line in whole numbers.</summary>
internal sealed record WholeStock(string Id, long Length, long Price, int? Limit);

/// <summary>A piece in whole numbers.</summary>
internal sealed record WholePiece(string Id, long Length, int Count);

/// <summary>Bars cut alike: the stock line and the pieces by their places in the job, in cutting order.</summary>
internal sealed record WholeCut(int Stock, int Times, ImmutableArray<int> Pieces);

/// <summary>A plan in whole numbers.</summary>
internal sealed record WholePlan(ImmutableArray<WholeCut> Cuts, long Cost, long Bound, CutMethod Method)
{
    /// <summary>For each stock line, how many more bars than the limit the plan takes; all 0 when the limits are kept.</summary>
    public required ImmutableArray<int> Beyond { get; init; }

    /// <summary>True when it is certain that no fewer bars beyond the limits would do.</summary>
    public required bool BeyondIsLeast { get; init; }
}
