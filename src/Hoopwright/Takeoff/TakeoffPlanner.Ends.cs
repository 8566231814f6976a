using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

public static partial class TakeoffPlanner
{
    private static void Ends(TakeoffBuilder builder, Tunnel tunnel)
    {
        foreach (Member member in tunnel.Members)
        {
            switch (member.Role)
            {
                case MemberRole.EndPost:
                    if (member.Bevel is null) builder.Add(BuildStage.Ends, Items.PostBracket, "", MaterialUnit.Each, 1, "one a post that does not reach the bow", Citation.CommonPractice, [member.Id]);
                    builder.Add(BuildStage.Ends, Items.LagScrew, "rated for treated lumber", MaterialUnit.Each, TakeoffDefaults.LagsPerPostTop, "two at the top of a post: one to hold it to the string, one when it is right", Citation.CommonPractice, [member.Id]);
                    break;
                case MemberRole.EndBaseboard:
                    EndBoard board = tunnel.Ends.SelectMany(end => end.Baseboards).First(each => each.MemberId == member.Id);
                    int crossings = board.BetweenPosts ? 2 : tunnel.Ends.Where(end => end.Baseboards.Contains(board)).SelectMany(end => end.Posts).Count(post => post.Centre > board.From && post.Centre < board.To) + 2;
                    builder.Add(BuildStage.Ends, Items.LumberScrew, "rated for treated lumber", MaterialUnit.Each, crossings * TakeoffDefaults.ScrewsPerBoardEnd,
                        "two at each end of an end baseboard and at each post it passes", TakeoffDefaults.TreatedFasteners, [member.Id]);
                    break;
                case MemberRole.Girt:
                case MemberRole.Cripple:
                case MemberRole.VentRail:
                    builder.Add(BuildStage.Ends, Items.LumberScrew, "", MaterialUnit.Each, 2 * TakeoffDefaults.ScrewsPerBoardEnd, "two at each end of a girt, cripple or vent rail", Citation.CommonPractice, [member.Id]);
                    break;
                case MemberRole.Header:
                case MemberRole.Jamb:
                    builder.Add(BuildStage.Ends, Items.LumberScrew, "", MaterialUnit.Each, TakeoffDefaults.NailsPerHeader, "six a header board or jamb", Citation.CommonPractice, [member.Id]);
                    break;
                case MemberRole.LeafRail:
                case MemberRole.LeafBrace:
                    builder.Add(BuildStage.Ends, Items.LumberScrew, "", MaterialUnit.Each, 2 * TakeoffDefaults.ScrewsPerBoardEnd, "two at each end of a rail or brace of a leaf", Citation.CommonPractice, [member.Id]);
                    break;
                case MemberRole.Bow or MemberRole.Tie or MemberRole.RidgePurlin or MemberRole.Purlin or MemberRole.CornerBrace or MemberRole.GroundPost
                    or MemberRole.Baseboard or MemberRole.HipBoard or MemberRole.RollTube or MemberRole.LeafStile:
                    break;
            }
        }
        foreach (DoorOpening door in tunnel.Ends.SelectMany(end => end.Doors)) Hardware(builder, door);
    }

    private static void Hardware(TakeoffBuilder builder, DoorOpening door)
    {
        foreach (DoorLeaf leaf in door.Leaves)
        {
            if (leaf.HingeLeft is not null)
            {
                int hinges = leaf.Height > TakeoffDefaults.HighLeaf ? TakeoffDefaults.HingesOfAHighLeaf : TakeoffDefaults.HingesOfALowLeaf;
                builder.Add(BuildStage.Ends, Items.Hinge, "", MaterialUnit.Each, hinges, "three a leaf over 6 ft high, two a lower one", Citation.CommonPractice, [leaf.Id]);
            }
            if (door.LeafCover == LeafCover.Sheet)
                builder.Add(BuildStage.Ends, Items.RigidSheet, "4 ft x 8 ft", MaterialUnit.SquareMetres, (decimal)(leaf.Width * leaf.Height).SquareMetres, "area of the leaf", Citation.Geometry, [leaf.Id]);
        }
        switch (door.Kind)
        {
            case DoorKind.Side:
                One(Items.Latch, 1, "one a side door");
                break;
            case DoorKind.Double:
                One(Items.Latch, 1, "one a double door");
                One(Items.DropBolt, 2, "head and foot of the leaf that stays shut");
                break;
            case DoorKind.Sliding:
                builder.Add(BuildStage.Ends, Items.DoorTrack, "", MaterialUnit.Metres, (decimal)(door.Leaves.Sum(leaf => leaf.Width.Metres) * 2), "twice the width of the leaf", Citation.CommonPractice, [door.Id]);
                One(Items.RollerHanger, 2, "two a sliding leaf");
                One(Items.TrackBracket, 2 + Spaces(Length.FromMetres(door.Leaves.Sum(leaf => leaf.Width.Metres) * 2), Length.FromFeet(3)), "every 3 ft of track, and at its ends");
                One(Items.DoorHandle, 2, "inside and outside");
                break;
            case DoorKind.Overhead:
                builder.Add(BuildStage.Ends, Items.OverheadDoor, FormattableString.Invariant($"{door.ClearWidth.Feet:0.##} ft x {door.ClearHeight.Feet:0.##} ft"), MaterialUnit.Each, 1, "bought whole", Citation.Geometry, [door.Id]);
                break;
        }

        void One(string item, int count, string rule) => builder.Add(BuildStage.Ends, item, "", MaterialUnit.Each, count, rule, Citation.CommonPractice, [door.Id]);
    }
}
