using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Hoopwright.Bench.Frames;

/// <summary>Few whole runs, each of milliseconds to seconds, in this process: the other side starts a process of its own.</summary>
public sealed class WholeRuns : ManualConfig
{
    public WholeRuns() => AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithStrategy(RunStrategy.Monitoring).WithWarmupCount(2).WithIterationCount(5));
}
