using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Models;

/// <summary>The whole tunnel in space, part by part, from the same lengths, lines and arcs as the drawings.</summary>
internal sealed class TunnelModel
{
    // No chord leaves its arc by more than this.
    private static readonly Length Sag = Length.FromMillimetres(0.5);
    private static readonly Length Same = Length.FromMillimetres(0.001);
    private static readonly Point3 AlongTheTunnel = new(0, 1, 0);
    private readonly Tunnel _tunnel;
    private readonly Dictionary<string, Solid> _alike = new(StringComparer.Ordinal);

    private TunnelModel(Tunnel tunnel) => _tunnel = tunnel;

    /// <summary>The tunnel as groups: ground, bows, lengthwise tubes, sides, ends with their doors, film.</summary>
    public static ImmutableArray<Part> Of(Tunnel tunnel)
    {
        TunnelModel model = new(tunnel);
        HashSet<string> ofLeaves = [.. tunnel.Ends.SelectMany(end => end.Doors).SelectMany(door => door.Leaves).SelectMany(leaf => leaf.MemberIds)];
        ILookup<string, Part> members = tunnel.Members.Where(member => !ofLeaves.Contains(member.Id)).ToLookup(Group, model.Of);
        ImmutableArray<Part> groups =
        [
            new Part("ground") { Parts = [model.Ground(), .. tunnel.Holes.Select(model.Hole)] },
            .. members.Select(group => new Part(group.Key) { Parts = [.. group] }),
            .. tunnel.Ends.SelectMany(end => end.Doors.Select(door => model.Door(end, door))),
            new Part("film") { Parts = [.. model.Films()] },
        ];
        return [.. groups.Where(group => !group.Parts.IsEmpty)];
    }

    private static string Group(Member member) => member.Role switch
    {
        MemberRole.Bow => "bows",
        MemberRole.Tie or MemberRole.RidgePurlin or MemberRole.Purlin or MemberRole.CornerBrace => "ties, purlins and braces",
        MemberRole.GroundPost => "ground posts",
        MemberRole.Baseboard or MemberRole.HipBoard or MemberRole.RollTube => member.Id.StartsWith("left", StringComparison.Ordinal) ? "left side" : "right side",
        MemberRole.EndPost or MemberRole.Cripple or MemberRole.Girt or MemberRole.EndBaseboard or MemberRole.Header or MemberRole.Jamb or MemberRole.VentRail
            or MemberRole.LeafStile or MemberRole.LeafRail or MemberRole.LeafBrace => member.Id.StartsWith("front", StringComparison.Ordinal) ? "front end" : "back end",
    };

    private Part Of(Member member)
    {
        (Solid solid, Point3 at) = member.Curve is { } curve && member.Section is TubeSection bent ? (Bent(curve, bent), Station(member)) : (Straight(member), In(member.Start));
        return new Part(member.Id)
        {
            Solid = solid,
            At = at,
            Material = member.Section.Match(tube => tube.Material == TubeMaterial.Pvc ? Material.Plastic : Material.Steel, _ => Material.Lumber),
            Facts = [("role", member.Role.ToString()), ("place", member.Place), ("section", member.Section.Size), ("cutLengthM", Metres(member.CutLength))],
        };
    }

    // The curve is drawn from the bow's own zero: its left ground line.
    private static Point3 Station(Member member) => new(0, member.Start.Y.Metres, (member.Start.Z - member.Curve!.Start.Up).Metres);

    private Solid Bent(PlanePath curve, TubeSection tube) => Alike($"bent {Metres(curve.Start.Across)} {Metres(curve.End.Across)} {Metres(curve.Length)} {Metres(tube.Outside)} {tube.Form}", () =>
    {
        List<(Point3 At, Point3 Way, double Stretch)> line = [];
        foreach (PathSegment segment in curve.Segments)
        {
            int chords = segment is ArcSegment arc
                ? (int)Math.Ceiling(Math.Abs(arc.Sweep.Radians) / (2 * Math.Acos(1 - (Sag.Metres / Math.Max(arc.Radius.Metres, Sag.Metres))))) : 1;
            for (int step = 0; step <= chords; step++)
            {
                Length into = segment.Length * step / chords;
                PlanePoint at = segment.PointAt(into);
                (Point3 here, Point3 way) = (new Point3(at.Across.Metres, 0, at.Up.Metres), WayOf(segment.DirectionAt(into)));
                if (step == 0 && line.Count > 0) line[^1] = Halved(here, line[^1].Way, way);
                else line.Add((here, way, 1));
            }
        }
        // Pieces that meet at a corner of the bow are mitred as well.
        line[0] = Mitred(line[0], curve.Start);
        line[^1] = Mitred(line[^1], curve.End);
        return new Solid().Tube(line, AlongTheTunnel, tube.Outside.Metres / 2);
    });

    private (Point3 At, Point3 Way, double Stretch) Mitred((Point3 At, Point3 Way, double Stretch) end, PlanePoint at)
    {
        foreach ((PathSegment before, PathSegment after) in _tunnel.Bow.CentreLine.Segments.Zip(_tunnel.Bow.CentreLine.Segments.Skip(1)))
        {
            if ((before.End.Across - at.Across).Abs() > Same || (before.End.Up - at.Up).Abs() > Same) continue;
            return Halved(end.At, WayOf(before.DirectionAt(before.Length)), WayOf(after.DirectionAt(Length.Zero)));
        }
        return end;
    }

    /// <summary>The ring between two tubes that meet: in the plane that halves their corner, and so much longer in the plane of the bow.</summary>
    private static (Point3 At, Point3 Way, double Stretch) Halved(Point3 at, Point3 before, Point3 after)
    {
        Point3 half = (before + after).Unit();
        return (at, half, 1 / ((half.X * after.X) + (half.Z * after.Z)));
    }

    private static Point3 WayOf(Angle direction) => new(Math.Cos(direction.Radians), 0, Math.Sin(direction.Radians));

    private Solid Straight(Member member)
    {
        Point3 end = In(member.End) - In(member.Start);
        return member.Section.Match(
            tube => Alike($"tube {Key(end)} {Metres(tube.Outside)} {tube.Form}", () => tube.Form == TubeForm.Round
                ? new Solid().Tube([(default, end.Unit(), 1), (end, end.Unit(), 1)], SquareTo(end), tube.Outside.Metres / 2)
                : new Solid().Bar(end, SquareTo(end), tube.Outside.Metres / 2, tube.Outside.Metres / 2)),
            board => Board(member, board, end));
    }

    private Solid Board(Member member, BoardSection board, Point3 end)
    {
        double thin = board.Thickness.Metres / 2, deep = board.Depth.Metres / 2;
        // How much of the board lies along the tunnel, and how much across it or upright.
        (double along, double other) = member.Role switch
        {
            MemberRole.EndPost or MemberRole.Jamb => (deep, thin),
            _ => (thin, deep),
        };
        if (member.Bevel is { } bevel)
        {
            (double left, double right, double point) = (bevel.LeftHeight.Metres, bevel.RightHeight.Metres, bevel.Point.Metres);
            bool isRidge = point > Math.Max(left, right) + 1e-9;
            return Alike($"bevelled {Metres(bevel.LeftHeight)} {Metres(bevel.RightHeight)} {Metres(bevel.Point)} {along:R} {other:R}", () =>
                new Solid().Prism(isRidge ? [(-other, 0), (other, 0), (other, right), (0, point), (-other, left)] : [(-other, 0), (other, 0), (other, right), (-other, left)], -along, along));
        }
        // Boards along the sides stand upright on their thin edge; all others have their thickness along the tunnel.
        Point3 side = member.Role is MemberRole.Baseboard or MemberRole.HipBoard ? new Point3(1, 0, 0) : AlongTheTunnel;
        return Alike($"board {Key(end)} {Key(side)} {along:R} {other:R}", () => new Solid().Bar(end, side, along, other));
    }

    private Part Hole(ConcreteHole hole)
    {
        double radius = hole.Diameter.Metres / 2, post = Math.Min(radius, Math.Sqrt(hole.PostArea.SquareMetres / Math.PI));
        return new Part(hole.Id)
        {
            Solid = Alike($"hole {Metres(hole.Diameter)} {Metres(hole.Depth)} {Metres(hole.CollarRise)} {post:R}", () =>
                new Solid().Turned((0, -hole.Depth.Metres), (radius, -hole.Depth.Metres), (radius, 0), (post, hole.CollarRise.Metres), (0, hole.CollarRise.Metres))),
            At = In(hole.Centre),
            Material = Material.Concrete,
            Facts = [("role", "Concrete"), ("for", hole.PostId), ("volumeM3", hole.Volume.CubicMetres.ToString("0.######", System.Globalization.CultureInfo.InvariantCulture))],
        };
    }

    private Part Ground()
    {
        Solid ground = new();
        double span = _tunnel.Span.Metres;
        foreach ((BowStation near, BowStation far) in _tunnel.Stations.Zip(_tunnel.Stations.Skip(1)))
        {
            // Two triangles: four corners of a twisted field do not lie in a plane.
            Point3 a = new(0, near.Along.Metres, near.GroundLeft.Metres), b = new(span, near.Along.Metres, near.GroundRight.Metres);
            Point3 c = new(span, far.Along.Metres, far.GroundRight.Metres), d = new(0, far.Along.Metres, far.GroundLeft.Metres);
            ground.Face(a, b, c).Face(a, c, d);
        }
        return new Part("ground under the tunnel") { Solid = ground, Material = Material.Earth };
    }

    private Part Door(EndWall end, DoorOpening door)
    {
        double outside = Outside(end), inward = end.IsFront ? 1 : -1;
        IEnumerable<Part> parts = door.Leaves.Select(leaf =>
        {
            Point3 low = new(leaf.Left.Metres, outside, (end.Base + leaf.Bottom).Metres);
            Part cover = new(leaf.Id + "-cover")
            {
                Solid = new Solid().Face(default, new Point3(leaf.Width.Metres, 0, 0), new Point3(leaf.Width.Metres, 0, leaf.Height.Metres), new Point3(0, 0, leaf.Height.Metres)),
                At = low,
                Material = door.LeafCover == LeafCover.Sheet ? Material.Sheet : Material.Film,
            };
            return new Part(leaf.Id) { Parts = [.. _tunnel.Members.Where(member => leaf.MemberIds.Contains(member.Id)).Select(Of), cover] };
        });
        if (door.Leaves.IsEmpty)
        {
            double half = door.ClearWidth.Metres / 2, height = door.ClearHeight.Metres;
            parts = [new Part(door.Id + "-panel")
            {
                Solid = new Solid().Prism([(-half, 0), (half, 0), (half, height), (-half, height)], 0, 0.03),
                At = new Point3(door.Centre.Metres, outside + (inward * 0.05), end.Base.Metres),
                Material = Material.Sheet,
            }];
        }
        return new Part(door.Id) { Parts = [.. parts], Facts = [("role", "Door"), ("kind", door.Kind.ToString())] };
    }

    private IEnumerable<Part> Films()
    {
        PlanePath film = _tunnel.Bow.FilmLine;
        (Length left, Length right) = (Hem(_tunnel.Left), Hem(_tunnel.Right));
        yield return Sheet("roof-film", film.Between(left, film.Length - right));
        foreach (SideWall side in _tunnel.Sides.Where(side => side.Kind != SideKind.Fixed))
        {
            Length foot = DistanceTo(side.BaseboardHeight - side.OverlapBelow);
            yield return Sheet(side.Name + "-curtain", side.IsLeft ? film.Between(foot, left) : film.Between(film.Length - right, film.Length - foot));
        }
        foreach (EndWall end in _tunnel.Ends.Where(end => end.Closing == EndClosing.Framed)) yield return EndFilm(end);
    }

    private Length Hem(SideWall side) => side.Kind == SideKind.Fixed ? DistanceTo(side.BaseboardHeight) : side.ArcToHip;

    private Length DistanceTo(Length height) => _tunnel.Bow.FilmLine.CrossingsAtHeight(Length.Max(height, Length.Zero)) is [var first, ..] ? first.Distance : Length.Zero;

    /// <summary>Film over every bow between two places of the film line, a strip from bow to bow.</summary>
    private Part Sheet(string name, PlanePath? over)
    {
        Solid sheet = new();
        ImmutableArray<PlanePoint> line = over?.Outline(Sag) ?? [];
        foreach ((BowStation near, BowStation far) in _tunnel.Stations.Zip(_tunnel.Stations.Skip(1)))
        {
            foreach ((PlanePoint a, PlanePoint b) in line.Zip(line.Skip(1)))
                sheet.Face(On(a, near), On(b, near), On(b, far), On(a, far));
        }
        return new Part(name) { Solid = sheet, Material = Material.Film, Facts = [("role", "Film")] };

        static Point3 On(PlanePoint point, BowStation bow) => new(point.Across.Metres, bow.Along.Metres, (bow.Base + point.Up).Metres);
    }

    /// <summary>Film of an end, in upright strips under the film line, with the rough openings of doors left free.</summary>
    private Part EndFilm(EndWall end)
    {
        PlanePath film = end.Bow.FilmLine;
        double[] places = [.. film.Outline(Sag).Select(point => point.Across.Metres).Concat(end.Doors.SelectMany(door => (double[])[door.RoughLeft.Metres, door.RoughRight.Metres])).Order()];
        double y = Outside(end), up = end.Base.Metres;
        Solid sheet = new();
        foreach ((double from, double to) in places.Zip(places.Skip(1)))
        {
            if (to - from < 1e-6) continue;
            (double fromTop, double fromFoot) = Heights(from);
            (double toTop, double toFoot) = Heights(to);
            double middle = (from + to) / 2;
            DoorOpening? door = end.Doors.FirstOrDefault(each => middle > each.RoughLeft.Metres && middle < each.RoughRight.Metres);
            if (door is not null) (fromFoot, toFoot) = (door.FrameTop.Metres, door.FrameTop.Metres);
            Point3[] around = [new(from, y, up + fromFoot), new(to, y, up + toFoot), new(to, y, up + toTop), new(from, y, up + fromTop)];
            sheet.Face(end.IsFront ? around : [.. around.Reverse()]);
        }
        return new Part(end.Name + "-end-film") { Solid = sheet, Material = Material.Film, Facts = [("role", "Film")] };

        (double Top, double Foot) Heights(double across)
        {
            HeightRange? range = film.HeightRangeAt(Length.FromMetres(across));
            bool isPastFoot = across < film.Start.Across.Metres || across > film.End.Across.Metres;
            return (range?.Highest.Metres ?? 0, isPastFoot ? range?.Lowest.Metres ?? 0 : 0);
        }
    }

    /// <summary>The outer face of an end, which posts and boards are flush with.</summary>
    private double Outside(EndWall end) => (end.Along + (_tunnel.BowTube.Outside / (end.IsFront ? -2 : 2))).Metres;

    private Solid Alike(string key, Func<Solid> make)
    {
        if (!_alike.TryGetValue(key, out Solid? solid)) _alike.Add(key, solid = make());
        return solid;
    }

    private static Point3 SquareTo(Point3 way) => Math.Abs(way.Y) > 0.9 * way.Size ? new Point3(1, 0, 0).Cross(way).Unit() : way.Cross(AlongTheTunnel).Unit();

    private static Point3 In(TunnelPoint point) => new(point.X.Metres, point.Y.Metres, point.Z.Metres);

    private static string Key(Point3 point) => FormattableString.Invariant($"{point.X:0.000000} {point.Y:0.000000} {point.Z:0.000000}");

    private static string Metres(Length length) => length.Metres.ToString("0.000000", System.Globalization.CultureInfo.InvariantCulture);
}
