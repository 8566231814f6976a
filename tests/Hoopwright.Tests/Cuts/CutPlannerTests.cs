using Hoopwright.Cuts;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Tests.Orders;

namespace Hoopwright.Tests.Cuts;

public class CutPlannerTests
{
    private static readonly (double, decimal)[] EightToSixteen = [(8, 6m), (10, 8m), (12, 9m), (16, 13m)];

    public static TheoryData<string> Examples => [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Material_in_is_pieces_kerf_trim_and_leftovers(string example)
    {
        foreach (CutSheet sheet in WholeOrder.OfExample(example).Cuts.Sheets)
        {
            foreach (CutBar bar in sheet.Bars)
            {
                double outM = bar.Trim.Metres + bar.Pieces.Sum(piece => piece.Length.Metres) + bar.KerfLost.Metres + bar.Leftover.Metres;
                Assert.Equal(bar.Stock.Metres, outM, 1e-9);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_piece_and_run_is_cut_whole_and_every_number_is_written_once(string example)
    {
        WholeOrder all = WholeOrder.OfExample(example);
        foreach (PieceNeed need in all.Takeoff.Lines.SelectMany(line => line.Pieces))
        {
            if (all.Cuts.Sheets.Any(sheet => sheet.MadeToLength.Contains(need))) continue;
            // Pieces that fill a bar to the last mark are not rounded.
            double cutM = all.Cuts.PiecesOf(need.MemberId).Sum(piece => piece.Length.Metres);
            Assert.Contains([need.Length.Metres, need.Exact.Metres], wholeM => Math.Abs(wholeM - cutM) < 1e-9);
            Assert.Equal(Enumerable.Range(1, all.Cuts.PiecesOf(need.MemberId).Length), all.Cuts.PiecesOf(need.MemberId).Select(piece => piece.Part));
        }
        string[] numbers = [.. all.Cuts.Sheets.SelectMany(sheet => sheet.Bars).SelectMany(bar => bar.Pieces).Select(piece => piece.Number)];
        Assert.Equal(numbers.Length, numbers.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Joints_stand_off_the_bows_and_no_piece_is_too_short(string example)
    {
        WholeOrder all = WholeOrder.OfExample(example);
        Dictionary<string, PieceNeed> runs = all.Takeoff.Lines.SelectMany(line => line.Pieces).Where(piece => piece.Joining is not null).ToDictionary(piece => piece.MemberId);
        RunJoint[] joints = [.. all.Cuts.Sheets.SelectMany(sheet => sheet.Joints)];
        Assert.NotEmpty(joints);
        Assert.All(joints, joint =>
        {
            Joining joining = runs[joint.MemberId].Joining!;
            Assert.DoesNotContain(joining.NoJoints, none => joint.At.Metres > none.From.Metres + 1e-5 && joint.At.Metres < none.To.Metres - 1e-5);
            Assert.All(all.Cuts.PiecesOf(joint.MemberId), piece => Assert.True(piece.Length.Metres >= joining.ShortestPiece.Metres - 1e-6, piece.Number));
        });
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Pieces_stand_longest_first_with_running_marks_a_kerf_apart(string example)
    {
        WholeOrder all = WholeOrder.OfExample(example);
        double usefulM = (all.Tunnel.Plan.Cuts.UsefulLeftover?.Value ?? Length.FromFeet(2)).Metres;
        foreach (CutSheet sheet in all.Cuts.Sheets)
        {
            foreach (CutBar bar in sheet.Bars)
            {
                Length mark = bar.Trim;
                foreach (CutBarPiece piece in bar.Pieces)
                {
                    Assert.Equal(mark.Metres, piece.From.Metres, 1e-9);
                    mark = piece.To + sheet.Kerf;
                }
                Assert.Equal(bar.Pieces.Select(piece => piece.Length).OrderDescending(), bar.Pieces.Select(piece => piece.Length));
                Assert.Equal(bar.Leftover.Metres >= usefulM, bar.LeftoverUseful);
            }
            Assert.Equal(sheet.Bars.SelectMany(bar => bar.Pieces).Count(), sheet.Stops.Sum(stop => stop.Pieces.Length));
            Assert.Equal(sheet.Stops.Select(stop => stop.Length).OrderDescending(), sheet.Stops.Select(stop => stop.Length));
            Assert.Equal(sheet.Bars.Select(bar => bar.Number), sheet.Patterns.SelectMany(pattern => pattern.Bars).Select(bar => bar.Number));
        }
    }

    // By hand: 5, 5 and 6 ft. Without kerf 16 ft for 13 beats 10 and 8 ft for 14; with it 5 + 5 + 6 no longer fits on 16 ft.
    [Theory]
    [InlineData("0", 13)]
    [InlineData("1/8", 15)]
    public void A_saw_cut_decides_what_fits(string kerf, int cost)
    {
        CutSheet sheet = Assert.Single(CutNeeds.Cut(CutNeeds.Pieces(5, 5, 6), CutNeeds.Priced(kerf, EightToSixteen)).Sheets);
        Assert.Equal(new Money(cost), sheet.Cost);
        Assert.True(sheet.Proven);
        Assert.Equal(Ratio.Zero, sheet.Gap);
    }

    [Fact]
    public void End_trim_comes_off_every_board_before_the_first_mark()
    {
        Plan plan = CutNeeds.Priced("0", [(8, 6m)]) with { };
        plan = plan with { Cuts = plan.Cuts with { EndTrim = CutNeeds.Written(Length.FromInches(1)) } };
        CutSheet sheet = Assert.Single(CutNeeds.Cut(CutNeeds.Pieces(4, 4), plan).Sheets);
        Assert.Equal(2, sheet.Bars.Length);
        Assert.All(sheet.Bars, bar => Assert.Equal(1, bar.Pieces[0].From.Inches, 1e-9));
    }

    [Fact]
    public void Stock_on_hand_is_used_first_and_no_more_of_it_than_there_is()
    {
        CutSheet sheet = Assert.Single(CutNeeds.Cut(CutNeeds.Pieces(7, 7, 7), CutNeeds.Priced("1/8", EightToSixteen, (8, 2))).Sheets);
        Assert.Equal(2, sheet.BarsOf(Length.FromFeet(8), onHand: true));
        Assert.Equal(1, sheet.BarsOf(Length.FromFeet(8), onHand: false));
        Assert.Equal(new Money(6), sheet.Cost);
    }

    [Fact]
    public void Without_prices_the_least_length_is_sought_and_the_sheet_says_so()
    {
        Plan plan = CutNeeds.Priced("0", []);
        CutSheets cuts = CutNeeds.Cut(CutNeeds.Pieces(5, 5, 9), plan);
        CutSheet sheet = Assert.Single(cuts.Sheets);
        Assert.Equal(CutRank.Length, sheet.RankedBy);
        Assert.Null(sheet.Cost);
        // 10 ft for the two and 10 ft for the 9 ft piece, of the usual 8, 10, 12, 14 and 16 ft.
        Assert.Equal(20, sheet.Bars.Sum(bar => bar.Stock.Feet), 1e-9);
        Assert.Contains("none of it has a price", sheet.Says, StringComparison.Ordinal);
        Assert.Contains(cuts.Diagnostics, diagnostic => diagnostic is { Code: "cuts.usual-lengths", Severity: Severity.Assumption });
    }

    [Fact]
    public void A_length_without_a_price_is_used_only_where_nothing_priced_serves()
    {
        Plan plan = CutNeeds.Priced("0", EightToSixteen);
        var draft = new TakeoffDraft();
        CutNeeds.Add(draft, "short", Length.FromFeet(9), null);
        CutNeeds.Add(draft, "long", Length.FromFeet(19), null);
        TakeoffList takeoff = draft.List();
        takeoff = new TakeoffList([takeoff.Lines[0] with { StockLengths = [Length.FromFeet(10), Length.FromFeet(12), Length.FromFeet(20)] }]);
        CutSheet sheet = Assert.Single(CutNeeds.Cut(takeoff, plan).Sheets);
        Assert.Equal(CutRank.PriceWithGaps, sheet.RankedBy);
        Assert.Equal([10, 20], sheet.Bars.Select(bar => Math.Round(bar.Stock.Feet)).Order());
        Assert.Null(sheet.Offers.Single(offer => offer.Length == Length.FromFeet(20)).Price!.Price);
    }

    [Fact]
    public void A_piece_longer_than_any_stock_is_listed_to_be_ordered_to_length()
    {
        CutSheets cuts = CutNeeds.Cut(CutNeeds.Pieces(17, 5), CutNeeds.Priced("0", EightToSixteen));
        CutSheet sheet = Assert.Single(cuts.Sheets);
        Assert.Equal(Length.FromFeet(17), Assert.Single(sheet.MadeToLength).Length);
        Assert.Single(sheet.Bars);
        Diagnostic said = Assert.Single(cuts.Diagnostics, diagnostic => diagnostic.Code == "cuts.longer-than-stock");
        Assert.Equal("17' 0\"", said.Seen);
    }

    [Fact]
    public void A_long_piece_on_hand_serves_where_nothing_sold_is_long_enough()
    {
        CutSheet sheet = Assert.Single(CutNeeds.Cut(CutNeeds.Pieces(17, 5), CutNeeds.Priced("0", EightToSixteen, (18, 1))).Sheets);
        Assert.Empty(sheet.MadeToLength);
        Assert.Equal(1, sheet.BarsOf(Length.FromFeet(18), onHand: true));
    }

    [Fact]
    public void Joints_bring_their_hardware()
    {
        CutSheets cuts = CutNeeds.Cut(CutNeeds.Runs(2, 20, 4), CutNeeds.Priced("1/8", EightToSixteen));
        int joints = Assert.Single(cuts.Sheets).Joints.Length;
        Assert.Equal(2 * joints, Assert.Single(cuts.JointLines).Quantity);
        Assert.Equal(["run-1", "run-2"], Assert.Single(cuts.JointLines).TraceIds.Order());
    }

    [Fact]
    public void A_run_with_no_place_for_a_joint_is_joined_all_the_same_and_it_is_said()
    {
        var draft = new TakeoffDraft();
        CutNeeds.Add(draft, "run", Length.FromFeet(30), new Joining([new NoJoint(Length.FromFeet(1), Length.FromFeet(29))], Length.FromFeet(2), []));
        CutSheets cuts = CutNeeds.Cut(draft.List(), CutNeeds.Priced("0", EightToSixteen));
        Assert.Contains(cuts.Diagnostics, diagnostic => diagnostic.Code == "cuts.joint-out-of-place");
        Assert.Equal(30, cuts.PiecesOf("run").Sum(piece => piece.Length.Feet), 1e-9);
    }

    [Fact]
    public void Sheets_are_lettered_as_columns_are() =>
        Assert.Equal(["A", "Z", "AA", "AZ", "BA"], new[] { 0, 25, 26, 51, 52 }.Select(CutPlanner.LetterOf));

    [Fact]
    public void The_same_takeoff_gives_the_same_sheets()
    {
        static string Words(CutSheets cuts) => string.Join('\n', cuts.Sheets.SelectMany(sheet => sheet.Bars.Select(bar =>
            $"{sheet.Letter} {bar.Number} {bar.Stock.Metres:R} {string.Join(' ', bar.Pieces.Select(piece => piece.Number + piece.Label))}")));
        Assert.Equal(Words(WholeOrder.OfExample("gothic-26ft").Cuts), Words(WholeOrder.Of(SamplePlans.Example("gothic-26ft")).Cuts));
    }
}
