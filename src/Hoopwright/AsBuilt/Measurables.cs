using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>Lists what can be measured on a tunnel, in the order in which one walks round it.</summary>
public static class Measurables
{
    private const string OverBow = "Lay the tape over the outside of the bow, from ground line to ground line, tight on the tube; read it at both feet.";
    private const string AcrossBow = "From the outside of the left leg to the outside of the right leg at the ground line, tape level and tight.";
    private const string UpBow = "From a string between the ground lines at the two legs straight up to the outside of the tube at the middle.";
    private const string AlongString = "One tape along the left string from the middle of bow 1; read each bow from the same tape.";
    private const string Corners = "Between the corners of the strings, where they run along the outside of the posts and the middle of the end bows; tape level and tight.";
    private const string UpPost = "Plumb from the ground at the post's place to the underside of the bow (to the bracket where it has one), at the higher edge of the post.";
    private const string FromLeft = "From the left string to the middle, along the end string.";
    private const string DownPost = "Whole length of the post less what stands out of the ground.";

    /// <summary>Everything that can be measured.</summary>
    /// <param name="tunnel">The tunnel as planned.</param>
    /// <param name="near">How near is near enough.</param>
    public static ImmutableArray<Measurable> Of(Tunnel tunnel, AsBuiltTolerances near)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(near);
        return
        [
            .. Square(tunnel, near),
            .. tunnel.GroundPosts.Select(post => Of(MeasureNames.Depth(post.MemberId), MeasurableKind.PostDepth, post.MemberId, $"depth of {Words(post.MemberId)} in the ground", DownPost, post.Embedment, near.Holes, "holes")),
            .. tunnel.Holes.SelectMany(hole => Hole(hole, near)),
            .. tunnel.Stations.SelectMany(station => Bow(tunnel, station, near)),
            .. tunnel.Sides.Where(side => side.Kind != SideKind.Fixed).Select(side => Of(
                MeasureNames.HipHeight(side.Name), MeasurableKind.HipHeight, side.Name + "-hip-board", $"height of the {side.Name} hip board", "From the ground line at a leg up to the middle of the board.", side.HipHeight, near.Frame, "frame")),
            .. tunnel.Ends.SelectMany(end => End(end, near)),
        ];
    }

    private static Measurable Of(string name, MeasurableKind kind, string about, string what, string how, Length planned, Length tolerance, string field, int bow = 0) =>
        new(name, kind, bow, about, what, how, planned, tolerance, "tolerances." + field);

    private static IEnumerable<Measurable> Square(Tunnel tunnel, AsBuiltTolerances near)
    {
        SetOut set = tunnel.SetOut;
        return
        [
            Side("front", set.Across), Side("back", set.Across), Side("left", set.Along), Side("right", set.Along),
            Diagonal(MeasureNames.DiagonalFromFrontLeft, "front left", "back right"), Diagonal(MeasureNames.DiagonalFromFrontRight, "front right", "back left"),
        ];

        Measurable Side(string side, Length planned) =>
            Of(MeasureNames.Square(side), MeasurableKind.SquareSide, side, $"{side} side of the string rectangle", Corners, planned, near.Frame, "frame");

        // A corner half the difference off its place shows as the whole difference between the diagonals.
        Measurable Diagonal(string name, string from, string to) =>
            Of(name, MeasurableKind.Diagonal, "diagonals", $"diagonal from {from} to {to}", Corners, set.Diagonal, near.Diagonals, "diagonals");
    }

    private static IEnumerable<Measurable> Hole(ConcreteHole hole, AsBuiltTolerances near) =>
    [
        Of(MeasureNames.HoleDepth(hole.Id), MeasurableKind.HoleDepth, hole.Id, $"depth of the hole for {Words(hole.PostId)}", "From the ground to the firm bottom of the hole, loose soil taken out.", hole.Depth, near.Holes, "holes"),
        Of(MeasureNames.HoleDiameter(hole.Id), MeasurableKind.HoleDiameter, hole.Id, $"diameter of the hole for {Words(hole.PostId)}", "Across the hole at its narrowest.", hole.Diameter, near.Holes, "holes"),
    ];

    private static IEnumerable<Measurable> Bow(Tunnel tunnel, BowStation station, AsBuiltTolerances near)
    {
        int bow = station.Number;
        string id = FormattableString.Invariant($"bow-{bow:00}"), name = FormattableString.Invariant($"bow {bow}");
        yield return Of(MeasureNames.BowSpan(bow), MeasurableKind.BowSpan, id, "span at " + name, AcrossBow, tunnel.Span, near.Frame, "frame", bow);
        yield return Of(MeasureNames.BowLength(bow), MeasurableKind.BowLength, id, "length over the outside of " + name, OverBow, tunnel.Bow.FilmLine.Length, near.Bow, "bow", bow);
        yield return Of(MeasureNames.BowHeight(bow), MeasurableKind.BowHeight, id, "height of " + name, UpBow, tunnel.Bow.PeakHeight, near.Bow, "bow", bow);
        if (bow > 1) yield return Of(MeasureNames.BowMark(bow), MeasurableKind.BowMark, id, "running mark of " + name, AlongString, station.Along, near.Frame, "frame", bow);
    }

    private static IEnumerable<Measurable> End(EndWall end, AsBuiltTolerances near)
    {
        foreach (EndPost post in end.Posts)
        {
            string words = Words(post.MemberId);
            // A post beside a door stands where the door's opening is.
            if (post.DoorId is null) yield return Of(MeasureNames.Place(post.MemberId), MeasurableKind.Place, post.MemberId, $"place of {words}", FromLeft, post.Centre, near.Frame, "frame");
            yield return Of(MeasureNames.PostHeight(post.MemberId), MeasurableKind.PostHeight, post.MemberId, $"clear height at {words}", UpPost, post.TopPoint - post.Ground, near.Posts, "posts");
            yield return Of(MeasureNames.Depth(post.MemberId), MeasurableKind.PostDepth, post.MemberId, $"depth of {words} in the ground", DownPost, post.Embedment, near.Holes, "holes");
        }
        foreach (DoorOpening door in end.Doors)
        {
            string words = Words(door.Id);
            yield return Of(MeasureNames.Place(door.Id), MeasurableKind.Place, door.Id, $"middle of {words}", FromLeft, door.Centre, near.Frame, "frame");
            yield return Of(MeasureNames.DoorRough(door.Id), MeasurableKind.DoorWidth, door.Id, $"{words} from post to post", "Between the inner faces of the two posts, at the foot and at the top; the smaller one.", door.RoughWidth, near.Doors, "doors");
            yield return Of(MeasureNames.DoorWidth(door.Id), MeasurableKind.DoorWidth, door.Id, $"clear width of {words}", "Between the jambs, at the foot and at the top; the smaller one.", door.ClearWidth, near.Doors, "doors");
            yield return Of(MeasureNames.DoorHeight(door.Id), MeasurableKind.DoorHeight, door.Id, $"clear height of {words}", "From the ground line up to the underside of the header, at both sides; the smaller one.", door.ClearHeight, near.Doors, "doors");
        }
    }

    /// <summary>"the front post 2" for front-post-2.</summary>
    private static string Words(string id) => "the " + id.Replace('-', ' ');
}
