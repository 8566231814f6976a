using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Steel;
using Hoopwright.Testing;
using Hoopwright.Testing.Frames;

namespace Hoopwright.Bench.Frames;

/// <summary>
/// The tables of docs/frame-speed.md that other work on the machine does not change: processor time of one bow's analysis on one core, and
/// processor time and memory of whole rows. How many bows all cores together do in a second is by the clock, and wants an idle machine.
/// </summary>
internal static class FrameTable
{
    private const int Analyses = 20_000, Repeats = 5;
    private const double SnowPa = 300;

    /// <summary>Prints both tables.</summary>
    public static int Print(TextWriter to)
    {
        to.WriteLine("| bow | analysis alone µs | with checks µs | with checks, a second on all cores, by the clock | cores |");
        to.WriteLine("|---|---|---|---|---|");
        foreach (string example in (string[])["round-14ft", "gothic-26ft"]) to.WriteLine(Bow(example));
        to.WriteLine();
        to.WriteLine("| bows | freedoms | linear ms | second order ms | working set at most MB |");
        to.WriteLine("|---|---|---|---|---|");
        // The compiler is done with the solver before it is measured.
        for (int warm = 0; warm < 60; warm++) _ = Milliseconds(TunnelRow.InWind(4));
        foreach (int bows in (int[])[10, 25, 50, 100, 200]) to.WriteLine(Row(bows));
        return 0;
    }

    private static string Bow(string example)
    {
        Plan plan = SamplePlans.Example(example);
        Tunnel tunnel = SamplePlans.LayOut(plan with { Frame = plan.Frame with { Tie = null } });
        TunnelLoads loads = LoadPlanner.Plan(tunnel, new Answers(tunnel.Units));
        var steel = new BowSteel(tunnel.BowTube, SteelGrades.Unknown);
        BowRow row = BowRow.Of(tunnel, steel);
        BowTrial bow = Trial();
        ImmutableArray<LoadedCase> cases = [.. new BowCases(loads).Scaled(LoadScale.Snow, StrengthLevel.Storm)];
        var room = new BowTerm[LoadedCase.MostTerms];
        double aloneUs = Microseconds(at => bow.Carries(Terms(at, room), Lean(at))), checkedUs = Microseconds(at => bow.Try(Terms(at, room), Lean(at), DesignMethod.Lrfd));
        double aSecond = ASecond<object>(() =>
        {
            BowTrial own = Trial();
            var ownRoom = new BowTerm[LoadedCase.MostTerms];
            return at => own.Try(Terms(at, ownRoom), Lean(at), DesignMethod.Lrfd);
        });
        return string.Create(CultureInfo.InvariantCulture, $"| {example} | {aloneUs:0.0} | {checkedUs:0.0} | {aSecond:#,0} | {Environment.ProcessorCount} |");

        BowTrial Trial() => new(row.Mesh, row.Places[row.Places.Length / 2], steel, PlanarFoot.Hinge, loads.Cases, row.BetweenPurlinsM);
        ReadOnlySpan<BowTerm> Terms(int at, BowTerm[] into) => cases[at % cases.Length].At(SnowPa * (1 + (at % 7)) / 7, into);
        static int Lean(int at) => at % 2 == 0 ? 1 : -1;
    }

    private static double Microseconds<T>(Func<int, T> analyse)
    {
        double least = double.PositiveInfinity;
        for (int repeat = 0; repeat < Repeats; repeat++)
        {
            TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
            for (int at = 0; at < Analyses; at++) analyse(at);
            least = Math.Min(least, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMicroseconds / Analyses);
        }
        return least;
    }

    // By the clock: every core works its own bow through the same analyses.
    private static double ASecond<T>(Func<Func<int, T>> make)
    {
        Func<int, T>[] cores = [.. Enumerable.Range(0, Environment.ProcessorCount).Select(_ => make())];
        double most = 0;
        for (int repeat = 0; repeat < Repeats; repeat++)
        {
            long start = Stopwatch.GetTimestamp();
            Parallel.ForEach(cores, analyse =>
            {
                for (int at = 0; at < Analyses; at++) analyse(at);
            });
            most = Math.Max(most, cores.Length * Analyses / Stopwatch.GetElapsedTime(start).TotalSeconds);
        }
        return most;
    }

    private static string Row(int bows)
    {
        FrameModel linear = TunnelRow.InWind(bows), secondOrder = linear with { Analysis = new() { Kind = FrameAnalysisKind.SecondOrder, Tolerance = 1e-8 } };
        double linearMs = Milliseconds(linear), secondMs = Milliseconds(secondOrder);
        // Of the whole process, so it counts what came before; the largest row comes last.
        double peakMb = Process.GetCurrentProcess().PeakWorkingSet64 / 1e6;
        return string.Create(CultureInfo.InvariantCulture, $"| {bows} | {6 * linear.Nodes.Length:#,0} | {linearMs:0.0} | {secondMs:0} | {peakMb:0} |");
    }

    private static double Milliseconds(FrameModel model)
    {
        double least = double.PositiveInfinity;
        for (int repeat = 0; repeat < 2 * Repeats; repeat++)
        {
            TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
            if (FrameSolver.Solve(model).States.IsEmpty) throw new InvalidOperationException("The row does not stand.");
            least = Math.Min(least, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds);
        }
        return least;
    }
}
