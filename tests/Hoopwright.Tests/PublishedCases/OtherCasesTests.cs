using Hoopwright.Cover;
using Hoopwright.Cuts;
using Hoopwright.Cutting;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Tests.Orders;

namespace Hoopwright.Tests.PublishedCases;

/// <summary>The other published cases; docs/published-cases.md lists every row of them.</summary>
public class OtherCasesTests
{
    /// <summary>
    /// High tunnel construction, Rutgers University, horticultural engineering: 17 ft by 36 ft on driven posts at 4 ft, 10 bows
    /// and 20 foundation posts, 2x6 treated boards along both sides. No height is printed; any will do for the counts.
    /// </summary>
    [Fact]
    public void The_Rutgers_tunnel_has_ten_bows_twenty_posts_and_72_ft_of_baseboard()
    {
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(span: "17 ft", length: "36 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"9 ft\"", frame: "\"bowSpacing\": \"4 ft\""));
        Assert.Equal(10, all.Tunnel.Stations.Length);
        Assert.Equal(20, all.Takeoff.Lines.SelectMany(line => line.Pieces).Count(piece => piece.MemberId.Contains("-post-", StringComparison.Ordinal) && all.Tunnel.GroundPosts.Any(post => post.MemberId == piece.MemberId)));
        MaterialLine boards = Assert.Single(all.Takeoff.Of(Items.Board), line => line.Stage == BuildStage.Ground);
        Assert.Equal("2x6 treated", boards.Size);
        Assert.Equal(72, boards.Pieces.Sum(piece => piece.Length.Feet), 1e-9);
        // Square diagonal of 17 by 36 ft: 39 ft 9-3/4 in; largest 3-4-5 that fits: 15-20-25 ft.
        Assert.Equal("39' 9-3/4\"", TapeText.FeetAndInches(all.Tunnel.SetOut.Diagonal));
        Assert.Equal([15, 20, 25], new[] { all.Tunnel.SetOut.Triangle.Across, all.Tunnel.SetOut.Triangle.Along, all.Tunnel.SetOut.Triangle.Diagonal }.Select(leg => Math.Round(leg.Feet, 9)).Order());
    }

    /// <summary>
    /// Bill of quantities of a film house of galvanised tube, 200 m² (public purchase list, tender notice 27119787): 220 m of
    /// film channel, 330 m of lock spring, 660 screws; 25597467 has the same three rows. So 1.5 of spring and 3 screws a metre.
    /// </summary>
    [Fact]
    public void Spring_wire_and_screws_stand_to_channel_as_in_the_purchase_list()
    {
        Length channel = Length.FromMetres(220);
        Assert.Equal(330, ChannelFastening.WireLength(channel, 1, Ratio.FromValue(330.0 / 220)).Metres, 1e-9);
        Assert.Equal(660, ChannelFastening.Screws(channel, Length.FromMetres(1) / 3, 0));

        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(rest: "\"cover\": { \"wirePerChannel\": \"1.5\", \"channelScrewSpacing\": \"333.333333 mm\", \"channelEndScrews\": 0, \"wirePiece\": \"100 ft\", \"order\": \"roofFirst\" }"));
        double channelM = all.Cover.Runs.Where(run => run.Kind == FasteningKind.Channel).Sum(run => run.Length.Metres * run.Wires);
        Assert.Equal(1.5 * channelM, (double)all.Takeoff.Of(Items.SpringWire).Sum(line => line.Quantity), 1e-6);
        int runs = all.Cover.Runs.Count(run => run.Kind == FasteningKind.Channel);
        double rateM = all.Cover.Runs.Where(run => run.Kind == FasteningKind.Channel).Sum(run => run.Length.Metres) * 3;
        Assert.InRange((double)all.Takeoff.Of(Items.ChannelScrew).Sum(line => line.Quantity), rateM - 0.01, rateM + runs);
    }

    /// <summary>
    /// The two lists buy whole 6 m sticks. 27119787: 126 m of column, 78 of arch, 48 of member and of door tube, 72 of roller;
    /// 25597467: 42 m of stub, 48 of member and of door tube, 66 of roller.
    /// </summary>
    [Theory]
    [InlineData(126, 21)]
    [InlineData(78, 13)]
    [InlineData(48, 8)]
    [InlineData(72, 12)]
    [InlineData(42, 7)]
    [InlineData(66, 11)]
    public void Tube_by_the_metre_comes_in_whole_sticks(double metres, int sticks)
    {
        CutSheet sheet = SixMetreSticks([new PieceNeed("run", "run", Length.FromMetres(metres)) { Joining = new Joining([], Length.FromMetres(1), []) }]);
        Assert.Equal(sticks, sheet.Bars.Length);
        Assert.True(sheet.Proven);
        Assert.All(sheet.Bars, bar => Assert.Equal(0, bar.Leftover.Metres, 1e-9));
    }

    /// <summary>
    /// List 27119787 has 21 m of stub, 126 m of column and 63 m of side member: read as 21 posts, each of 1, 6 and 3 m. The
    /// pieces come to the printed metres; a merchant who sells 6 m sticks cuts them from one stick more than that for the rest.
    /// </summary>
    [Theory]
    [InlineData(1, 21, 4)]
    [InlineData(6, 126, 21)]
    [InlineData(3, 63, 11)]
    public void Twenty_one_posts_take_the_printed_metres_of_stub_column_and_side_member(double eachM, double printedM, int sticks)
    {
        CutSheet sheet = SixMetreSticks([.. Enumerable.Range(1, 21).Select(post => new PieceNeed(FormattableString.Invariant($"post-{post}"), "post", Length.FromMetres(eachM)))]);
        Published.Check("public purchase list, tender notice 27119787 (India)", $"tube in pieces of {eachM} m", printedM, sheet.Bars.Sum(bar => bar.Pieces.Sum(piece => piece.Length.Metres)), 1e-9, "exact");
        Assert.Equal(sticks, sheet.Bars.Length);
        Assert.True(sheet.Proven);
    }

    /// <summary>
    /// Mass of the tube rows of both lists by the printed masses (Annexure 8 and Annexure 1) and by ours; the 25 mm roller is
    /// left out, for which none is printed.
    /// </summary>
    [Theory]
    [InlineData("27119787", 21, 126, 63, 78 + 170 + 48, 48)]
    [InlineData("25597467", 42, 70, 67, 50 + 161 + 48, 48)]
    public void The_tube_of_a_list_weighs_what_the_printed_masses_make_it(string notice, double tube60M, double tube76M, double tube48M, double tube42M, double tube33M)
    {
        (double Metres, double OutsideMm, double KgPerM)[] rows = [(tube60M, 60, 2.85), (tube76M, 76, 3.75), (tube48M, 48, 2.30), (tube42M, 42, 2.10), (tube33M, 33, 1.60)];
        double printedKg = rows.Sum(row => row.Metres * row.KgPerM);
        Published.Check("Technical specifications of film houses of galvanised tube, Annexure 8, and institute estimate of 20.9.13, Annexure 1 (Indian public horticulture programme)",
            $"tube of notice {notice}", printedKg, rows.Sum(row => row.Metres * new RoundTube(Length.FromMillimetres(row.OutsideMm), Length.FromMillimetres(2)).SteelMass.KilogramsPerMetre),
            rows.Sum(row => row.Metres * row.KgPerM * (row.OutsideMm >= 48 ? 0.03 : 0.07)), "nominal diameters are rounded to whole mm and zinc is included: 3 % from 48 mm up, 7 % below");
    }

    /// <summary>
    /// How to Build a Low-Cost Hoop House, Kerr Center for Sustainable Agriculture, 2009: 17 ft by 100 ft, 7.5 ft high, 18
    /// hoops, each of one 24 ft length of 1 in square tube of 16 gauge; lock channel on the two end hoops. The hoop's shape is
    /// not printed; this one stands between the parabola (23.7 ft) and the half ellipse (25.2 ft), as the length of tube asks.
    /// </summary>
    [Fact]
    public void The_Kerr_hoop_house_takes_18_lengths_of_24_ft_tube()
    {
        string offsets = string.Join(", ", Enumerable.Range(0, 18).Select(foot =>
        {
            double height = 7.5 * (1 - Math.Pow(Math.Abs((foot / 8.5) - 1), 2.3));
            return FormattableString.Invariant($"{{ \"across\": \"{foot} ft\", \"height\": \"{height:0.######} ft\" }}");
        }));
        WholeOrder all = WholeOrder.Of(SamplePlans.Simple(span: "17 ft", length: "100 ft", bow: $"\"shape\": \"offsets\", \"offsets\": [{offsets}]",
            frame: "\"bowSpacing\": \"6 ft\", \"bowPieces\": 1, \"bowTube\": { \"outside\": \"1 in\", \"wall\": \"16 ga\", \"form\": \"square\", \"stockLengths\": [\"24 ft\"] }"));
        Assert.Equal(18, all.Tunnel.Stations.Length);
        Assert.InRange(all.Tunnel.Bow.FilmLine.Length.Feet, 23.6, 25.2);
        CutSheet hoops = all.Cuts.Of(Items.Tube, all.Tunnel.BowTube.Size)!;
        Assert.Equal(18, hoops.BarsOf(Length.FromFeet(24), onHand: false));
        Assert.Equal(18, hoops.Bars.Length);
        Assert.True(hoops.Proven);
        // Channel on both end hoops from baseboard to baseboard, and the four stretches beside the baseboards: twice the hoop.
        FasteningRun[] channels = [.. all.Cover.Runs.Where(run => run.Kind == FasteningKind.Channel)];
        Assert.Equal(2, channels.Length);
        double besideFt = all.Tunnel.Bow.FilmLine.DistanceTo(all.Tunnel.Left.BaseboardHeight).Feet;
        Assert.Equal(2 * all.Tunnel.Bow.FilmLine.Length.Feet, channels.Sum(run => run.Length.Feet) + (4 * besideFt), 0.01);
    }

    private static CutSheet SixMetreSticks(IEnumerable<PieceNeed> pieces)
    {
        var tube = new TubeSection(Length.FromMillimetres(42), Length.FromMillimetres(2), TubeForm.Round, TubeMaterial.GalvanizedSteel);
        var draft = new TakeoffDraft();
        foreach (PieceNeed piece in pieces) draft.Cut(BuildStage.Frame, tube.Item, tube.Size, tube, piece, [Length.FromMetres(6)], "as the list has it", Citation.Geometry);
        return Assert.Single(CutPlanner.Plan(draft.List(), new Plan { Cuts = new CutRules { Kerf = new Written<Length>("0 mm", Length.Zero) } }, new Answers(UnitSystem.Metric), CutEffort.Live).Sheets);
    }
}
