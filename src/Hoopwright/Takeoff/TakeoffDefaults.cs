using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>The rules by which material is counted, each with its source. Sources are registered in docs/sources.md.</summary>
internal static class TakeoffDefaults
{
    private static readonly Citation BowToPost = new(
        "Experiential High Tunnel Training, Plant Health Instructor 24 (2024), University of Kentucky",
        "bow legs held to the posts by two self-drilling screws", Standing.Published);

    // The board is bolted by both publications; how many bolts neither says.
    private static readonly Citation BaseboardBolts = new(
        "common practice, no source", "that the board is bolted to the posts: University of Kentucky and Rutgers University", Standing.CommonPractice);

    // The list has four plates; whether two go on each of two joints or one on each of four corners was not seen.
    private static readonly Citation Plates = new(
        "Horticulture Information Leaflet 404, North Carolina State Extension", "row of mending plates, read as two a joint", Standing.Derived);

    private static readonly Citation Pins = new(
        "High Tunnels, University of Vermont Center for Sustainable Agriculture (2007)", "bar through the foot of a post in concrete", Standing.Published);

    // Set out.
    internal static Usual<int> StakesPerBatterBoard { get; } = new(2, "Two stakes hold a batter board.", Citation.CommonPractice);

    internal static Usual<int> CornerStakes { get; } = new(4, "A stake marks each corner.", Citation.CommonPractice);

    internal static Usual<Length> StringTie { get; } = new(Length.FromFeet(2), "Each end of a string takes this much to tie off.", Citation.CommonPractice);

    // Ground.
    internal static Usual<int> BaseboardBoltsPerPost { get; } = new(2, "Two hot-dip galvanized carriage bolts hold a baseboard to each ground post.", BaseboardBolts);

    internal static Usual<Length> BoltPastBoard { get; } = new(Length.FromInches(0.625), "A bolt reaches this far past what it holds, for washer and nut.", Citation.FromMemory);

    internal static Usual<int> ScrewsPerCorner { get; } = new(3, "Three screws rated for treated lumber hold two boards at a corner.", Citation.CommonPractice);

    internal static Usual<int> PlatesPerJoint { get; } = new(2, "Two mending plates lap a joint of boards, one on each face.", Plates);

    internal static Usual<int> ScrewsPerPlate { get; } = new(4, "Four screws rated for treated lumber hold a mending plate.", Citation.CommonPractice);

    /// <summary>The usual pins through the foot of a post in concrete.</summary>
    internal static Usual<int> PinsPerPost(UnitSystem units) => new(1, $"A {CountRules.Size("6 in", "150 mm", units)} pin of reinforcing bar through the foot of each post in concrete keys it.", Pins);

    /// <summary>The usual bag of dry concrete.</summary>
    internal static Usual<Mass> BagMass(UnitSystem units) => new(
        units switch { UnitSystem.UsCustomary => Mass.FromPounds(80), UnitSystem.Metric => Mass.FromKilograms(25) }, "Dry concrete comes in bags of this mass.", Citation.FromMemory);

    // Frame.
    internal static Usual<int> ScrewsPerLeg { get; } = new(2, "Two self-drilling screws hold each bow leg to its ground post.", BowToPost);

    internal static Usual<int> ScrewsPerSleeve { get; } = new(4, "Four self-drilling screws hold a sleeve, two in each tube.", Citation.CommonPractice);

    internal static Usual<int> ClampsPerCrossing { get; } = new(1, "One clamp at each crossing of a purlin and a bow.", Citation.CommonPractice);

    internal static Usual<int> ClampsPerBrace { get; } = new(2, "One clamp at each end of a brace.", Citation.CommonPractice);

    internal static Usual<int> ClampsPerTie { get; } = new(2, "One clamp at each end of a tie.", Citation.CommonPractice);

    // Boards.
    internal static Usual<Length> ShortestJoinedPiece { get; } = new(Length.FromFeet(4), "No piece of a joined board or tube is shorter than this.", Citation.CommonPractice);

    internal static Usual<Length> ShortestChannel { get; } = new(Length.FromFeet(1), "No piece of lock channel is shorter than this.", Citation.CommonPractice);

    internal static Usual<int> HipScrewsPerBow { get; } = new(2, "Two screws hold the hip board to each bow.", Citation.CommonPractice);

    internal static Usual<Length> ScrewIntoTube { get; } = new(Length.FromInches(0.75), "A board-to-tube screw reaches this far past the board.", Citation.FromMemory);

    // Ends.
    internal static Usual<int> LagsPerPost { get; } = new(2, "Two lag screws hold the top of a post, the second once it stands plumb.", Citation.CommonPractice);

    internal static Usual<int> LagsPerCripple { get; } = new(1, "One lag screw holds the top of a short post over a door.", Citation.CommonPractice);

    internal static Usual<Length> LagIntoPost { get; } = new(Length.FromInches(2.5), "A lag screw goes this deep into the post.", Citation.FromMemory) { Metric = MetricWay.Up };

    internal static Usual<int> BracketsPerPost { get; } = new(1, "One bracket holds a post cut square to the bow.", Citation.CommonPractice);

    internal static Usual<int> ScrewsPerBracket { get; } = new(2, "Two self-drilling screws hold a post bracket to the bow.", Citation.CommonPractice);

    internal static Usual<int> ScrewsPerBoardEnd { get; } = new(2, "Two screws rated for treated lumber at each end of a board between posts, and where a baseboard crosses one.", Citation.CommonPractice);

    internal static Usual<int> ScrewsPerHeaderEnd { get; } = new(3, "Three screws at each end of each header board.", Citation.CommonPractice);

    internal static Usual<Length> JambScrewSpacing { get; } = new(Length.FromInches(16), "Screws of a jamb stand at most this far apart.", Citation.CommonPractice) { Metric = MetricWay.Down };

    internal static Usual<Length> TrackBracketSpacing { get; } = new(Length.FromFeet(2), "Brackets of a door track stand at most this far apart.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<int> HangersPerSlidingLeaf { get; } = new(2, "Two roller hangers carry a sliding leaf.", Citation.CommonPractice);

    internal static Usual<Length> SheetWidth { get; } = new(Length.FromFeet(4), "Rigid sheet is this wide.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<Length> SheetLength { get; } = new(Length.FromFeet(8), "Rigid sheet is this long.", Citation.FromMemory) { Metric = MetricWay.Down };

    internal static Usual<Length> SheetScrewSpacing { get; } = new(Length.FromInches(12), "Screws round a rigid sheet stand at most this far apart.", Citation.FromMemory) { Metric = MetricWay.Down };

    // Cover and sides.
    internal static Usual<Length> TemporaryWireLength { get; } = new(Length.FromFeet(1), "A piece of spring wire that holds film for the time being is this long.", Citation.CommonPractice);

    internal static Usual<int> BallsPerRope { get; } = new(1, "One soft ball knotted into the film's edge for each rope.", Citation.CommonPractice);

    internal static Usual<int> Blowers { get; } = new(1, "One small blower keeps the two layers of one roof apart.", Citation.CommonPractice);

    internal static Usual<Length> DuctLength { get; } = new(Length.FromFeet(6), "So much duct brings outside air through an end wall to the blower and on to the inner layer.", Citation.FromMemory);

    internal static Usual<int> FilmCollars { get; } = new(1, "A collar clamps the duct into the inner layer.", Citation.FromMemory);

    internal static Usual<Length> RollClipSpacing { get; } = new(Length.FromInches(30), "Clips hold the curtain to its roll tube at most this far apart.", Citation.CommonPractice) { Metric = MetricWay.Down };

    internal static Usual<Length> LacingTie { get; } = new(Length.FromFeet(3), "Each end of a lacing rope takes this much to tie off.", Citation.CommonPractice);

    internal static Usual<Length> CordTail { get; } = new(Length.FromFeet(6), "Each cord of a drop curtain takes this much beyond its run.", Citation.FromMemory);
}
