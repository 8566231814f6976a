using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cover;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Upkeep;

/// <summary>The rounds of a tunnel, from the parts that it has.</summary>
internal static class InspectionRounds
{
    private static readonly Citation Practice = Citation.CommonPractice;
    private static readonly Citation Joints = new("Prevent Greenhouse Collapse, University of Vermont Extension; Preparing Your Greenhouse for a Hurricane, University of Connecticut Extension (2015)", "bolts, screws and clamps on bows, ties, trusses and purlins", Standing.Published);
    private static readonly Citation Storm = new("Preparing Your Greenhouses for a Hurricane, University of Massachusetts Extension", "before and after a storm; all joints at each change of film", Standing.Published);

    /// <summary>The rounds.</summary>
    internal static ImmutableArray<InspectionRound> Of(Tunnel tunnel, CoverPlan cover)
    {
        int ties = Count(MemberRole.Tie), purlins = Count(MemberRole.Purlin) + Count(MemberRole.RidgePurlin), braces = Count(MemberRole.CornerBrace), bows = tunnel.Stations.Length, posts = tunnel.GroundPosts.Length;
        int endPosts = tunnel.Ends.Sum(end => end.Posts.Length), doors = tunnel.Ends.Sum(end => end.Doors.Length), leaves = tunnel.Ends.Sum(end => end.Doors.Sum(door => door.Leaves.Length));
        SideWall[] moving = [.. tunnel.Sides.Where(side => side.Kind != SideKind.Fixed)];
        Length channel = Run(FasteningKind.Channel), batten = Run(FasteningKind.Batten);
        bool twoLayers = cover.Layers > 1, boards = Count(MemberRole.Baseboard) > 0 || Count(MemberRole.EndBaseboard) > 0;
        return
        [
            Round("weekly", "Every week in the season",
            [
                Item("sides", moving.Length > 0, Practice, "Roll-up and drop sides, {0}: run up and down, cranks and ropes sound, nothing caught.", string.Join(", ", moving.Select(side => side.Name + " side"))),
                Item("doors", doors > 0, Practice, "Door leaves, {0}: hinges, latches and hooks hold, and no wind opens them.", Text(leaves)),
                Item("holes", true, Practice, "Film: patch every hole the same day with film tape, on both faces, dry and clean."),
                Item("flapping", true, Practice, "Film and ropes: what flaps is pulled tight again."),
                Item("blower", twoLayers, Practice, "Blower: runs, its filter is clean, the film stands off evenly."),
                Item("drains", true, Practice, "Drains and swales along the sides are open."),
            ]),
            Round("winter", "Each autumn, before the first snow",
            [
                Item("joints", true, Joints, "Bolts, screws and clamps on {0}: loose ones tightened, rusted ones changed.", Some(("bows", bows), ("ties", ties), ("purlins", purlins), ("corner braces", braces))),
                Item("braces", braces > 0, Joints, "Corner braces, {0}: straight, screwed at both ends.", Text(braces)),
                Item("posts", posts > 0, Practice, "Ground posts, {0}: none lifted, leaning or loose; a mark at the ground shows it next time.", Text(posts)),
                Item("wood", endPosts > 0, Practice, "End-wall posts, {0}: a screwdriver at the ground finds no soft wood.", Text(endPosts)),
                Item("wire", channel > Length.Zero, Practice, "Spring wire over {0} of channel: seated, no rust, none jumped out at the ends.", TapeText.OfRun(channel, tunnel.Units)),
                Item("battens", batten > Length.Zero, Practice, "Battens, {0}: no nail or staple drawn.", TapeText.OfRun(batten, tunnel.Units)),
                Item("band", true, Storm, "Room for snow along both sides is clear of boxes, hoses and weeds."),
                Item("shade", true, Storm, "Shade cloth and hanging crops are off."),
                Item("props", true, Storm, "Props are cut to length and lie inside, with their feet."),
            ]),
            Round("storm", "When a storm is forecast",
            [
                Item("card", true, Practice, "The storm card hangs by the door; who clears and who watches is agreed."),
                Item("shut", doors > 0 || moving.Length > 0, Storm, "Doors, sides and vents are shut, latched and tied."),
                Item("loose", true, Storm, "Loose things are away, weak limbs are off the trees."),
                Item("tight", true, Storm, "Wire, battens and ropes are tight."),
                Item("air", twoLayers, Storm, "More air between the layers of film, and power for the blower."),
                Item("power", true, Storm, "What is electric inside is off or out of the wet; the way to its switch stays clear."),
            ]),
            Round("after", "After every storm, once the load is off",
            [
                Item("bows", true, Storm, "Bows, {0}: look along the row; none bent, dented or out of line.", Text(bows)),
                Item("lifted", posts > 0, Storm, "Posts, {0}: none pulled up against its mark; earth round them is closed.", Text(posts)),
                Item("slipped", true, Storm, "Wire, battens, clamps and braces: none slipped or sprung."),
                Item("torn", true, Storm, "Film: no tear, no drawn staple; patched or changed before the next wind."),
                Item("ends", endPosts > 0, Practice, "End walls: no cracked post, door frames still square."),
                Item("air-again", twoLayers, Storm, "The blower is back at its usual pressure."),
            ]),
            Round("cover", "While the film is off",
            [
                Item("all-joints", true, Storm, "All joints, about two hours: what rusts is changed."),
                Item("rot", boards, Storm, "Baseboards: rot at the ground and at joints is cut out and made new."),
                Item("lean", true, Practice, "An end that leans is brought back and gets corner braces."),
                Item("sharp", true, Practice, "A bare hand over all bows and boards finds nothing sharp; old tape is off."),
                Item("measured", true, Practice, "Film is cut to what was measured on the frame that stands, not to the plan."),
            ]),
        ];

        int Count(MemberRole role) => tunnel.Members.Count(member => member.Role == role);
        Length Run(FasteningKind kind) => cover.Runs.Where(run => run.Kind == kind).Aggregate(Length.Zero, (sum, run) => sum + run.Length);
    }

    private static InspectionRound Round(string id, string title, ImmutableArray<InspectionItem?> items) =>
        new(id, Phrase.Of(title), [.. items.OfType<InspectionItem>().Select(item => item with { Id = $"round-{id}-{item.Id}" })]);

    private static InspectionItem? Item(string id, bool has, Citation source, string what, params ReadOnlySpan<string> values) => has ? new(id, Phrase.Of(what, values), source) : null;

    private static string Some(params ReadOnlySpan<(string Name, int Count)> parts)
    {
        List<string> some = [];
        foreach ((string name, int count) in parts)
        {
            if (count > 0) some.Add($"{name} ({Text(count)})");
        }
        return string.Join(", ", some);
    }

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);
}
