using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Ground posts, their holes, and the baseboards of the sides.</summary>
internal static class GroundPlanner
{
    public static ImmutableArray<GroundPost> Posts(LayoutDraft draft)
    {
        Ground ground = draft.Plan.Ground;
        TubeSection tube = draft.Tube("ground.postTube", ground.PostTube, LayoutDefaults.PostTube(draft.BowTube.Outside, draft.Units), LayoutDefaults.PostWall(draft.Units));
        if (tube.Outside - (tube.Wall * 2) < draft.BowTube.Outside && draft.BowTube.Outside - (draft.BowTube.Wall * 2) < tube.Outside)
        {
            Length inside = draft.BowTube.Outside - (draft.BowTube.Wall * 2);
            string over = $"an inside width over {TapeText.OfThickness(draft.BowTube.Outside, draft.Answers.Units)}";
            // A tube without a hole, which is an error of its own, takes nothing in.
            draft.Warn("ground.post.tube-fit", "ground.postTube.outside",
                "The leg of the bow neither fits into this post nor over it.", TapeText.OfThickness(tube.Outside, draft.Answers.Units),
                inside > Length.Zero ? $"{over}, or an outside width under {TapeText.OfThickness(inside, draft.Answers.Units)}" : over);
        }

        Length embedment = draft.Answers.Take("ground.postEmbedment", LayoutDefaults.PostEmbedment, ground.PostEmbedment);
        Length deepest = draft.Stations.Max(station => Length.Max(station.Base - station.GroundLeft, station.Base - station.GroundRight));
        Usual<Length> usualLength = LayoutDefaults.PostProjection with
        {
            Value = UpToWhole(embedment + LayoutDefaults.PostProjection.ValueIn(draft.Units) + deepest, draft.Units),
            Says = "Whole length of a ground post: embedment, what stands out, and the fall of the ground.",
        };
        Length whole = draft.Answers.Take("ground.postLength", usualLength, ground.PostLength);
        if (whole <= embedment)
        {
            draft.Error("ground.post.too-short", "ground.postLength",
                "The ground post is no longer than it goes into the ground; nothing would stand out to take the bow.",
                ground.PostLength?.Text ?? draft.Tape(whole), $"over {draft.Tape(embedment)}");
        }
        PostConcrete concrete = draft.Answers.Take("ground.postConcrete", LayoutDefaults.PostConcrete, ground.PostConcrete);

        Length projection = whole - embedment;
        var posts = ImmutableArray.CreateBuilder<GroundPost>(draft.Stations.Length * 2);
        foreach (BowStation station in draft.Stations)
        {
            foreach (bool left in (ReadOnlySpan<bool>)[true, false])
            {
                posts.Add(Post(draft, station, left, tube, whole, projection, InConcrete(concrete, station.Number, draft.Stations.Length)));
            }
        }
        Holes(draft, posts, tube);
        WarnOfShallowPosts(draft, posts, embedment);
        return posts.MoveToImmutable();
    }

    private static Length UpToWhole(Length exact, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => TapeText.RoundUpForHole(exact, units),
        UnitSystem.Metric => MetricMarks.Of(exact, MetricWay.Up),
    };

    public static void Baseboards(LayoutDraft draft)
    {
        Ground ground = draft.Plan.Ground;
        BoardSection board = draft.Board("ground.baseboard", ground.Baseboard, LayoutDefaults.Baseboard, LayoutDefaults.Treated);
        draft.CheckTreated("ground.baseboard.treated", board);
        bool splice = draft.Answers.Take("ground.baseboard.splice", LayoutDefaults.Splice, ground.Baseboard.Splice);
        foreach (bool left in (ReadOnlySpan<bool>)[true, false])
        {
            Length across = left ? -board.Thickness / 2 : draft.Span + (board.Thickness / 2);
            draft.Members.Add(Lengthwise(draft, $"{SideName(left)}-baseboard", MemberRole.Baseboard, board,
                new PlanePoint(across, board.Depth / 2), $"{SideName(left)} side, at the ground",
                splice, LayoutDraft.StockLengths(ground.Baseboard.StockLengths)));
        }

        Length widestGap = draft.Stations.Max(station => Length.Max(station.Base - station.GroundLeft, station.Base - station.GroundRight));
        if (widestGap > board.Depth)
        {
            draft.Warn("ground.baseboard.hangs", "site.postTops",
                "On this fall a level baseboard hangs clear of the ground at the low end; fill under it, step it, or let post tops follow the ground.",
                $"{draft.Tape(widestGap)} of air", $"at most {draft.Tape(board.Depth)}");
        }
    }

    /// <summary>A straight member along the whole length.</summary>
    public static Member Lengthwise(LayoutDraft draft, string id, MemberRole role, MemberSection section, PlanePoint at, string place,
        bool splice, ImmutableArray<Length> stock)
    {
        BowStation first = draft.Stations[0], last = draft.Stations[^1];
        var start = new TunnelPoint(at.Across, first.Along, first.Base + at.Up);
        var end = new TunnelPoint(at.Across, last.Along, last.Base + at.Up);
        return new Member
        {
            Id = id,
            Role = role,
            Section = section,
            Start = start,
            End = end,
            CutLength = start.DistanceTo(end),
            Place = place,
            MaySplice = splice,
            NoJoints = splice ? draft.OffTheBows() : [],
            StockLengths = stock,
        };
    }

    public static string SideName(bool left) => left ? "left" : "right";

    private static GroundPost Post(LayoutDraft draft, BowStation station, bool left, TubeSection tube, Length whole, Length projection, bool inConcrete)
    {
        Length half = draft.BowTube.Outside / 2;
        Length across = left ? half : draft.Span - half;
        Length groundUp = left ? station.GroundLeft : station.GroundRight;
        Length top = station.Base + projection;
        string id = FormattableString.Invariant($"{SideName(left)}-post-{station.Number:00}");
        if (draft.Built?.DepthOf(id, whole - (top - groundUp)) is { } depth)
        {
            if (depth >= whole) draft.Error("ground.post.too-short", "ground.postLength", "The ground post is no longer than it goes into the ground; nothing would stand out to take the bow.", $"{id}, {draft.Tape(depth)} deep", $"under {draft.Tape(whole)}");
            top = groundUp + whole - depth;
        }
        draft.Members.Add(new Member
        {
            Id = id,
            Role = MemberRole.GroundPost,
            Section = tube,
            Start = new TunnelPoint(across, station.Along, top - whole),
            End = new TunnelPoint(across, station.Along, top),
            CutLength = whole,
            Place = FormattableString.Invariant($"{SideName(left)} side, bow {station.Number}"),
            StockLengths = LayoutDraft.StockLengths(draft.Plan.Ground.PostTube.StockLengths),
        });
        return new GroundPost(id, station.Number, left, station.Along, new TunnelPoint(across, station.Along, groundUp), top,
            top - groundUp, whole - (top - groundUp), inConcrete);
    }

    private static bool InConcrete(PostConcrete concrete, int bow, int bows) => concrete switch
    {
        PostConcrete.None => false,
        PostConcrete.Corners => bow == 1 || bow == bows,
        PostConcrete.CornersAndMiddle => bow == 1 || bow == bows || bow == (bows + 1) / 2,
        PostConcrete.All => true,
    };

    private static void Holes(LayoutDraft draft, IEnumerable<GroundPost> posts, TubeSection tube)
    {
        Ground ground = draft.Plan.Ground;
        List<GroundPost> set = [.. posts.Where(post => post.InConcrete)];
        if (set.Count == 0) return;
        Length diameter = draft.Answers.Take("ground.holeDiameter", LayoutDefaults.HoleDiameter, ground.HoleDiameter);
        if (diameter <= tube.Outside)
        {
            draft.Error("ground.hole.too-narrow", "ground.holeDiameter", "The hole is no wider than the post.",
                draft.Tape(diameter), $"over {draft.Tape(tube.Outside)}");
            return;
        }
        Area outline = tube.Form switch
        {
            TubeForm.Round => Area.FromSquareMetres(Math.PI * tube.Outside.Metres * tube.Outside.Metres / 4),
            TubeForm.Square => tube.Outside * tube.Outside,
        };
        Length collar = draft.Answers.Take("ground.collarRise", LayoutDefaults.CollarRise, ground.CollarRise);
        foreach (GroundPost post in set)
        {
            Length depth = ground.HoleDepth?.Value ?? post.Embedment;
            // A post that was measured stands in its hole.
            if (draft.Built is not null) depth = Length.Max(draft.Measured(MeasureNames.HoleDepth("hole-" + post.MemberId), depth), post.Embedment);
            if (depth < post.Embedment)
            {
                draft.Error("ground.hole.too-shallow", "ground.holeDepth", "The hole is not as deep as the post goes.",
                    ground.HoleDepth?.Text, $"at least {draft.Tape(post.Embedment)}");
                return;
            }
            Length wide = draft.Measured(MeasureNames.HoleDiameter("hole-" + post.MemberId), diameter);
            if (wide <= tube.Outside) draft.Error("ground.hole.too-narrow", "ground.holeDiameter", "The hole is no wider than the post.", draft.Tape(wide), $"over {draft.Tape(tube.Outside)}");
            draft.Holes.Add(new ConcreteHole("hole-" + post.MemberId, post.MemberId, post.Centre, wide, depth, post.Embedment, outline,
                collar, ConcreteVolume.Of(wide, depth, outline, post.Embedment, collar)));
        }
        WarnOfFrost(draft, "ground.holeDepth", draft.Holes[^1].Depth);
    }

    /// <summary>Concrete that ends above the frost line is jacked up by freezing ground.</summary>
    public static void WarnOfFrost(LayoutDraft draft, string path, Length depth)
    {
        if (draft.Plan.Site.FrostDepth is { } frost && depth < frost.Value)
        {
            draft.Warn("ground.concrete-above-frost", path,
                "The concrete ends above the frost depth; freezing ground can lift the post.",
                draft.Tape(depth), $"at least {frost.Text}");
        }
    }

    private static void WarnOfShallowPosts(LayoutDraft draft, IEnumerable<GroundPost> posts, Length planned)
    {
        GroundPost shallowest = posts.MinBy(post => post.Embedment) ?? throw new InvalidOperationException("A tunnel has posts.");
        Length lost = planned - shallowest.Embedment;
        if (lost.Metres > Tolerances.PlaceM && draft.Plan.Ground.PostLength is { } whole)
        {
            draft.Warn("ground.post.shallow", "ground.postLength",
                "With level tops on this fall the posts at the low side go less deep than planned.",
                $"{draft.Tape(shallowest.Embedment)} deep at {shallowest.MemberId}",
                $"posts of at least {draft.Tape(TapeText.RoundUpForHole(whole.Value + lost, draft.Units))}");
        }
    }
}
