namespace Hoopwright.Layout;

/// <summary>
/// The names by which the site book knows what can be measured. They hang on the tunnel as planned and stay the same while it is
/// built: bows count from the front end, posts and doors as the plan numbers them.
/// </summary>
public static class MeasureNames
{
    /// <summary>Length over the outside of a bow, from ground line to ground line.</summary>
    /// <param name="bow">Number of the bow, 1 at the front.</param>
    public static string BowLength(int bow) => Bow(bow, "length");

    /// <summary>Width at the ground line at a bow, outside to outside.</summary>
    /// <param name="bow">Number of the bow, 1 at the front.</param>
    public static string BowSpan(int bow) => Bow(bow, "span");

    /// <summary>Height of the outside of a bow at its middle over its ground line.</summary>
    /// <param name="bow">Number of the bow, 1 at the front.</param>
    public static string BowHeight(int bow) => Bow(bow, "height");

    /// <summary>Distance along the string from the middle of the first bow to the middle of this one.</summary>
    /// <param name="bow">Number of the bow; 2 or more.</param>
    public static string BowMark(int bow) => Bow(bow, "mark");

    /// <summary>Corner to corner along an end: "front" or "back"; or along a side: "left" or "right".</summary>
    /// <param name="side">Which.</param>
    public static string Square(string side) => "square-" + side;

    /// <summary>From the front left corner to the back right one.</summary>
    public const string DiagonalFromFrontLeft = "square-diagonal-front-left";

    /// <summary>From the front right corner to the back left one.</summary>
    public const string DiagonalFromFrontRight = "square-diagonal-front-right";

    /// <summary>How deep a post stands in the ground.</summary>
    /// <param name="postId">The post's id.</param>
    public static string Depth(string postId) => postId + "-depth";

    /// <summary>Clear height at an end-wall post from the ground up to the underside of the bow or to its bracket, at the highest point of the post's top.</summary>
    /// <param name="postId">The post's id.</param>
    public static string PostHeight(string postId) => postId + "-height";

    /// <summary>Middle of an end-wall post or of a door from the left string.</summary>
    /// <param name="id">The id of post or door.</param>
    public static string Place(string id) => id + "-place";

    /// <summary>Clear width of a door between its jambs.</summary>
    /// <param name="doorId">The door's id.</param>
    public static string DoorWidth(string doorId) => doorId + "-width";

    /// <summary>Clear height of a door under its header.</summary>
    /// <param name="doorId">The door's id.</param>
    public static string DoorHeight(string doorId) => doorId + "-height";

    /// <summary>Width of a door from post to post, before jambs stand in it.</summary>
    /// <param name="doorId">The door's id.</param>
    public static string DoorRough(string doorId) => doorId + "-rough";

    /// <summary>Depth of a hole for concrete.</summary>
    /// <param name="holeId">The hole's id.</param>
    public static string HoleDepth(string holeId) => holeId + "-depth";

    /// <summary>Diameter of a hole for concrete.</summary>
    /// <param name="holeId">The hole's id.</param>
    public static string HoleDiameter(string holeId) => holeId + "-diameter";

    /// <summary>Middle of the hip board over the ground line.</summary>
    /// <param name="side">"left" or "right".</param>
    public static string HipHeight(string side) => side + "-hip-height";

    private static string Bow(int bow, string what) => FormattableString.Invariant($"bow-{bow:00}-{what}");
}
