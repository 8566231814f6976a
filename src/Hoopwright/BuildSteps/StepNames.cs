using Hoopwright.Layout;

namespace Hoopwright.BuildSteps;

/// <summary>The names of the steps, and the step in which a member is put in its place.</summary>
internal static class StepNames
{
    internal const string Call = "lines-marked";
    internal const string SetOut = "set-out";
    internal const string PostHoles = "post-holes";
    internal const string GroundPosts = "ground-posts";
    internal const string PostConcrete = "post-concrete";
    internal const string BowJoints = "bow-joints";
    internal const string Bows = "bows";
    internal const string Ridge = "ridge";
    internal const string Purlins = "purlins";
    internal const string Ties = "ties";
    internal const string Braces = "braces";
    internal const string Baseboards = "baseboards";
    internal const string HipBoards = "hip-boards";
    internal const string Channel = "channel";
    internal const string Tape = "tape";
    internal const string FilmCut = "film-cut";
    internal const string RoofFilm = "roof-film";
    internal const string Blower = "blower";
    internal const string DoorsFree = "doors-free";
    internal const string Trim = "trim";
    internal const string LastLook = "last-look";
    internal const string OldFilm = "old-film";
    internal const string FrameLook = "frame-look";

    internal static string Holes(string end) => end + "-holes";

    internal static string Posts(string end) => end + "-posts";

    internal static string Boards(string end) => end + "-boards";

    internal static string EndConcrete(string end) => end + "-concrete";

    internal static string Doors(string end) => end + "-doors";

    internal static string Leaves(string end) => end + "-leaves";

    internal static string Film(string end) => end + "-film";

    internal static string Side(SideWall side) => side.Name + "-side";

    /// <summary>The step in which the concrete about a post is placed.</summary>
    /// <param name="posts">The step in which the post is set.</param>
    internal static string Concrete(string posts) => posts == GroundPosts ? PostConcrete : posts.Replace("-posts", "-concrete", StringComparison.Ordinal);

    /// <summary>The step in which a member is put in its place, or joined from its pieces.</summary>
    internal static string Of(Tunnel tunnel, Member member)
    {
        string end = (member.Start.Y - tunnel.Front.Along).Abs() <= (member.Start.Y - tunnel.Back.Along).Abs() ? tunnel.Front.Name : tunnel.Back.Name;
        return member.Role switch
        {
            MemberRole.Bow => tunnel.BowPieces > 1 ? BowJoints : Bows,
            MemberRole.RidgePurlin => Ridge,
            MemberRole.Purlin => Purlins,
            MemberRole.Tie => Ties,
            MemberRole.CornerBrace => Braces,
            MemberRole.GroundPost => GroundPosts,
            MemberRole.Baseboard => Baseboards,
            MemberRole.HipBoard => HipBoards,
            MemberRole.RollTube => member.Start.X < tunnel.Span / 2 ? Side(tunnel.Left) : Side(tunnel.Right),
            MemberRole.EndPost => Posts(end),
            MemberRole.Girt or MemberRole.EndBaseboard => Boards(end),
            MemberRole.Cripple or MemberRole.Header or MemberRole.Jamb or MemberRole.VentRail => Doors(end),
            MemberRole.LeafStile or MemberRole.LeafRail or MemberRole.LeafBrace => Leaves(end),
        };
    }
}
