using System.Collections.Immutable;
using Hoopwright.BeforeCuts;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.BuildSteps;

/// <content>Lines marked, set-out, ground posts and their concrete.</content>
internal sealed partial class BuildWriter
{
    private static readonly Citation OneCall = new("one-call notice of Oklahoma (okie811.org)", "three business days before digging", Standing.Published);

    private void Ground()
    {
        SetOut set = tunnel.SetOut;
        int stakes = (int)Count(shares.Of(StepNames.SetOut), Items.Stake);
        Length deepest = Length.FromMetres(tunnel.Holes.Select(hole => hole.Depth.Metres).Concat(tunnel.GroundPosts.Select(post => post.Embedment.Metres)).DefaultIfEmpty(0.6).Max());
        Add(new BuildStep
        {
            Id = StepNames.Call,
            Stage = BuildStage.Site,
            Title = Phrase.Of("Have buried lines marked"),
            Purpose = Phrase.Of("Nobody hits a cable, a gas pipe or a drain."),
            After = [],
            Tasks = Tasks(StepTimes.Task("Call, walk the ground, look at the marks", 1, 45, 75)),
            LeastPeople = 1,
            BestPeople = 1,
            Tools = Tools(("marking paint", 1)),
            Drawings = ["set-out"],
            Parts = Says(
                Phrase.Of("Tell the one-call service (811 in the United States) where you will dig and drive, down to {0}; it wants about three business days.", Tape(deepest)),
                Phrase.Of("Walk the ground for what nobody marks, yard lights, farm water, drains, and ask whoever laid them."),
                Phrase.Of("Look up: no tube, ladder or rope may come near an overhead line.")),
            Good = [Phrase.Of("Every line is marked on the ground, or known to be absent.")],
            Hold = Phrase.Of("Marks seen by whoever digs; permit questions answered by the building office."),
            Cautions = [BuildCautions.Buried, StepCaution.Lines(tunnel.Units)],
            Overnight = Phrase.Of("Marks wash away: photograph them."),
            Source = OneCall,
        });
        Add(new BuildStep
        {
            Id = StepNames.SetOut,
            Stage = BuildStage.Site,
            Title = Phrase.Of("Set out and square"),
            Purpose = Phrase.Of("Everything later is measured from these strings."),
            After = [new(StepNames.Call, TimeSpan.FromHours(72), Phrase.Of("The one-call service wants about three business days."))],
            Tasks = Tasks(
                StepTimes.Task("Stake and square the corners", 1, 62, 90),
                StepTimes.Task("A batter board with its string", set.BatterBoards.Length, 4.4, 6.5),
                StepTimes.Task("A mark along a string", set.SideMarks.Length + set.FrontMarks.Length + set.BackMarks.Length, 0.6, 1)),
            LeastPeople = 2,
            BestPeople = 3,
            Tools = Tools(("long tape", 1), ("hammer", 1), ("level or laser", 1), ("marking paint", 1), ("saw", 1)),
            Materials = shares.Of(StepNames.SetOut),
            Drawings = ["set-out"],
            Parts = Says(
                Phrase.Of("Clear the pad; the ground falls {0} over the four corners.", Tape(set.GroundFall)),
                Phrase.Of("Stake the corners {0} apart across and {1} along, string to string; {2} stakes in all with those of the batter boards.", Tape(set.Across), Tape(set.Along), Text(stakes)),
                Phrase.Of("Square the first corner with {0} across, {1} along and {2} between.", Tape(set.Triangle.Across), Tape(set.Triangle.Along), Tape(set.Triangle.Diagonal)),
                Phrase.Of("Set {0} batter boards outside the corners so that the strings outlive the digging, and pull the strings tight.", Text(set.BatterBoards.Length)),
                Phrase.Of("Compare both diagonals, {0} each, and move the far corners until they are alike.", Tape(set.Diagonal)),
                Phrase.Of("Mark {0} places along each side from one end of one tape, never from mark to mark; the last is at {1}.", Text(set.SideMarks.Length), Tape(set.SideMarks[^1].Mark))),
            Good =
            [
                Phrase.Of("Both diagonals are {0}, alike within {1}.", Tape(set.Diagonal), DiagonalsWithin),
                Phrase.Of("Both ends are {0} from string to string, within {1}.", Tape(set.Across), Tape(near.Frame)),
            ],
            Hold = Phrase.Of("Diagonals measured by two people and written down; they differ by no more than {0}.", DiagonalsWithin),
            Cautions = [BuildCautions.Buried, BuildCautions.Taut],
            Overnight = Phrase.Of("Boards and stakes stay; slacken the strings and flag them, or take them in."),
            Source = new("Experiential High Tunnel Training, Plant Health Instructor 24 (2024), University of Kentucky", "3-4-5, corner posts first", Standing.Published),
        });
        if (tunnel.Anchor == AnchorKind.Posts) Posts();
    }

    private void Posts()
    {
        ImmutableArray<GroundPost> inConcrete = [.. tunnel.GroundPosts.Where(post => post.InConcrete)], driven = [.. tunnel.GroundPosts.Where(post => !post.InConcrete)];
        ImmutableArray<ConcreteHole> holes = [.. tunnel.Holes.Where(hole => inConcrete.Any(post => post.MemberId == hole.PostId))];
        if (!holes.IsEmpty) Add(Holes(StepNames.PostHoles, Phrase.Of("Dig the holes of the ground posts"), BuildStage.Ground, holes, After(StepNames.SetOut), "set-out"));
        GroundPost first = tunnel.GroundPosts[0];
        Add(new BuildStep
        {
            Id = StepNames.GroundPosts,
            Stage = BuildStage.Ground,
            Title = Phrase.Of("Set the ground posts"),
            Purpose = Phrase.Of("The posts hold the bows down, in line and level."),
            After = [After(StepNames.PostHoles), After(StepNames.SetOut)],
            Tasks = Tasks(
                StepTimes.Task("A post driven and brought to its mark", driven.Length, 8.8, 11),
                StepTimes.Task("A post stood in its hole and held by a jig", inConcrete.Length, 9, 14)),
            LeastPeople = 2,
            BestPeople = 4,
            Tools = Tools(("level or laser", 1), ("long tape", 1), ("spirit level", 2), ("post driver with cap", driven.IsEmpty ? 0 : 1), ("ladder", driven.IsEmpty ? 0 : 1)) is var tools ? [.. tools.Where(tool => tool.Count > 0)] : [],
            Materials = shares.Of(StepNames.GroundPosts),
            Drawings = ["set-out", "left-side"],
            Parts = Says(
            [
                Phrase.Of("Set the {0} corner posts first, then a string along the outside of the post tops on each side, and the rest to string and mark.", Text(4)),
                .. driven.IsEmpty ? (ImmutableArray<Phrase>)[] : [Phrase.Of("Drive {0} posts, a cap on each so that its top stays round, until {1} stands out at the front; the tops run to one line.", Text(driven.Length), Tape(first.Projection))],
                .. inConcrete.IsEmpty ? (ImmutableArray<Phrase>)[] : [Phrase.Of("Stand {0} posts in their holes, {1} deep, a pin of reinforcing bar through the foot of each, and hold each to string and height with a jig of two boards.", Text(inConcrete.Length), Tape(inConcrete[0].Embedment))],
            ]),
            Good =
            [
                Phrase.Of("Tops are level from post to post within {0}.", Tape(near.Frame)),
                Phrase.Of("Outer faces touch the string within {0}, and each stands on its mark within {1}.", Tape(OffString), Tape(near.Frame)),
                Phrase.Of("Outside to outside across is {0} at every bow, within {1}.", Tape(tunnel.Span), Tape(near.Frame)),
            ],
            Hold = Phrase.Of("Span at every bow and both diagonals over the corner posts measured and written down; the diagonals differ by no more than {0}.", DiagonalsWithin),
            Cautions = driven.IsEmpty ? [BuildCautions.Buried] : [BuildCautions.Buried, BuildCautions.Driving],
            Overnight = inConcrete.IsEmpty ? Phrase.Of("Driven posts may stand as they are; cap or flag their tops.") : Phrase.Of("Posts in open holes stay in their jigs; fence the holes off."),
            Source = Manual,
        });
        if (!holes.IsEmpty)
            Add(Concrete(StepNames.PostConcrete, Phrase.Of("Concrete the ground posts"), BuildStage.Ground, holes, After(StepNames.GroundPosts), "left-side"));
    }

    private BuildStep Holes(string id, Phrase title, BuildStage stage, ImmutableArray<ConcreteHole> holes, StepWait after, string drawing) => new()
    {
        Id = id,
        Stage = stage,
        Title = title,
        Purpose = Phrase.Of("Concrete below the frost holds the posts down in wind."),
        After = [after],
        Tasks = Tasks(StepTimes.Task("A hole dug and cleaned", holes.Length, 13.5, 18)),
        LeastPeople = 1,
        BestPeople = 3,
        Tools = Tools(("auger or post-hole digger", 1), ("digging bar", 1), ("tape", 1)),
        Materials = shares.Of(id),
        Drawings = [drawing],
        Parts = Says(
        [
            Phrase.Of("Dig {0} holes of {1} across, {2} deep, with their middles on the marks.", Text(holes.Length), Tape(holes[0].Diameter), Tape(holes[0].Depth)),
            .. tunnel.Plan.Site.FrostDepth is { } frost ? (ImmutableArray<Phrase>)[Phrase.Of("Frost goes {0} deep here: no hole may be less.", frost.Text)] : [Phrase.Of("Ask the building office how deep frost goes: no hole may be less.")],
            Phrase.Of("Leave the sides rough and a little wider at the foot, and clean loose earth out."),
        ]),
        Good = [Phrase.Of("A stick with a mark at {0} goes in to its mark at every hole.", Tape(holes[0].Depth))],
        Cautions = [BuildCautions.Buried, BuildCautions.Hole],
        Overnight = Phrase.Of("Cover each hole with a board that cannot slip, or fence it off; rain fills them."),
    };

    private BuildStep Concrete(string id, Phrase title, BuildStage stage, ImmutableArray<ConcreteHole> holes, StepWait after, string drawing)
    {
        ImmutableArray<MaterialLine> used = shares.Of(id);
        Mass bag = tunnel.Plan.Ground.BagMass?.Value ?? TakeoffDefaults.BagMass(tunnel.Units).Value;
        int bags = ConcreteBags.Whole(Volume.FromCubicMetres(holes.Sum(hole => hole.Volume.CubicMetres)), bag);
        return new BuildStep
        {
            Id = id,
            Stage = stage,
            Checks = [CutCheckKind.Concrete],
            Title = title,
            Purpose = Phrase.Of("The posts stay where they stand, and water runs off them."),
            After = [after],
            Tasks = Tasks(StepTimes.Task("A bag mixed and placed", bags, 4.5, 6.5), StepTimes.Task("A post trued and its collar shaped", holes.Length, 3.5, 5.5)),
            LeastPeople = 2,
            BestPeople = 4,
            Tools = Tools(("wheelbarrow or mixer", 1), ("hoe and shovel", 1), ("rod for concrete", 1), ("trowel", 1), ("spirit level", 1), ("bucket and water", 2)),
            Materials = used,
            Drawings = [drawing],
            Parts = Says(
                Phrase.Of("Mix {0} bags ({1}) with as much water as the bag says and no more; {2} holes take about {3} each.", Text(bags), ConcreteBags.SizeName(bag), Text(holes.Length), Text(Math.Ceiling((decimal)bags / holes.Length))),
                Phrase.Of("Fill in layers as deep as a hand is long, and rod each down into the one below, so that no air stays in it."),
                Phrase.Of("True the post to string and level after every layer, before the concrete stiffens."),
                Phrase.Of("Raise a collar of {0} at the post and slope it away to the edge of the hole, so that water runs off.", Tape(holes[0].CollarRise)),
                Phrase.Of("Keep it damp and out of sun and frost for three days under sacking or film.")),
            Good =
            [
                Phrase.Of("Posts are plumb within {0}, and still on their string and marks.", Tape(near.Frame)),
                Phrase.Of("Every collar slopes away from its post all round."),
            ],
            Hold = Phrase.Of("Posts looked at again two hours after placing, and none has moved."),
            Cautions = [BuildCautions.Cement, BuildCautions.Hole],
            Weather = Placing,
            Overnight = Phrase.Of("Nobody leans on a post for {0} h. In air below {1} cover the concrete with straw and film, or wait.", Text((int)Set.TotalHours), Text(ConcreteColdest)),
            Source = Manual,
        };
    }
}
