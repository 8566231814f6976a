using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;

namespace Hoopwright.Packets;

/// <summary>Writes what the layout found: site, frame, ground, ends, members.</summary>
internal static class TunnelResults
{
    public static void Site(ResultWriter json, Tunnel tunnel)
    {
        SetOut setOut = tunnel.SetOut;
        json.Length("across", setOut.Across);
        json.Length("along", setOut.Along);
        json.Length("diagonal", setOut.Diagonal);
        json.Area("footprint", setOut.Across * setOut.Along);
        json.Length("groundFall", setOut.GroundFall);
        json.Group("triangle", () =>
        {
            json.Length("across", setOut.Triangle.Across);
            json.Length("along", setOut.Triangle.Along);
            json.Length("diagonal", setOut.Triangle.Diagonal);
        });
        Marks(json, "sideMarks", setOut.SideMarks);
        Marks(json, "frontMarks", setOut.FrontMarks);
        Marks(json, "backMarks", setOut.BackMarks);
        json.List("batterBoards", setOut.BatterBoards, board =>
        {
            json.Text("id", board.Id);
            Point(json, "from", board.From);
            Point(json, "to", board.To);
            Point(json, "stringAt", board.StringAt);
        });
    }

    public static void Frame(ResultWriter json, Tunnel tunnel)
    {
        BowShape bow = tunnel.Bow;
        json.Text("shape", Word(bow.Kind));
        json.Length("span", tunnel.Span);
        json.Length("length", tunnel.Length);
        json.Length("sideHeight", bow.SideHeight);
        json.Length("peakHeight", bow.PeakHeight);
        json.Count("bays", tunnel.Bays);
        json.Length("bay", tunnel.Stations[1].Along - tunnel.Stations[0].Along);
        json.Length("lastBay", tunnel.Stations[^1].Along - tunnel.Stations[^2].Along);
        json.Group("bow", () =>
        {
            json.Length("filmLine", bow.FilmLine.Length);
            json.Length("centreLine", bow.CentreLine.Length);
            json.Count("pieces", tunnel.BowPieces);
            json.Length("piece", bow.CentreLine.Length / tunnel.BowPieces);
            json.Area("endArea", bow.FilmLine.AreaAbove(Quantities.Length.Zero));
            json.Text("tube", tunnel.BowTube.Size);
            json.List("bends", bow.CentreLine.Bends(), bend =>
            {
                json.Length("radius", bend.Radius);
                json.Angle("turned", Quantities.Angle.FromRadians(Math.Abs(bend.Turned.Radians)));
                json.Length("from", bend.From);
                json.Length("to", bend.To);
            });
            json.List("ordinates", BowOrdinates.Of(tunnel), ordinate =>
            {
                json.Length("across", ordinate.Across);
                json.Length("filmHeight", ordinate.Film);
                json.Length("undersideHeight", ordinate.Underside);
            });
        });
        json.List("purlins", PurlinCrossing.Of(tunnel), crossing =>
        {
            json.Text("id", crossing.MemberId);
            json.Length("across", crossing.Across);
            json.Length("up", crossing.Up);
            json.Length("fromRidge", crossing.FromRidge);
            json.Length("fromFoot", crossing.FromFoot);
        });
        json.List("bows", tunnel.Stations, station =>
        {
            json.Count("number", station.Number);
            json.Length("mark", station.Along);
            json.Length("base", station.Base);
            json.Length("groundLeft", station.GroundLeft);
            json.Length("groundRight", station.GroundRight);
        });
    }

    public static void Ground(ResultWriter json, Tunnel tunnel)
    {
        json.Text("anchor", Word(tunnel.Anchor));
        json.List("posts", tunnel.GroundPosts, post =>
        {
            json.Text("id", post.MemberId);
            json.Count("bow", post.Bow);
            json.Length("mark", post.Mark);
            Point(json, "centre", post.Centre);
            json.Length("top", post.Top);
            json.Length("projection", post.Projection);
            json.Length("embedment", post.Embedment);
            json.Flag("inConcrete", post.InConcrete);
        });
        json.List("holes", tunnel.Holes, hole =>
        {
            json.Text("id", hole.Id);
            json.Text("post", hole.PostId);
            json.Length("diameter", hole.Diameter);
            json.Length("depth", hole.Depth);
            json.Length("collarRise", hole.CollarRise);
            json.Volume("volume", hole.Volume);
        });
    }

    public static void Ends(ResultWriter json, Tunnel tunnel)
    {
        foreach (EndWall end in tunnel.Ends) json.Group(end.Name, () => End(json, end));
    }

    public static void Sides(ResultWriter json, Tunnel tunnel)
    {
        foreach (SideWall side in tunnel.Sides)
        {
            json.Group(side.Name, () =>
            {
                json.Text("kind", Word(side.Kind));
                json.Length("hipHeight", side.HipHeight);
                json.Length("arcToHip", side.ArcToHip);
                json.Length("overlapBelow", side.OverlapBelow);
            });
        }
    }

    public static void Members(ResultWriter json, Tunnel tunnel) => json.List("members", tunnel.Members, member =>
    {
        json.Text("id", member.Id);
        json.Text("role", Word(member.Role));
        json.Text("item", member.Section.Item);
        json.Text("size", member.Section.Size);
        json.Text("place", member.Place);
        Point(json, "start", member.Start);
        Point(json, "end", member.End);
        json.Length("cutLength", member.CutLength);
        if (member.Bevel is { } bevel)
        {
            json.Group("bevel", () =>
            {
                json.Angle("tilt", bevel.Tilt);
                json.Length("leftHeight", bevel.LeftHeight);
                json.Length("rightHeight", bevel.RightHeight);
                json.Length("point", bevel.Point);
            });
        }
    });

    /// <summary>An enum's name as JSON writes it.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum
    {
        string name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    private static void End(ResultWriter json, EndWall end)
    {
        json.Text("closing", Word(end.Closing));
        json.List("posts", end.Posts, post =>
        {
            json.Text("id", post.MemberId);
            json.Length("mark", post.Centre);
            json.Length("topLeft", post.TopLeft);
            json.Length("topRight", post.TopRight);
            json.Length("topPoint", post.TopPoint);
            json.Angle("tilt", post.Tilt);
            json.Length("embedment", post.Embedment);
            json.Text("door", post.DoorId);
        });
        json.List("doors", end.Doors, door =>
        {
            json.Text("id", door.Id);
            json.Text("kind", Word(door.Kind));
            if (door.Kind is DoorKind.Side or DoorKind.Double) json.Text("swing", Word(door.Swing));
            if (door.Hinge is { } hinge) json.Text("hinge", Word(hinge));
            json.Length("centre", door.Centre);
            json.Length("clearWidth", door.ClearWidth);
            json.Length("clearHeight", door.ClearHeight);
            json.Length("roughWidth", door.RoughWidth);
            json.Length("headerTop", door.HeaderTop);
            json.Length("ventHeight", door.VentHeight);
            json.Length("frameTop", door.FrameTop);
            json.List("leaves", door.Leaves, leaf =>
            {
                json.Text("id", leaf.Id);
                json.Length("left", leaf.Left);
                json.Length("bottom", leaf.Bottom);
                json.Length("width", leaf.Width);
                json.Length("height", leaf.Height);
            });
        });
        json.List("baseboards", end.Baseboards, board =>
        {
            json.Text("id", board.MemberId);
            json.Length("from", board.From);
            json.Length("to", board.To);
            json.Flag("betweenPosts", board.BetweenPosts);
        });
    }

    private static void Marks(ResultWriter json, string name, IEnumerable<RunningMark> marks) => json.List(name, marks, mark =>
    {
        json.Text("for", mark.For);
        json.Length("mark", mark.Mark);
    });

    private static void Point(ResultWriter json, string name, TunnelPoint point) => json.Group(name, () =>
    {
        json.Length("x", point.X);
        json.Length("y", point.Y);
        json.Length("z", point.Z);
    });
}
