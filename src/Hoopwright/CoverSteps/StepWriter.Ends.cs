using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Takeoff;

namespace Hoopwright.CoverSteps;

/// <content>Film of the ends: bottom first, from the middle out, sides last.</content>
internal sealed partial class StepWriter
{
    private IEnumerable<FasteningStep> End(EndWall end)
    {
        CoverPiece film = cover.Pieces.First(piece => piece.Id == FilmPieces.EndId(end));
        ImmutableArray<FasteningRun> runs = [.. cover.Runs.Where(run => run.PieceIds.Contains(film.Id))];
        ImmutableArray<FasteningRun> bow = [.. runs.Where(run => !run.OnWood)];
        ImmutableArray<FasteningRun> ridge = [.. bow.Where(run => run.PieceIds.Length > 1)], legs = [.. bow.Where(run => run.PieceIds.Length == 1)];
        HashSet<string> boards = [.. end.Baseboards.Select(board => board.MemberId)];
        ImmutableArray<FasteningRun> foot = [.. runs.Where(run => run.OnWood && run.OnMemberIds.Any(boards.Contains))], doors = [.. runs.Where(run => run.OnWood && !run.OnMemberIds.Any(boards.Contains))];

        yield return Step(end, "hang", Phrase.Of("Hang the film of the {0}", Named(end)),
        [
            Phrase.Of("Find the middle of the sheet and of its bow; hang it smooth from the ridge, treated face in, {0} above the bow.", Tape(cover.EndAbove)),
        ], [], 3, [StepCaution.Ladder, StepCaution.Wind], film, [], materials.Film(film));

        ImmutableArray<MaterialLine> nailed = materials.Battens(foot);
        if (!foot.IsEmpty)
        {
            yield return Step(end, "foot", Phrase.Of("Bottom batten of the {0}", Named(end)),
            [
                Phrase.Of("Bottom first: lay the batten along the baseboard over the film, {0} in {1} stretches, and staple it from the middle out, {2} staples.", Run(foot), Text(foot.Length), Text(StepMaterials.Count(nailed, Items.Staple))),
                Phrase.Of("Then nail it, {0} nails, from the middle out, pulling the film sideways smooth as you go.", Text(StepMaterials.Count(nailed, Items.Nail))),
            ],
            [Phrase.Of("Film lies without a fold along the board.")], 2, [], film, foot, nailed);
        }

        int pieces = ridge.Sum(cover.TemporaryWiresIn);
        if (pieces > 0)
        {
            yield return Step(end, "temporary", Phrase.Of("Hold the {0} for the time being", Named(end)),
            [
                Phrase.Of("Pull the film up and snap in {0} short pieces of wire from the ridge out, by turns to both sides, at most {1} apart.", Text(pieces), Tape(cover.TemporaryWireSpacing)),
            ],
            [Phrase.Of("No folds run from the batten to the bow.")], 2, [StepCaution.Spring, StepCaution.Ladder], film, ridge, materials.Temporary(ridge));
        }
        else if (!ridge.IsEmpty && cover.Order == CoverOrder.EndsFirst)
        {
            yield return Step(end, "clamp", Phrase.Of("Hold the {0} for the time being", Named(end)),
            [
                Phrase.Of("Pull the film up and clamp it to the bow from the ridge down to both sides, until the roof film and the batten go over it."),
            ],
            [Phrase.Of("No folds run from the batten to the bow.")], 2, [StepCaution.Ladder], film, [], []);
        }
        else if (!ridge.IsEmpty)
        {
            yield return Step(end, "bow", Phrase.Of("Fasten the {0} to its bow", Named(end)),
            [
                Phrase.Of("Pull the film up and fasten it over the bow from the ridge down to both sides: {0}.", Run(ridge)),
            ],
            [Phrase.Of("No folds run from the batten to the bow.")], 2, [StepCaution.Spring, StepCaution.Ladder], film, ridge, Fastened(ridge));
        }

        if (!legs.IsEmpty)
        {
            yield return Step(end, "legs", Phrase.Of("Sides of the {0}, last", Named(end)),
            [
                Phrase.Of((legs.Length, tunnel.Left.Kind) switch
                {
                    (1, not SideKind.Fixed) => "Pull the film sideways and fasten it down the left leg of the bow below the hip board: {0}.",
                    (1, _) => "Pull the film sideways and fasten it down the right leg of the bow below the hip board: {0}.",
                    _ => "Pull the film sideways and fasten it down both legs of the bow below the hip boards: {0}.",
                }, Run(legs)),
            ],
            [], 2, [StepCaution.Spring], film, legs, Fastened(legs));
        }

        if (!doors.IsEmpty)
        {
            ImmutableArray<MaterialLine> around = materials.Battens(doors);
            yield return Step(end, "doors", Phrase.Of("Battens around the doors of the {0}", Named(end)),
            [
                Phrase.Of("Staple, then nail battens over the film along posts and headers: {0}, {1} staples and {2} nails. Do not cut the doors free yet.", Run(doors), Text(StepMaterials.Count(around, Items.Staple)), Text(StepMaterials.Count(around, Items.Nail))),
            ],
            [], 1, [], film, doors, around);
        }
    }

    /// <summary>Wire in channel, or battens where the plan has them on the bows.</summary>
    private ImmutableArray<MaterialLine> Fastened(ImmutableArray<FasteningRun> runs) =>
        [.. materials.Wire(runs.Where(run => run.Kind == FasteningKind.Channel)), .. materials.Battens(runs.Where(run => run.Kind == FasteningKind.Batten))];

    private static FasteningStep Step(
        EndWall end, string name, Phrase title, ImmutableArray<Phrase> does, ImmutableArray<Phrase> good, int people, ImmutableArray<StepCaution> cautions, CoverPiece film, ImmutableArray<FasteningRun> runs,
        ImmutableArray<MaterialLine> used) => Of(FormattableString.Invariant($"{end.Name}-{name}"), CoverPart.Ends, title, does, good, people, cautions, film, runs, used);
}
