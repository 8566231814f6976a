using System.Collections.Immutable;
using Hoopwright.BeforeCuts;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Takeoff;

namespace Hoopwright.BuildSteps;

/// <content>Bows, purlins, ties, braces and the boards along the sides.</content>
internal sealed partial class BuildWriter
{
    // Bows 20 ft or wider take three people at least: one at each leg, one with a pole (High Tunnels, University of Vermont, p. 44).
    private static readonly Length WideBow = Length.FromFeet(20);

    private ImmutableArray<StepWait> FeetStand => tunnel.Anchor switch
    {
        AnchorKind.Posts => [After(StepNames.GroundPosts), Hard(StepNames.PostConcrete, Set)],
        AnchorKind.Boards => [After(StepNames.Baseboards)],
    };

    private void Frame()
    {
        if (tunnel.Anchor == AnchorKind.Boards) Baseboards();
        Joints();
        Raise();
        Lengthwise(StepNames.Ridge, Phrase.Of("Hang the ridge purlin"), [.. Of(MemberRole.RidgePurlin)], [After(StepNames.Bows)]);
        Braces();
        Lengthwise(StepNames.Purlins, Phrase.Of("Hang the purlins"), [.. Of(MemberRole.Purlin)], [After(StepNames.Ridge), After(StepNames.Bows)]);
        Ties();
        if (tunnel.Anchor == AnchorKind.Posts) Baseboards();
    }

    private void Joints()
    {
        if (tunnel.BowPieces == 1) return;
        ImmutableArray<MaterialLine> used = shares.Of(StepNames.BowJoints);
        Add(new BuildStep
        {
            Id = StepNames.BowJoints,
            Stage = BuildStage.Frame,
            Title = Phrase.Of("Join the bows"),
            Purpose = Phrase.Of("Bows that are alike make a roof without waves."),
            After = [],
            Tasks = Tasks(
                StepTimes.Task("A bow laid out and checked", Bows, 2.6, 4),
                StepTimes.Task("A sleeve screwed", (int)Count(used, Items.TubeSleeve), 3.4, 4.5)),
            LeastPeople = 2,
            BestPeople = 4,
            Tools = Tools(("cordless drill", 2), ("tape", 1), ("file", 1)),
            Materials = used,
            Drawings = ["bow"],
            Parts = Says(
                Phrase.Of("Lay the first bow on flat ground, check it against its drawing, and stake its outline down as the pattern for all {0}.", Text(Bows)),
                Phrase.Of("Join {0} pieces a bow with sleeves, {1} screws in all; put the screws where no film will lie.", Text(tunnel.BowPieces), Text(Count(used, Items.SelfDrillingScrew))),
                Phrase.Of("Mark the ridge and the places of purlins and ties on every bow from the drawing.")),
            Good =
            [
                Phrase.Of("From foot to foot outside it is {0}, within {1}; the ridge is {2} over the feet.", Tape(tunnel.Span), Tape(near.Bow), Tape(tunnel.Bow.PeakHeight)),
                Phrase.Of("Every bow lies flat: none is twisted."),
            ],
            Cautions = [BuildCautions.Tools],
            Overnight = Phrase.Of("Joined bows lie flat, tied together, off the grass."),
        });
    }

    private void Raise()
    {
        ImmutableArray<MaterialLine> used = shares.Of(StepNames.Bows);
        bool wide = tunnel.Span >= WideBow;
        Length bay = tunnel.Stations[1].Along - tunnel.Stations[0].Along;
        Add(new BuildStep
        {
            Id = StepNames.Bows,
            Stage = BuildStage.Frame,
            Title = Phrase.Of("Raise the bows"),
            Purpose = Phrase.Of("The bows carry snow and wind to the ground."),
            After = [After(StepNames.BowJoints), .. FeetStand],
            Tasks = Tasks(StepTimes.Task("A bow raised, stayed and screwed", Bows, wide ? 9.5 : 7, wide ? 12.5 : 9)),
            LeastPeople = wide ? 3 : 2,
            BestPeople = 5,
            Tools = Tools(("cordless drill", 2), ("pole with a fork", 1), ("stay rope", 4), ("spirit level", 1), ("hammer", 1)),
            Materials = used,
            Drawings = ["bow", "left-side"],
            Parts = Says(
            [
                Phrase.Of(wide ? "Begin at the front: one person to each leg, one with a pole under the ridge; nobody stands below." : "Begin at the front: one person to each leg; nobody stands below."),
                tunnel.Anchor switch
                {
                    AnchorKind.Posts => Phrase.Of("Slip the legs into the posts down to the mark and screw them, {0} screws in all.", Text(Count(used, Items.SelfDrillingScrew))),
                    AnchorKind.Boards => Phrase.Of("Stand the legs on the ground inside the boards and hold each with its hangers, {0} in all.", Text(Count(used, Items.ConduitHanger))),
                },
                Phrase.Of("Stay the first two bows both ways to stakes before the next is raised, and tie each later bow to the last with a spacer of {0}.", Tape(bay)),
                Phrase.Of("Sight along the ridges as you go."),
            ]),
            Good =
            [
                Phrase.Of("The first bow is plumb within {0} over its height.", Tape(near.Frame)),
                Phrase.Of("Ridges stand to a string within {0}.", Tape(near.Bow)),
            ],
            Cautions = [BuildCautions.Raising, StepCaution.Lines(tunnel.Units), BuildCautions.Tools],
            Weather = CalmEnough,
            Overnight = Phrase.Of("Bows without a ridge purlin stand stayed both ways at the first and the last; with wind to come lay the loose ones flat."),
            Source = Manual,
        });
    }

    private void Lengthwise(string id, Phrase title, ImmutableArray<Member> tubes, ImmutableArray<StepWait> after)
    {
        if (tubes.IsEmpty) return;
        ImmutableArray<MaterialLine> used = shares.Of(id);
        int clamps = (int)Count(used, Items.CrossClamp);
        Add(new BuildStep
        {
            Id = id,
            Stage = BuildStage.Frame,
            Title = title,
            Purpose = Phrase.Of("It keeps the bows at their distance and upright."),
            After = after,
            Tasks = Tasks(StepTimes.Task("A crossing measured and clamped", clamps, 2.7, 3.5)),
            LeastPeople = 2,
            BestPeople = 3,
            Tools = Tools(("ladder", 2), ("wrench or driver", 2), ("long tape", 1), ("locking pliers", 2)),
            Materials = used,
            Drawings = ["bow", "left-side"],
            Parts = Says(
                Phrase.Of("Mark the tube as the ground is marked, from one end of one tape: {0} bows over {1}.", Text(Bows), Tape(tunnel.Length)),
                Phrase.Of("Clamp {0} of them at their marks on every bow, {1} clamps, from the front; joints lie between bows.", Text(tubes.Length), Text(clamps)),
                Phrase.Of("Smooth or tape every end: film will lie on it.")),
            Good = [Phrase.Of("Bows are as far apart at the tube as at the ground, within {0}.", Tape(near.Frame))],
            Cautions = [StepCaution.Ladder, BuildCautions.Tools],
            Weather = CalmEnough,
            Overnight = Phrase.Of("Leave no tube hanging by one clamp."),
        });
    }

    private void Braces()
    {
        ImmutableArray<Member> braces = [.. Of(MemberRole.CornerBrace)];
        if (braces.IsEmpty) return;
        Speed? building = BuildingWind;
        Add(new BuildStep
        {
            Id = StepNames.Braces,
            Stage = BuildStage.Frame,
            Title = Phrase.Of("Brace the corners"),
            Purpose = Phrase.Of("Braces keep the row of bows from leaning along its length."),
            After = [After(StepNames.Ridge), After(StepNames.Bows)],
            Tasks = Tasks(StepTimes.Task("A brace fitted to a plumb bow", braces.Length, 19, 26)),
            LeastPeople = 2,
            BestPeople = 3,
            Tools = Tools(("spirit level", 1), ("plumb line", 1), ("wrench or driver", 1), ("ladder", 1), ("saw for tube", 1)),
            Materials = shares.Of(StepNames.Braces),
            Drawings = ["left-side"],
            Parts = Says(
                Phrase.Of("Plumb each end bow with a line from its ridge before its brace is clamped, and hold it with a stay."),
                Phrase.Of("Clamp {0} braces, {1} long, from the end bow down towards the ground; the same way round at both ends.", Text(braces.Length), Tape(braces[0].CutLength)),
                Phrase.Of("Tighten every clamp and screw of the frame, then take the stays away.")),
            Good =
            [
                Phrase.Of("Both end bows are plumb within {0} over {1}.", Tape(near.Frame), Tape(tunnel.Bow.PeakHeight)),
                Phrase.Of("Diagonals from foot to foot are still alike within {0}.", DiagonalsWithin),
            ],
            Hold = Phrase.Of("Frame plumb, square and tight: end bows, diagonals and every clamp looked at."),
            Cautions = [StepCaution.Ladder, BuildCautions.Tools],
            Weather = CalmEnough,
            Overnight = building is { } wind
                ? Phrase.Of("The bare frame is worked out under strength for gusts of {0} while building; the verdict there says whether it stands them.", Text(wind))
                : Phrase.Of("The bare frame catches little wind; a wind speed in the plan has it worked out under strength."),
            OvernightWind = building,
            Source = Manual,
        });
    }

    private Speed? BuildingWind => tunnel.Plan.Site.Wind is { } wind ? Speed.FromMetresPerSecond(wind.Value.MetresPerSecond * (tunnel.Plan.Loads.BuildingWind?.Value ?? LoadDefaults.BuildingWind.Value).Value) : null;

    private void Ties()
    {
        ImmutableArray<Member> ties = [.. Of(MemberRole.Tie)];
        if (ties.IsEmpty) return;
        ImmutableArray<MaterialLine> used = shares.Of(StepNames.Ties);
        Add(new BuildStep
        {
            Id = StepNames.Ties,
            Stage = BuildStage.Frame,
            Title = Phrase.Of("Put in the ties"),
            Purpose = Phrase.Of("Ties keep the bows from spreading under snow."),
            After = [After(StepNames.Ridge), After(StepNames.Bows)],
            Tasks = Tasks(StepTimes.Task("A tie clamped at both ends", ties.Length, 7, 9.5)),
            LeastPeople = 2,
            BestPeople = 3,
            Tools = Tools(("ladder", 2), ("wrench or driver", 2), ("spirit level", 1)),
            Materials = used,
            Drawings = ["bow"],
            Parts = Says(
                Phrase.Of("Clamp {0} ties level at {1} over the ground line, {2} clamps.", Text(ties.Length), Tape(ties[0].Start.Z - tunnel.Stations[0].Base), Text(Count(used, Items.EndClamp))),
                Phrase.Of("Press the bow to its width with a strap before the second clamp is tightened, never pull it in with the clamp.")),
            Good = [Phrase.Of("Every tie is level within {0}, and the span at its bow has not changed.", Tape(near.Frame))],
            Cautions = [StepCaution.Ladder, BuildCautions.Tools],
            Weather = CalmEnough,
            Overnight = Phrase.Of("Leave no tube hanging by one clamp."),
        });
    }

    private void Baseboards()
    {
        ImmutableArray<MaterialLine> used = shares.Of(StepNames.Baseboards);
        if (used.IsEmpty) return;
        int bolts = (int)Count(used, Items.CarriageBolt);
        bool onPosts = tunnel.Anchor == AnchorKind.Posts;
        Length run = Length.FromMetres(Of(MemberRole.Baseboard).Sum(board => board.CutLength.Metres));
        Add(new BuildStep
        {
            Id = StepNames.Baseboards,
            Checks = [CutCheckKind.Boards],
            Stage = BuildStage.Ground,
            Title = Phrase.Of("Put on the baseboards of the sides"),
            Purpose = Phrase.Of("Film and curtains are held at these boards."),
            After = onPosts ? [After(StepNames.Bows), After(StepNames.Braces)] : [After(StepNames.SetOut)],
            Tasks = Tasks(
                StepTimes.Task("A bolt drilled and tightened", bolts, 1.8, 2.4),
                StepTimes.Boards(run, tunnel.Units)),
            LeastPeople = 2,
            BestPeople = 4,
            Tools = Tools(("cordless drill", 2), ("saw", 1), ("clamp", 4), ("long tape", 1), ("wrench or driver", 1)),
            Materials = used,
            Drawings = ["left-side"],
            Parts = Says(
            [
                onPosts
                    ? Phrase.Of("Clamp the boards to the outside of the posts with their top edges to a string, {0} in all, and bolt them, {1} bolts.", TapeText.OfRun(run, tunnel.Units), Text(bolts))
                    : Phrase.Of("Lay the boards along the strings, {0} in all, and stake them to stand on edge.", TapeText.OfRun(run, tunnel.Units)),
                Phrase.Of("Joints lie {0} or more off the middle of a bow, with a plate on each face.", Tape(LayoutDefaults.JointClear.ValueIn(tunnel.Units))),
                Phrase.Of("Turn the round heads of bolts outwards and file what is sharp: film and curtains rub here."),
            ]),
            Good = [Phrase.Of("Top edges run to a string within {0}.", Tape(near.Frame))],
            Cautions = [BuildCautions.Tools],
            Overnight = Phrase.Of("May stand as it is."),
        });
    }
}
