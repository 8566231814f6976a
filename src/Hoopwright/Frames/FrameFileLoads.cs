using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Hoopwright.ModelFiles;

namespace Hoopwright.Frames;

/// <summary>Reads the load cases and combinations of a model file.</summary>
internal sealed class FrameFileLoads(ModelProblems problems, ModelNames<int> nodes, ModelNames<int> members)
{
    // Each state of the answer takes about two hundred bytes a node.
    private const long MostNodeStates = 5_000_000;

    private readonly ModelNames<int> _cases = new("load case", problems);

    /// <summary>A model that holds the loads alone.</summary>
    internal FrameModel Read(ModelGroup file)
    {
        var cases = ImmutableArray.CreateBuilder<FrameLoadCase>();
        foreach (var entry in file.Group("loadCases")?.Entries() ?? [])
        {
            if (ModelGroup.Of(entry.Json, entry.Path, problems) is not { } group)
            {
                _cases.AddFaulty(entry.Id);
                continue;
            }
            _cases.Add(entry.Id, cases.Count);
            cases.Add(Case(entry.Id, group));
        }
        return new() { LoadCases = cases.ToImmutable(), Combinations = Combinations(file) };
    }

    /// <summary>Tells which loads come to nothing because a material does not say what they rest on.</summary>
    internal static void Assumptions(FrameModel model, ModelProblems problems)
    {
        foreach (var load in model.LoadCases)
        {
            if (load.SelfWeight != Vector3.Zero && model.Members.Any(member => member.Material.DensityKgM3 == 0))
                problems.Assume("model.no-density", $"loadCases.{load.Id}.selfWeight", "Own weight is asked for, but the material of some members has no densityKgM3.", "no weight for those members");
            if (load.Temperatures.Any(warm => model.Members[warm.Member].Material.ExpansionPerK == 0))
                problems.Assume("model.no-expansion", $"loadCases.{load.Id}.temperature", "A change of temperature is asked for, but the member's material has no expansionPerK.", "no expansion of that member");
        }
        long steps = model.Analysis.Kind == FrameAnalysisKind.LargeDisplacement ? model.Analysis.Path.Steps : 1;
        if (steps * model.Combinations.Length * model.Nodes.Length > MostNodeStates)
        {
            string seen = string.Create(CultureInfo.InvariantCulture, $"{model.Combinations.Length} combinations of {model.Nodes.Length} nodes");
            problems.Error("model.too-large", "combinations", "The model asks for more states than an answer can hold.", seen, "fewer combinations or steps at a time");
        }
    }

    private FrameLoadCase Case(string id, ModelGroup group)
    {
        group.Only(["selfWeight", "nodes", "members", "temperature", "movements"]);
        return new(id)
        {
            SelfWeight = group.Vector("selfWeight") ?? default,
            Nodes = [.. OnNodes(group, "nodes", FrameWords.ForceNames).Select(each => new NodeLoad(each.Node, each.Values))],
            Members = [.. OnMembers(group, "members").SelectMany(each => Loads(each.Member, each.Entry))],
            Temperatures = [.. OnMembers(group, "temperature").Select(each => Temperature(each.Member, each.Entry)).OfType<MemberTemperature>()],
            Movements = [.. OnNodes(group, "movements", FrameWords.FreedomNames).Select(each => new SupportMovement(each.Node, each.Values))],
        };
    }

    private List<(int Node, SixValues Values)> OnNodes(ModelGroup group, string field, ImmutableArray<string> names)
    {
        var all = new List<(int, SixValues)>();
        foreach (var entry in group.Group(field)?.Entries() ?? [])
        {
            bool known = nodes.Find(entry.Id, entry.Path, out int node);
            if (ModelGroup.Of(entry.Json, entry.Path, problems)?.Six(names) is { } values && known)
                all.Add((node, values));
        }
        return all;
    }

    private List<(int Member, ModelEntry Entry)> OnMembers(ModelGroup group, string field)
    {
        var all = new List<(int, ModelEntry)>();
        foreach (var entry in group.Group(field)?.Entries() ?? [])
        {
            if (members.Find(entry.Id, entry.Path, out int member))
                all.Add((member, entry));
        }
        return all;
    }

    private IEnumerable<MemberLoad> Loads(int member, ModelEntry entry)
    {
        if (ModelGroup.Of(entry.Json, entry.Path, problems) is not { } group)
            yield break;
        group.Only(["uniform"]);
        if (!group.Has("uniform"))
            group.NeededGroup("uniform", "{ \"z\": -100 }");
        else if (entry.Json.GetProperty("uniform") is { ValueKind: JsonValueKind.Array })
        {
            foreach (var (json, path) in group.List("uniform"))
            {
                if (ModelGroup.Of(json, path, problems) is { } part)
                    yield return Load(member, part);
            }
        }
        else if (group.Group("uniform") is { } one)
        {
            yield return Load(member, one);
        }
    }

    private MemberLoad Load(int member, ModelGroup group)
    {
        group.Only(["x", "y", "z", "end", "from", "to", "frame", "per"]);
        var startNPerM = new Vector3(group.Number("x") ?? 0, group.Number("y") ?? 0, group.Number("z") ?? 0);
        var endNPerM = startNPerM;
        if (group.Group("end") is { } end)
        {
            end.Only(["x", "y", "z"]);
            endNPerM = new(end.Number("x") ?? 0, end.Number("y") ?? 0, end.Number("z") ?? 0);
        }
        double from = group.Number("from") ?? 0, to = group.Number("to") ?? 1;
        var frame = group.Word("frame", FrameWords.LoadFrames) ?? LoadFrame.Global;
        var per = group.Word("per", FrameWords.LoadPers) ?? LoadPer.Length;
        // Seen along its own y or z a member has its whole length, and along its x none.
        if (frame == LoadFrame.Member && per == LoadPer.Projection && (startNPerM.X != 0 || endNPerM.X != 0))
            problems.Error("model.load.projection", group.Path, "A load along a member's own x has no projection to be counted along.", "x per projection", "\"per\": \"length\"");
        if (from >= 0 && from < to && to <= 1)
            return new(member, startNPerM, endNPerM, frame, per, from, to);
        string seen = string.Create(CultureInfo.InvariantCulture, $"{from} to {to}");
        problems.Error("model.load.part", group.Path, "A load on part of a member must start before it ends, both on the member.", seen, "shares from 0 to 1");
        return MemberLoad.Uniform(member, default);
    }

    private MemberTemperature? Temperature(int member, ModelEntry entry)
    {
        if (entry.Json.ValueKind == JsonValueKind.Number)
            return ModelGroup.Number(entry.Json, entry.Path, problems) is { } riseK ? new(member, riseK) : null;
        if (ModelGroup.Of(entry.Json, entry.Path, problems) is not { } group)
            return null;
        group.Only(["uniform", "gradient"]);
        double uniformK = group.Number("uniform") ?? 0;
        if (group.Group("gradient") is not { } gradient)
            return new(member, uniformK);
        gradient.Only(["y", "z"]);
        return new(member, uniformK, gradient.Number("y") ?? 0, gradient.Number("z") ?? 0);
    }

    private ImmutableArray<FrameCombination> Combinations(ModelGroup file)
    {
        var all = ImmutableArray.CreateBuilder<FrameCombination>();
        foreach (var entry in file.Group("combinations")?.Entries() ?? [])
        {
            if (ModelGroup.Of(entry.Json, entry.Path, problems) is not { } group)
                continue;
            var parts = ImmutableArray.CreateBuilder<CombinationPart>();
            foreach (var part in group.Entries())
            {
                bool known = _cases.Find(part.Id, part.Path, out int at);
                if (ModelGroup.Number(part.Json, part.Path, problems) is { } factor && known)
                    parts.Add(new(at, factor));
            }
            all.Add(new(entry.Id, parts.ToImmutable()));
        }
        return all.ToImmutable();
    }
}
