using System.Diagnostics;
using System.Globalization;
using Hoopwright.Cutting;

namespace Hoopwright.Bench.Cutting;

/// <summary>The table of docs/cutting.md.</summary>
internal static class CuttingTable
{
    public static int Print(string[] args, TextWriter to)
    {
        bool leftovers = args[0] == "leftovers";
        int from = int.Parse(args[1], CultureInfo.InvariantCulture), end = int.Parse(args[2], CultureInfo.InvariantCulture);
        Cutter.Solve(PracticalOrders.Of(0, leftovers));
        var times = new List<double>();
        for (var seed = from; seed < end; seed++)
        {
            var job = PracticalOrders.Of(seed, leftovers);
            var cpu = Process.GetCurrentProcess().TotalProcessorTime;
            var clock = Stopwatch.StartNew();
            var plan = Cutter.Solve(job);
            var wall = clock.Elapsed.TotalSeconds;
            var used = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
            times.Add(used);
            if (used > 0.3 || !plan.Proven || wall > 1)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seed} cpu {used:0.000} wall {wall:0.000} proven {plan.Proven} cost {plan.Cost} bound {plan.LowerBound} {plan.Method} stock {job.Stock.Length} lengths {job.Pieces.Length} pieces {job.Pieces.Sum(piece => piece.Count)}"));
        }

        times.Sort();
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"median {times[times.Count / 2]:0.0000} p90 {times[times.Count * 9 / 10]:0.000} p99 {times[times.Count * 99 / 100]:0.000} worst {times[^1]:0.000}"));
        return 0;
    }
}
