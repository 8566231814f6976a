using System.Collections.Immutable;
using Hoopwright.BeforeCuts;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.BuildSteps;

/// <content>Posts, boards, concrete and doors of an end wall.</content>
internal sealed partial class BuildWriter
{
    private void End(EndWall end)
    {
        string drawing = end.Name + "-end";
        if (end.Closing == EndClosing.Framed)
        {
            ImmutableArray<ConcreteHole> holes = [.. tunnel.Holes.Where(hole => end.Posts.Any(post => post.MemberId == hole.PostId))];
            if (!holes.IsEmpty) Add(Holes(StepNames.Holes(end.Name), Phrase.Of("Dig the holes of the {0}", Named(end)), BuildStage.Ends, holes, After(StepNames.SetOut), drawing));
            EndPosts(end, drawing);
            EndBoards(end, drawing);
            if (!holes.IsEmpty) Add(Concrete(StepNames.EndConcrete(end.Name), Phrase.Of("Concrete the posts of the {0}", Named(end)), BuildStage.Ends, holes, After(StepNames.Boards(end.Name)), drawing));
            Leaves(end);
            Doors(end, drawing);
        }
        else
        {
            EndBoards(end, drawing);
        }
    }

    private void EndPosts(EndWall end, string drawing)
    {
        string id = StepNames.Posts(end.Name);
        ImmutableArray<MaterialLine> used = shares.Of(id);
        if (end.Posts.IsEmpty) return;
        int lags = (int)Count(used, Items.LagScrew);
        Add(new BuildStep
        {
            Id = id,
            Stage = BuildStage.Ends,
            Title = Phrase.Of("Set the posts of the {0}", Named(end)),
            Checks = [CutCheckKind.Posts],
            Purpose = Phrase.Of("The posts carry the wind on the end and hold the doors."),
            After = [After(StepNames.Holes(end.Name)), After(StepNames.SetOut), After(StepNames.Braces), After(StepNames.Bows)],
            Tasks = Tasks(StepTimes.Task("A post cut, stood and trued", end.Posts.Length, 12.5, 17)),
            LeastPeople = 2,
            BestPeople = 3,
            Tools = Tools(("saw", 1), ("ladder", 1), ("cordless drill", 1), ("spirit level", 1), ("string", 1), ("clamp", 2)),
            Materials = used,
            Drawings = [drawing],
            Parts = Says(
                Phrase.Of("Stand the two outermost posts first, plumb, and pull a string along their outer faces near the ground and near the top."),
                Phrase.Of("Stand each post on its mark, from the left string at {0}, with one lag screw only at its top, so that it still swings.", string.Join(", ", end.Posts.Select(post => Tape(post.Centre)))),
                Phrase.Of("Bring every post to the strings and plumb, then put in the rest of the {0} lag screws.", Text(lags))),
            Good =
            [
                Phrase.Of("Outer faces touch the string within {0}.", Tape(OffString)),
                Phrase.Of("Posts are plumb both ways within {0} over their height.", Tape(near.Frame)),
                .. end.Doors.Select(door => Phrase.Of("Between the posts of the door it is {0}, the same below and above within {1}.", Tape(door.RoughWidth), Tape(near.Doors))),
            ],
            Hold = end.Doors.IsEmpty
                ? Phrase.Of("Posts to the string and plumb, looked at before any concrete.")
                : Phrase.Of("Posts to the string and plumb, and every door opening measured below and above, before any concrete."),
            Cautions = [StepCaution.Ladder, BuildCautions.Tools, BuildCautions.Hole],
            Weather = CalmEnough,
            Overnight = Phrase.Of("Posts on one lag screw swing in wind: put the second in before you go."),
        });
    }

    private void EndBoards(EndWall end, string drawing)
    {
        string id = StepNames.Boards(end.Name);
        ImmutableArray<MaterialLine> used = shares.Of(id);
        int girts = Of(MemberRole.Girt).Count(girt => StepNames.Of(tunnel, girt) == id);
        Add(new BuildStep
        {
            Id = id,
            Stage = BuildStage.Ends,
            Title = Phrase.Of("Boards of the {0}", Named(end)),
            Checks = [CutCheckKind.Boards],
            Purpose = Phrase.Of("The film of the end is held at the board along the ground; girts stiffen the posts."),
            After = [After(StepNames.Posts(end.Name)), After(StepNames.Braces), After(StepNames.Bows)],
            Tasks = Tasks(StepTimes.Task("A board cut and screwed", end.Baseboards.Length + girts, 6.8, 9)),
            LeastPeople = 2,
            BestPeople = 3,
            Tools = Tools(("saw", 1), ("cordless drill", 1), ("spirit level", 1), ("tape", 1)),
            Materials = used,
            Drawings = [drawing],
            Parts = Says(
            [
                Phrase.Of("Screw {0} baseboards at the ground with their top edges level, {1} screws rated for treated lumber in all with the rest.", Text(end.Baseboards.Length), Text(Count(used, Items.LumberScrew))),
                .. girts > 0 ? (ImmutableArray<Phrase>)[Phrase.Of("Fit {0} girts between the posts, each cut to the gap at the bottom of its posts, so that none is pushed out of plumb.", Text(girts))] : [],
            ]),
            Good = [Phrase.Of("Posts are still on the string within {0} after the last board.", Tape(OffString))],
            Cautions = [BuildCautions.Tools],
            Overnight = Phrase.Of("May stand as it is."),
        });
    }

    private void Leaves(EndWall end)
    {
        ImmutableArray<DoorLeaf> leaves = [.. end.Doors.SelectMany(door => door.Leaves)];
        if (leaves.IsEmpty) return;
        string id = StepNames.Leaves(end.Name);
        ImmutableArray<MaterialLine> used = shares.Of(id);
        Add(new BuildStep
        {
            Id = id,
            Stage = BuildStage.Ends,
            Title = Phrase.Of("Build the door leaves of the {0}", Named(end)),
            Checks = [CutCheckKind.Boards],
            Purpose = Phrase.Of("A leaf that is square keeps its shape for years."),
            After = [],
            Tasks = Tasks(StepTimes.Task("A leaf cut, squared and braced", leaves.Length, 39, 52)),
            LeastPeople = 1,
            BestPeople = 2,
            Tools = Tools(("saw", 1), ("cordless drill", 1), ("square", 1), ("tape", 1)),
            Materials = used,
            Drawings = [.. end.Doors.Where(door => !door.Leaves.IsEmpty).Select(door => door.Id + "-leaf")],
            Parts = Says(
            [
                .. leaves.Select(leaf => Phrase.Of("Build leaf {0}, {1} wide and {2} high, on a flat floor.", leaf.Id, Tape(leaf.Width), Tape(leaf.Height))),
                Phrase.Of("Screw the brace from the foot at the hinges up to the far top corner, so that it is pressed and not pulled."),
            ]),
            Good = [Phrase.Of("Both diagonals of every leaf are alike within {0}.", Tape(OffString))],
            Cautions = [BuildCautions.Tools],
            Overnight = Phrase.Of("Leaves lie flat under a roof."),
        });
    }

    private void Doors(EndWall end, string drawing)
    {
        if (end.Doors.IsEmpty) return;
        string id = StepNames.Doors(end.Name);
        ImmutableArray<MaterialLine> used = shares.Of(id);
        Add(new BuildStep
        {
            Id = id,
            Stage = BuildStage.Ends,
            Title = Phrase.Of("Frame and hang the doors of the {0}", Named(end)),
            Checks = [CutCheckKind.Boards],
            Purpose = Phrase.Of("A true frame lets the leaves swing, and shuts out the wind."),
            After = [After(StepNames.Boards(end.Name)), Hard(StepNames.EndConcrete(end.Name), Set), After(StepNames.Leaves(end.Name))],
            Tasks = Tasks(
                StepTimes.Task("A board of the frame cut and screwed", Pieces(used), 6.8, 9),
                StepTimes.Task("A leaf hung and adjusted", end.Doors.Sum(door => door.Leaves.Length), 19, 27),
                StepTimes.Task("A bought door put in", end.Doors.Count(door => door.Leaves.IsEmpty), 180, 260)),
            LeastPeople = 2,
            BestPeople = 2,
            Tools = Tools(("saw", 1), ("cordless drill", 1), ("spirit level", 1), ("ladder", 1), ("wrench or driver", 1)),
            Materials = used,
            Drawings = [drawing],
            Parts = Says(
            [
                .. end.Doors.Select(door => Phrase.Of("Frame {0}: header of two boards with its top at {1}, a clear opening of {2} by {3}.", door.Id, Tape(door.HeaderTop), Tape(door.ClearWidth), Tape(door.ClearHeight))),
                .. end.Doors.Where(door => door.VentHeight > Length.Zero).Select(door => Phrase.Of("Leave a vent of {0} over the header of {1} under its rail.", Tape(door.VentHeight), door.Id)),
                .. end.Doors.Where(door => !door.Leaves.IsEmpty).Select(door => door.Kind switch
                {
                    DoorKind.Side or DoorKind.Double => Phrase.Of("Hang {0} with {1} hinges on wedges of {2}, then fit the latch.", door.Id, Text(door.Leaves.Sum(leaf => leaf.Hinges)), Tape(LayoutDefaults.LeafGap.ValueIn(tunnel.Units))),
                    DoorKind.Sliding or DoorKind.Overhead => Phrase.Of("Screw the track of {0} level, hang the leaf on its rollers, then fit the latch.", door.Id),
                }),
                .. end.Doors.Where(door => door.Leaves.IsEmpty).Select(door => Phrase.Of("Put {0} in as its maker says; its springs are under tension: leave them to whoever sells it.", door.Id)),
            ]),
            Good =
            [
                Phrase.Of("Both diagonals of every opening are alike within {0}.", Tape(near.Frame)),
                Phrase.Of("Leaves move with one hand and stay where they are left."),
            ],
            Cautions = [BuildCautions.Tools, StepCaution.Ladder],
            Overnight = Phrase.Of("Latch or tie every leaf: a door that bangs all night breaks its hinges."),
        });
    }
}
