using System.Collections.Immutable;
using Hoopwright.Frames;

namespace Hoopwright.Tests.Frames;

/// <summary>Builds small frames for tests.</summary>
internal sealed class FrameBuilder
{
    private readonly List<FrameNode> _nodes = [];
    private readonly List<FrameMember> _members = [];
    private FrameLoadCase _load = new("L");

    internal FrameSection Section { get; set; } = new(1, 1, 1, 1);

    internal FrameMaterial Material { get; set; } = new(1, 1);

    internal double RollRad { get; set; }

    internal int Node(double x, double y, double z, Freedoms held = Freedoms.None)
    {
        _nodes.Add(new(Name(_nodes.Count), new(x, y, z)) { Held = held });
        return _nodes.Count - 1;
    }

    internal int Member(int from, int to, Freedoms releaseFrom = Freedoms.None, Freedoms releaseTo = Freedoms.None, bool tensionOnly = false)
    {
        _members.Add(new() { Id = Name(_members.Count), From = from, To = to, Section = Section, Material = Material, RollRad = RollRad, ReleaseFrom = releaseFrom, ReleaseTo = releaseTo, TensionOnly = tensionOnly });
        return _members.Count - 1;
    }

    /// <summary>A line of equal members through straight points; returns the nodes in order.</summary>
    internal int[] Line(int from, int to, int parts)
    {
        var (a, b) = (_nodes[from].PlaceM, _nodes[to].PlaceM);
        var nodes = new List<int> { from };
        for (int at = 1; at < parts; at++)
        {
            var place = a + ((b - a) * ((double)at / parts));
            nodes.Add(Node(place.X, place.Y, place.Z));
        }
        nodes.Add(to);
        for (int at = 0; at < parts; at++)
            Member(nodes[at], nodes[at + 1]);
        return [.. nodes];
    }

    /// <summary>A circular arc in the x–z plane about the origin, nodes on the arc, from one angle to another; returns the nodes.</summary>
    internal int[] Arc(double radiusM, double fromRad, double toRad, int parts, Freedoms held)
    {
        var nodes = new int[parts + 1];
        for (int at = 0; at <= parts; at++)
        {
            double angle = fromRad + ((toRad - fromRad) * at / parts);
            nodes[at] = Node(radiusM * Math.Cos(angle), 0, radiusM * Math.Sin(angle), at == 0 || at == parts ? held : Freedoms.None);
        }
        for (int at = 0; at < parts; at++)
            Member(nodes[at], nodes[at + 1]);
        return nodes;
    }

    internal void Hold(int node, Freedoms held) => _nodes[node] = _nodes[node] with { Held = held };

    internal void Spring(int node, SixValues springs) => _nodes[node] = _nodes[node] with { Springs = springs };

    internal void Change(int member, Func<FrameMember, FrameMember> change) => _members[member] = change(_members[member]);

    internal void Push(int node, double fx = 0, double fy = 0, double fz = 0, double mx = 0, double my = 0, double mz = 0) =>
        _load = _load with { Nodes = _load.Nodes.Add(new(node, new(fx, fy, fz, mx, my, mz))) };

    internal void Spread(int member, double x = 0, double y = 0, double z = 0, LoadFrame frame = LoadFrame.Global, LoadPer per = LoadPer.Length) =>
        _load = _load with { Members = _load.Members.Add(MemberLoad.Uniform(member, new(x, y, z), frame, per)) };

    internal void Load(MemberLoad load) => _load = _load with { Members = _load.Members.Add(load) };

    internal void Warm(MemberTemperature temperature) => _load = _load with { Temperatures = _load.Temperatures.Add(temperature) };

    internal void Shift(int node, SixValues movement) => _load = _load with { Movements = _load.Movements.Add(new(node, movement)) };

    internal void Weigh() => _load = _load with { SelfWeight = new(0, 0, -1) };

    internal FrameModel Model(FrameAnalysisKind kind = FrameAnalysisKind.Linear, bool planar = false, int modes = 1, PathControl? path = null) => new()
    {
        Nodes = [.. _nodes],
        Members = [.. _members],
        LoadCases = [_load],
        Combinations = [new("C", [new(0, 1)])],
        Analysis = new() { Kind = kind, Planar = planar, Modes = modes, Path = path ?? new() },
    };

    internal FrameState Solve(FrameAnalysisKind kind = FrameAnalysisKind.Linear, bool planar = false)
    {
        var answer = FrameSolver.Solve(Model(kind, planar));
        Assert.DoesNotContain(answer.Diagnostics, said => said.Severity == Hoopwright.Diagnostics.Severity.Error);
        return Assert.Single(answer.States);
    }

    internal ImmutableArray<double> Buckle(int modes = 1, bool planar = false)
    {
        var answer = FrameSolver.Solve(Model(FrameAnalysisKind.Buckling, planar, modes));
        Assert.Empty(answer.Diagnostics);
        return Assert.Single(answer.Buckling).Factors;
    }

    internal FrameAnswer Follow(PathControl path, bool planar = false)
    {
        var answer = FrameSolver.Solve(Model(FrameAnalysisKind.LargeDisplacement, planar, path: path));
        Assert.Empty(answer.Diagnostics);
        return answer;
    }

    private static string Name(int at) => (at + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
}
