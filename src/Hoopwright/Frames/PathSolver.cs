using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Frames;

/// <summary>Follows a frame along its path of loads and displacements by Newton's method with a tangent that turns with its members.</summary>
internal sealed class PathSolver
{
    private const int MostRounds = 40;
    private const int MostHalvings = 8;

    private readonly FrameMesh _mesh;
    private readonly PathControl _control;
    private readonly double _tolerance;
    private readonly BlockFactor _factor;
    private readonly double[] _rest;
    private readonly double[] _full;
    private double[] _last;
    private PathFrame _frame;
    private double _residual;

    private PathSolver(FrameMesh mesh, FrameCombination combination)
    {
        _mesh = mesh;
        _control = mesh.Model.Analysis.Path;
        _tolerance = mesh.Model.Analysis.Tolerance;
        _factor = new(mesh.Pattern);
        _frame = new(mesh, combination);
        _rest = new double[6 * mesh.Nodes];
        _full = new double[_rest.Length];
        _last = new double[_rest.Length];
    }

    /// <summary>Follows the path of one combination.</summary>
    /// <param name="mesh">The frame.</param>
    /// <param name="combination">The whole load.</param>
    /// <param name="found">Takes what stands in the way.</param>
    /// <returns>The path, as far as it could be followed; null when not one step could be.</returns>
    internal static PathRun? Solve(FrameMesh mesh, FrameCombination combination, List<Diagnostic> found)
    {
        var problems = Unfit(mesh, combination).ToArray();
        if (problems.Length > 0)
        {
            found.AddRange(problems);
            return null;
        }
        return new PathSolver(mesh, combination).Run(combination, found);
    }

    private static IEnumerable<Diagnostic> Unfit(FrameMesh mesh, FrameCombination combination)
    {
        foreach (var beam in mesh.Beams.Where(beam => beam.HasArms || beam.Member.TensionOnly || (beam.Released & 0b000110_000110) != 0))
            yield return new("model.path.member", Severity.Error, "members." + beam.Member.Id, "A large-displacement run takes no rigid arms, tension-only members or sliding releases.", null, "a plain member, with turns or its axial force released");
        if (combination.Parts.Any(part => mesh.Model.LoadCases[part.LoadCase].Movements.Length > 0))
            yield return new("model.path.movement", Severity.Error, "combinations." + combination.Id, "A large-displacement run takes no forced movements of supports.", null, "loads only");
        if (mesh.Model.Analysis.Path is { Steps: < 1 or > 100_000 } path)
            yield return new("model.path.steps", Severity.Error, "analysis.control.steps", "The number of steps is not one that can be walked.", path.Steps.ToString(System.Globalization.CultureInfo.InvariantCulture), "1 to 100000");
    }

    private PathRun? Run(FrameCombination combination, List<Diagnostic> found)
    {
        var points = ImmutableArray.CreateBuilder<PathPoint>(_control.Steps);
        FrameState? last = null;
        double share = 1, done = 0;
        int halvings = 0;
        while (points.Count < 2 * _control.Steps && done < _control.Steps - 1e-9)
        {
            var before = _frame.Copy();
            var lastBefore = (double[])_last.Clone();
            int rounds = Step(Math.Min(share, _control.Steps - done));
            if (rounds > 0)
            {
                done += Math.Min(share, _control.Steps - done);
                last = _frame.State(rounds, _residual);
                points.Add(new(_frame.LoadFactor, last.Displacements, rounds));
                continue;
            }
            (_frame, _last) = (before, lastBefore);
            share /= 2;
            if (++halvings > MostHalvings)
            {
                string seen = _frame.LoadFactor.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " of the load";
                found.Add(new("model.path.lost", Severity.Error, "combinations." + combination.Id, "The path could not be followed further: the frame snaps, or the steps are too long.", seen, "more steps, or steps of a displacement or along the arc"));
                break;
            }
        }
        return last is null ? null : new(points.ToImmutable(), last);
    }

    /// <summary>Walks one step and comes to balance; returns the times solved, 0 when it did not.</summary>
    private int Step(double share)
    {
        var walked = new double[_rest.Length];
        double aim = _control.Kind == PathControlKind.Displacement ? _frame.Movement(Led) + (_control.Reach / _control.Steps * share) : 0;
        if (_control.Kind == PathControlKind.Load)
            _frame.LoadFactor += share / _control.Steps;
        for (int round = 1; round <= MostRounds; round++)
        {
            _frame.OutOfBalance(_rest);
            _frame.Form(_factor);
            if (_factor.Lost.Count > 0)
                return 0;
            _frame.Whole.CopyTo(_full, 0);
            for (int at = 0; at < _full.Length; at++)
            {
                if (_mesh.Held[at])
                    _full[at] = 0;
            }
            _factor.Solve(_full);
            _factor.Solve(_rest);
            double more = More(round, share, aim, walked);
            if (!double.IsFinite(more))
                return 0;
            for (int at = 0; at < _rest.Length; at++)
            {
                _rest[at] += more * _full[at];
                walked[at] += _rest[at];
            }
            if (_rest.Any(value => !double.IsFinite(value)))
                return 0;
            _frame.LoadFactor += more;
            _frame.Move(_rest);
            _residual = _frame.OutOfBalance(_rest);
            if (_residual <= _tolerance)
            {
                _last = walked;
                return round;
            }
        }
        return 0;
    }

    private int Led => (6 * _control.Node) + _control.Freedom;

    /// <summary>What the load factor gains in this round.</summary>
    private double More(int round, double share, double aim, double[] walked)
    {
        switch (_control.Kind)
        {
            case PathControlKind.Displacement:
                return (aim - _frame.Movement(Led) - _rest[Led]) / _full[Led];
            case PathControlKind.Arc when round == 1:
                // Forward is where the last step went (Feng, Perić and Owen, Comput. Struct. 54 (1995) 1203; from memory).
                double forward = Shifts(_last, _full) < 0 ? -1 : 1;
                return forward * _control.Reach * share / Math.Sqrt(Shifts(_full, _full));
            case PathControlKind.Arc:
                // Corrections stay square to the way walked so far (Ramm, 1981; from memory).
                return -Shifts(walked, _rest) / Shifts(walked, _full);
            case PathControlKind.Load:
            default:
                return 0;
        }
    }

    private static double Shifts(double[] a, double[] b)
    {
        double sum = 0;
        for (int at = 0; at < a.Length; at++)
        {
            if (at % 6 < 3)
                sum += a[at] * b[at];
        }
        return sum;
    }
}
