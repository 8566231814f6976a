using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
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
/// How many second-order analyses of one bow, with and without the checks of its strength, are done in a sweep on all cores, against
/// CalculiX's large-displacement run of the same bow? Bows of the examples on hinged feet, without tie, under snow. Times are for one analysis.
/// </summary>
[MemoryDiagnoser]
[Config(typeof(WholeRuns))]
public class BowSweepAgainstReferenceSolver
{
    private const int Analyses = 20_000;
    private const double SnowPa = 300;

    // A tenth of the snow: there second order and large displacements are the same to a percent of the movement.
    private const double MildPart = 0.1;

    private readonly int _cores = Environment.ProcessorCount;
    private ImmutableArray<BowTrial> _bows = [];
    private ImmutableArray<LoadedCase> _cases = [];
    private string _deck = "";

    [Params("round-14ft", "gothic-26ft")]
    public string Example { get; set; } = "";

    [GlobalSetup]
    public void CheckAnswers()
    {
        Plan plan = SamplePlans.Example(Example);
        Tunnel tunnel = SamplePlans.LayOut(plan with { Frame = plan.Frame with { Tie = null } });
        TunnelLoads loads = LoadPlanner.Plan(tunnel, new Answers(tunnel.Units));
        var steel = new BowSteel(tunnel.BowTube, SteelGrades.Unknown);
        BowRow row = BowRow.Of(tunnel, steel);
        BowPlace place = row.Places[row.Places.Length / 2];
        // A trial keeps its room, so every core has its own.
        _bows = [.. Enumerable.Range(0, _cores).Select(_ => new BowTrial(row.Mesh, place, steel, PlanarFoot.Hinge, loads.Cases, row.BetweenPurlinsM))];
        _cases = [.. new BowCases(loads).Scaled(LoadScale.Snow, StrengthLevel.Storm)];
        _deck = MustAgree(_bows[0], steel);
    }

    [Benchmark(Baseline = true)]
    public int CalculixLarge() => Calculix.Run(_deck).MovedMm.Length;

    [Benchmark(OperationsPerInvoke = Analyses)]
    public double HoopwrightWithChecks() => Swept((bow, terms, lean) => bow.Try(terms, lean, DesignMethod.Lrfd).Utilisation);

    [Benchmark(OperationsPerInvoke = Analyses)]
    public double HoopwrightAnalysisAlone() => Swept((bow, terms, lean) => bow.Carries(terms, lean) ? 0 : 1);

    private delegate double OneAnalysis(BowTrial bow, ReadOnlySpan<BowTerm> terms, int lean);

    private double Swept(OneAnalysis analyse)
    {
        double[] most = new double[_cores];
        Parallel.For(0, _cores, core =>
        {
            Span<BowTerm> room = stackalloc BowTerm[LoadedCase.MostTerms];
            for (int at = core; at < Analyses; at += _cores)
            {
                LoadedCase each = _cases[at % _cases.Length];
                most[core] = Math.Max(most[core], analyse(_bows[core], each.At(SnowPa * (1 + (at % 7)) / 7, room), at % 2 == 0 ? 1 : -1));
            }
        });
        return most.Max();
    }

    /// <summary>The bow under its first snow, as forces at its nodes alone, to both solvers; at a part of it every node within 1 % of the greatest movement. Returns the deck.</summary>
    private string MustAgree(BowTrial trial, BowSteel steel)
    {
        BowMesh mesh = trial.Mesh;
        Span<BowTerm> room = stackalloc BowTerm[LoadedCase.MostTerms];
        trial.Carries(_cases[0].At(SnowPa, room), lean: 1);
        double[] forces = [.. trial.Applied];
        foreach (BowTerm term in _cases[0].At(SnowPa, room))
        {
            ReadOnlySpan<double> spread = trial.Loads[term.Load].Spread.AsSpan();
            for (int chord = 0; chord < mesh.Chords; chord++)
            {
                (double c, double s) = mesh.Direction(chord);
                for (int end = 0; end < 2; end++)
                {
                    int from = (6 * chord) + (3 * end), to = 3 * (chord + end);
                    forces[to] += term.Times * ((c * spread[from]) - (s * spread[from + 1]));
                    forces[to + 1] += term.Times * ((s * spread[from]) + (c * spread[from + 1]));
                }
            }
        }
        for (int moment = 2; moment < forces.Length; moment += 3) forces[moment] = 0;
        double youngPa = FrameMaterial.Steel.YoungPa * DirectAnalysis.StiffnessFactor;
        var material = new FrameMaterial(youngPa, youngPa / 2, 0, 0);
        var section = new FrameSection(steel.AreaM2, steel.SecondM4, steel.SecondM4, 2 * steel.SecondM4);
        // Every chord in two halves in line: the deck makes one straight element of the two, where it would bend one through two chords.
        int last = 2 * mesh.Chords;
        var model = new FrameModel
        {
            Nodes = [.. Enumerable.Range(0, last + 1).Select(at => new FrameNode($"{at}", Place(mesh, at)) { Held = at == 0 || at == last ? Freedoms.Shifts : Freedoms.None })],
            Members = [.. Enumerable.Range(0, last).Select(at => new FrameMember { Id = $"m{at}", From = at, To = at + 1, Section = section, Material = material })],
            LoadCases = [new("snow") { Nodes = [.. Enumerable.Range(0, mesh.Chords + 1).Select(at => new NodeLoad(2 * at, new(forces[3 * at], 0, forces[(3 * at) + 1], 0, 0, 0)))] }],
            Combinations = [new("C", [new(0, 1)])],
            Analysis = new() { Kind = FrameAnalysisKind.SecondOrder, Planar = true },
        };
        FrameModel mild = model with { Combinations = [new("C", [new(0, MildPart)])] };
        FrameRowAnswers.MustAgree(FrameSolver.Solve(mild), Calculix.Run(CalculixDeck.Write(mild, large: true)).MovedMm, share: 0.01);
        var bow = new PlanarBow([.. mesh.XM], [.. mesh.ZM], [.. Enumerable.Repeat(youngPa * steel.AreaM2, mesh.Chords)], [.. Enumerable.Repeat(youngPa * steel.SecondM4, mesh.Chords)], PlanarFoot.Hinge, PlanarFoot.Hinge);
        if (bow.Solve(forces, new double[6 * mesh.Chords], secondOrder: true) != PlanarOutcome.Balanced)
            throw new InvalidOperationException("The bow does not carry the snow that it is timed on.");
        FrameState state = FrameSolver.Solve(model).States[0];
        double greatestM = bow.Movement.Max(Math.Abs), differenceM = Enumerable.Range(0, mesh.Chords + 1).Max(at =>
            Math.Max(Math.Abs(bow.Movement[3 * at] - state.Displacements[12 * at]), Math.Abs(bow.Movement[(3 * at) + 1] - state.Displacements[(12 * at) + 2])));
        if (!(differenceM <= 1e-3 * greatestM)) throw new InvalidOperationException(FormattableString.Invariant($"Our two solvers differ by {differenceM:R} of {greatestM:R} m."));
        return CalculixDeck.Write(model, large: true);
    }

    private static Vector3 Place(BowMesh mesh, int half) =>
        new((mesh.XM[half / 2] + mesh.XM[(half + 1) / 2]) / 2, 0, (mesh.ZM[half / 2] + mesh.ZM[(half + 1) / 2]) / 2);
}
