using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>How many of what goes where, each rule with its source.</summary>
internal static class TakeoffDefaults
{
    internal static Citation BoltedBoard { get; } = new("Experiential High Tunnel Training, Plant Health Instructor 24 (2024), University of Kentucky", "base board bolted to ground posts", Standing.Published);

    internal static Citation BowScrews { get; } = new("Experiential High Tunnel Training, Plant Health Instructor 24 (2024), University of Kentucky", "two self-drilling screws a bow leg", Standing.Published);

    internal static Citation HangersPublished { get; } = new("Horticulture Information Leaflet 404, North Carolina State Extension", "two hangers a leg", Standing.Published);

    internal static Citation TreatedFasteners { get; } = new("International Residential Code §R317.3 and International Building Code §2304.9.5 (2009, 2012), as reprinted", "fasteners in treated wood: hot-dip galvanized, stainless or rated", Standing.Published);

    internal static Citation Leaning { get; } = Citation.CommonPractice;

    internal const int BoltsPerBoardAndPost = 2;

    internal const int ScrewsPerHipBoardAndBow = 2;

    internal const int ScrewsPerBowLeg = 2;

    internal const int ScrewsPerSleeve = 4;

    internal const int LagsPerPostTop = 2;

    internal const int ScrewsPerBoardEnd = 2;

    internal const int ScrewsPerBoardJoint = 8;

    internal const int NailsPerHeader = 6;

    internal const int HingesOfALowLeaf = 2;

    internal const int HingesOfAHighLeaf = 3;

    internal static Length HighLeaf { get; } = Length.FromFeet(6);

    internal static Length RollClipSpacing { get; } = Length.FromInches(30);

    internal static Length ShortestPiece { get; } = Length.FromFeet(3);

    internal static Usual<Mass> BagMass { get; } = new(Mass.FromPounds(80), "Dry concrete comes in bags of this mass.", Citation.CommonPractice, Matters: true);

    internal static Usual<int> HangersPerLeg { get; } = new(2, "Hangers that hold one leg of a bow to the board.", HangersPublished);
}
