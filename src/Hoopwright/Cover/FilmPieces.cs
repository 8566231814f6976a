using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>The pieces of film of a tunnel, in the order they are cut.</summary>
internal sealed class FilmPieces(Tunnel tunnel, CoverRules rules)
{
    internal const string RoofId = "roof-film";

    // A length this near to a whole step is on it: doubles lose far less, a tape shows far more.
    private const double OnTheStepM = 1e-9;

    internal static string EndId(EndWall end) => end.Name + "-end-film";

    internal static string CurtainId(SideWall side) => side.Name + "-curtain-film";

    internal static string LeafId(DoorLeaf leaf) => leaf.Id + "-film";

    internal ImmutableArray<CoverPiece> All() =>
    [
        Roof(),
        .. tunnel.Ends.Where(end => end.Closing == EndClosing.Framed).Select(End),
        .. tunnel.Sides.Where(side => side.Kind != SideKind.Fixed).Select(Curtain),
        .. from end in tunnel.Ends
           from door in end.Doors
           where door.LeafCover == LeafCover.Film
           from leaf in door.Leaves
           select Leaf(end, door, leaf),
    ];

    internal CoverPiece Roof()
    {
        Length arc = tunnel.RoofArc();
        ImmutableArray<PiecePart> along =
        [
            new("length of the tunnel", tunnel.Length, null),
            .. tunnel.Ends.SelectMany(PastEnd),
        ];
        ImmutableArray<PiecePart> across =
        [
            new("over the bow, edge to edge", arc, null),
            .. tunnel.Sides.Select(side => new PiecePart(
                side.Kind == SideKind.Fixed ? $"past the ground line, {side.Name} side" : $"past the hip board, {side.Name} side",
                rules.RoofSideAllowance, "cover.roofSideAllowance")),
        ];
        // Trimmed past the end channel; over an end that the roof closes, and at the sides, the whole tail stays.
        Length finishedAlong = tunnel.Length + Sum(tunnel.Ends.Select(end => end.Closing == EndClosing.RoofSheet ? Sum(PastEnd(end)) : rules.RoofEndTrim));
        return Piece(RoofId, CoverRole.Roof, "roof", along, across, Rectangle(Sum(across), finishedAlong), rules.Layers);
    }

    private IEnumerable<PiecePart> PastEnd(EndWall end) => end.Closing switch
    {
        EndClosing.RoofSheet =>
        [
            new($"down over the {end.Name} end", end.Bow.PeakHeight, null),
            new($"to close the {end.Name} end", rules.EndWorking, "cover.endWorking"),
        ],
        EndClosing.Framed or EndClosing.Open => [new($"past the {end.Name} end bow", rules.RoofEndAllowance, "cover.roofEndAllowance")],
    };

    private CoverPiece End(EndWall end)
    {
        ImmutableArray<PiecePart> along =
        [
            new("peak over the foot of the bow", end.Bow.PeakHeight, null),
            new("below the baseboard", rules.EndBelow, "cover.endBelow"),
            new("above the bow", rules.EndAbove, "cover.endAbove"),
            new("to pull by", rules.EndWorking, "cover.endWorking"),
        ];
        ImmutableArray<PiecePart> across =
        [
            new("width of the bow", end.Bow.FilmLine.Bounds().Width, null),
            new("past the bow on the left", rules.EndSide, "cover.endSide"),
            new("past the bow on the right", rules.EndSide, "cover.endSide"),
        ];
        return Piece(EndId(end), CoverRole.End, $"{end.Name} end", along, across, EndOutline(end), 1);
    }

    /// <summary>What is left of end film when trimmed: past the bow all round, straight down at its feet to a level edge.</summary>
    private PlanePath EndOutline(EndWall end)
    {
        PlanePath film = end.Bow.FilmLine;
        // A bow that bends inwards more sharply than the margin is wide has no such line; its own then stands in.
        PlanePath top = film.Offset(rules.EndAbove, PathSide.Left) ?? film;
        Length bottom = Length.Min(top.Start.Up, top.End.Up) - rules.EndBelow;
        return PlanePath.Of(
        [
            .. top.Segments, .. Lines(top.End, top.End with { Up = bottom }, top.Start with { Up = bottom }, top.Start),
        ]);
    }

    private CoverPiece Curtain(SideWall side)
    {
        // The lower edge hangs over the baseboard: on the film line, or straight down once that has reached the ground.
        Length lower = side.BaseboardHeight - side.OverlapBelow;
        Length hanging = (tunnel.Bow.AtHeight(side, side.HipHeight) - tunnel.Bow.AtHeight(side, lower)).Abs() + Length.Max(-lower, Length.Zero);
        Length past = rules.CurtainEndAllowance;
        ImmutableArray<PiecePart> along =
        [
            new("length of the tunnel", tunnel.Length, null),
            new("past the front end", past, "cover.curtainEndAllowance"),
            new("past the back end", past, "cover.curtainEndAllowance"),
        ];
        ImmutableArray<PiecePart> across =
        [
            new("hip board down over the baseboard", hanging, null),
            new("for the hem, the roll and the channel", rules.CurtainAllowance, "cover.curtainAllowance"),
        ];
        return Piece(CurtainId(side), CoverRole.SideCurtain, $"{side.Name} side curtain", along, across, Rectangle(Sum(across), Sum(along)), 1);
    }

    private CoverPiece Leaf(EndWall end, DoorOpening door, DoorLeaf leaf)
    {
        Length wraps = rules.LeafWrap * 2;
        ImmutableArray<PiecePart> along = [new("height of the leaf", leaf.Height, null), new("around its top and bottom", wraps, "cover.leafWrap")];
        ImmutableArray<PiecePart> across = [new("width of the leaf", leaf.Width, null), new("around its sides", wraps, "cover.leafWrap")];
        string which = door.Leaves.Length == 1 ? "door leaf" : leaf.HingeLeft == true ? "left door leaf" : "right door leaf";
        return Piece(LeafId(leaf), CoverRole.DoorLeaf, $"{end.Name} end, {door.Id}, {which}", along, across, Rectangle(Sum(across), Sum(along)), 1);
    }

    private CoverPiece Piece(
        string id, CoverRole role, string place, ImmutableArray<PiecePart> along, ImmutableArray<PiecePart> across, PlanePath finished, int count) => new()
        {
            Id = id,
            Role = role,
            Place = place,
            AlongRoll = UpToStep(Sum(along)),
            AcrossRoll = Sum(across),
            AlongParts = along,
            AcrossParts = across,
            Finished = finished,
            FinishedArea = finished.AreaAbove(Length.Zero),
            Count = count,
        };

    private Length UpToStep(Length exact)
    {
        double steps = Math.Ceiling((exact.Metres - OnTheStepM) / rules.CutStep.Metres);
        return rules.CutStep * steps;
    }

    private static Length Sum(IEnumerable<PiecePart> parts) => Sum(parts.Select(part => part.Length));

    private static Length Sum(IEnumerable<Length> lengths) => lengths.Aggregate(Length.Zero, (sum, next) => sum + next);

    /// <summary>A rectangle that stands on the origin, walked clockwise so that its area counts positive.</summary>
    private static PlanePath Rectangle(Length across, Length up)
    {
        var foot = new PlanePoint(Length.Zero, Length.Zero);
        return PlanePath.Of(Lines(foot, new(Length.Zero, up), new(across, up), new(across, Length.Zero), foot));
    }

    private static IEnumerable<PathSegment> Lines(params IReadOnlyList<PlanePoint> points) =>
        points.Zip(points.Skip(1), (from, to) => new LineSegment(from, to));
}
