using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>The whole row of bows in space: bows, purlins, ties, corner braces, and the posts and girts of framed ends.</summary>
/// <remarks>
/// Lengthwise tubes run through, joined to the middle of the bows; ties and braces are hinged. Feet are held in place and against
/// turning about the upright, and turn in both other ways as the ground lets them.
/// </remarks>
internal sealed class RowFrame
{
    private readonly Tunnel _tunnel;
    private readonly int _perBow;
    private readonly List<FrameNode> _nodes = [];
    private readonly List<FrameMember> _members = [];
    private readonly List<RowPiece> _pieces = [];
    private readonly Dictionary<string, IReadOnlyList<int>> _of = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (int From, int To, double LengthM)?> _beside = new(StringComparer.Ordinal);

    /// <summary>Makes the frame of a row.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="row">Its bows.</param>
    /// <param name="bows">Their tube.</param>
    /// <param name="foot">How their feet stand.</param>
    internal RowFrame(Tunnel tunnel, BowRow row, BowSteel bows, PlanarFoot foot)
    {
        (_tunnel, Row, _perBow) = (tunnel, row, row.Mesh.XM.Length);
        foreach (BowStation station in tunnel.Stations)
            AddBow(station, foot);
        for (int bow = 0; bow < tunnel.Stations.Length; bow++)
        {
            Member member = tunnel.Members.First(each => row.Places[bow].BowIds.Contains(each.Id));
            bool isEnd = bow == 0 || bow == tunnel.Stations.Length - 1;
            var piece = new RowPiece(member, isEnd ? RowKind.EndBow : RowKind.Bow, bows, bow, row.BetweenPurlinsM);
            for (int chord = 0; chord < row.Mesh.Chords; chord++)
                AddTube(piece, bows, NodeOf(bow, chord), NodeOf(bow, chord + 1), Freedoms.None);
        }
        foreach (Member member in tunnel.Members)
            AddLengthwise(member, bows.Grade);
        Ends = [.. tunnel.Ends.Select(end => new EndWallFrame(this, tunnel, end))];
        foreach (var group in Enumerable.Range(0, _pieces.Count).GroupBy(at => _pieces[at].Member.Id)) _of[group.Key] = [.. group];
        foreach (string other in row.Places.SelectMany(place => place.BowIds)) _of.TryAdd(other, []);
    }

    /// <summary>The bows.</summary>
    internal BowRow Row { get; }

    /// <summary>The nodes; first those of the bows, front to back, each from its left foot to its right one.</summary>
    internal IReadOnlyList<FrameNode> Nodes => _nodes;

    /// <summary>The members.</summary>
    internal IReadOnlyList<FrameMember> Members => _members;

    /// <summary>What each member stands for, in the same order.</summary>
    internal IReadOnlyList<RowPiece> Pieces => _pieces;

    /// <summary>The two ends, front first.</summary>
    internal ImmutableArray<EndWallFrame> Ends { get; }

    /// <summary>A node of a bow.</summary>
    /// <param name="bow">Its place in the row, from 0.</param>
    /// <param name="node">The node of its mesh.</param>
    internal int NodeOf(int bow, int node) => (bow * _perBow) + node;

    /// <summary>The node nearest to a place.</summary>
    internal int Nearest(TunnelPoint point)
    {
        var placeM = new Vector3(point.X.Metres, point.Y.Metres, point.Z.Metres);
        (int nearest, double awayM) = (0, double.PositiveInfinity);
        for (int node = 0; node < _nodes.Count; node++)
        {
            double eachM = (_nodes[node].PlaceM - placeM).Size;
            if (eachM < awayM) (nearest, awayM) = (node, eachM);
        }
        return nearest;
    }

    /// <summary>The frame members that a layout member became; all of a bow stand under the first of its pieces. Null for one that is not in the frame.</summary>
    internal IReadOnlyList<int>? MembersOf(string id) => _of.GetValueOrDefault(id);

    /// <summary>For a layout member that is not in the frame: the nodes nearest to its ends, and its length; null for none of that name.</summary>
    internal (int From, int To, double LengthM)? BesideOf(string id)
    {
        if (!_beside.TryGetValue(id, out var beside) && _tunnel.Members.FirstOrDefault(each => each.Id == id) is { } member)
            _beside[id] = beside = (Nearest(member.Start), Nearest(member.End), member.CutLength.Metres);
        return beside;
    }

    /// <summary>Adds a node.</summary>
    internal int AddNode(string id, Vector3 placeM, Freedoms held, SixValues? springs)
    {
        _nodes.Add(new FrameNode(id, placeM) { Held = held, Springs = springs });
        return _nodes.Count - 1;
    }

    /// <summary>Adds a member.</summary>
    internal void Add(RowPiece piece, int from, int to, FrameSection section, FrameMaterial material, Freedoms releaseFrom, Freedoms releaseTo)
    {
        _pieces.Add(piece);
        _members.Add(new FrameMember
        {
            Id = FormattableString.Invariant($"{piece.Member.Id} {_members.Count}"),
            From = from,
            To = to,
            Section = section,
            Material = material,
            ReleaseFrom = releaseFrom,
            ReleaseTo = releaseTo,
        });
    }

    private void AddBow(BowStation station, PlanarFoot foot)
    {
        for (int node = 0; node < _perBow; node++)
        {
            bool isFoot = node == 0 || node == _perBow - 1, isFixed = double.IsPositiveInfinity(foot.TurnNmPerRad);
            var place = new Vector3(Row.Mesh.XM[node], station.Along.Metres, station.Base.Metres + Row.Mesh.ZM[node]);
            Freedoms held = isFoot ? (isFixed ? Freedoms.All : Freedoms.Shifts | Freedoms.Rz) : Freedoms.None;
            SixValues? springs = isFoot && !isFixed ? new SixValues(0, 0, 0, foot.TurnNmPerRad, foot.TurnNmPerRad, 0) : null;
            AddNode(FormattableString.Invariant($"{station.Number}-{node}"), place, held, springs);
        }
    }

    private void AddLengthwise(Member member, SteelGrade grade)
    {
        if (member.Section is not Layout.TubeSection { Material: TubeMaterial.GalvanizedSteel } section) return;
        var steel = new BowSteel(section, grade);
        switch (member.Role)
        {
            case MemberRole.RidgePurlin or MemberRole.Purlin:
                AddPurlin(member, steel);
                break;
            case MemberRole.Tie or MemberRole.CornerBrace:
                (int from, int to) = (NearestOnBow(member.Start), NearestOnBow(member.End));
                double lengthM = (_nodes[to].PlaceM - _nodes[from].PlaceM).Size;
                bool isTie = member.Role == MemberRole.Tie;
                AddTube(new RowPiece(member, isTie ? RowKind.Tie : RowKind.Brace, steel, isTie ? from / _perBow : -1, lengthM), steel, from, to, Freedoms.Ry | Freedoms.Rz);
                break;
            default:
                break;
        }
    }

    // A person hangs on it at the middle of the middle bay: there it has a node of its own.
    private void AddPurlin(Member member, BowSteel steel)
    {
        int node = BowRow.NodeOf(_tunnel, Row.Mesh, member.Start), middle = _tunnel.Bays / 2;
        for (int bow = 1; bow < _tunnel.Stations.Length; bow++)
        {
            (int from, int to) = (NodeOf(bow - 1, node), NodeOf(bow, node));
            Vector3 fromM = _nodes[from].PlaceM, toM = _nodes[to].PlaceM;
            var piece = new RowPiece(member, RowKind.Purlin, steel, -1, (toM - fromM).Size);
            if (bow - 1 == middle)
            {
                int between = AddNode(member.Id + "-middle", (fromM + toM) * 0.5, Freedoms.None, null);
                AddTube(piece, steel, from, between, Freedoms.None);
                from = between;
            }
            AddTube(piece, steel, from, to, Freedoms.None);
        }
    }

    private void AddTube(RowPiece piece, BowSteel steel, int from, int to, Freedoms hinges)
    {
        FrameMaterial material = FrameMaterial.Steel;
        const double Factor = DirectAnalysis.StiffnessFactor;
        Add(piece, from, to, new FrameSection(steel.AreaM2, steel.SecondM4, steel.SecondM4, steel.TorsionM4),
            material with { YoungPa = material.YoungPa * Factor, ShearPa = material.ShearPa * Factor }, hinges, hinges);
    }

    private int NearestOnBow(TunnelPoint point)
    {
        int bow = Enumerable.Range(0, _tunnel.Stations.Length).MinBy(at => Math.Abs((_tunnel.Stations[at].Along - point.Y).Metres));
        return NodeOf(bow, BowRow.NodeOf(_tunnel, Row.Mesh, point));
    }
}
