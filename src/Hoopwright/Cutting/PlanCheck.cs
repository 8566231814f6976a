namespace Hoopwright.Cutting;

/// <summary>
/// Checks a plan against its job in plain whole numbers, by the rules as they are stated and without anything that made the plan.
/// </summary>
internal static class PlanCheck
{
    /// <summary>True when every piece is cut exactly as often as wanted, every bar holds its pieces, and limits and cost are kept.</summary>
    public static bool Holds(WholeJob job, IReadOnlyList<WholeCut> cuts, long cost)
    {
        var made = new long[job.Pieces.Length];
        var used = new long[job.Stock.Length];
        var paid = Int128.Zero;
        foreach (var cut in cuts)
        {
            if (cut.Times < 1 || cut.Pieces.Length == 0)
                return false;
            var bar = job.Stock[cut.Stock];
            var taken = Int128.Zero;
            foreach (var piece in cut.Pieces)
            {
                taken += job.Pieces[piece].Length + job.Kerf;
                made[piece] += cut.Times;
            }

            if (taken > bar.Length - job.Trim + job.Kerf)
                return false;
            var rest = (long)Int128.Max(0, bar.Length - job.Trim - taken);
            used[cut.Stock] += cut.Times;
            paid += (Int128)(bar.Price - (job.Worth?.Of(rest) ?? 0)) * cut.Times;
        }

        return paid == cost
            && made.Zip(job.Pieces, (count, piece) => count == piece.Count).All(same => same)
            && used.Zip(job.Stock, (count, bar) => count <= (bar.Limit ?? long.MaxValue)).All(kept => kept);
    }
}
