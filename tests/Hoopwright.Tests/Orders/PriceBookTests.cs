using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Orders;

public class PriceBookTests
{
    [Theory]
    [InlineData("1.900 x 0.083 in", "1.9 × 0.083")]
    [InlineData("1.900 x 0.083 in", "1.90x.083 IN")]
    [InlineData("2x6 treated", "2 x 6 Treated")]
    [InlineData("3/8 x 4-1/2 in", "3/8 x 4-1/2\"")]
    [InlineData("60 x 2 mm", "60x2.0 mm")]
    public void Sizes_are_one_however_people_write_them(string size, string typed) => Assert.True(SizeKey.Same(size, typed));

    [Theory]
    [InlineData("1.900 x 0.083 in", "1.900 x 0.095 in")]
    [InlineData("2x6 treated", "2x6")]
    [InlineData("60 x 2 mm", "60 x 2")]
    public void Sizes_that_differ_are_kept_apart(string size, string typed) => Assert.False(SizeKey.Same(size, typed));

    [Fact]
    public void A_book_with_a_currency_is_used_alone()
    {
        PriceBook own = PriceBook.Of(With("\"currency\": \"USD\", \"items\": [{ \"item\": \"latch\", \"price\": \"4\" }]"));
        Assert.Equal(new Money(4), own.OfPackage(Items.Latch, "", null).Price);
        Assert.Equal((null, PriceOrigin.None), (own.OfPackage(Items.Crank, "", null).Price, own.OfPackage(Items.Crank, "", null).Origin));

        PriceBook mixed = PriceBook.Of(With("\"items\": [{ \"item\": \"latch\", \"price\": \"4\" }]"));
        Assert.Equal(PriceOrigin.Plan, mixed.OfPackage(Items.Latch, "", null).Origin);
        Assert.Equal(PriceOrigin.Example, mixed.OfPackage(Items.Crank, "", null).Origin);
        Assert.Contains("invented", mixed.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_just_this_size_comes_before_one_for_every_size()
    {
        PriceBook book = PriceBook.Of(With("\"currency\": \"USD\", \"items\": [{ \"item\": \"hinge\", \"price\": \"3\" }, { \"item\": \"hinge\", \"size\": \"heavy strap\", \"price\": \"7\" }]"));
        Assert.Equal(new Money(7), book.OfPackage(Items.Hinge, "heavy strap", null).Price);
        Assert.Equal(new Money(3), book.OfPackage(Items.Hinge, "light", null).Price);
    }

    [Fact]
    public void A_price_without_a_pack_is_the_price_of_one_and_a_pack_without_a_price_keeps_the_example()
    {
        PriceBook book = PriceBook.Of(new Plan
        {
            Prices = new Prices
            {
                Items = [new PriceLine { Item = Items.Nail, Price = new Written<Money>("0.04", new Money(0.04m)) }, new PriceLine { Item = Items.Staple, Pack = 500 }],
            },
        });
        Assert.Equal(new PackPrice(1, null, new Money(0.04m), PriceOrigin.Plan), book.OfPackage(Items.Nail, "", null));
        // Half the usual box of 1000 costs half its invented price.
        Assert.Equal(new PackPrice(500, null, new Money(3), PriceOrigin.Example), book.OfPackage(Items.Staple, "", null));
    }

    [Fact]
    public void A_stick_sold_in_one_length_needs_no_length_in_the_book()
    {
        PriceBook book = PriceBook.Of(With("\"currency\": \"USD\", \"items\": [{ \"item\": \"lock channel\", \"price\": \"9.50\" }]"));
        Assert.Equal(new Money(9.50m), book.OfStick(Items.LockChannel, "", null, Length.FromFeet(8), onlyLength: true).Price);
        Assert.Null(book.OfStick(Items.LockChannel, "", null, Length.FromFeet(8), onlyLength: false).Price);
    }

    [Fact]
    public void Every_item_that_is_counted_or_rolled_has_an_example_price()
    {
        string[] bySection = [Items.Board, Items.Post, Items.Tube, Items.PlasticPipe, Items.LockChannel, Items.PullingRope, Items.Film, Items.DryConcrete];
        Assert.All(ItemFacts.Names.Except(bySection), item => Assert.True(ExamplePrices.OfPackage(item) is { Amount: > 0 }, item));
    }

    [Fact]
    public void The_table_knows_every_item_the_takeoff_can_name()
    {
        IEnumerable<string> names = typeof(Items).GetFields(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.NonPublic).Select(field => (string)field.GetRawConstantValue()!);
        Assert.Equal(names.Order(), ItemFacts.Names.Order());
    }

    private static Plan With(string prices) => SamplePlans.Simple(rest: $"\"prices\": {{ {prices} }}");
}
