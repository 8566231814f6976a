using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Cuts.Film;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.BeforeCuts;

/// <summary>Holds what would be cut by the plan alone against what stands.</summary>
internal sealed class CutChanges
{
    // Nothing that is cut is known closer.
    private const double SameM = 1e-5;

    private readonly Tunnel planned;
    private readonly Tunnel standing;
    private readonly CoverPlan plannedCover;
    private readonly CoverPlan cover;
    private readonly FilmCutPlan plannedFilm;

    public CutChanges(Tunnel planned, Tunnel standing, CoverPlan cover)
    {
        (this.planned, this.standing, this.cover) = (planned, standing, cover);
        var answers = new Answers(planned.Units);
        plannedCover = CoverPlanner.Plan(planned, answers).Plan;
        plannedFilm = FilmCutter.Cut(plannedCover, planned.Plan, answers).Plan;
    }

    /// <summary>The pieces of a kind whose size has changed, the shortest first.</summary>
    /// <param name="kind">What is about to be cut.</param>
    public ImmutableArray<CheckPiece> Of(CutCheckKind kind) =>
    [
        .. (kind switch
        {
            CutCheckKind.Film => cover.Pieces.SelectMany(Film),
            CutCheckKind.Posts => Members(MemberRole.EndPost),
            CutCheckKind.Channel => from run in cover.Runs
                                    where run.Kind == FasteningKind.Channel
                                    from before in plannedCover.Runs.Where(each => each.Id == run.Id)
                                    select Piece(run.Id, run.Place, before.Length, run.Length, before.Length),
            CutCheckKind.Boards => Members(
                MemberRole.Baseboard, MemberRole.HipBoard, MemberRole.EndBaseboard, MemberRole.Girt, MemberRole.Header, MemberRole.Jamb, MemberRole.VentRail, MemberRole.Cripple,
                MemberRole.LeafStile, MemberRole.LeafRail, MemberRole.LeafBrace),
            CutCheckKind.Concrete => from hole in standing.Holes
                                     from before in planned.Holes.Where(each => each.Id == hole.Id)
                                     // A hole is too shallow for the plan, where all else is too short for what stands.
                                     select Piece(hole.Id, "depth of the hole", before.Depth, hole.Depth, hole.Depth, before.Depth),
        }).Where(piece => (piece.Planned - piece.Now).Abs().Metres > SameM || piece.ShortBy > Length.Zero)
            .OrderByDescending(piece => piece.ShortBy.Metres).ThenBy(piece => piece.Id, StringComparer.Ordinal),
    ];

    private IEnumerable<CheckPiece> Film(CoverPiece piece)
    {
        if (plannedCover.Pieces.FirstOrDefault(each => each.Id == piece.Id) is not { } before) yield break;
        Length along = Sum(piece.AlongParts), alongBefore = Sum(before.AlongParts);
        // Where no roll was found the plan's own least size stands in.
        PlacedPiece? cut = plannedFilm.Rolls.SelectMany(roll => roll.Levels).SelectMany(level => level.Pieces).Where(each => each.PieceId == piece.Id).MinBy(each => each.Across.Metres);
        Length cutAlong = cut?.Along ?? before.AlongRoll, cutAcross = cut?.Across ?? before.AcrossRoll;
        if (cutAlong < alongBefore) (cutAlong, cutAcross) = (cutAcross, cutAlong);
        yield return Piece(piece.Id, $"film of the {piece.Place}, length", alongBefore, along, cutAlong);
        yield return Piece(piece.Id, $"film of the {piece.Place}, width", before.AcrossRoll, piece.AcrossRoll, cutAcross);
    }

    private IEnumerable<CheckPiece> Members(params ImmutableArray<MemberRole> roles) =>
        from member in standing.Members
        where roles.Contains(member.Role)
        from before in planned.Members.Where(each => each.Id == member.Id)
        select Piece(member.Id, member.Place, before.CutLength, member.CutLength, before.CutLength);

    private static Length Sum(ImmutableArray<PiecePart> parts) => parts.Aggregate(Length.Zero, (sum, part) => sum + part.Length);

    private static CheckPiece Piece(string id, string place, Length planned, Length now, Length cut) => Piece(id, place, planned, now, cut, now);

    private static CheckPiece Piece(string id, string place, Length planned, Length now, Length cut, Length needed) =>
        new(id, place, planned, now, needed.Metres - cut.Metres > SameM ? needed - cut : Length.Zero);
}
