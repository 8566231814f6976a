using System.Globalization;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cutting;

/// <summary>Says which pieces the limits leave over, and the fewest further bars that would serve them.</summary>
internal static class Shortage
{
    /// <summary>The diagnostic for a plan that takes bars beyond the limits.</summary>
    public static Diagnostic Of(WholeJob job, WholePlan plan)
    {
        // The bars beyond a line's limit are its last cuts in the plan, which are its lightest.
        var left = plan.Beyond.ToArray();
        var unserved = new SortedDictionary<int, int>();
        foreach (var cut in plan.Cuts.Reverse())
        {
            var times = Math.Min(left[cut.Stock], cut.Times);
            left[cut.Stock] -= times;
            foreach (var piece in cut.Pieces)
            {
                if (times > 0)
                    unserved[piece] = unserved.GetValueOrDefault(piece) + times;
            }
        }

        var pieces = string.Join(", ", unserved.Select(entry => $"{job.Pieces[entry.Key].Id} × {Number(entry.Value)}"));
        var bars = string.Join(", ", plan.Beyond.Select((more, line) => (more, line)).Where(entry => entry.more > 0)
            .Select(entry => $"{job.Stock[entry.line].Id} × {Number(entry.more)}"));
        var message = plan.BeyondIsLeast
            ? $"The stock limits are too low: these pieces cannot be served: {pieces}."
            : $"No plan within the stock limits was found: these pieces were left over: {pieces}.";
        return new Diagnostic("cut.stock.too-few", Severity.Error, "stock", message,
            Accepted: $"this much more stock: {bars}{(plan.BeyondIsLeast ? "" : ", perhaps less")}");
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
