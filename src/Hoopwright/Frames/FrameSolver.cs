using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;

namespace Hoopwright.Frames;

/// <summary>Solves frame models.</summary>
public static class FrameSolver
{
    /// <summary>Solves a model for every one of its combinations.</summary>
    /// <param name="model">The model.</param>
    /// <returns>The states, or what stands in the way.</returns>
    public static FrameAnswer Solve(FrameModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var problems = FrameCheck.Problems(model);
        if (problems.Any(problem => problem.Severity == Severity.Error))
            return new() { Model = model, Diagnostics = [.. problems] };
        return FrameMesh.Of(model) is { } mesh ? Solve(mesh) : new() { Model = model, Diagnostics = [TooDense(model)] };
    }

    private static Diagnostic TooDense(FrameModel model)
    {
        string seen = string.Create(CultureInfo.InvariantCulture, $"{model.Members.Length} members between {model.Nodes.Length} nodes");
        return new("model.too-large", Severity.Error, "members", "The members join the nodes so densely that this solver cannot hold the model's matrix.", seen, "a frame whose members join near nodes, or fewer of them");
    }

    private static FrameAnswer Solve(FrameMesh mesh)
    {
        var model = mesh.Model;
        var solver = new StaticSolver(mesh);
        var solved = ImmutableArray.CreateBuilder<int>();
        var unsolved = ImmutableArray.CreateBuilder<(int, string)>();
        var states = ImmutableArray.CreateBuilder<FrameState>();
        var buckling = ImmutableArray.CreateBuilder<BucklingModes>();
        var paths = ImmutableArray.CreateBuilder<ImmutableArray<PathPoint>>();
        var found = new List<Diagnostic>();
        for (int at = 0; at < model.Combinations.Length; at++)
        {
            var combination = model.Combinations[at];
            (int before, int beforeOnPath) = (solver.Found.Count, found.Count);
            if (State(combination) is { } state)
            {
                solved.Add(at);
                states.Add(state);
            }
            else
            {
                var stood = solver.Found.Skip(before).Concat(found.Skip(beforeOnPath)).First(each => each.Severity == Severity.Error);
                unsolved.Add((at, stood.Code));
            }
        }
        return new()
        {
            Model = model,
            // What is wrong with the frame itself is found again under every combination.
            Diagnostics = [.. solver.Found.Concat(found).Distinct()],
            Solved = solved.ToImmutable(),
            Unsolved = unsolved.ToImmutable(),
            States = states.ToImmutable(),
            Buckling = buckling.ToImmutable(),
            Paths = paths.ToImmutable(),
        };

        FrameState? State(FrameCombination combination) => model.Analysis.Kind switch
        {
            FrameAnalysisKind.Linear => solver.Linear(combination),
            FrameAnalysisKind.SecondOrder => solver.SecondOrder(combination, model.Analysis.Tolerance),
            FrameAnalysisKind.Buckling => Buckled(combination),
            FrameAnalysisKind.LargeDisplacement => Followed(combination),
        };

        FrameState? Buckled(FrameCombination combination)
        {
            var linear = solver.Linear(combination);
            if (linear is not null)
                buckling.Add(BucklingSolver.Solve(solver.Work, model.Analysis.Modes));
            return linear;
        }

        FrameState? Followed(FrameCombination combination)
        {
            if (PathSolver.Solve(mesh, combination, found) is not { } path)
                return null;
            paths.Add(path.Points);
            return path.Last;
        }
    }
}
