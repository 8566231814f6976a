using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>
/// The working of every number of the results, one line a kind of result. A test holds that no number of any example lacks
/// one.
/// </summary>
public static class Workings
{
    private static readonly Citation Geometry = Citation.Geometry;
    private static readonly Citation Practice = Citation.CommonPractice;

    /// <summary>Every working.</summary>
    public static ImmutableArray<Working> All { get; } =
    [
        // Site.
        Of("site.across", "the span: the side strings run along the outside of the posts", Geometry, ["frame.span"], ["frame.span"]),
        Of("site.along", "the length: the end strings run across the middle of the end bows", Geometry, ["frame.length"], ["frame.length"]),
        Of("site.diagonal", "√(across² + along²)", Geometry, ["site.across", "site.along"], []),
        Of("site.footprint", "across × along", Geometry, ["site.across", "site.along"], []),
        Of("site.groundFall", "highest ground less lowest ground over the four corners of an even slope", Geometry, ["site.across", "site.along"], ["site.fallAlong", "site.fallAcross"]),
        Of("site.triangle.across", "3 (or 4) times the largest whole foot or half metre at which the 3-4-5 triangle fits between the strings", Practice, ["site.across", "site.along"], []),
        Of("site.triangle.along", "4 (or 3) times that foot or half metre", Practice, ["site.across", "site.along"], []),
        Of("site.triangle.diagonal", "5 times that foot or half metre: √(across² + along²)", Geometry, ["site.triangle.across", "site.triangle.along"], []),
        Of("site.sideMarks[*].mark", "distance of the bow from the first one, from the exact bays, never added up from rounded ones", Geometry, ["frame.length", "frame.bays"], ["frame.bowSpacing", "frame.bays"]),
        Of("site.frontMarks[*].mark", "middle of the post from the left string", Geometry, ["frame.span"], ["ends.front.postSpacing", "ends.front.doors"]),
        Of("site.backMarks[*].mark", "middle of the post from the left string", Geometry, ["frame.span"], ["ends.back.postSpacing", "ends.back.doors"]),
        .. Points("site.batterBoards[*].from", "end of a 4 ft board 3 ft outside the corner, or as far as the room given", Practice),
        .. Points("site.batterBoards[*].to", "other end of that board", Practice),
        .. Points("site.batterBoards[*].stringAt", "where the string crosses the board: the string's line carried on", Geometry),

        // Frame.
        Of("frame.span", "as planned, outside of tube to outside of tube at the ground line", Geometry, [], ["frame.span"]),
        Of("frame.length", "as planned, middle of the first bow to middle of the last", Geometry, [], ["frame.length"]),
        Of("frame.sideHeight", "as planned, height of the straight legs", Geometry, [], ["frame.bow.sideHeight"]),
        Of("frame.peakHeight", "height of the highest point of the film line", Geometry, [], ["frame.bow.peakHeight"]),
        Of("frame.bays", "length ÷ the widest bay allowed, up to the next whole number", Practice, ["frame.length"], ["frame.bowSpacing", "frame.bays"]),
        Of("frame.bay", "distance between the first two bows", Geometry, ["frame.length", "frame.bays"], ["frame.bowSpacing", "frame.bays"]),
        Of("frame.lastBay", "distance between the last two bows", Geometry, ["frame.length", "frame.bays"], ["frame.bowSpacing", "frame.bays"]),
        Of("frame.bow.filmLine", "sum over the legs, bends, arcs and rafters of the outside of the tube; an arc is radius × angle", Geometry, ["frame.span", "frame.sideHeight", "frame.peakHeight"], ["frame.bow"]),
        Of("frame.bow.centreLine", "the film line moved in by half the tube: each arc loses half the tube from its radius", Geometry, ["frame.bow.filmLine"], ["frame.bow", "frame.bowTube"]),
        Of("frame.bow.pieces", "fewest equal pieces no longer than the tube that is sold; even where two arcs meet at a ridge", Practice, ["frame.bow.centreLine"], ["frame.bowPieces", "frame.bowTube"]),
        Of("frame.bow.piece", "middle line ÷ pieces", Geometry, ["frame.bow.centreLine", "frame.bow.pieces"], []),
        Of("frame.bow.endArea", "area between film line and ground line: triangles, rectangles and circle sectors added up", Geometry, ["frame.bow.filmLine"], ["frame.bow"]),
        Of("frame.bow.bends[*].radius", "radius of the bend at the middle of the tube", Geometry, ["frame.bow.centreLine"], ["frame.bow", "frame.bowTube"]),
        Of("frame.bow.bends[*].turned", "angle that the bend turns: between the tangents at its two ends", Geometry, ["frame.span", "frame.sideHeight", "frame.peakHeight"], ["frame.bow"]),
        Of("frame.bow.bends[*].from", "distance along the middle of the tube from the left ground line to the start of the bend", Geometry, [], ["frame.bow"]),
        Of("frame.bow.bends[*].to", "distance along the middle of the tube from the left ground line to the end of the bend", Geometry, [], ["frame.bow"]),
        Of("frame.purlins[*].across", "even parts of the bow between its legs, on a line inside the bow by half the purlin", Geometry, [], ["frame.purlins.count", "frame.purlins.tube", "frame.bow"]),
        Of("frame.purlins[*].up", "height of that place over the ground line", Geometry, ["frame.purlins[*].across"], ["frame.bow"]),
        Of("frame.purlins[*].fromRidge", "along the film line from its middle to the place nearest the purlin", Geometry, ["frame.purlins[*].across", "frame.purlins[*].up"], ["frame.bow"]),
        Of("frame.purlins[*].fromFoot", "along the film line from its end to the place nearest the purlin", Geometry, ["frame.purlins[*].across", "frame.purlins[*].up"], ["frame.bow"]),
        Of("frame.bow.ordinates[*].across", "every foot or half metre, and the middle", Practice, ["frame.span"], []),
        Of("frame.bow.ordinates[*].filmHeight", "height of the film line at that distance across", Geometry, ["frame.bow.ordinates[*].across"], ["frame.bow"]),
        Of("frame.bow.ordinates[*].undersideHeight", "height of the underside of the tube at that distance across; 0 beyond the legs", Geometry, ["frame.bow.ordinates[*].across"], ["frame.bow", "frame.bowTube"]),
        Of("frame.bows[*].number", "counted from the front end", Practice, [], []),
        Of("frame.bows[*].mark", "distance from the first bow", Geometry, ["frame.length", "frame.bays"], ["frame.bowSpacing", "frame.bays"]),
        Of("frame.bows[*].base", "height of the bow's ground line over the datum, which is the highest of the four corners", Geometry, ["site.groundFall"], ["site.postTops", "site.fallAlong", "site.fallAcross"]),
        Of("frame.bows[*].groundLeft", "height of the ground at the left leg on an even slope", Geometry, ["frame.bows[*].mark"], ["site.fallAlong", "site.fallAcross"]),
        Of("frame.bows[*].groundRight", "height of the ground at the right leg on an even slope", Geometry, ["frame.bows[*].mark"], ["site.fallAlong", "site.fallAcross"]),

        // Ground.
        Of("ground.posts[*].bow", "the bow it carries", Practice, [], []),
        Of("ground.posts[*].mark", "the bow's running mark", Geometry, [], ["frame.bowSpacing"]),
        .. Points("ground.posts[*].centre", "middle of the leg of the bow, half a tube inside the string", Geometry),
        Of("ground.posts[*].top", "the bow's ground line plus what stands out of the ground: post length less embedment", Geometry, [], ["ground.postLength", "ground.postEmbedment"]),
        Of("ground.posts[*].projection", "top less ground at the post", Geometry, ["ground.posts[*].top"], ["site.postTops"]),
        Of("ground.posts[*].embedment", "post length less projection", Geometry, ["ground.posts[*].projection"], ["ground.postLength"]),
        Of("ground.holes[*].diameter", "as planned", Practice, [], ["ground.holeDiameter", "ends.*.holeDiameter"]),
        Of("ground.holes[*].depth", "as planned, at least as deep as the post goes", Practice, [], ["ground.holeDepth", "ends.*.holeDepth", "ends.*.embedment"]),
        Of("ground.holes[*].collarRise", "height of the sloped collar at the post, which sheds water", Practice, [], ["ground.collarRise"]),
        Of("ground.holes[*].volume", ConcreteVolume.Formula.Text, ConcreteVolume.Formula.Source, ["ground.holes[*].diameter", "ground.holes[*].depth", "ground.holes[*].collarRise"], []),

        // Ends and sides.
        Of("ends.*.posts[*].mark", "given, beside a door, or equal steps no wider than the spacing between fixed posts", Practice, ["frame.span"], ["ends.*.postSpacing", "ends.*.posts"]),
        Of("ends.*.posts[*].topLeft", "underside of the bow over the left edge of the post; for a bracket, square below the lower edge", Geometry, [], ["ends.*.postTop", "frame.bow"]),
        Of("ends.*.posts[*].topRight", "underside of the bow over the right edge of the post; for a bracket, square below the lower edge", Geometry, [], ["ends.*.postTop", "frame.bow"]),
        Of("ends.*.posts[*].topPoint", "the higher of the edges, or the ridge where it is over the post", Geometry, [], ["ends.*.postTop"]),
        Of("ends.*.posts[*].tilt", "atan((point − lower edge) ÷ width)", Geometry, [], ["ends.*.postTop"]),
        Of("ends.*.posts[*].embedment", "as planned", Practice, [], ["ends.*.embedment"]),
        Of("ends.*.doors[*].centre", "given, or the middle of the span", Practice, ["frame.span"], ["ends.*.doors"]),
        Of("ends.*.doors[*].clearWidth", "as planned, between the jambs", Practice, [], ["ends.*.doors"]),
        Of("ends.*.doors[*].clearHeight", "as planned, ground line to header", Practice, [], ["ends.*.doors"]),
        Of("ends.*.doors[*].roughWidth", "clear width and a jamb each side; a sliding door has no jambs", Geometry, [], ["ends.*.doors", "ends.*.frameBoard"]),
        Of("ends.*.doors[*].headerTop", "clear height and the depth of the header", Geometry, [], ["ends.*.headerBoard"]),
        Of("ends.*.doors[*].ventHeight", "as planned", Practice, [], ["ends.*.doors"]),
        Of("ends.*.doors[*].frameTop", "header top, vent and vent rail", Geometry, [], ["ends.*.doors", "ends.*.frameBoard"]),
        Of("ends.*.doors[*].leaves[*].left", "left jamb and the gap", Practice, [], ["ends.*.doors"]),
        Of("ends.*.doors[*].leaves[*].bottom", "gap under the leaf", Practice, [], ["ends.*.doors"]),
        Of("ends.*.doors[*].leaves[*].width", "hinged: clear width less the gaps, shared by the leaves; sliding: clear width and a lap each side", Practice, [], ["ends.*.doors"]),
        Of("ends.*.doors[*].leaves[*].height", "hinged: clear height less the gaps; sliding: clear height and the lap less the gap under it", Practice, [], ["ends.*.doors"]),
        Of("ends.*.baseboards[*].from", "left end, at the string, a door's rough opening, or a post where it stands between posts", Practice, [], ["ends.*.doors"]),
        Of("ends.*.baseboards[*].to", "right end, likewise", Practice, [], ["ends.*.doors"]),
        Of("sides.*.hipHeight", "as planned; 0 for a fixed side", Practice, [], ["sides.*.hipHeight", "sides.*.kind"]),
        Of("sides.*.arcToHip", "distance over the film line from the ground line to the middle of the hip board", Geometry, [], ["sides.*.hipHeight", "frame.bow"]),
        Of("sides.*.overlapBelow", "as planned", Practice, [], ["sides.*.overlapBelow"]),

        // Members.
        .. Points("members[*].start", "one end of the member's middle line, from the layout", Geometry),
        .. Points("members[*].end", "the other end of the member's middle line", Geometry),
        Of("members[*].cutLength", "length at the longest edge; along the curve for bent tube; posts from foot to the point of their top", Geometry, [], []),
        Of("members[*].bevel.tilt", "angle of the top cut off square, from the underside of the bow over the two edges", Geometry, [], []),
        Of("members[*].bevel.leftHeight", "foot to left edge", Geometry, [], []),
        Of("members[*].bevel.rightHeight", "foot to right edge", Geometry, [], []),
        Of("members[*].bevel.point", "foot to the highest point", Geometry, [], []),
        .. StrengthWorkings.All,
        .. OrderWorkings.All,
        .. PullWorkings.All,
        .. FasteningWorkings.All,
        .. StepWorkings.All,
        .. ClimateWorkings.All,
        .. SiteBookWorkings.All,
        .. UpkeepWorkings.All,
    ];

    internal static Working Of(string pattern, string text, Citation source, ImmutableArray<string> inputs, ImmutableArray<string> rules) =>
        new(pattern, text, source, inputs, rules);

    private static IEnumerable<Working> Points(string pattern, string text, Citation source) =>
    [
        Of(pattern + ".x", text + "; across from the left string", source, [], []),
        Of(pattern + ".y", text + "; along from the first bow", source, [], []),
        Of(pattern + ".z", text + "; up from the datum", source, [], []),
    ];
}
