using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Models;

/// <summary>The posts and girts of one end in the frame of the row, and what wind on the wall puts on each node.</summary>
/// <remarks>
/// A post stands from the ground to the node of the end bow nearest to its top, hinged there, and turns in the ground as its soil lets
/// it. Girts are hinged to posts and bow. The film of the wall spans level between uprights, so each takes half of the way to the next
/// on either side, and the bow the rest; without posts half of the wall's wind goes to the bow and half to the ground. Short uprights over
/// doors, headers and baseboards give no stiffness.
/// </remarks>
internal sealed class EndWallFrame
{
    /// <summary>Stiffness of the wood, E: a post pressed along its length is some thousand times stiffer than a bow, so that it hardly matters.</summary>
    internal static readonly Formula WoodStiffness = new("E", "No. 2 Spruce-Pine-Fir, wet: 0.9·1.4e6 psi", "Pa", Register.NdsSupplement.At("table 4A"));

    private const double WoodPa = 0.9 * 1.4e6 * CustomaryUnits.PsiPa;

    // Shear modulus of wood along the grain, about a sixteenth of E: it takes part in torsion alone, which no load here brings about. It
    // follows the steel in warmth: joint and soil give by the tenths of a millimetre that a leg grows beside a post, and a frame without
    // either would make a great force of them.
    private static readonly FrameMaterial Wood = new(WoodPa, WoodPa / 16, FrameMaterial.Steel.ExpansionPerK);

    // Lower than this an upright is no post, and a girt within it of a post's side ends at the post.
    private const double LeastHeightM = 0.3, TouchM = 0.02;

    private const int Slices = 80;

    private readonly RowFrame _frame;
    private readonly EndWall _end;
    private readonly int _bow;
    private readonly List<(int Node, double AreaM2)> _areas = [];

    internal EndWallFrame(RowFrame frame, Tunnel tunnel, EndWall end)
    {
        (_frame, _end, _bow) = (frame, end, end.IsFront ? 0 : tunnel.Stations.Length - 1);
        Member[] girts = [.. tunnel.Members.Where(member => member.Role == MemberRole.Girt && member.Id.StartsWith(end.Name + "-", StringComparison.Ordinal))];
        Posts = [.. end.Posts.Select(post => Post(tunnel, post, girts)).OfType<EndPostLine>()];
        foreach (Member girt in girts) AddGirt(girt);
        if (Posts.IsEmpty)
            Columns();
        else
            Uprights();
    }

    /// <summary>True for the front end.</summary>
    internal bool IsFront => _end.IsFront;

    /// <summary>Place in the row of its bow, from 0.</summary>
    internal int Bow => _bow;

    /// <summary>Its posts, left to right.</summary>
    internal ImmutableArray<EndPostLine> Posts { get; }

    /// <summary>Every node that takes wind on the wall, with the area of wall that it takes. What goes straight into the ground is not among them.</summary>
    internal IReadOnlyList<(int Node, double AreaM2)> Areas => _areas;

    private EndPostLine? Post(Tunnel tunnel, EndPost post, Member[] girts)
    {
        BowMesh mesh = _frame.Row.Mesh;
        Member member = tunnel.Members.First(each => each.Id == post.MemberId);
        if (member.Section is not BoardSection board) return null;
        double centreM = post.Centre.Metres, groundM = post.Ground.Metres;
        int top = Enumerable.Range(1, mesh.XM.Length - 2).MinBy(node => double.Hypot(mesh.XM[node] - centreM, mesh.ZM[node] - post.TopPoint.Metres));
        double topM = mesh.ZM[top], heightM = topM - groundM;
        if (heightM < LeastHeightM) return null;

        double[] rowsM = [.. girts.Where(girt => Touches(girt.Start.X.Metres) || Touches(girt.End.X.Metres)).Select(girt => (girt.Start.Z - _end.Base).Metres).Where(at => at > groundM && at < topM).Distinct().Order()];
        double[] marksM = Marks([groundM, .. rowsM, topM], heightM / 3);
        double alongM = _end.Along.Metres, x = mesh.XM[top], baseM = _end.Base.Metres;
        double turnNmPerRad = FootRange.PostTurnNmPerRad(FootRange.TakenPaPerM, board.Thickness.Metres, WoodPa * FlatM4(board), post.Embedment.Metres);
        double leanNmPerRad = FootRange.PostTurnNmPerRad(FootRange.TakenPaPerM, board.Thickness.Metres, WoodPa * EdgeM4(board), post.Embedment.Metres);
        int[] nodes = new int[marksM.Length];
        for (int at = 0; at < nodes.Length; at++)
        {
            var place = new Vector3(x, alongM, baseM + marksM[at]);
            nodes[at] = at == nodes.Length - 1 ? _frame.NodeOf(_bow, top)
                : _frame.AddNode(FormattableString.Invariant($"{post.MemberId}-{at}"), place, at == 0 ? Freedoms.Shifts | Freedoms.Rz : Freedoms.None, at == 0 ? new SixValues(0, 0, 0, leanNmPerRad, turnNmPerRad, 0) : null);
        }
        // Local z of an upright lies across the tunnel: its thickness there, its depth along the tunnel.
        FrameSection section = FrameSection.Rectangle(board.Depth.Metres, board.Thickness.Metres);
        var piece = new RowPiece(member, RowKind.EndPost, null, _bow, heightM);
        int first = _frame.Members.Count;
        for (int at = 1; at < nodes.Length; at++)
            _frame.Add(piece, nodes[at - 1], nodes[at], section, Wood, Freedoms.None, at == nodes.Length - 1 ? Freedoms.Turns : Freedoms.None);
        return new EndPostLine(post, member, board, x, [.. marksM], [.. nodes], first);

        bool Touches(double edgeM) => Math.Abs(edgeM - centreM) < (post.Width.Metres / 2) + TouchM;
    }

    // No piece longer than asked, so that its bending shows at its ends.
    private static double[] Marks(double[] givenM, double longestM)
    {
        List<double> marksM = [givenM[0]];
        foreach (double nextM in givenM.Skip(1))
        {
            double fromM = marksM[^1];
            int parts = (int)Math.Ceiling(((nextM - fromM) / longestM) - 1e-9);
            for (int part = 1; part <= parts; part++) marksM.Add(fromM + ((nextM - fromM) * part / parts));
        }
        return [.. marksM];
    }

    private void AddGirt(Member girt)
    {
        if (girt.Section is not BoardSection board) return;
        double heightM = (girt.Start.Z - _end.Base).Metres;
        (int from, int to) = (End(girt.Start.X.Metres), End(girt.End.X.Metres));
        double lengthM = (_frame.Nodes[to].PlaceM - _frame.Nodes[from].PlaceM).Size;
        // Between posts that prop the bow at one node there is nothing to hold apart.
        if (lengthM < LeastHeightM) return;
        // It lies with its wide side in the wall.
        FrameSection section = FrameSection.Rectangle(board.Thickness.Metres, board.Depth.Metres);
        _frame.Add(new RowPiece(girt, RowKind.Girt, null, _bow, lengthM), from, to, section, Wood, Freedoms.Ry | Freedoms.Rz, Freedoms.Ry | Freedoms.Rz);

        int End(double edgeM)
        {
            EndPostLine? post = Posts.FirstOrDefault(each => Math.Abs(each.Post.Centre.Metres - edgeM) < (each.Post.Width.Metres / 2) + TouchM);
            if (post?.NodeAt(heightM) is { } node) return node;
            BowMesh mesh = _frame.Row.Mesh;
            return _frame.NodeOf(_bow, Enumerable.Range(0, mesh.XM.Length).MinBy(each => double.Hypot(mesh.XM[each] - edgeM, mesh.ZM[each] - heightM)));
        }
    }

    // Without posts the film spans from the bow to the ground.
    private void Columns()
    {
        BowMesh mesh = _frame.Row.Mesh;
        for (int node = 1; node < mesh.XM.Length - 1; node++)
        {
            double widthM = Math.Abs(mesh.XM[node + 1] - mesh.XM[node - 1]) / 2;
            Take(_frame.NodeOf(_bow, node), widthM * mesh.ZM[node] / 2);
        }
    }

    private void Uprights()
    {
        BowMesh mesh = _frame.Row.Mesh;
        double peakM = mesh.ZM.Max(), sliceM = peakM / Slices;
        for (int slice = 0; slice < Slices; slice++)
        {
            double heightM = (slice + 0.5) * sliceM;
            (double leftM, List<(int Node, double Share)> left) = Edge(heightM, fromLeft: true);
            (double rightM, List<(int Node, double Share)> right) = Edge(heightM, fromLeft: false);
            List<(double AtM, List<(int Node, double Share)> Nodes)> uprights = [(leftM, left)];
            uprights.AddRange(Posts.Where(post => post.XM > leftM && post.XM < rightM && post.MarksM[^1] > heightM).Select(post => (post.XM, post.SharesAt(heightM))));
            uprights.Add((rightM, right));
            for (int at = 1; at < uprights.Count; at++)
            {
                double halfM2 = (uprights[at].AtM - uprights[at - 1].AtM) * sliceM / 2;
                foreach ((int node, double share) in uprights[at - 1].Nodes.Concat(uprights[at].Nodes)) Take(node, halfM2 * share);
            }
        }
    }

    // Where the bow stands at a height, and its nodes below and above.
    private (double XM, List<(int Node, double Share)> Nodes) Edge(double heightM, bool fromLeft)
    {
        BowMesh mesh = _frame.Row.Mesh;
        for (int at = 0; at < mesh.Chords; at++)
        {
            (int low, int high) = fromLeft ? (at, at + 1) : (mesh.Chords - at, mesh.Chords - at - 1);
            if (mesh.ZM[low] > heightM || mesh.ZM[high] < heightM || mesh.ZM[high] <= mesh.ZM[low]) continue;
            double share = (heightM - mesh.ZM[low]) / (mesh.ZM[high] - mesh.ZM[low]);
            return (mesh.XM[low] + (share * (mesh.XM[high] - mesh.XM[low])), [(_frame.NodeOf(_bow, low), 1 - share), (_frame.NodeOf(_bow, high), share)]);
        }
        int crown = Enumerable.Range(0, mesh.ZM.Length).MaxBy(node => mesh.ZM[node]);
        return (mesh.XM[crown], [(_frame.NodeOf(_bow, crown), 1)]);
    }

    private void Take(int node, double areaM2)
    {
        int known = _areas.FindIndex(each => each.Node == node);
        if (known < 0)
            _areas.Add((node, areaM2));
        else
            _areas[known] = (node, _areas[known].AreaM2 + areaM2);
    }

    private static double FlatM4(BoardSection board) => board.Depth.Metres * Math.Pow(board.Thickness.Metres, 3) / 12;

    private static double EdgeM4(BoardSection board) => board.Thickness.Metres * Math.Pow(board.Depth.Metres, 3) / 12;
}
