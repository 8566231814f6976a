using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Pricing;

/// <summary>Invented prices, so that a plan without a price book still shows how its cost is made up. Never real ones.</summary>
public static class ExamplePrices
{
    /// <summary>The currency they are invented in.</summary>
    public const string Currency = "USD (invented)";

    /// <summary>What to say wherever they are used.</summary>
    public const string Note = "Prices are invented examples. Put your own into the plan's price book.";

    /// <summary>Every line.</summary>
    public static ImmutableArray<PriceLine> Items { get; } =
    [
        .. Lengths("board", "2x4", (8, 3.95m), (10, 5.15m), (12, 6.30m), (14, 7.60m), (16, 8.70m)),
        .. Lengths("board", "2x4 treated", (8, 5.40m), (10, 6.95m), (12, 8.45m), (14, 10.10m), (16, 11.60m)),
        .. Lengths("board", "2x6", (8, 6.10m), (10, 7.80m), (12, 9.50m), (14, 11.40m), (16, 13.10m)),
        .. Lengths("board", "2x6 treated", (8, 8.20m), (10, 10.40m), (12, 12.60m), (14, 15.20m), (16, 17.30m)),
        .. Lengths("board", "2x8", (8, 8.40m), (10, 10.70m), (12, 13.00m), (14, 15.60m), (16, 17.90m)),
        .. Lengths("board", "2x8 treated", (8, 11.20m), (10, 14.10m), (12, 17.20m), (14, 20.60m), (16, 23.60m)),
        .. Lengths("board", "2x10", (8, 11.40m), (10, 14.50m), (12, 17.60m), (14, 21.10m), (16, 24.20m)),
        .. Lengths("board", "1x4", (8, 2.60m), (10, 3.35m), (12, 4.10m)),
        .. Lengths("post", "4x4 treated", (8, 12.40m), (10, 15.90m), (12, 19.60m), (16, 27.10m)),
        .. Lengths("tube", "1.315 x 0.065 in", (20, 21.00m), (21, 21.90m), (24, 25.40m)),
        .. Lengths("tube", "1.660 x 0.083 in", (20, 33.50m), (21, 35.00m), (24, 40.20m)),
        .. Lengths("tube", "1.900 x 0.083 in", (20, 38.60m), (21, 40.40m), (24, 46.40m)),
        .. Lengths("tube", "1.900 x 0.095 in", (20, 43.80m), (21, 45.90m), (24, 52.60m)),
        .. Lengths("tube", "2.375 x 0.083 in", (20, 48.90m), (21, 51.20m), (24, 58.70m)),
        .. Lengths("tube", "2.375 x 0.095 in", (20, 55.30m), (21, 57.90m), (24, 66.40m)),
        .. Lengths("lock channel", "", (8, 9.60m), (10, 11.90m), (12, 14.20m)),
        Roll("spring wire", "", 500, 68.00m), Roll("batten", "", 300, 29.00m), Roll("film tape", "", 150, 22.50m), Roll("pulling rope", "", 100, 14.80m),
        Roll("string line", "", 250, 8.40m), Roll("lacing", "", 500, 31.00m), Roll("curtain cord", "", 250, 24.00m), Roll("door track", "", 8, 26.50m),
        Pack("stake", "", 12, 15.60m), Pack("carriage bolt", "", 25, 18.90m), Pack("self-drilling screw", "", 100, 11.40m), Pack("lumber screw", "", 100, 12.20m),
        Pack("lumber screw", "rated for treated lumber", 100, 15.80m), Pack("board-to-tube screw", "", 100, 17.30m), Pack("lag screw", "rated for treated lumber", 10, 9.70m),
        Pack("channel screw", "", 100, 10.90m), Pack("washer", "", 100, 5.20m), Pack("nail", "for battens", 500, 9.80m), Pack("staple", "", 1000, 6.40m),
        Pack("mending plate", "", 1, 1.35m), Pack("tube sleeve", "", 1, 7.80m), Pack("cross clamp", "", 1, 3.10m), Pack("end clamp", "", 1, 3.60m),
        Pack("conduit hanger", "", 1, 0.45m), Pack("post bracket", "", 1, 4.90m), Pack("hinge", "", 1, 6.20m), Pack("latch", "", 1, 9.50m), Pack("drop bolt", "", 1, 7.10m),
        Pack("door handle", "", 1, 5.80m), Pack("track bracket", "", 1, 4.40m), Pack("roller hanger", "", 1, 11.60m), Pack("overhead door", "", 1, 640.00m),
        Pack("rigid sheet", "4 ft x 8 ft", 1, 46.00m), Pack("pulling ball", "", 1, 1.50m), Pack("crank", "", 1, 58.00m), Pack("roll clip", "", 10, 7.90m), Pack("rope eye", "", 25, 8.60m),
        Pack("curtain winch", "", 1, 74.00m), Pack("pulley", "", 1, 3.20m), Pack("dry concrete", "80.0 lb bag", 1, 6.70m), Pack("dry concrete", "60.0 lb bag", 1, 5.40m), Pack("dry concrete", "50.0 lb bag", 1, 4.80m),
    ];

    private static IEnumerable<PriceLine> Lengths(string item, string size, params (int Feet, decimal Price)[] prices) =>
        prices.Select(each => Line(item, size.Length == 0 ? null : size, each.Feet, 1, each.Price));

    private static PriceLine Roll(string item, string size, int feet, decimal price) => Line(item, size.Length == 0 ? null : size, feet, 1, price);

    private static PriceLine Pack(string item, string size, int pack, decimal price) => Line(item, size.Length == 0 ? null : size, null, pack, price);

    private static PriceLine Line(string item, string? size, int? feet, int pack, decimal price) => new()
    {
        Item = item,
        Size = size,
        Length = feet is { } each ? new Written<Length>(FormattableString.Invariant($"{each} ft"), Length.FromFeet(each)) : null,
        Pack = pack,
        Price = new Written<Money>(new Money(price).ToString(), new Money(price)),
    };
}
