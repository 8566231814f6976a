using Hoopwright.Orders;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Tests.Orders;

namespace Hoopwright.Tests.PublishedCases;

/// <summary>
/// Low-Investment Propagation/Winter Protection Structure (Quonset design), Horticulture Information Leaflet 404, North
/// Carolina State Extension: 6 ft wide, 20 ft long and 3 ft high, PVC bows in conduit hangers on 2x8 boards. Materials list
/// with prices of 1993 (revised 9/93) and of 2023. The bow count, 8, follows from 4 pipes with two bows each and from 32
/// hangers; saw cuts and the lap at the corners are left out by the leaflet, so the kerf is 0 here.
/// </summary>
public class Leaflet404Tests
{
    private const string Tunnel = """
        "frame": {
          "span": "6 ft", "length": "20 ft", "bowSpacing": "34.3 in",
          "bow": { "shape": "round", "sideHeight": "0 in", "peakHeight": "3 ft" },
          "bowTube": { "outside": "1.05 in", "wall": "0.113 in", "material": "pvc", "stockLengths": ["20 ft"] },
          "purlins": { "count": 0 }, "braces": { "corners": 0 }
        },
        "ground": { "anchor": "boards", "hangersPerLeg": 2, "baseboard": { "size": "2x8", "treated": true, "stockLengths": ["10 ft", "12 ft"] } },
        "ends": { "front": { "closing": "roofSheet", "baseboard": { "size": "2x8", "treated": true, "stockLengths": ["10 ft", "12 ft"] } } },
        "cuts": { "kerf": "0 in" },
        """;

    // Not derivable from the shape: weights of nails and the ridge wire, so they are added by hand.
    private const string Plan2023 = Tunnel + """
        "cover": { "rolls": [{ "width": "12 ft", "length": "30 ft", "price": "32.64" }] },
        "prices": { "currency": "USD", "note": "leaflet, 2023", "items": [
          { "item": "plastic pipe", "length": "20 ft", "price": "8.00" },
          { "item": "conduit hanger", "price": "0.19" },
          { "item": "board", "size": "2x8 treated", "length": "12 ft", "price": "14.38" },
          { "item": "board", "size": "2x8 treated", "length": "10 ft", "price": "12.08" },
          { "item": "mending plate", "price": "1.64" },
          { "item": "batten", "length": "300 ft", "price": "26.99" } ] },
        "orders": { "extras": [
          { "item": "common nails, 16 penny", "quantity": "1", "unit": "lb", "price": "6.27" },
          { "item": "steel wire, 16 gauge, 200 ft", "quantity": "1", "unit": "roll", "price": "7.93" },
          { "item": "roofing nails", "quantity": "1", "unit": "lb", "price": "4.98" } ] }
        """;

    private const string Plan1993 = Tunnel + """
        "cover": { "rolls": [{ "width": "12 ft", "length": "30 ft", "price": "12.60" }] },
        "prices": { "currency": "USD", "note": "leaflet, 1993", "items": [
          { "item": "plastic pipe", "length": "20 ft", "price": "2.60" },
          { "item": "conduit hanger", "price": "0.19" },
          { "item": "board", "size": "2x8 treated", "length": "12 ft", "price": "10.96" },
          { "item": "board", "size": "2x8 treated", "length": "10 ft", "price": "9.13" },
          { "item": "mending plate", "price": "0.45" } ] },
        "orders": { "extras": [
          { "item": "common nails, 16 penny", "quantity": "1", "unit": "lb", "price": "0.87" },
          { "item": "steel wire, 200 ft", "quantity": "1", "unit": "roll", "price": "4.38" },
          { "item": "roofing nails", "quantity": "1", "unit": "lb", "price": "0.87" } ] }
        """;

    [Theory]
    [InlineData("2023", 186.15)]
    [InlineData("1993", 84.48)]
    public void The_total_is_the_printed_one(string edition, double total) => Assert.Equal((decimal)total, Of(edition).Order.Total.Amount);

    // Quantity and extended price of each row as printed (1993: pipe, sheet, hangers, boards, plates).
    [Theory]
    [InlineData("2023", Items.PlasticPipe, 20, 4, 32.00)]
    [InlineData("2023", Items.Film, 30, 1, 32.64)]
    [InlineData("2023", Items.ConduitHanger, 0, 32, 6.08)]
    [InlineData("2023", Items.Board, 12, 1, 14.38)]
    [InlineData("2023", Items.Board, 10, 4, 48.32)]
    [InlineData("2023", Items.MendingPlate, 0, 4, 6.56)]
    [InlineData("2023", Items.Batten, 300, 1, 26.99)]
    [InlineData("1993", Items.PlasticPipe, 20, 4, 10.40)]
    [InlineData("1993", Items.Film, 30, 1, 12.60)]
    [InlineData("1993", Items.ConduitHanger, 0, 32, 6.08)]
    [InlineData("1993", Items.Board, 12, 1, 10.96)]
    [InlineData("1993", Items.Board, 10, 4, 36.52)]
    [InlineData("1993", Items.MendingPlate, 0, 4, 1.80)]
    public void A_row_has_the_printed_quantity_and_price(string edition, string item, double lengthFt, int quantity, double extended)
    {
        OrderLine line = Assert.Single(Of(edition).Order.Lines, line => line.Item == item && line.Size != "1x4" && (lengthFt == 0 || Math.Abs(line.Length!.Value.Feet - lengthFt) < 1e-9));
        Assert.Equal((quantity, (decimal)extended), (line.Packages, line.Extension!.Value.Amount));
    }

    [Fact]
    public void The_boards_and_pipes_are_cut_at_proven_least_cost()
    {
        WholeOrder all = Of("2023");
        Assert.True(all.Cuts.Of(Items.Board, "2x8 treated")!.Proven);
        Assert.Equal(62.70m, all.Cuts.Of(Items.Board, "2x8 treated")!.Cost!.Value.Amount);
        Assert.Equal(8, all.Tunnel.Stations.Length);
        Assert.Equal(9.425, all.Tunnel.Bow.FilmLine.Length.Feet, 0.001);
    }

    // Lines that the leaflet does not have (strings, stakes, screws, rope …) stay in the order, without a price and named.
    [Fact]
    public void What_the_leaflet_does_not_list_has_no_price_and_is_named()
    {
        OrderList order = Of("2023").Order;
        Assert.Contains(order.WithoutPrice, line => line.Item == Items.StringLine);
        Assert.StartsWith("186.15 USD without ", order.TotalText, StringComparison.Ordinal);
    }

    private static WholeOrder Of(string edition) => WholeOrder.Of(SamplePlans.FromJson(edition == "2023" ? Plan2023 : Plan1993));
}
