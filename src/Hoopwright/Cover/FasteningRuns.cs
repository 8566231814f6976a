using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>The lines along which the film is held: end bows, hip boards, baseboards, doors.</summary>
internal sealed class FasteningRuns(Tunnel tunnel, CoverRules rules)
{
    internal ImmutableArray<FasteningRun> All() =>
    [
        .. tunnel.Ends.SelectMany(OnBow),
        .. tunnel.Sides.Select(AlongSide),
        .. tunnel.Ends.SelectMany(AtFoot),
        .. tunnel.Ends.SelectMany(AroundDoors),
        .. tunnel.Ends.SelectMany(OnLeaves),
    ];

    /// <summary>
    /// Over the end bow both sheets are held, each by a wire of its own so that one can be let go without the other; on its
    /// legs below a hip board only the end film is.
    /// </summary>
    private IEnumerable<FasteningRun> OnBow(EndWall end)
    {
        if (end.Closing == EndClosing.RoofSheet) yield break;
        bool framed = end.Closing == EndClosing.Framed;
        Length left = end.Bow.LockEdge(tunnel.Left), right = end.Bow.LockEdge(tunnel.Right);
        ImmutableArray<string> both = framed ? [FilmPieces.EndId(end), FilmPieces.RoofId] : [FilmPieces.RoofId];
        ImmutableArray<string> bow = BowOf(end);
        yield return BowRun(end, "bow", $"{end.Name} end bow, over the ridge", right - left, both, bow);
        if (!framed) yield break;
        foreach (SideWall side in tunnel.Sides.Where(side => side.Kind != SideKind.Fixed))
        {
            Length leg = (end.Bow.AtHeight(side, side.HipHeight) - end.Bow.AtHeight(side, side.BaseboardHeight)).Abs();
            if (leg > Length.Zero)
                yield return BowRun(end, side.Name + "-leg", $"{end.Name} end bow, {side.Name} leg below the hip board", leg, [FilmPieces.EndId(end)], [side.IsLeft ? bow[0] : bow[^1]]);
        }
    }

    private FasteningRun BowRun(EndWall end, string part, string place, Length length, ImmutableArray<string> pieces, ImmutableArray<string> members) =>
        rules.EndsOnBow
            ? new FasteningRun($"{end.Name}-{part}-channel", FasteningKind.Channel, place, length, pieces, members, OnWood: false, Wires: pieces.Length)
            : Batten($"{end.Name}-{part}-batten", place, length, pieces, members, onWood: false);

    /// <summary>The pieces of the end bow, from the left.</summary>
    private ImmutableArray<string> BowOf(EndWall end)
    {
        int number = end.IsFront ? tunnel.Stations[0].Number : tunnel.Stations[^1].Number;
        string bow = FormattableString.Invariant($"bow-{number:00}");
        return [.. tunnel.Members
            .Where(member => member.Role == MemberRole.Bow && (member.Id == bow || member.Id.StartsWith(bow + "-", StringComparison.Ordinal)))
            .Select(member => member.Id)];
    }

    private FasteningRun AlongSide(SideWall side)
    {
        if (side.Kind == SideKind.Fixed)
        {
            Member baseboard = Member(side.Name + "-baseboard");
            return rules.SidesInChannel
                ? new FasteningRun($"{side.Name}-side-channel", FasteningKind.Channel, $"{side.Name} baseboard", baseboard.CutLength,
                    [FilmPieces.RoofId], [baseboard.Id], OnWood: true, Wires: 1)
                : Batten($"{side.Name}-side-batten", $"{side.Name} baseboard", baseboard.CutLength, [FilmPieces.RoofId], [baseboard.Id]);
        }
        Member board = Member(side.Name + "-hip-board");
        // A wire each: the curtain wears sooner than the roof and is changed without letting the roof go.
        return new FasteningRun($"{side.Name}-hip-channel", FasteningKind.Channel, $"{side.Name} hip board", board.CutLength,
            [FilmPieces.RoofId, FilmPieces.CurtainId(side)], [board.Id], OnWood: true, Wires: 2);
    }

    private IEnumerable<FasteningRun> AtFoot(EndWall end)
    {
        string piece = end.Closing == EndClosing.Framed ? FilmPieces.EndId(end) : FilmPieces.RoofId;
        int number = 0;
        foreach (ImmutableArray<EndBoard> stretch in Stretches(end))
        {
            number++;
            // Flush boards stand between posts; the batten runs over the posts with them.
            yield return Batten(FormattableString.Invariant($"{end.Name}-foot-batten-{number}"),
                FormattableString.Invariant($"{end.Name} end, along the baseboard, {number} from the left"),
                stretch[^1].To - stretch[0].From, [piece], [.. stretch.Select(board => board.MemberId)]);
        }
    }

    /// <summary>The baseboards of an end, grouped by the doors between them.</summary>
    private static IEnumerable<ImmutableArray<EndBoard>> Stretches(EndWall end) =>
        end.Baseboards.GroupBy(board => end.Doors.Count(door => door.Centre < board.From)).Select(group => group.ToImmutableArray());

    private IEnumerable<FasteningRun> AroundDoors(EndWall end)
    {
        foreach (DoorOpening door in end.Doors)
        {
            ImmutableArray<string> film = [FilmPieces.EndId(end)];
            foreach (EndPost post in end.Posts.Where(post => post.DoorId == door.Id))
            {
                string side = post.Centre < door.Centre ? "left" : "right";
                yield return Batten($"{door.Id}-{side}-batten", $"{door.Id}, {side} post", door.FrameTop - post.Ground, film, [post.MemberId]);
            }
            yield return Batten(door.Id + "-header-batten", $"{door.Id}, header", door.RoughWidth, film, MembersOf(door, MemberRole.Header));
            if (door.VentHeight > Length.Zero)
                yield return Batten(door.Id + "-vent-batten", $"{door.Id}, vent rail", door.RoughWidth, film, MembersOf(door, MemberRole.VentRail));
        }
    }

    private IEnumerable<FasteningRun> OnLeaves(EndWall end) =>
        from door in end.Doors
        where door.LeafCover == LeafCover.Film
        from leaf in door.Leaves
        from edge in (ImmutableArray<(string Part, Length Length)>)
            [("stile-left", leaf.Height), ("stile-right", leaf.Height), ("rail-bottom", leaf.Width), ("rail-top", leaf.Width)]
        select Batten($"{leaf.Id}-{edge.Part}-batten", $"{leaf.Id}, {edge.Part.Replace('-', ' ')}", edge.Length, [FilmPieces.LeafId(leaf)], [$"{leaf.Id}-{edge.Part}"]);

    private static FasteningRun Batten(
        string id, string place, Length length, ImmutableArray<string> pieces, ImmutableArray<string> members, bool onWood = true) =>
        new(id, FasteningKind.Batten, place, length, pieces, members, onWood, Wires: 0);

    private ImmutableArray<string> MembersOf(DoorOpening door, MemberRole role) =>
        [.. tunnel.Members.Where(member => member.Role == role && member.Id.StartsWith(door.Id + "-", StringComparison.Ordinal)).Select(member => member.Id)];

    private Member Member(string id) => tunnel.Members.First(member => member.Id == id);
}
