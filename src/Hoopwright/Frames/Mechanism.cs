using Hoopwright.Diagnostics;

namespace Hoopwright.Frames;

/// <summary>Says which nodes of a frame can move freely, and how.</summary>
internal static class Mechanism
{
    private const int MostNamed = 6;
    private static readonly string[] Names = ["ux", "uy", "uz", "rx", "ry", "rz"];

    /// <summary>One diagnostic for each free movement, at most a few.</summary>
    internal static IEnumerable<Diagnostic> Say(FrameMesh mesh, BlockFactor factor) =>
        factor.Lost.Take(MostNamed).Select(lost => Say(mesh, factor.NullShape(lost), lost));

    private static Diagnostic Say(FrameMesh mesh, double[] shape, int lost)
    {
        var free = Enumerable.Range(0, shape.Length)
            .Where(at => !mesh.Held[at])
            .GroupBy(at => at % 6 < 3)
            .SelectMany(group => Leading(group, shape))
            .GroupBy(at => at / 6)
            .OrderBy(group => group.Key)
            .ToArray();
        string seen = string.Join(", ", free.Take(MostNamed).Select(group => $"node {mesh.Model.Nodes[group.Key].Id} {string.Join(" ", group.Order().Select(at => Names[at % 6]))}"));
        if (free.Length > MostNamed)
            seen += $" and {free.Length - MostNamed} more nodes";
        return new(
            "model.mechanism", Severity.Error, $"nodes.{mesh.Model.Nodes[lost / 6].Id}", "The frame is a mechanism: these nodes can move and nothing holds them.", seen, "a support, a member or a fixed end that holds them");
    }

    /// <summary>Freedoms that move at least half as far as the one that moves most, shifts and turns apart.</summary>
    private static IEnumerable<int> Leading(IEnumerable<int> freedoms, double[] shape)
    {
        var all = freedoms.ToArray();
        double most = all.Length == 0 ? 0 : all.Max(at => Math.Abs(shape[at]));
        return most < 1e-6 * shape.Max(Math.Abs) ? [] : all.Where(at => Math.Abs(shape[at]) >= most / 2);
    }
}
