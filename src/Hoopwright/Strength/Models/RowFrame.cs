using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>The whole row of bows in space: bows, purlins, ties and corner braces, for loads along the tunnel and for the row's own buckling.</summary>
/// <remarks>
/// Lengthwise tubes are joined to the middle of the bows and hinged at each; ties and braces are hinged. Feet are held in place and
/// against turning about the upright, and turn in both other ways as the ground lets them. End walls give no stiffness: their posts only
/// hand half of the pressure on the end to the end bow.
/// </remarks>
internal sealed class RowFrame
{
    private readonly Tunnel _tunnel;
    private readonly BowRow _row;
    private readonly int _perBow;
    private readonly List<FrameNode> _nodes = [];
    private readonly List<FrameMember> _members = [];
    private readonly List<(Member Member, BowSteel Steel)> _parts = [];

    internal RowFrame(Tunnel tunnel, BowRow row, BowSteel bows, PlanarFoot foot)
    {
        (_tunnel, _row, _perBow) = (tunnel, row, row.Mesh.XM.Length);
        foreach (BowStation station in tunnel.Stations)
            AddBow(station, foot);
        for (int bow = 0; bow < tunnel.Stations.Length; bow++)
        {
            Member member = tunnel.Members.First(each => row.Places[bow].BowIds.Contains(each.Id));
            for (int chord = 0; chord < row.Mesh.Chords; chord++)
                AddMember(member, bows, NodeOf(bow, chord), NodeOf(bow, chord + 1), Freedoms.None);
        }
        foreach (Member member in tunnel.Members)
            AddLengthwise(member, bows.Grade);
    }

    /// <summary>The layout member and the steel of every frame member, in the frame's order.</summary>
    internal IReadOnlyList<(Member Member, BowSteel Steel)> Parts => _parts;

    /// <summary>The frame under combinations of load cases.</summary>
    /// <param name="loads">The cases.</param>
    /// <param name="combinations">The combinations, each with the lean of its notional loads along the tunnel.</param>
    /// <param name="kind">How it is to be solved.</param>
    internal FrameModel Model(TunnelLoads loads, IEnumerable<LoadedCase> combinations, FrameAnalysisKind kind)
    {
        LoadedCase[] all = [.. combinations];
        return new FrameModel
        {
            Nodes = [.. _nodes],
            Members = [.. _members],
            LoadCases = [.. all.Select(each => new FrameLoadCase(each.Code) { Nodes = NodeLoads(loads, each) })],
            Combinations = [.. all.Select((each, at) => new FrameCombination(each.Code, [new CombinationPart(at, 1)]))],
            Analysis = new FrameAnalysis { Kind = kind, Modes = 1, Tolerance = 1e-8 },
        };
    }

    private void AddBow(BowStation station, PlanarFoot foot)
    {
        for (int node = 0; node < _perBow; node++)
        {
            bool isFoot = node == 0 || node == _perBow - 1;
            var place = new Vector3(_row.Mesh.XM[node], station.Along.Metres, station.Base.Metres + _row.Mesh.ZM[node]);
            bool isFixed = double.IsPositiveInfinity(foot.TurnNmPerRad);
            Freedoms held = isFoot ? (isFixed ? Freedoms.All : Freedoms.Shifts | Freedoms.Rz) : Freedoms.None;
            SixValues? springs = isFoot && !isFixed ? new SixValues(0, 0, 0, foot.TurnNmPerRad, foot.TurnNmPerRad, 0) : null;
            _nodes.Add(new FrameNode(FormattableString.Invariant($"{station.Number}-{node}"), place) { Held = held, Springs = springs });
        }
    }

    private void AddLengthwise(Member member, SteelGrade grade)
    {
        if (member.Section is not Layout.TubeSection { Material: TubeMaterial.GalvanizedSteel } section) return;
        var steel = new BowSteel(section, grade);
        switch (member.Role)
        {
            case MemberRole.RidgePurlin or MemberRole.Purlin:
                int node = BowRow.NodeOf(_tunnel, _row.Mesh, member.Start);
                for (int bow = 1; bow < _tunnel.Stations.Length; bow++)
                    AddMember(member, steel, NodeOf(bow - 1, node), NodeOf(bow, node), Freedoms.None);
                break;
            case MemberRole.Tie or MemberRole.CornerBrace:
                AddMember(member, steel, Nearest(member.Start), Nearest(member.End), Freedoms.Ry | Freedoms.Rz);
                break;
            default:
                break;
        }
    }

    private void AddMember(Member member, BowSteel steel, int from, int to, Freedoms hinges)
    {
        const double Factor = DirectAnalysis.StiffnessFactor;
        FrameMaterial material = FrameMaterial.Steel;
        _parts.Add((member, steel));
        _members.Add(new FrameMember
        {
            Id = FormattableString.Invariant($"{member.Id} {_members.Count}"),
            From = from,
            To = to,
            Section = new FrameSection(steel.AreaM2, steel.SecondM4, steel.SecondM4, steel.TorsionM4),
            Material = material with { YoungPa = material.YoungPa * Factor, ShearPa = material.ShearPa * Factor },
            ReleaseFrom = hinges,
            ReleaseTo = hinges,
        });
    }

    private ImmutableArray<NodeLoad> NodeLoads(TunnelLoads loads, LoadedCase combination)
    {
        var forces = new double[6 * _nodes.Count];
        foreach (BowTerm term in combination.Fixed)
        {
            LoadCase load = loads.Cases[term.Load];
            for (int bow = 0; bow < _row.Places.Length; bow++)
                AddInPlane(forces, bow, BowLoad.Of(load, _row.Mesh, _row.Places[bow]), term.Times);
            foreach (EndPressure end in load.Ends)
                AddEnd(forces, end.IsFront ? 0 : _row.Places.Length - 1, end.AlongTunnel.Pascals * term.Times);
        }
        return [.. Enumerable.Range(0, _nodes.Count).Select(node => new NodeLoad(
            node, new SixValues(forces[6 * node], forces[(6 * node) + 1], forces[(6 * node) + 2], forces[(6 * node) + 3], forces[(6 * node) + 4], forces[(6 * node) + 5])))];
    }

    private void AddInPlane(double[] forces, int bow, BowLoad load, double times)
    {
        for (int node = 0; node < _perBow; node++)
        {
            int at = 6 * NodeOf(bow, node);
            forces[at] += load.Applied[3 * node] * times;
            forces[at + 2] += load.Applied[(3 * node) + 1] * times;
            // Out of plumb along the tunnel, as the code asks of every direction.
            forces[at + 1] += DirectAnalysis.NotionalLoadPartWithoutTau * Math.Max(0, load.DownN[node]) * times;
        }
        for (int chord = 0; chord < _row.Mesh.Chords; chord++)
        {
            (double c, double s) = _row.Mesh.Direction(chord);
            for (int end = 0; end < 2; end++)
            {
                int from = (6 * chord) + (3 * end), at = 6 * NodeOf(bow, chord + end);
                double along = load.Spread[from] * times, left = load.Spread[from + 1] * times;
                forces[at] += (c * along) - (s * left);
                forces[at + 2] += (s * along) + (c * left);
                // Turning from x to z is against turning about y.
                forces[at + 4] -= load.Spread[from + 2] * times;
            }
        }
    }

    // Posts stand on the ground and lean on the bow: half of the pressure over each goes to the bow.
    private void AddEnd(double[] forces, int bow, double alongPa)
    {
        for (int node = 1; node < _perBow - 1; node++)
        {
            double widthM = Math.Abs(_row.Mesh.XM[node + 1] - _row.Mesh.XM[node - 1]) / 2;
            forces[(6 * NodeOf(bow, node)) + 1] += alongPa * widthM * _row.Mesh.ZM[node] / 2;
        }
    }

    private int NodeOf(int bow, int node) => (bow * _perBow) + node;

    private int Nearest(TunnelPoint point)
    {
        int bow = Enumerable.Range(0, _tunnel.Stations.Length).MinBy(at => Math.Abs((_tunnel.Stations[at].Along - point.Y).Metres));
        return NodeOf(bow, BowRow.NodeOf(_tunnel, _row.Mesh, point));
    }
}
