using CsCheck;
using Hoopwright.Cuts;
using Hoopwright.Cutting;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Packets;

/// <summary>The same pieces cut by a tape of feet and inches and by one of metres: what must be the same, and what may differ by how much.</summary>
public sealed class UnitSystemTests
{
    // Half a mark of each tape: half of 1/16 in, half of 1 mm.
    private const double HalfMarksM = (0.0254 / 32) + 0.0005 + 1e-9;

    [Fact]
    public void Random_plans_are_cut_the_same_by_either_tape() => Generate.ValidPlan.Sample(AgreeOn, iter: 60);

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void Examples_are_cut_the_same_by_either_tape(string name) => AgreeOn(SamplePlans.Example(name));

    [Fact]
    public void Pieces_that_fill_a_board_to_the_last_mark_fit_on_either_tape()
    {
        // Two of 6 ft from 12 ft with a saw of no width: 1829 mm twice would be 0.4 mm more than the board.
        foreach (UnitSystem units in new[] { UnitSystem.UsCustomary, UnitSystem.Metric })
        {
            PieceNeed[] pieces = [PieceNeed.Of("one", Length.FromFeet(6), units), PieceNeed.Of("two", Length.FromFeet(6), units)];
            var rooms = new CutRooms(pieces.Select(piece => piece.Exact), [Board(12)], Length.Zero, Length.Zero);
            Assert.Equal(Length.FromFeet(12).Metres, pieces.Sum(piece => rooms.Of(piece.Exact).Metres), 1e-9);
        }
    }

    [Fact]
    public void A_piece_as_long_as_the_stock_takes_it_whole_on_either_tape()
    {
        Length sixMetres = Length.FromMetres(6), twelveFeet = Length.FromFeet(12);
        Assert.True(Rooms(sixMetres, sixMetres).Of(sixMetres) <= sixMetres);
        Assert.True(Rooms(twelveFeet, twelveFeet).Of(twelveFeet) <= twelveFeet);
        // With a piece beside it that is no whole millimetre, six metres are 0.75 mm less than the next sixteenth.
        Assert.True(Rooms(sixMetres, sixMetres, Length.FromMillimetres(1000.3)).Of(sixMetres) <= sixMetres);
    }

    private static CutRooms Rooms(Length stock, params Length[] pieces) =>
        new(pieces, [new StockOffer(stock, false, null, null, new Money(1))], Length.FromMillimetres(3), Length.Zero);

    private static StockOffer Board(double feet) => new(Length.FromFeet(feet), false, null, null, new Money(1));

    private static void AgreeOn(Plan plan)
    {
        // Usual lengths of stock hang on the units, so the takeoff of one tape is cut by either, from stock that is given.
        TakeoffList takeoff = Work(plan).Takeoff!;
        plan = plan with { Cuts = plan.Cuts with { Kerf = Written(CutDefaults.Kerf.Value), EndTrim = Written(Length.FromInches(1)), UsefulLeftover = Written(CutDefaults.UsefulLeftover.Value) } };
        CutSheets us = Cut(UnitSystem.UsCustomary), metric = Cut(UnitSystem.Metric);
        Assert.Equal(us.Sheets.Select(sheet => sheet.Name), metric.Sheets.Select(sheet => sheet.Name));
        foreach ((CutSheet one, CutSheet other) in us.Sheets.Zip(metric.Sheets))
        {
            Assert.Equal(one.Bars.Select(bar => bar.Stock.Metres).Order(), other.Bars.Select(bar => bar.Stock.Metres).Order());
            Assert.Equal(one.Joints.Select(joint => (joint.MemberId, Math.Round(joint.At.Metres, 9))), other.Joints.Select(joint => (joint.MemberId, Math.Round(joint.At.Metres, 9))));
            Dictionary<(string, int), double> lengths = other.Bars.SelectMany(bar => bar.Pieces).ToDictionary(piece => (piece.MemberId, piece.Part), piece => piece.Length.Metres);
            foreach (CutBarPiece piece in one.Bars.SelectMany(bar => bar.Pieces))
                Assert.InRange(piece.Length.Metres - lengths[(piece.MemberId, piece.Part)], -HalfMarksM, HalfMarksM);
        }
        foreach (Hoopwright.Cuts.CutBar bar in us.Sheets.Concat(metric.Sheets).SelectMany(sheet => sheet.Bars))
            Assert.True(bar.Leftover.Metres > -1e-9, $"A bar of {bar.Stock.Metres} m is too short by {-bar.Leftover.Metres} m.");

        CutSheets Cut(UnitSystem units) => CutPlanner.Plan(new TakeoffList([.. takeoff.Lines.Select(line => OnTape(line, units))]), plan, new Answers(units), CutEffort.Least);
    }

    private static MaterialLine OnTape(MaterialLine line, UnitSystem units) => line with
    {
        StockLengths = line.StockLengths.IsEmpty ? CutDefaults.UsualLengths(line.Item, UnitSystem.UsCustomary) : line.StockLengths,
        Pieces = [.. line.Pieces.Select(piece => PieceNeed.Of(piece.MemberId, piece.Exact, units) with { Label = piece.Label, Place = piece.Place, Joining = piece.Joining })],
    };

    private static Written<Length> Written(Length length) => new(TapeText.OfThickness(length, UnitSystem.UsCustomary), length);

    private static PlannedTunnel Work(Plan plan) =>
        TunnelWorks.Plan(new PlanReading(plan, false, []), null, CutEffort.Least, WorkDepth.Orders);
}
