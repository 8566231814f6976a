using System.Text;
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

/// <summary>A plan shown in feet and inches and the same plan shown in metres: what must be the same, and what may differ by how much.</summary>
public sealed class UnitSystemTests
{
    // Half a mark of each tape: half of 1/16 in, half of 1 mm.
    private const double HalfMarksM = (0.0254 / 32) + 0.0005 + 1e-9;

    [Fact]
    public void Random_plans_order_the_same_in_either_system() => Generate.ValidPlan.Sample(AgreeOn, iter: 60);

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void Examples_order_the_same_in_either_system(string name) => AgreeOn(SamplePlans.Example(name));

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
        PlannedTunnel us = Work(plan, UnitSystem.UsCustomary), metric = Work(plan, UnitSystem.Metric);
        Assert.Equal(Orders(us), Orders(metric));
        Assert.Equal(us.Orders!.Total, metric.Orders!.Total);
        Assert.Equal(Takeoff(us), Takeoff(metric));
        foreach ((CutSheet one, CutSheet other) in us.Cuts!.Sheets.Zip(metric.Cuts!.Sheets))
        {
            Assert.Equal(one.Bars.Select(bar => bar.Stock.Metres).Order(), other.Bars.Select(bar => bar.Stock.Metres).Order());
            Assert.Equal(one.Joints.Select(joint => (joint.MemberId, Math.Round(joint.At.Metres, 9))), other.Joints.Select(joint => (joint.MemberId, Math.Round(joint.At.Metres, 9))));
            Dictionary<(string, int), double> lengths = other.Bars.SelectMany(bar => bar.Pieces).ToDictionary(piece => (piece.MemberId, piece.Part), piece => piece.Length.Metres);
            foreach (CutBarPiece piece in one.Bars.SelectMany(bar => bar.Pieces))
                Assert.InRange(piece.Length.Metres - lengths[(piece.MemberId, piece.Part)], -HalfMarksM, HalfMarksM);
        }
        foreach (Hoopwright.Cuts.CutBar bar in us.Cuts.Sheets.Concat(metric.Cuts.Sheets).SelectMany(sheet => sheet.Bars))
            Assert.True(bar.Leftover.Metres > -1e-9, $"A bar of {bar.Stock.Metres} m is too short by {-bar.Leftover.Metres} m.");
    }

    private static PlannedTunnel Work(Plan plan, UnitSystem units) =>
        TunnelWorks.Plan(new PlanReading(plan with { Units = units }, false, []), null, CutEffort.Least, WorkDepth.Orders);

    private static string Orders(PlannedTunnel planned)
    {
        var text = new StringBuilder();
        foreach (var line in planned.Orders!.Lines)
            text.AppendLine(FormattableString.Invariant($"{line.Item} {line.Size} {line.Length?.Metres:0.000000} {line.Width?.Metres:0.000000}: {line.Needed:0.######} + {line.Waste:0.######} + {line.Spare:0.######} - {line.FromStock:0.######}, {line.Packages} at {line.Price?.Amount}"));
        return text.ToString();
    }

    private static string Takeoff(PlannedTunnel planned) =>
        string.Join('\n', planned.Takeoff!.Lines.Select(line => FormattableString.Invariant($"{line.Id}: {line.Quantity:0.######} of {line.Pieces.Sum(piece => piece.Exact.Metres):0.000000} m")));
}
