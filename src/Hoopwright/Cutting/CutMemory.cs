using System.Globalization;
using System.Text;

namespace Hoopwright.Cutting;

/// <summary>
/// Remembers jobs and their plans, for someone who changes one thing of many and asks again: the same job with the same effort
/// has the same plan, so it need not be worked out twice. Not for use by several threads at once.
/// </summary>
/// <param name="most">How many jobs are remembered; the oldest goes first.</param>
public sealed class CutMemory(int most = 400)
{
    private readonly Dictionary<string, CutPlan> plans = new(StringComparer.Ordinal);
    private readonly Queue<string> order = new();
    private readonly Dictionary<string, object> ways = new(StringComparer.Ordinal);
    private readonly Queue<string> wayOrder = new();

    /// <summary>The plan of a job: remembered, or worked out and remembered.</summary>
    /// <param name="job">The job.</param>
    /// <param name="effort">How much work it may take.</param>
    public CutPlan Solve(CutJob job, CutEffort effort)
    {
        string key = Key(job, effort);
        if (plans.TryGetValue(key, out CutPlan? known)) return known;
        CutPlan plan = Cutter.Solve(job, effort);
        if (order.Count >= most) plans.Remove(order.Dequeue());
        plans.Add(key, plan);
        order.Enqueue(key);
        return plan;
    }

    /// <summary>What was worked out before a job could be put: remembered, or worked out and remembered.</summary>
    /// <param name="key">Everything that it depends on, exactly.</param>
    /// <param name="work">How to work it out.</param>
    internal T Kept<T>(string key, Func<T> work)
        where T : class
    {
        if (ways.TryGetValue(key, out object? known)) return (T)known;
        T made = work();
        if (wayOrder.Count >= most) ways.Remove(wayOrder.Dequeue());
        ways.Add(key, made);
        wayOrder.Enqueue(key);
        return made;
    }

    // Every number that the plan depends on, exactly.
    private static string Key(CutJob job, CutEffort effort)
    {
        StringBuilder key = new();
        Append(effort.Steps);
        Append(job.Kerf.Metres, job.Trim.Metres);
        if (job.Leftover is { } leftover) Append(leftover.MinimumLength.Metres, leftover.Per.Metres, leftover.Worth.Amount);
        foreach (CutStock stock in job.Stock) Append("s", stock.Id, stock.Length.Metres, stock.Price.Amount, stock.Limit ?? -1);
        foreach (CutPiece piece in job.Pieces) Append("p", piece.Id, piece.Length.Metres, piece.Count);
        return key.ToString();

        void Append(params ReadOnlySpan<object> parts)
        {
            foreach (object part in parts) key.Append(part is double number ? number.ToString("R", CultureInfo.InvariantCulture) : Convert.ToString(part, CultureInfo.InvariantCulture)).Append('|');
            key.Append('\n');
        }
    }
}
