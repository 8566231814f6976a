using Hoopwright.Cutting;

namespace Hoopwright.Tests.Cutting;

/// <summary>The least cost of a tiny job by trying every way of sharing its pieces among bars; shares no code with the engine.</summary>
internal static class BruteForceCutting
{
    /// <summary>The least cost; null when the limits leave pieces over. At most one stock line may have a limit.</summary>
    public static decimal? LeastCost(UnitlessCutJob job)
    {
        decimal[] pieces = [.. job.Pieces.SelectMany(piece => Enumerable.Repeat(piece.Length, piece.Count))];
        var limit = job.Stock.Select(bar => bar.Limit).FirstOrDefault(most => most is not null) ?? 0;
        limit = Math.Min(limit, pieces.Length);
        var all = (1 << pieces.Length) - 1;
        // best[served, bars used of the limited line]
        var best = new decimal?[all + 1, limit + 1];
        best[0, 0] = 0;
        for (var served = 0; served < all; served++)
        {
            for (var used = 0; used <= limit; used++)
            {
                if (best[served, used] is not { } cost)
                    continue;
                var missing = all & ~served;
                var first = missing & -missing;
                for (var others = missing ^ first; ; others = (others - 1) & (missing ^ first))
                {
                    foreach (var bar in job.Stock)
                    {
                        var after = used + (bar.Limit is null ? 0 : 1);
                        if (after > limit || CostOf(job, bar, pieces, first | others) is not { } price)
                            continue;
                        var now = served | first | others;
                        best[now, after] = best[now, after] is { } known ? Math.Min(known, cost + price) : cost + price;
                    }

                    if (others == 0)
                        break;
                }
            }
        }

        return Enumerable.Range(0, limit + 1).Select(used => best[all, used]).Min();
    }

    private static decimal? CostOf(UnitlessCutJob job, UnitlessCutStock bar, decimal[] pieces, int chosen)
    {
        var taken = 0m;
        for (var index = 0; index < pieces.Length; index++)
        {
            if ((chosen >> index & 1) == 1)
                taken += pieces[index] + job.Kerf;
        }

        if (taken > bar.Length - job.Trim + job.Kerf)
            return null;
        var rest = Math.Max(0, bar.Length - job.Trim - taken);
        return bar.Price - (job.Leftover is { } rule && rest >= rule.MinLength ? Math.Floor(rest * rule.ValuePer1000 / 1000) : 0);
    }
}
