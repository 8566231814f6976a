using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Tubes, boards and posts: each member a length to cut, or a run to join.</summary>
internal static class MemberTakeoff
{
    private const string OnePiece = "Each member is one length to cut, to the nearest mark of the tape.";
    private const string Joined = "A long run is joined from several lengths, off the bows.";

    public static void Add(TakeoffDraft draft, Tunnel tunnel, FastenerAnswers fasteners)
    {
        foreach (Member member in tunnel.Members)
        {
            bool joined = member.MaySplice;
            var piece = PieceNeed.Of(member.Id, member.CutLength, tunnel.Units) with
            {
                Place = member.Place,
                Joining = joined ? JoiningOf(member, fasteners, tunnel.Units) : null,
            };
            draft.Cut(StageOf(member.Role), member.Section.Item, member.Section.Size, member.Section, piece, member.StockLengths,
                joined ? Joined : OnePiece, Citation.Geometry);
        }
    }

    /// <summary>The stage that a member belongs to.</summary>
    public static BuildStage StageOf(MemberRole role) => role switch
    {
        MemberRole.Bow or MemberRole.Tie or MemberRole.RidgePurlin or MemberRole.Purlin or MemberRole.CornerBrace => BuildStage.Frame,
        MemberRole.GroundPost or MemberRole.Baseboard => BuildStage.Ground,
        MemberRole.HipBoard or MemberRole.RollTube => BuildStage.Cover,
        MemberRole.EndPost or MemberRole.Cripple or MemberRole.Girt or MemberRole.EndBaseboard or MemberRole.Header
            or MemberRole.Jamb or MemberRole.VentRail or MemberRole.LeafStile or MemberRole.LeafRail or MemberRole.LeafBrace => BuildStage.Ends,
    };

    private static Joining JoiningOf(Member member, FastenerAnswers fasteners, UnitSystem units) => new(
        member.NoJoints, TakeoffDefaults.ShortestJoinedPiece.ValueIn(units), member.Section.Match(tube => SleeveFor(tube, fasteners, units), board => PlatesFor(board, fasteners, units)));

    private static ImmutableArray<JointHardware> SleeveFor(TubeSection tube, FastenerAnswers fasteners, UnitSystem units) =>
    [
        new(Items.TubeSleeve, SleeveSize(tube), 1, "A sleeve at each joint of a tube.", Citation.CommonPractice, []),
        Hardware(Items.SelfDrillingScrew, FrameTakeoff.ScrewSize(units), fasteners.ScrewsPerSleeve),
    ];

    private static ImmutableArray<JointHardware> PlatesFor(BoardSection board, FastenerAnswers fasteners, UnitSystem units)
    {
        RuleAsked<int> plates = fasteners.PlatesPerJoint, screws = fasteners.ScrewsPerPlate;
        return
        [
            Hardware(Items.MendingPlate, board.Depth.Inches >= 5 ? CountRules.Size("4 x 5 in", "100 x 140 mm", units) : CountRules.Size("3 x 5 in", "80 x 140 mm", units), plates),
            new(Items.LumberScrew, GroundTakeoff.ScrewSize(units), plates.Value * screws.Value, screws.Says, screws.Source, [screws.Path, plates.Path]),
        ];
    }

    /// <summary>A sleeve is named by the tube it joins.</summary>
    public static string SleeveSize(TubeSection tube) => "for " + tube.WidthText;

    private static JointHardware Hardware(string item, string size, RuleAsked<int> rule) =>
        new(item, size, rule.Value, rule.Says, rule.Source, [rule.Path]);
}
