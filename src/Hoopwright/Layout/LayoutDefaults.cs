using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>What the layout takes where the plan does not say, each with its source.</summary>
internal static class LayoutDefaults
{
    // Sources named here are registered with addresses in docs/sources.md.
    private static readonly Citation UsualSpacing =
        new("High tunnel building, Rutgers University horticultural engineering", "4 ft post spacing", Standing.Published);

    private static readonly Citation ConcreteCorners =
        new("High tunnel construction tips, University of Missouri Extension", "corner posts set in concrete", Standing.Published);

    private static readonly Citation BoardSize =
        new("Experiential High Tunnel Training, Plant Health Instructor 24 (2024), University of Kentucky", "2x6 base board, 2x4 hip board", Standing.Published);

    private static readonly Citation LightestWideBow =
        new("Engineering High Tunnels for Better Performance, University of Connecticut", "1.90 in x 14 ga, 26 ft or wider; 1.66 in x 14 ga below", Standing.Published);

    private static readonly Usual<Length> ThinnestBow =
        new(Length.FromInches(0.083), "The tube of the bows has this wall (14 in the Birmingham tube gauge).", LightestWideBow, Matters: true);

    // From this span on the wider tube; a metric plan is held to it a little sooner.
    private static readonly Usual<Length> WideSpan = new(Length.FromFeet(26), "Bows this wide take the wider tube.", LightestWideBow) { Metric = MetricWay.Down };

    internal static Usual<UnitSystem> Units { get; } = new(UnitSystem.UsCustomary, "Results are shown in feet and inches.", Citation.CommonPractice);

    internal static Usual<Length> BowSpacing { get; } = new(Length.FromFeet(4), "Bows stand at most this far apart.", UsualSpacing, Matters: true) { Metric = MetricWay.Down };

    internal static Usual<BayRule> Bays { get; } = new(BayRule.Equal, "All bays are alike.", Citation.CommonPractice);

    internal static Usual<Length> SideHeight { get; } = new(Length.Zero, "The bow has no straight legs.", Citation.Geometry, Matters: true);

    internal static Usual<TubeForm> Form { get; } = new(TubeForm.Round, "The tube is round.", Citation.CommonPractice);

    internal static Usual<TubeMaterial> Material { get; } = new(TubeMaterial.GalvanizedSteel, "The tube is galvanized steel.", Citation.CommonPractice);

    internal static Usual<int> TieEvery { get; } = new(1, "A tie in every bow but the end bows.", Citation.CommonPractice);

    internal static Usual<int> BraceCorners { get; } = new(4, "All four corners are braced.", Citation.CommonPractice, Matters: true);

    internal static Usual<int> BraceBays { get; } = new(2, "A corner brace reaches over two bays.", Citation.FromMemory);

    /// <summary>The usual width of light tubes.</summary>
    internal static Usual<Length> LightTube(UnitSystem units) => Outside(
        new(Length.FromInches(1.315), "Purlins, ties, braces and roll tubes are this wide.", Citation.CommonPractice), units);

    /// <summary>The usual wall of light tubes.</summary>
    internal static Usual<Length> LightWall(UnitSystem units) => Wall(
        new(Length.FromInches(0.065), "Purlins, ties, braces and roll tubes have this wall.", Citation.CommonPractice), units);

    /// <summary>The usual wall of bows.</summary>
    internal static Usual<Length> BowWall(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => ThinnestBow,
        UnitSystem.Metric => Wall(ThinnestBow with { Says = "The tube of the bows has this wall." }, units),
    };

    /// <summary>The usual wall of ground posts, whatever that of the bows.</summary>
    internal static Usual<Length> PostWall(UnitSystem units) => BowWall(units) with
    {
        Says = units switch
        {
            UnitSystem.UsCustomary => "The tube of the ground posts has this wall (14 in the Birmingham tube gauge).",
            UnitSystem.Metric => "The tube of the ground posts has this wall.",
        },
        Source = Citation.CommonPractice,
    };

    internal static Usual<AnchorKind> Anchor { get; } = new(AnchorKind.Posts, "The bows stand on ground posts.", Citation.CommonPractice, Matters: true);

    internal static Usual<PostTopLine> PostTops { get; } = new(PostTopLine.Level, "Post tops stand to one level line.", Citation.CommonPractice);

    internal static Usual<Length> PostEmbedment { get; } = new(Length.FromInches(30), "Ground posts go this deep; frost, soil and wind decide.", Citation.FromMemory, Matters: true) { Metric = MetricWay.Up };

    internal static Usual<Length> PostProjection { get; } = new(Length.FromInches(18), "Ground posts stand this far out of the ground at least.", Citation.FromMemory) { Metric = MetricWay.Up };

    internal static Usual<PostConcrete> PostConcrete { get; } = new(Plans.PostConcrete.Corners, "The four corner posts stand in concrete. Concrete may make the tunnel a permanent structure: ask the building office.", ConcreteCorners, Matters: true);

    internal static Usual<Length> HoleDiameter { get; } = new(Length.FromInches(10), "Holes for concrete are this wide, about three times the post.", Citation.CommonPractice);

    internal static Usual<Length> CollarRise { get; } = new(Length.FromInches(2), "Concrete rises this much at the post and slopes away to shed water.", Citation.CommonPractice);

    internal static Usual<int> HangersPerLeg { get; } = new(2, "Hangers that hold one leg of a bow to the board.", Citation.CommonPractice);

    internal static Usual<string> Baseboard { get; } = new("2x6", "The board along the foot of a side.", BoardSize);

    internal static Usual<bool> Treated { get; } = new(true, "Lumber at the ground is treated for ground contact.", BoardSize);

    internal static Usual<bool> TreatedFrame { get; } = new(false, "Lumber off the ground is not treated.", Citation.CommonPractice);

    internal static Usual<bool> Splice { get; } = new(true, "Long boards are joined from several, off the bows.", BoardSize);

    internal static Usual<Length> JointClear { get; } = new(Length.FromInches(6), "Joints keep this far from the middle of a bow, clear of clamps, sleeves and plates.", Citation.CommonPractice);

    internal static Usual<SideKind> SideKind { get; } = new(Plans.SideKind.Fixed, "The roof film runs down to the baseboard.", Citation.CommonPractice, Matters: true);

    internal static Usual<string> HipBoard { get; } = new("2x4", "The board at which the roof film ends.", BoardSize);

    internal static Usual<Length> OverlapBelow { get; } = new(Length.FromInches(6), "The curtain hangs this far below the top of the baseboard.", Citation.FromMemory);

    internal static Usual<Length> RollTubePast { get; } = new(Length.FromInches(12), "The roll tube runs this far past the end for its crank.", Citation.CommonPractice);

    internal static Usual<EndClosing> Closing { get; } = new(EndClosing.Framed, "The end is framed with posts.", Citation.CommonPractice);

    internal static Usual<string> EndPost { get; } = new("4x4", "The posts of the end.", new Citation("Costs to Build a Metal-Hoop High Tunnel, EHT-105, Texas A&M", "4x4 end posts", Standing.Published));

    internal static Usual<Length> EndPostSpacing { get; } = new(Length.FromFeet(4), "Posts of the end stand at most this far apart, middle to middle.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<PostTop> PostTop { get; } = new(Plans.PostTop.Bow, "Posts of the end are cut to the slope under the bow.", Citation.CommonPractice);

    internal static Usual<Length> BracketGap { get; } = new(Length.FromInches(0.5), "A bracketed post stops this far under the bow.", Citation.CommonPractice);

    internal static Usual<Length> EndEmbedment { get; } = new(Length.FromInches(18), "Posts of the end go this deep, in concrete; frost decides.", Citation.CommonPractice, Matters: true) { Metric = MetricWay.Up };

    internal static Usual<string> FrameBoard { get; } = new("2x4", "Girts, jambs and vent rails.", Citation.CommonPractice);

    internal static Usual<Length> GirtHeight { get; } = new(Length.FromFeet(4), "A row of girts at this height.", Citation.FromMemory);

    internal static Usual<Length> DoorHeight { get; } = new(Length.FromFeet(7), "Clear height of the door.", Citation.CommonPractice, Matters: true) { Metric = MetricWay.Up };

    internal static Usual<DoorSwing> Swing { get; } = new(DoorSwing.Out, "The door swings out.", Citation.CommonPractice, Matters: true);

    internal static Usual<HingeSide> Hinge { get; } = new(HingeSide.Left, "The door is hinged at its left; the side away from the strongest wind is the better one.", Citation.CommonPractice, Matters: true);

    internal static Usual<LeafCover> LeafCover { get; } = new(Plans.LeafCover.Film, "Door leaves are covered with film.", Citation.CommonPractice);

    internal static Usual<string> LeafBoard { get; } = new("2x4", "The frame of a door leaf, laid flat.", Citation.CommonPractice);

    internal static Usual<Length> LeafGap { get; } = new(Length.FromInches(0.25), "Gap at the sides and top of a hinged leaf.", Citation.CommonPractice);

    internal static Usual<Length> LeafBottomGap { get; } = new(Length.FromInches(1), "Gap under a leaf.", Citation.CommonPractice);

    internal static Usual<Length> TallLeaf { get; } = new(Length.FromFeet(6), "A leaf higher than this has three hinges, a lower one two.", Citation.CommonPractice);

    internal static Usual<Length> SlideOverlap { get; } = new(Length.FromInches(3), "A sliding leaf laps past the opening this much at the sides and top.", Citation.CommonPractice);

    internal static Usual<int> FilmLayers { get; } = new(1, "One layer of film on the roof.", Citation.CommonPractice, Matters: true);

    /// <summary>The usual film.</summary>
    internal static Usual<Length> FilmThickness(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => new(Length.FromInches(0.006), "Greenhouse film of 6 mil.", Citation.CommonPractice, Matters: true),
        UnitSystem.Metric => new(Length.FromMillimetres(0.15), "Greenhouse film of 150 μm.", Citation.CommonPractice, Matters: true),
    };

    internal static Usual<Length> BatterBoardOffset { get; } = new(Length.FromFeet(3), "Batter boards stand this far outside the corners.", Citation.CommonPractice);

    /// <summary>The lightest usual tube for a bow of a span.</summary>
    internal static Usual<Length> BowTube(Length span, UnitSystem units) => Outside(
        new(Length.FromInches(span >= WideSpan.ValueIn(units) ? 1.900 : 1.660), "The tube of the bows is this wide.", LightestWideBow, Matters: true), units);

    /// <summary>The usual number of purlins of a span.</summary>
    internal static Usual<int> Purlins(Length span) => new(
        span <= Length.FromFeet(20) ? 1 : span <= Length.FromFeet(30) ? 3 : 5,
        "Purlins in all, the ridge purlin included.", Citation.FromMemory, Matters: true);

    /// <summary>The tube that the leg of a bow fits into: the next usual size with room inside.</summary>
    internal static Usual<Length> PostTube(Length leg, UnitSystem units)
    {
        Length needed = leg + (2 * BowWall(units).Value);
        // Past the widest, a width that no list has: with a little room, on a mark.
        Length outside = UsualTubes.OutsideOver(needed, units) ?? units switch
        {
            UnitSystem.UsCustomary => needed + Length.FromInches(0.05),
            UnitSystem.Metric => MetricMarks.Of(needed + Length.FromMillimetres(1), MetricWay.Up),
        };
        return new(outside, "Ground posts are this wide; the leg of the bow slides inside.", units == UnitSystem.Metric ? UsualTubes.SourceInMillimetres : Citation.FromMemory, Matters: true)
        {
            Metric = MetricWay.AsItIs,
        };
    }

    /// <summary>The usual clear width of a door.</summary>
    internal static Usual<Length> DoorWidth(DoorKind kind) => new(
        Length.FromFeet(kind switch { DoorKind.Side => 3, DoorKind.Double => 8, DoorKind.Sliding => 4, DoorKind.Overhead => 8 }),
        "Clear width of the door.", Citation.CommonPractice, Matters: true);

    /// <summary>The usual board of a header over an opening.</summary>
    internal static Usual<string> Header(Length roughWidth) => new(
        roughWidth <= Length.FromFeet(6) ? "2x6" : roughWidth <= Length.FromFeet(8.5) ? "2x8" : "2x10",
        "A header is two of these; its bending is checked under strength.", Citation.FromMemory);

    /// <summary>The usual height of a hip board.</summary>
    internal static Usual<Length> HipHeight(Length sideHeight) => new(
        Length.Min(Length.FromFeet(5), Length.Max(Length.FromFeet(3), sideHeight)),
        "Height of the middle of the hip board.", Citation.CommonPractice, Matters: true);

    /// <summary>The usual height at which a corner brace meets the end bow.</summary>
    internal static Usual<Length> BraceTop(Length sideHeight, Length peak) => new(
        Length.Min(peak * 0.6, Length.Max(Length.FromFeet(4), sideHeight)),
        "Height at which a corner brace meets the end bow.", Citation.FromMemory);

    internal static Usual<Length> HeadRoom { get; } = new(Length.FromInches(78), "People and machines pass under this without meeting it.", Citation.CommonPractice) { Metric = MetricWay.Up };

    internal static Usual<Length> BraceFoot { get; } = new(Length.FromInches(6), "The foot of a corner brace meets its bow this high.", Citation.CommonPractice);

    internal static Usual<Length> BatterBoardHalf { get; } = new(Length.FromFeet(2), "A batter board reaches this far to each side of its string.", Citation.CommonPractice);

    /// <summary>The usual height of a tie.</summary>
    internal static Usual<Length> TieHeight(Length sideHeight, Length peak) => new(
        sideHeight + ((peak - sideHeight) * (2.0 / 3)), "Height of the ties.", Citation.FromMemory, Matters: true);

    // No tube of a metric plan is lighter than the one that is usual, or published, in inches.
    private static Usual<Length> Outside(Usual<Length> inches, UnitSystem units) => Heavier(inches, UsualTubes.OutsideOver(inches.Value, units), units);

    private static Usual<Length> Wall(Usual<Length> inches, UnitSystem units) => Heavier(inches, UsualTubes.WallOver(inches.Value, units), units);

    private static Usual<Length> Heavier(Usual<Length> inches, Length? next, UnitSystem units)
    {
        if (units == UnitSystem.UsCustomary) return inches;
        Citation published = inches.Source, sizes = UsualTubes.SourceInMillimetres;
        return inches with
        {
            Value = next ?? throw new InvalidOperationException("The list of metric tubes ends too soon."),
            Source = published.Standing == Standing.Published ? new Citation(published.Title, published.Place + "; the next size up in ISO 4200 series 1 and EN 10219-2, from memory", Standing.FromMemory) : sizes,
            Metric = MetricWay.AsItIs,
        };
    }
}
