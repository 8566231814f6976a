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
        var states = ImmutableArray.CreateBuilder<FrameState>();
        var buckling = ImmutableArray.CreateBuilder<BucklingModes>();
        var paths = ImmutableArray.CreateBuilder<ImmutableArray<PathPoint>>();
        var found = new List<Diagnostic>();
        foreach (var combination in model.Combinations)
        {
            switch (model.Analysis.Kind)
            {
                case FrameAnalysisKind.Linear:
                    Keep(solver.Linear(combination));
                    break;
                case FrameAnalysisKind.SecondOrder:
                    Keep(solver.SecondOrder(combination, model.Analysis.Tolerance));
                    break;
                case FrameAnalysisKind.Buckling:
                    if (Keep(solver.Linear(combination)))
                        buckling.Add(BucklingSolver.Solve(solver.Work, model.Analysis.Modes));
                    break;
                case FrameAnalysisKind.LargeDisplacement:
                    if (PathSolver.Solve(mesh, combination, found) is { } path)
                    {
                        states.Add(path.Last);
                        paths.Add(path.Points);
                    }
                    break;
            }
        }
        return new()
        {
            Model = model,
            Diagnostics = [.. solver.Found, .. found],
            States = states.Count == model.Combinations.Length ? states.ToImmutable() : [],
            Buckling = buckling.Count == model.Combinations.Length ? buckling.ToImmutable() : [],
            Paths = paths.Count == model.Combinations.Length ? paths.ToImmutable() : [],
        };

        bool Keep(FrameState? state)
        {
            if (state is null)
                return false;
            states.Add(state);
            return true;
        }
    }
}
