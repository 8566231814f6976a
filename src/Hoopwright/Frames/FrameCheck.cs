using System.Globalization;
using Hoopwright.Diagnostics;

namespace Hoopwright.Frames;

/// <summary>Finds what makes a model unfit to solve: all of it in one pass, in the model's order.</summary>
internal sealed class FrameCheck
{
    /// <summary>Most nodes of one model; a row of two hundred bows has some thirteen thousand.</summary>
    internal const int MostNodes = 200_000;

    private const int MostSaid = 50;
    private readonly FrameModel _model;
    private readonly List<Diagnostic> _found = [];

    private FrameCheck(FrameModel model) => _model = model;

    /// <summary>What is wrong with a model; nothing when it can be tried.</summary>
    internal static IReadOnlyList<Diagnostic> Problems(FrameModel model)
    {
        var check = new FrameCheck(model);
        if (check.Size())
        {
            check.Nodes();
            check.Members();
            check.Loads();
            check.Combinations();
            if (check._found.Count == 0)
                check.Parts();
        }
        return check._found;
    }

    private bool Size()
    {
        if (_model.Nodes.Length == 0 || _model.Members.Length == 0)
            Error("model.empty", "nodes", "The model has no nodes or no members.", null, "at least two nodes and a member");
        if (_model.Nodes.Length > MostNodes || _model.Members.Length > 4 * MostNodes)
            Error("model.too-large", "nodes", "The model is larger than this solver takes.", Text(_model.Nodes.Length) + " nodes", "up to " + Text(MostNodes) + " nodes");
        return _found.Count == 0;
    }

    private void Nodes()
    {
        foreach (var node in _model.Nodes)
        {
            string path = "nodes." + node.Id;
            if (!node.PlaceM.IsFinite)
                Error("model.number", path, "A node's place is not a number.", null, "three numbers in metres");
            if (node.Springs is { } springs)
            {
                for (int freedom = 0; freedom < 6; freedom++)
                {
                    if (!double.IsFinite(springs[freedom]) || springs[freedom] < 0)
                        Error("model.number", "springs." + node.Id, "A spring's stiffness must be a number, 0 or more.", Text(springs[freedom]), "0 or more");
                }
            }
        }
    }

    private void Members()
    {
        foreach (var member in _model.Members)
        {
            string path = "members." + member.Id;
            if (Beam.Of(member, _model.Nodes[member.From].PlaceM, _model.Nodes[member.To].PlaceM) is null)
                Error("model.member.no-length", path, "The member starts and ends at the same place.", _model.Nodes[member.From].Id + " to " + _model.Nodes[member.To].Id, "two different places");
            var (section, material) = (member.Section, member.Material);
            if (!(section.AreaM2 > 0 && section.IyM4 >= 0 && section.IzM4 >= 0 && section.JM4 >= 0) || !double.IsFinite(section.AreaM2 + section.IyM4 + section.IzM4 + section.JM4 + section.ShearAreaYM2 + section.ShearAreaZM2))
                Error("model.section", path, "The member's section needs an area above 0 and second moments of 0 or more.", null, "a tube, or areaM2, iyM4, izM4, jM4");
            if (!(material.YoungPa > 0 && material.ShearPa > 0 && material.DensityKgM3 >= 0) || !double.IsFinite(material.YoungPa + material.ShearPa + material.ExpansionPerK + material.DensityKgM3))
                Error("model.material", path, "The member's material needs moduli above 0.", null, "youngPa and shearPa above 0");
            if (!double.IsFinite(member.RollRad))
                Error("model.number", path, "The member's roll is not a number.", null, "an angle");
        }
    }

    private void Loads()
    {
        foreach (var load in _model.LoadCases)
        {
            string path = "loadCases." + load.Id;
            bool sound = load.SelfWeight.IsFinite && load.Nodes.All(at => at.Load.IsFinite) && load.Movements.All(at => at.Movement.IsFinite)
                && load.Members.All(at => at.StartNPerM.IsFinite && at.EndNPerM.IsFinite)
                && load.Temperatures.All(at => double.IsFinite(at.UniformK + at.GradientYKPerM + at.GradientZKPerM));
            if (!sound)
                Error("model.number", path, "A load is not a number.", null, "numbers in N, N·m, N/m and K");
            foreach (var part in load.Members.Where(part => !(part.FromShare >= 0 && part.FromShare < part.ToShare && part.ToShare <= 1)))
                Error("model.load.part", path, "A load on part of a member must start before it ends, both on the member.", Text(part.FromShare) + " to " + Text(part.ToShare), "shares from 0 to 1");
            foreach (var movement in load.Movements)
            {
                for (int freedom = 0; freedom < 6; freedom++)
                {
                    if (movement.Movement[freedom] != 0 && ((int)_model.Nodes[movement.Node].Held >> freedom & 1) == 0)
                        Error("model.movement.not-held", path, "A support can only be moved where it holds.", "node " + _model.Nodes[movement.Node].Id, "a support on that freedom");
                }
            }
        }
    }

    private void Combinations()
    {
        if (_model.Combinations.Length == 0)
            Error("model.no-combination", "combinations", "The model has no load combination to solve.", null, "a combination of its load cases");
        foreach (var combination in _model.Combinations.Where(one => one.Parts.Any(part => !double.IsFinite(part.Factor))))
            Error("model.number", "combinations." + combination.Id, "A factor is not a number.", null, "a number");
    }

    /// <summary>Names each part of the frame that no support or spring holds at all.</summary>
    private void Parts()
    {
        var root = Enumerable.Range(0, _model.Nodes.Length).ToArray();
        int Root(int node)
        {
            while (root[node] != node)
                node = root[node] = root[root[node]];
            return node;
        }
        foreach (var member in _model.Members)
        {
            int a = Root(member.From), b = Root(member.To);
            root[Math.Max(a, b)] = Math.Min(a, b);
        }
        var held = _model.Nodes.Select((node, at) => (node, at)).Where(pair => pair.node.Held != Freedoms.None || pair.node.Springs is not null).Select(pair => Root(pair.at)).ToHashSet();
        for (int node = 0; node < root.Length; node++)
        {
            if (Root(node) == node && !held.Contains(node))
                Error("model.part.not-held", "nodes." + _model.Nodes[node].Id, "A part of the frame is joined to nothing that is held.", "the part with node " + _model.Nodes[node].Id, "a support, or a member to the rest");
        }
    }

    private void Error(string code, string path, string message, string? seen, string? accepted)
    {
        if (_found.Count < MostSaid)
            _found.Add(new(code, Severity.Error, path, message, seen, accepted));
    }

    private static string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
