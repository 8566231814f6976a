using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// Frames one end wall. Heights are over the end bow's ground line. Outer faces of the posts lie in the plane of the
/// outside of the end bow, so one string sets them.
/// </summary>
internal sealed partial class EndPlanner
{
    private readonly LayoutDraft draft;
    private readonly BowStation station;
    private readonly bool isFront;
    private readonly BowShape bow;
    private readonly string name;
    private readonly string path;
    private readonly End end;
    private BoardSection? postBoard;
    private BoardSection? frame;

    private EndPlanner(LayoutDraft draft, bool isFront)
    {
        this.draft = draft;
        this.isFront = isFront;
        name = isFront ? "front" : "back";
        bool own = isFront || draft.Plan.Ends.Back is not null;
        path = own ? "ends." + name : "ends.front";
        end = isFront ? draft.Plan.Ends.Front : draft.Plan.Ends.Back ?? draft.Plan.Ends.Front;
        station = isFront ? draft.Stations[0] : draft.Stations[^1];
        bow = isFront ? draft.FrontBow : draft.BackBow;
    }

    public static EndWall End(LayoutDraft draft, bool isFront) => new EndPlanner(draft, isFront).Plan();

    private EndWall Plan()
    {
        EndClosing closing = draft.Answers.Take(path + ".closing", LayoutDefaults.Closing, end.Closing);
        if (closing != EndClosing.Framed && !end.Doors.IsEmpty)
        {
            draft.Error("ends.door.no-frame", path + ".doors", "A door needs a framed end to hang in.",
                closing == EndClosing.Open ? "open" : "roofSheet", "closing: framed");
        }
        ImmutableArray<DoorOpening> doors = closing == EndClosing.Framed ? Doors() : [];
        ImmutableArray<EndPost> posts = closing == EndClosing.Framed ? Posts(doors) : [];
        if (closing == EndClosing.Framed)
        {
            Girts(posts, doors);
            foreach (DoorOpening door in doors) FrameDoor(door);
        }
        (ImmutableArray<EndBoard> boards, Length boardHeight) = closing == EndClosing.Open ? ([], Length.Zero) : Baseboards(posts, doors);
        return new EndWall
        {
            IsFront = isFront,
            Closing = closing,
            Along = station.Along,
            Base = station.Base,
            Bow = bow,
            Posts = posts,
            Doors = doors,
            Baseboards = boards,
            BaseboardHeight = boardHeight,
        };
    }

    private ImmutableArray<EndPost> Posts(ImmutableArray<DoorOpening> doors)
    {
        BoardSection post = PostBoard;
        Length width = WidthOf(post);
        Length spacing = draft.Answers.Take(path + ".postSpacing", LayoutDefaults.EndPostSpacing, end.PostSpacing);
        if (spacing < width * 2)
        {
            draft.Error("ends.post.spacing", path + ".postSpacing", "Posts this close would stand against each other.",
                draft.Tape(spacing), $"at least {draft.Tape(width * 2)}");
            return [];
        }
        Length embedment = draft.Answers.Take(path + ".embedment", LayoutDefaults.EndEmbedment, end.Embedment);
        PostTop top = draft.Answers.Take(path + ".postTop", LayoutDefaults.PostTop, end.PostTop);

        List<(Length Centre, string? DoorId)> fixedPosts = [];
        foreach (DoorOpening door in doors)
        {
            fixedPosts.Add((door.RoughLeft - (width / 2), door.Id));
            fixedPosts.Add((door.RoughRight + (width / 2), door.Id));
        }
        for (int index = 0; index < end.Posts.Length; index++)
        {
            if (MayStand(FormattableString.Invariant($"{path}.posts[{index}]"), end.Posts[index], width, doors, fixedPosts)) fixedPosts.Add((end.Posts[index].Value, null));
        }

        fixedPosts.Sort((one, other) => one.Centre.CompareTo(other.Centre));
        List<(Length Centre, string? DoorId)> all = [];
        Length half = draft.BowTube.Outside / 2;
        (Length Centre, string? DoorId) from = (half, null);
        foreach ((Length Centre, string? DoorId) to in (IEnumerable<(Length, string?)>)[.. fixedPosts, (bow.Span - half, null)])
        {
            bool acrossDoor = from.DoorId is not null && from.DoorId == to.DoorId;
            if (!acrossDoor)
            {
                Length gap = to.Centre - from.Centre;
                int bays = Math.Max(1, (int)Math.Ceiling((gap / spacing) - Tolerances.WholeNumber));
                for (int bay = 1; bay < bays; bay++)
                {
                    Length centre = from.Centre + (gap * bay / bays);
                    // A post by rule stands only where it leaves the ground by a foot and more.
                    if (TopOf(centre, width) is { } heights && heights.Least > Length.FromFeet(1)) all.Add((centre, null));
                }
            }
            all.Add(to);
            from = to;
        }
        all.RemoveAt(all.Count - 1);
        if (draft.Built is { } built) all = Standing(isFront ? built.Planned.Front : built.Planned.Back, built, doors, width);
        if (draft.Built is not null) CheckStanding(all, width);

        var posts = ImmutableArray.CreateBuilder<EndPost>(all.Count);
        foreach ((Length centre, string? doorId) in all)
        {
            if (Post(posts.Count + 1, centre, doorId, post, embedment, top) is { } made) posts.Add(made);
        }
        Holes(posts, post, embedment);
        return posts.ToImmutable();
    }

    /// <summary>The posts that were planned, where they stand: measured, or beside a door as it is, or as planned from the left string.</summary>
    private static List<(Length Centre, string? DoorId)> Standing(EndWall planned, BuiltSizes built, ImmutableArray<DoorOpening> doors, Length width)
    {
        return [.. planned.Posts.Select(post => (Centre(post), post.DoorId))];

        Length Centre(EndPost post)
        {
            if (doors.FirstOrDefault(each => each.Id == post.DoorId) is not { } door) return built.Of(MeasureNames.Place(post.MemberId)) ?? post.Centre;
            bool left = post.Centre < planned.Doors.First(each => each.Id == post.DoorId).Centre;
            return left ? door.RoughLeft - (width / 2) : door.RoughRight + (width / 2);
        }
    }

    /// <summary>Posts keep their numbers only where all of them stand under the bow, one beside the other.</summary>
    private void CheckStanding(List<(Length Centre, string? DoorId)> posts, Length width)
    {
        for (int index = 0; index < posts.Count; index++)
        {
            Length centre = posts[index].Centre;
            if (TopOf(centre, width) is null)
                draft.Error("ends.post.outside-span", path + ".posts", "The post stands outside the legs of the end bow.", draft.Tape(centre), $"under {draft.Tape(bow.Span)}");
            else if (index > 0 && centre - posts[index - 1].Centre < width)
                draft.Error("ends.post.on-post", path + ".posts", "Two posts stand in one place.", draft.Tape(centre), $"{draft.Tape(width)} or more from the post at {draft.Tape(posts[index - 1].Centre)}");
        }
    }

    // Asked when first needed, so that an end without a frame asks for none of them.
    private BoardSection PostBoard => postBoard ??= PostSection();

    /// <summary>The board of girts, jambs, cripples and vent rails.</summary>
    private BoardSection Frame => frame ??= draft.Board(path + ".frameBoard", end.FrameBoard, LayoutDefaults.FrameBoard, LayoutDefaults.TreatedFrame);

    /// <summary>A post stands with its deeper side along the tunnel, which is how it bends least under wind on the end (common practice, no source).</summary>
    private static Length WidthOf(BoardSection post) => post.Thickness;

    private BoardSection PostSection()
    {
        Usual<string> usual = LayoutDefaults.EndPost.LumberIn(draft.Units);
        string nominal = draft.Answers.Take(path + ".postSize", usual, end.PostSize);
        BoardSection section = draft.Lumber(path + ".postSize", nominal, treated: true, usual.Value);
        draft.CheckTreated(path + ".postSize", section);
        return section;
    }

    private bool MayStand(string postPath, Written<Length> asked, Length width, ImmutableArray<DoorOpening> doors, List<(Length Centre, string? DoorId)> others)
    {
        Length centre = asked.Value;
        Length least = draft.BowTube.Outside + (width / 2), most = bow.Span - least;
        if (centre < least || centre > most)
        {
            draft.Error("ends.post.outside-span", postPath, "The post stands outside the legs of the end bow.", asked.Text,
                $"{draft.Tape(TapeText.RoundUpForLimit(least, draft.Units))} to {draft.Tape(TapeText.RoundDownForLimit(most, draft.Units))}");
            return false;
        }
        if (TopOf(centre, width) is not { } heights || heights.Least < Length.FromInches(6))
        {
            draft.Error("ends.post.no-height", postPath, "The bow is too low here for a post.", asked.Text, "a place nearer the middle");
            return false;
        }
        foreach (DoorOpening door in doors)
        {
            Length left = door.RoughLeft - (width / 2), right = door.RoughRight + (width / 2);
            if (centre > left && centre < right)
            {
                draft.Error("ends.post.in-door", postPath, "The post stands in a door.", asked.Text,
                    $"up to {draft.Tape(TapeText.RoundDownForLimit(left - width, draft.Units))}, or from {draft.Tape(TapeText.RoundUpForLimit(right + width, draft.Units))}");
                return false;
            }
        }
        foreach ((Length other, _) in others)
        {
            if ((centre - other).Abs().Metres < width.Metres - Tolerances.PlaceM)
            {
                draft.Error("ends.post.on-post", postPath, "Two posts stand in one place.", asked.Text,
                    $"{draft.Tape(width)} or more from the post at {draft.Tape(other)}");
                return false;
            }
        }
        return true;
    }

    private EndPost? Post(int number, Length centre, string? doorId, BoardSection section, Length embedment, PostTop top)
    {
        Length width = WidthOf(section);
        if (TopOf(centre, width) is not { } heights) return null;
        if (top == PostTop.Bracket)
        {
            Length square = heights.Least - LayoutDefaults.BracketGap.ValueIn(draft.Units);
            heights = (square, square, square, square);
        }
        Length ground = draft.Ground.At(centre, station.Along) - station.Base;
        Angle tilt = Angle.FromRadians(Math.Atan2(Math.Max(heights.Point.Metres - heights.Least.Metres, 0), Math.Max(RunOfSlope(heights, width).Metres, Tolerances.PlaceM)));
        string id = FormattableString.Invariant($"{name}-post-{number}");
        if (draft.Built?.Of(MeasureNames.PostHeight(id)) is { } clear)
        {
            Length lift = ground + clear - heights.Point;
            heights = (heights.Left + lift, heights.Right + lift, heights.Point + lift, heights.Least + lift);
        }
        embedment = draft.Built?.DepthOf(id, embedment) ?? embedment;
        Length foot = ground - embedment;
        Length along = PlaneAlong(section.Depth);
        draft.Members.Add(new Member
        {
            Id = id,
            Role = MemberRole.EndPost,
            Section = section,
            Start = new TunnelPoint(centre, along, station.Base + foot),
            End = new TunnelPoint(centre, along, station.Base + heights.Point),
            CutLength = heights.Point - foot,
            Place = doorId is null ? $"{name} end, {draft.Tape(TapeText.RoundToMark(centre, draft.Units))} from the left string" : $"{name} end, beside {doorId}",
            Bevel = top == PostTop.Bracket ? null : new Bevel(tilt, heights.Left - foot, heights.Right - foot, heights.Point - foot),
        });
        return new EndPost(id, centre, width, ground, heights.Left, heights.Right, heights.Point, tilt, embedment, doorId);
    }

    /// <summary>Width over which the top falls from its highest point to its lowest edge.</summary>
    private static Length RunOfSlope((Length Left, Length Right, Length Point, Length Least) heights, Length width) =>
        heights.Point > Length.Max(heights.Left, heights.Right) ? width / 2 : width;

    /// <summary>
    /// Underside of the bow over the two edges of an upright, the highest point between them and the lower edge; null
    /// where the upright is not wholly under the bow.
    /// </summary>
    private (Length Left, Length Right, Length Point, Length Least)? TopOf(Length centre, Length width)
    {
        if (bow.UndersideAt(centre - (width / 2)) is not { } left || bow.UndersideAt(centre + (width / 2)) is not { } right) return null;
        Length point = Length.Max(left, right);
        Length middle = bow.Span / 2;
        if ((centre - middle).Abs() < width / 2 && bow.UndersideAt(middle) is { } ridge) point = Length.Max(point, ridge);
        return (left, right, point, Length.Min(left, right));
    }

    /// <summary>Where along the length the middle of a board lies whose outer face is in the plane of the end.</summary>
    private Length PlaneAlong(Length thickness)
    {
        Length inwards = (thickness / 2) - (draft.BowTube.Outside / 2);
        return isFront ? station.Along + inwards : station.Along - inwards;
    }

    private TunnelPoint InPlane(Length across, Length up, Length thickness) => new(across, PlaneAlong(thickness), station.Base + up);

    private void Holes(IEnumerable<EndPost> posts, BoardSection section, Length embedment)
    {
        Length diameter = draft.Answers.Take(path + ".holeDiameter", LayoutDefaults.HoleDiameter, end.HoleDiameter);
        Length diagonal = Length.FromMetres(Math.Sqrt((section.Thickness.Metres * section.Thickness.Metres) + (section.Depth.Metres * section.Depth.Metres)));
        if (diameter <= diagonal)
        {
            draft.Error("ground.hole.too-narrow", path + ".holeDiameter", "The hole is no wider than the post is across its corners.",
                end.HoleDiameter?.Text, $"over {draft.Tape(TapeText.RoundUpForLimit(diagonal, draft.Units))}");
            return;
        }
        Length depth = end.HoleDepth?.Value ?? embedment;
        if (depth < embedment)
        {
            draft.Error("ground.hole.too-shallow", path + ".holeDepth", "The hole is not as deep as the post goes.",
                end.HoleDepth?.Text, $"at least {draft.Tape(embedment)}");
            return;
        }
        Area outline = section.Thickness * section.Depth;
        Length collar = draft.Answers.Take("ground.collarRise", LayoutDefaults.CollarRise, draft.Plan.Ground.CollarRise);
        foreach (EndPost post in posts)
        {
            string id = "hole-" + post.MemberId;
            Length wide = draft.Measured(MeasureNames.HoleDiameter(id), diameter), deep = Length.Max(draft.Measured(MeasureNames.HoleDepth(id), depth), post.Embedment);
            if (wide <= diagonal) draft.Error("ground.hole.too-narrow", path + ".holeDiameter", "The hole is no wider than the post is across its corners.", draft.Tape(wide), $"over {draft.Tape(TapeText.RoundUpForLimit(diagonal, draft.Units))}");
            draft.Holes.Add(new ConcreteHole(id, post.MemberId,
                new TunnelPoint(post.Centre, PlaneAlong(section.Depth), station.Base + post.Ground), wide, deep, post.Embedment, outline, collar,
                ConcreteVolume.Of(wide, deep, outline, post.Embedment, collar)));
        }
        GroundPlanner.WarnOfFrost(draft, path + ".embedment", depth);
    }

    private void Girts(ImmutableArray<EndPost> posts, ImmutableArray<DoorOpening> doors)
    {
        BoardSection board = Frame;
        Length peak = bow.PeakHeight;
        ImmutableArray<Length> rows;
        if (end.WithoutGirts == true) return;
        if (!end.Girts.IsEmpty)
        {
            rows = [.. end.Girts.Select(row => row.Value)];
        }
        else
        {
            Length usual = draft.Answers.Take<Length>(path + ".girts", LayoutDefaults.GirtHeight, (Written<Length>?)null);
            rows = usual < peak * 0.6 ? [usual] : [];
        }
        for (int row = 0; row < rows.Length; row++)
        {
            Length height = rows[row];
            Length upper = height + (board.Depth / 2), lower = height - (board.Depth / 2);
            if (lower <= Length.Zero || upper >= bow.Underside.Highest())
            {
                draft.Error("ends.girt.off-the-wall", FormattableString.Invariant($"{path}.girts[{row}]"), "The girt does not stand within the end wall.",
                    end.Girts.IsEmpty ? draft.Tape(height) : end.Girts[row].Text,
                    $"{draft.Tape(board.Depth)} to {draft.Tape(TapeText.RoundDownForLimit(bow.Underside.Highest() - board.Depth, draft.Units))}");
                continue;
            }
            (Length leftEdge, Length rightEdge) = bow.Underside.AcrossAt(upper);
            List<(Length From, Length To)> bays = [];
            Length from = leftEdge;
            string? fromDoor = null;
            foreach (EndPost post in posts.Where(post => Length.Min(post.TopLeft, post.TopRight) >= lower))
            {
                if (fromDoor is null || fromDoor != post.DoorId || !Covers(doors, post.DoorId, lower)) bays.Add((from, post.Centre - (post.Width / 2)));
                from = post.Centre + (post.Width / 2);
                fromDoor = post.DoorId;
            }
            bays.Add((from, rightEdge));
            int number = 0;
            foreach ((Length bayFrom, Length bayTo) in bays)
            {
                number++;
                if (bayTo - bayFrom < Length.FromInches(4)) continue;
                AddBoard(FormattableString.Invariant($"{name}-girt-{row + 1}-{number}"), MemberRole.Girt, board,
                    InPlane(bayFrom, height, board.Thickness), InPlane(bayTo, height, board.Thickness),
                    FormattableString.Invariant($"{name} end, girt row {row + 1}, {number} from the left"), end.FrameBoard);
            }
        }
    }

    private static bool Covers(ImmutableArray<DoorOpening> doors, string? doorId, Length height) =>
        doors.FirstOrDefault(door => door.Id == doorId) is { } door && height < door.FrameTop;

    private (ImmutableArray<EndBoard> Boards, Length Height) Baseboards(ImmutableArray<EndPost> posts, ImmutableArray<DoorOpening> doors)
    {
        BoardSection board = draft.Board(path + ".baseboard", end.Baseboard, LayoutDefaults.Baseboard, LayoutDefaults.Treated);
        draft.CheckTreated(path + ".baseboard.treated", board);
        var boards = ImmutableArray.CreateBuilder<EndBoard>();
        Length from = Length.Zero;
        DoorOpening? before = null;
        foreach (DoorOpening? door in (IEnumerable<DoorOpening?>)[.. doors, null])
        {
            Length to = door?.RoughLeft ?? bow.Span;
            if (SweepsRightOf(before, from, to) || SweepsLeftOf(door, from, to)) FlushBoards(boards, board, posts, from, to);
            else PastBoard(boards, board, from, to);
            from = door?.RoughRight ?? to;
            before = door;
        }
        return (boards.ToImmutable(), board.Depth);
    }

    // A door bought whole has no leaves here, and sweeps all the same.
    private static bool SweepsLeftOf(DoorOpening? door, Length from, Length to) =>
        door is { Swing: DoorSwing.Out } and ({ Kind: DoorKind.Double } or { Hinge: HingeSide.Left }) && to > from;

    private static bool SweepsRightOf(DoorOpening? door, Length from, Length to) =>
        door is { Swing: DoorSwing.Out } and ({ Kind: DoorKind.Double } or { Hinge: HingeSide.Right }) && to > from;

    private void FlushBoards(ImmutableArray<EndBoard>.Builder boards, BoardSection board, ImmutableArray<EndPost> posts, Length from, Length to)
    {
        (Length leftEdge, Length rightEdge) = bow.Underside.AcrossAt(board.Depth);
        Length left = from == Length.Zero ? leftEdge : from;
        foreach (EndPost post in posts.Where(post => post.Centre > from && post.Centre < to))
        {
            Place(left, post.Centre - (post.Width / 2));
            left = post.Centre + (post.Width / 2);
        }
        if (to == bow.Span) Place(left, rightEdge);

        void Place(Length boardFrom, Length boardTo)
        {
            if (boardTo - boardFrom < Length.FromInches(1)) return;
            AddBaseboard(boards, board, boardFrom, boardTo, betweenPosts: true);
        }
    }

    private void PastBoard(ImmutableArray<EndBoard>.Builder boards, BoardSection board, Length from, Length to)
    {
        if (to - from < Length.FromInches(1)) return;
        AddBaseboard(boards, board, from, to, betweenPosts: false);
    }

    private void AddBaseboard(ImmutableArray<EndBoard>.Builder boards, BoardSection board, Length from, Length to, bool betweenPosts)
    {
        string id = FormattableString.Invariant($"{name}-baseboard-{boards.Count + 1}");
        // Flush boards lie in the plane of the posts' faces; boards that run past are nailed on outside it.
        Length along = betweenPosts ? PlaneAlong(board.Thickness) : PlaneAlong(-board.Thickness);
        bool splice = !betweenPosts && draft.Answers.Take(path + ".baseboard.splice", LayoutDefaults.Splice, end.Baseboard.Splice);
        draft.Members.Add(new Member
        {
            Id = id,
            Role = MemberRole.EndBaseboard,
            Section = board,
            Start = new TunnelPoint(from, along, station.Base + (board.Depth / 2)),
            End = new TunnelPoint(to, along, station.Base + (board.Depth / 2)),
            CutLength = to - from,
            Place = $"{name} end, at the ground, {(betweenPosts ? "flush between posts" : "past the posts")}",
            MaySplice = splice,
            StockLengths = LayoutDraft.StockLengths(end.Baseboard.StockLengths),
        });
        boards.Add(new EndBoard(id, from, to, betweenPosts));
    }

    private void AddBoard(string id, MemberRole role, BoardSection section, TunnelPoint start, TunnelPoint finish, string place, Board asked) =>
        draft.Members.Add(new Member
        {
            Id = id,
            Role = role,
            Section = section,
            Start = start,
            End = finish,
            CutLength = start.DistanceTo(finish),
            Place = place,
            StockLengths = LayoutDraft.StockLengths(asked.StockLengths),
        });
}
