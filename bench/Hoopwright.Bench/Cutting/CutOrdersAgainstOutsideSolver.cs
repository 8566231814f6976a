using BenchmarkDotNet.Attributes;
using Hoopwright.Cutting;

namespace Hoopwright.Bench.Cutting;

/// <summary>How long does proving the least cost of an order take, against an arc-flow model in OR-Tools (SCIP)?</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class CutOrdersAgainstOutsideSolver
{
    private const int Orders = 5;
    private const int MostMilliseconds = 60_000;
    private UnitlessCutJob[] _orders = [];

    [Params(8, 12, 16)]
    public int Lengths { get; set; }

    [GlobalSetup]
    public void CheckAnswers()
    {
        _orders = [.. Enumerable.Range(0, Orders).Select(seed => CutOrders.Of(Lengths, seed))];
        foreach (var order in _orders)
        {
            var plan = Cutter.Solve(order);
            var outside = ArcFlowModel.LeastCost(order, MostMilliseconds);
            if (!plan.Proven || (outside is not null && outside != plan.Cost))
                throw new InvalidOperationException($"The answers differ: {plan.Cost} (bound {plan.LowerBound}) against {outside}.");
        }
    }

    [Benchmark(Baseline = true)]
    public decimal ArcFlow() => _orders.Sum(order => ArcFlowModel.LeastCost(order, MostMilliseconds) ?? 0);

    [Benchmark]
    public decimal Hoopwright() => _orders.Sum(order => Cutter.Solve(order).Cost);
}
