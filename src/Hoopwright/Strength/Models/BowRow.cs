using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>The bows of a tunnel on one mesh, each with what it carries.</summary>
internal sealed record BowRow
{
    // Half a millimetre: finer than any bow is bent.
    private const double EvenM = 5e-4;

    private BowRow(BowMesh mesh, ImmutableArray<BowPlace> places, double betweenPurlinsM)
    {
        Mesh = mesh;
        Places = places;
        BetweenPurlinsM = betweenPurlinsM;
    }

    /// <summary>The chords of every bow.</summary>
    internal BowMesh Mesh { get; }

    /// <summary>Every bow, front to back.</summary>
    internal ImmutableArray<BowPlace> Places { get; }

    /// <summary>Longest way along a bow between places that a foot or a purlin holds against moving lengthwise, m.</summary>
    internal double BetweenPurlinsM { get; }

    /// <summary>The row of a tunnel whose bows are of steel.</summary>
    internal static BowRow Of(Tunnel tunnel, BowSteel steel)
    {
        PlanePath path = tunnel.Bow.CentreLine;
        Member[] lengthwise = [.. tunnel.Members.Where(member => member.Role is MemberRole.RidgePurlin or MemberRole.Purlin)];
        double[] purlinsM = [.. lengthwise.Select(member => BowMesh.NearestM(path, InPlane(tunnel, member.Start)))];
        Member[] ties = [.. tunnel.Members.Where(member => member.Role == MemberRole.Tie)];
        Member[] braces = [.. tunnel.Members.Where(member => member.Role == MemberRole.CornerBrace)];
        double[] othersM = [.. ties.Take(1).Concat(braces).SelectMany(member => new[] { member.Start, member.End }).Select(point => BowMesh.NearestM(path, InPlane(tunnel, point)))];
        BowMesh mesh = BowMesh.Of(tunnel.Bow, [.. purlinsM, .. othersM]);
        double[] heldM = [0, .. purlinsM.Order(), path.Length.Metres];
        double betweenM = Enumerable.Range(1, heldM.Length - 1).Max(at => heldM[at] - heldM[at - 1]);

        bool isEven = Enumerable.Range(0, mesh.XM.Length).All(at =>
            Math.Abs(mesh.XM[at] + mesh.XM[^(at + 1)] - mesh.XM[0] - mesh.XM[^1]) < EvenM && Math.Abs(mesh.ZM[at] - mesh.ZM[^(at + 1)]) < EvenM);
        ImmutableArray<BowPlace> places = [.. tunnel.Stations.Select((station, index) => Place(tunnel, steel, mesh, station, index, lengthwise, purlinsM, ties, isEven))];
        return new BowRow(mesh, places, betweenM);
    }

    private static BowPlace Place(Tunnel tunnel, BowSteel steel, BowMesh mesh, BowStation station, int index, Member[] lengthwise, double[] purlinsM, Member[] ties, bool isEven)
    {
        double atM = station.Along.Metres;
        double fromM = index == 0 ? atM : (atM + tunnel.Stations[index - 1].Along.Metres) / 2;
        double toM = index == tunnel.Stations.Length - 1 ? atM : (atM + tunnel.Stations[index + 1].Along.Metres) / 2;
        string name = FormattableString.Invariant($"bow-{station.Number:00}");
        Member? tie = ties.FirstOrDefault(member => Math.Abs(member.Start.Y.Metres - atM) < 1e-6);
        BowTie? bowTie = tie is null ? null : new BowTie(
            tie.Id, NodeOf(tunnel, mesh, tie.Start), NodeOf(tunnel, mesh, tie.End), tie.CutLength.Metres, TubeWeights.AreaM2(tie.Section), PressedN(tie, steel.Grade));
        double carriedM = toM - fromM;
        // Boards and roll tubes along the sides hand the wind that meets them to the bows' legs.
        ImmutableArray<BowJoint> joints =
        [
            .. lengthwise.Select((member, at) => new BowJoint(member.Id, mesh.NodeAt(purlinsM[at]), carriedM)),
            .. tunnel.Members.Where(member => member.Role is MemberRole.HipBoard or MemberRole.RollTube).Select(member => new BowJoint(member.Id, NodeOf(tunnel, mesh, member.Start), carriedM)),
        ];
        List<(int, double)> hung = [.. lengthwise.Select((member, at) => (mesh.NodeAt(purlinsM[at]), TubeWeights.NPerM(member.Section) * carriedM))];
        if (tie is not null && bowTie is not null)
        {
            double halfN = TubeWeights.NPerM(tie.Section) * bowTie.LengthM / 2;
            hung.AddRange([(bowTie.FromNode, halfN), (bowTie.ToNode, halfN)]);
        }
        return new BowPlace
        {
            Number = station.Number,
            BowIds = [.. tunnel.Members.Where(member => member.Role == MemberRole.Bow && (member.Id == name || member.Id.StartsWith(name + "-", StringComparison.Ordinal))).Select(member => member.Id)],
            IsEven = isEven,
            FilmFromM = fromM,
            FilmToM = toM,
            Tie = bowTie,
            Joints = joints,
            HungN = [.. hung],
            TubeNPerM = steel.NPerM,
            EaN = Frames.FrameMaterial.Steel.YoungPa * steel.AreaM2,
            ExpansionPerK = Frames.FrameMaterial.Steel.ExpansionPerK,
            AlongM = point => BowMesh.NearestM(tunnel.Bow.CentreLine, new PlanePoint(point.X, point.Z - station.Base)),
        };
    }

    // By the rules that bows are held by, hinged at both ends.
    private static double PressedN(Member tie, SteelGrade grade) => tie.Section.Match(
        tube =>
        {
            var steel = new BowSteel(tube, grade);
            double lengthM = tie.CutLength.Metres;
            return steel.StrengthOf(Buckling.ElasticStressPa(Frames.FrameMaterial.Steel.YoungPa, lengthM, steel.GyrationM), lengthM, DesignMethod.Lrfd).Compression.Strength.Design;
        },
        _ => 0);

    /// <summary>The node of a bow's mesh nearest to a point of the tunnel.</summary>
    internal static int NodeOf(Tunnel tunnel, BowMesh mesh, TunnelPoint point) => mesh.NodeAt(BowMesh.NearestM(tunnel.Bow.CentreLine, InPlane(tunnel, point)));

    // The row follows the fall of the ground; a point is brought to the bow nearest to it.
    private static PlanePoint InPlane(Tunnel tunnel, TunnelPoint point)
    {
        BowStation nearest = tunnel.Stations.MinBy(station => (station.Along - point.Y).Abs()) ?? tunnel.Stations[0];
        return new PlanePoint(point.X, point.Z - nearest.Base);
    }
}
