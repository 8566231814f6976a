using BenchmarkDotNet.Attributes;
using Hoopwright.Frames;
using Hoopwright.Testing.Frames;

namespace Hoopwright.Bench.Frames;

/// <summary>
/// How long does a row of bows in wind take at second order, to 1e-8 of the greatest force, against CalculiX's large-displacement run
/// of the same model, and against our own linear solve?
/// </summary>
[MemoryDiagnoser]
[Config(typeof(WholeRuns))]
public class FrameRowSecondOrderAgainstReferenceSolver
{
    private FrameModel _linear = TunnelRow.InWind(2);
    private FrameModel _secondOrder = TunnelRow.InWind(2);
    private string _deck = "";

    [Params(10, 50)]
    public int Bows { get; set; }

    [GlobalSetup]
    public void CheckAnswers()
    {
        _linear = TunnelRow.InWind(Bows);
        _secondOrder = _linear with { Analysis = new() { Kind = FrameAnalysisKind.SecondOrder, Tolerance = 1e-8 } };
        _deck = CalculixDeck.Write(_linear, large: true);
        // A quarter of the wind: there second order and large displacements are the same to a percent of the movement.
        var mild = TunnelRow.InWind(Bows, times: 0.25);
        var answer = FrameSolver.Solve(mild with { Analysis = _secondOrder.Analysis });
        FrameRowAnswers.MustAgree(answer, Calculix.Run(CalculixDeck.Write(mild, large: true)).MovedMm, share: 0.01);
    }

    [Benchmark(Baseline = true)]
    public int CalculixLarge() => Calculix.Run(_deck).MovedMm.Length;

    [Benchmark]
    public int HoopwrightSecondOrder() => FrameSolver.Solve(_secondOrder).Diagnostics.Length;

    [Benchmark]
    public int HoopwrightLinear() => FrameSolver.Solve(_linear).Diagnostics.Length;
}
