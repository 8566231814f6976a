using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.BeforeCuts;

/// <summary>
/// Which measurements a cut depends on. Common practice, no source: of the bows the first, the middle and the last, and every one of them
/// once those measured differ among themselves by more than a bow may be off.
/// </summary>
internal static class CutNeeds
{
    /// <summary>Names of what is to be measured before something is cut; none where the tunnel has nothing of the kind.</summary>
    /// <param name="kind">What is about to be cut.</param>
    /// <param name="tunnel">The tunnel as planned.</param>
    /// <param name="cover">Its cover.</param>
    /// <param name="measured">What was measured; null for nothing.</param>
    public static IEnumerable<string> Of(CutCheckKind kind, Tunnel tunnel, CoverPlan cover, SiteMeasurements? measured) => kind switch
    {
        CutCheckKind.Film =>
        [
            MeasureNames.Square("left"), MeasureNames.Square("right"),
            .. Bows(tunnel, measured).Select(MeasureNames.BowLength),
            .. tunnel.Sides.Where(side => side.Kind != SideKind.Fixed).Select(side => MeasureNames.HipHeight(side.Name)),
        ],
        CutCheckKind.Posts => tunnel.Ends.SelectMany(end => end.Posts).SelectMany(post => (string[])[MeasureNames.PostHeight(post.MemberId), MeasureNames.HoleDepth("hole-" + post.MemberId)]),
        CutCheckKind.Channel when cover.Runs.Any(run => run.Kind == FasteningKind.Channel) =>
        [
            MeasureNames.Square("left"), MeasureNames.Square("right"), MeasureNames.BowLength(1), MeasureNames.BowLength(tunnel.Stations.Length),
        ],
        CutCheckKind.Channel => [],
        CutCheckKind.Boards =>
        [
            .. ((string[])["front", "back", "left", "right"]).Select(MeasureNames.Square),
            .. tunnel.Ends.SelectMany(end => end.Doors).Select(door => MeasureNames.DoorRough(door.Id)),
        ],
        CutCheckKind.Concrete when tunnel.Holes.IsEmpty => [],
        CutCheckKind.Concrete => [.. Squaring.SetOutNames, .. CornerHoles(tunnel).Select(hole => MeasureNames.HoleDepth(hole.Id))],
    };

    /// <summary>The holes of the posts at the corners, or every hole where those have none; one of another that was measured counts as well.</summary>
    private static IEnumerable<ConcreteHole> CornerHoles(Tunnel tunnel)
    {
        HashSet<string> corners = [.. tunnel.GroundPosts.Where(post => post.Bow == 1 || post.Bow == tunnel.Stations.Length).Select(post => post.MemberId)];
        ConcreteHole[] holes = [.. tunnel.Holes.Where(hole => corners.Contains(hole.PostId))];
        return holes.Length > 0 ? holes : tunnel.Holes;
    }

    private static IEnumerable<int> Bows(Tunnel tunnel, SiteMeasurements? measured)
    {
        int count = tunnel.Stations.Length;
        ImmutableArray<Length> lengths = measured is null ? [] : [.. measured.Measured.Where(each => each.Of.Kind == MeasurableKind.BowLength).Select(each => each.Value).OfType<Length>()];
        return lengths.Length > 1 && lengths.Max() - lengths.Min() > measured!.Tolerances.Bow
            ? Enumerable.Range(1, count)
            : new[] { 1, (count + 1) / 2, count }.Distinct();
    }
}
