using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.CoverSteps;

/// <content>Film of the roof: over, square, sides from the middle bow out, ends from the ridge down.</content>
internal sealed partial class StepWriter
{
    private SideWall RollSide => roll.IsLeft ? tunnel.Left : tunnel.Right;

    private SideWall FarSide => roll.IsLeft ? tunnel.Right : tunnel.Left;

    private int MiddleBow => tunnel.Stations[tunnel.Stations.Length / 2].Number;

    private IEnumerable<FasteningStep> OverRoof()
    {
        int ropes = cover.Ropes.Count;
        yield return RoofStep("lay", Phrase.Of("Roll the roof film out"),
        [
            Phrase.Of("Roll it out on clean ground along the {0}, {1} past the front bow and {2} past the back one: {3}.", Named(RollSide), Past(tunnel.Front), Past(tunnel.Back), roll.Why.Pattern),
            Phrase.Of("Lay it so that the treated face comes to lie inside, and the free edge on top towards the tunnel."),
            .. cover.Layers > 1 ? (ImmutableArray<Phrase>)[Phrase.Of("Lay both layers on each other, the treated one below, and pull both at once and alike.")] : [],
        ],
        [], LayPeople, [StepCaution.Lift, StepCaution.Wind], [], materials.Film(Roof));

        yield return RoofStep("ropes", Phrase.Of("Tie the ropes on"),
        [
            Phrase.Of("Throw {0} ropes of {1} over the bows.", Text(ropes), TapeText.Of(cover.Ropes.Length, tunnel.Units)),
            Phrase.Of("Bunch the free edge round a soft ball and tie a rope behind it, at {0} from the front edge of the sheet.", string.Join(", ", cover.Ropes.Marks.Select(Tape))),
        ],
        [], 2, [StepCaution.Lines(tunnel.Units)], [], materials.Ropes());

        yield return RoofStep("stakes", Phrase.Of("Stake the corners"),
        [
            Phrase.Of("Drive a stake outside each of the 4 corners of the tunnel; those of the set-out will do. Tie both corners of the near edge short to their stakes, so that no gust takes the sheet."),
        ],
        [], 2, [], [], []);

        yield return RoofStep("over", Phrase.Of("Pull it over"),
        [
            Phrase.Of("One person to each rope on the {0}, {1} on the {2} who feed; others at the ends with their eyes on the trees.", Named(FarSide), Text(CrewSize.Feeders), Named(RollSide)),
            Phrase.Of("At the word pull all ropes alike, hand over hand, until {0} hangs past the {1} of the {2}; tie the ropes and the far corners to stakes.", Tape(cover.RoofSideAllowance), Edge(FarSide), Named(FarSide)),
        ],
        [Phrase.Of("The edge comes over level: no rope is more than an arm's length ahead.")], people, [StepCaution.Wind, StepCaution.Lines(tunnel.Units)], [], []);

        yield return RoofStep("square", Phrase.Of("Square it"),
        [
            Phrase.Of("Shift it until it hangs {0} past both sides, {1} past the front bow and {2} past the back one.", Tape(cover.RoofSideAllowance), Past(tunnel.Front), Past(tunnel.Back)),
        ],
        [Phrase.Of("The edge is straight, and both sides hang alike within {0}.", Tape(tunnel.Units == UnitSystem.UsCustomary ? Length.FromInches(2) : Length.FromMillimetres(50)))], people, [], [], []);

        yield return Along("first-side", Phrase.Of("Fasten the {0} from the middle bow out", Named(RollSide)), RollSide,
            [Phrase.Of("Begin at bow {0} in the middle and work to both ends by turns, while two people pull at each end.", Text(MiddleBow))]);
        yield return Along("second-side", Phrase.Of("Pull and fasten the {0} from the middle bow out", Named(FarSide)), FarSide,
        [
            Pulled(cover.Pull.Planned),
            Phrase.Of("Begin at bow {0} in the middle and work to both ends by turns, while two people pull at each end.", Text(MiddleBow)),
        ]);
        foreach (EndWall end in tunnel.Ends) yield return OverEnd(end);

        PullRow row = cover.Pull.Planned;
        yield return RoofStep("check", Phrase.Of("Look at it"),
        [
            Phrase.Of("Look along every bay, and let out and pull again what hangs or draws folds."),
        ],
        row.Advice is PullAdvice.TooCold or PullAdvice.TooHot ? [] :
        [
            Phrase.Of("With film at {0} it hangs {1} at the middle of a bay, and gives about {2} under a push of {3}.", Text(row.Film), Tape(row.Sag), Tape(row.Give), TapeText.Of(cover.Pull.GaugePush, tunnel.Units)),
        ],
        2, [StepCaution.Ladder], [], []);
    }

    private string Past(EndWall end) => Tape(FasteningPlanner.PastEnd(cover, end));

    private int LayPeople => Math.Max(2, new CrewSize(tunnel, cover, day).Carry);

    private FasteningStep Along(string name, Phrase title, SideWall side, ImmutableArray<Phrase> does)
    {
        ImmutableArray<FasteningRun> runs = [.. cover.Runs.Where(run => run.PieceIds.Contains(Roof.Id) && (run.Id == side.Name + "-hip-channel" || run.Id.StartsWith(side.Name + "-side-", StringComparison.Ordinal)))];
        ImmutableArray<FasteningRun> channels = [.. runs.Where(run => run.Kind == FasteningKind.Channel)], battens = [.. runs.Except(channels)];
        ImmutableArray<MaterialLine> wire = materials.Wire(channels), nailed = materials.Battens(battens);
        return RoofStep(name, title,
        [
            .. does,
            .. channels.IsEmpty
                ? (ImmutableArray<Phrase>)[Phrase.Of("Staple, then nail the batten along the baseboard: {0}, {1} staples and {2} nails.", Run(runs), Text(StepMaterials.Count(nailed, Items.Staple)), Text(StepMaterials.Count(nailed, Items.Nail)))]
                : [Phrase.Of("Snap the wire in: {0}; screw it with a washer where one piece laps the next, {1} laps.", Run(runs), Text(StepMaterials.Count(wire, Items.Washer)))],
        ],
        [Phrase.Of("No folds run slantwise from bow to bow.")], 6, [StepCaution.Spring], runs, [.. wire, .. nailed]);
    }

    private FasteningStep OverEnd(EndWall end)
    {
        ImmutableArray<FasteningRun> bow = [.. cover.Runs.Where(run => !run.OnWood && run.PieceIds.Contains(Roof.Id) && run.Id.StartsWith(end.Name + "-", StringComparison.Ordinal))];
        ImmutableArray<FasteningRun> foot = [.. cover.Runs.Where(run => run.OnWood && run.PieceIds.Contains(Roof.Id) && run.Id.StartsWith(end.Name + "-", StringComparison.Ordinal))];
        if (end.Closing == EndClosing.RoofSheet)
        {
            ImmutableArray<MaterialLine> battens = materials.Battens(foot);
            return RoofStep(end.Name + "-close", Phrase.Of("Close the {0} with the roof film", Named(end)),
            [
                Phrase.Of("Pull the tail down in the middle first, then lay its fullness in even pleats to both sides."),
                Phrase.Of("Staple, then nail the batten along the baseboard: {0}, {1} staples and {2} nails.", Run(foot), Text(StepMaterials.Count(battens, Items.Staple)), Text(StepMaterials.Count(battens, Items.Nail))),
            ],
            [], 3, [StepCaution.Ladder], foot, battens);
        }
        ImmutableArray<FasteningRun> channels = [.. bow.Where(run => run.Kind == FasteningKind.Channel)], tubes = [.. bow.Where(run => run.Kind == FasteningKind.Batten)];
        bool endsFirst = cover.Order == CoverOrder.EndsFirst;
        // Where the ends come first their own wire goes in now too, in place of the short pieces.
        ImmutableArray<MaterialLine> wire = materials.Wire(endsFirst ? [.. channels, .. channels.Where(run => run.Wires > 1)] : channels);
        // A batten holds both films at once, so that it goes on with the later of the two.
        bool battensNow = endsFirst || end.Closing == EndClosing.Open;
        ImmutableArray<MaterialLine> screwed = battensNow ? materials.Battens(tubes) : [];
        int temporary = bow.Sum(cover.TemporaryWiresIn);
        return RoofStep(end.Name + "-end", Phrase.Of("Fasten the roof film over the bow of the {0}", Named(end)),
        [
            Phrase.Of("Two people pull the tail straight out while two fasten it on ladders at the bow."),
            .. temporary > 0 ? (ImmutableArray<Phrase>)[Phrase.Of("Take the {0} short pieces out as you come to them and snap in the wire of the end film, then that of the roof film over it.", Text(temporary))] : [],
            .. channels.IsEmpty
                ? (ImmutableArray<Phrase>)[battensNow
                    ? Phrase.Of("From the ridge down to both sides, screw the batten over the film: {0}, {1} screws.", Run(tubes), Text(StepMaterials.Count(screwed, Items.SelfDrillingScrew)))
                    : Phrase.Of("From the ridge down to both sides, clamp the film to the bow until the end film and the batten go over it.")]
                : [Phrase.Of("From the ridge down to both sides; double wire is screwed where it laps, {0} screws with washers in {1}.", Text(StepMaterials.Count(wire, Items.Washer)), Run(channels))],
        ],
        [Phrase.Of("No folds run from the bow into the first bay.")], 4, [StepCaution.Ladder, StepCaution.Spring], bow, [.. wire, .. screwed]);
    }

    private Phrase Pulled(PullRow row) => row.Advice switch
    {
        PullAdvice.PastSnug => Phrase.Of("Pull past snug: with film at {0} by {1} over the length and {2} over a bow; on another day as the pull table says.", Text(row.Film), Tape(row.PastSnugAlong), Tape(row.PastSnugOverBow)),
        PullAdvice.Loose => Phrase.Of("Leave it longer than snug: with film at {0} by {1} over the length and {2} over a bow; on another day as the pull table says.", Text(row.Film), Tape(row.PastSnugAlong), Tape(row.PastSnugOverBow)),
        PullAdvice.Snug => Phrase.Of("Pull it just snug with film at {0}; on another day as the pull table says.", Text(row.Film)),
        PullAdvice.TooCold or PullAdvice.TooHot => Phrase.Of("Film at {0} is not to be pulled: wait for a day near {1}, and pull as the pull table says.", Text(row.Film), Text(cover.Pull.Best)),
    };

    private static string Edge(SideWall side) => side.Kind == SideKind.Fixed ? "ground line" : "hip board";

    private FasteningStep RoofStep(
        string name, Phrase title, ImmutableArray<Phrase> does, ImmutableArray<Phrase> good, int needed, ImmutableArray<StepCaution> cautions, ImmutableArray<FasteningRun> runs, ImmutableArray<MaterialLine> used) =>
        Of("roof-" + name, CoverPart.Roof, title, does, good, needed, cautions, Roof, runs, used);
}
