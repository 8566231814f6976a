using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>The two long sides: hip boards and roll tubes.</summary>
internal static class SidePlanner
{
    public static SideWall Side(LayoutDraft draft, bool left)
    {
        string path = left || draft.Plan.Sides.Right is null ? "sides.left" : "sides.right";
        Side side = left ? draft.Plan.Sides.Left : draft.Plan.Sides.Right ?? draft.Plan.Sides.Left;
        SideKind kind = draft.Answers.Take(path + ".kind", LayoutDefaults.SideKind, side.Kind);
        string name = GroundPlanner.SideName(left);
        Length baseboard = draft.Members.First(member => member.Role == MemberRole.Baseboard).Section.Match(tube => tube.Outside, board => board.Depth);
        if (kind == SideKind.Fixed) return new SideWall(left, kind, Length.Zero, Length.Zero, baseboard, Length.Zero, Length.Zero);

        Length hip = draft.Answers.Take(path + ".hipHeight", LayoutDefaults.HipHeight(draft.Bow.SideHeight), side.HipHeight);
        hip = draft.Measured(MeasureNames.HipHeight(name), hip);
        BoardSection board = draft.Board(path + ".hipBoard", side.HipBoard, LayoutDefaults.HipBoard, LayoutDefaults.TreatedFrame);
        Length overlap = draft.Answers.Take(path + ".overlapBelow", LayoutDefaults.OverlapBelow, side.OverlapBelow);
        Length lowest = baseboard + (board.Depth / 2);
        Length highest = draft.Bow.PeakHeight * 0.8;
        if (hip < lowest || hip > highest)
        {
            draft.Error("sides.hip.out-of-range", path + ".hipHeight",
                "The hip board must stand over the baseboard and well under the peak.",
                side.HipHeight?.Text ?? draft.Tape(hip), $"{draft.Tape(TapeText.RoundUpForLimit(lowest, draft.Units))} to {draft.Tape(TapeText.RoundDownForLimit(highest, draft.Units))}");
            return new SideWall(left, SideKind.Fixed, Length.Zero, Length.Zero, baseboard, Length.Zero, Length.Zero);
        }

        (Length leftAcross, Length rightAcross) = draft.Bow.FilmLine.AcrossAt(hip);
        Length across = left ? leftAcross - (board.Thickness / 2) : rightAcross + (board.Thickness / 2);
        draft.Members.Add(GroundPlanner.Lengthwise(draft, name + "-hip-board", MemberRole.HipBoard, board, new PlanePoint(across, hip), name + " side, hip board",
            draft.Answers.Take(path + ".hipBoard.splice", LayoutDefaults.Splice, side.HipBoard.Splice), LayoutDraft.StockLengths(side.HipBoard.StockLengths)));

        if (kind == SideKind.RollUp)
        {
            TubeSection tube = draft.Tube(path + ".rollTube", side.RollTube, LayoutDefaults.LightTube(draft.Units), LayoutDefaults.LightWall(draft.Units));
            Length outside = left ? -board.Thickness - (tube.Outside / 2) : draft.Span + board.Thickness + (tube.Outside / 2);
            Member roll = GroundPlanner.Lengthwise(draft, name + "-roll-tube", MemberRole.RollTube, tube, new PlanePoint(outside, baseboard), name + " side, in the curtain's hem",
                true, LayoutDraft.StockLengths(side.RollTube.StockLengths));
            Length past = LayoutDefaults.RollTubePast.ValueIn(draft.Units);
            draft.Members.Add(roll with
            {
                Start = roll.Start with { Y = roll.Start.Y - past },
                CutLength = roll.CutLength + past,
                NoJoints = [],
            });
        }
        return new SideWall(left, kind, hip, board.Depth, baseboard, overlap, draft.Bow.FilmLine.DistanceTo(hip));
    }
}
