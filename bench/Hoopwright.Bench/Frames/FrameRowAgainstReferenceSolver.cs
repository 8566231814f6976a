using BenchmarkDotNet.Attributes;
using Hoopwright.Frames;
using Hoopwright.Testing.Frames;

namespace Hoopwright.Bench.Frames;

/// <summary>How long does a row of bows in wind take from model to results, linear, against CalculiX's whole run on the same model?</summary>
[MemoryDiagnoser]
[Config(typeof(WholeRuns))]
public class FrameRowAgainstReferenceSolver
{
    private FrameModel _model = TunnelRow.InWind(2);
    private string _deck = "";

    [Params(10, 25, 50, 100, 200)]
    public int Bows { get; set; }

    [GlobalSetup]
    public void CheckAnswers()
    {
        _model = TunnelRow.InWind(Bows);
        _deck = CalculixDeck.Write(_model);
        FrameRowAnswers.MustAgree(FrameSolver.Solve(_model), Calculix.Run(_deck).MovedMm, share: 0.005);
    }

    [Benchmark(Baseline = true)]
    public int CalculixLinear() => Calculix.Run(_deck).MovedMm.Length;

    [Benchmark]
    public int HoopwrightLinear() => FrameSolver.Solve(_model).Diagnostics.Length;
}
