using Hoopwright.Diagnostics;
using Hoopwright.Orders;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Orders;

public class OrderPlannerTests
{
    public static TheoryData<string> Examples => [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_total_is_the_sum_of_lines_of_stages_and_of_sellers(string example)
    {
        OrderList order = WholeOrder.OfExample(example).Order;
        Assert.Equal(order.Total.Amount, order.Lines.Sum(line => line.Extension?.Amount ?? 0));
        Assert.Equal(order.Total.Amount, order.Stages.Sum(stage => stage.Cost.Amount));
        Assert.Equal(order.Total.Amount, order.Suppliers.Sum(supplier => order.TotalFor(supplier).Amount));
        Assert.True(order.Total > Money.Zero);
        Assert.Empty(order.WithoutPrice);
        Assert.All(order.Lines, line => Assert.Equal(line.Extension!.Value.Amount, line.Stages.Sum(share => share.Cost.Amount)));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Packages_hold_what_is_to_be_bought_and_one_fewer_would_not(string example)
    {
        foreach (OrderLine line in WholeOrder.OfExample(example).Order.Lines)
        {
            Assert.True(line.Packages * line.PerPackage >= line.ToBuy * (1 - 1e-8m), line.Name);
            Assert.True(line.Packages == 0 || (line.Packages - 1) * line.PerPackage < line.ToBuy, line.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_takeoff_line_is_served_by_the_order(string example)
    {
        WholeOrder all = WholeOrder.OfExample(example);
        Assert.Equal(
            all.Takeoff.Lines.Concat(all.Cuts.JointLines).Select(line => line.Id).Distinct().Order(),
            all.Order.Lines.SelectMany(line => line.TakeoffIds).Distinct().Order());
    }

    [Fact]
    public void Concrete_is_bought_with_its_waste_in_whole_bags()
    {
        WholeOrder all = Of("\"ground\": { \"bagMass\": \"80 lb\" }, \"orders\": { \"concreteWaste\": \"10 %\" }");
        OrderLine line = all.Order.Lines.Single(line => line.Item == Items.DryConcrete);
        double exact = all.Tunnel.Holes.Sum(hole => hole.Volume.CubicFeet) / 0.6;
        Assert.Equal(exact, (double)line.Needed, 1e-9);
        Assert.Equal(exact * 0.1, (double)line.Waste, 1e-9);
        Assert.Equal(Math.Ceiling(exact * 1.1), line.Packages);
    }

    [Fact]
    public void Spares_are_counted_on_fasteners_alone()
    {
        WholeOrder all = Of("\"orders\": { \"fastenerSpare\": \"20 %\" }");
        OrderLine bolts = all.Order.Lines.Single(line => line.Item == Items.CarriageBolt);
        Assert.Equal((52m, 11m, 3), (bolts.Needed, bolts.Spare, bolts.Packages));
        Assert.Equal(0, all.Order.Lines.Single(line => line.Item == Items.CrossClamp).Spare);
    }

    [Fact]
    public void What_is_in_the_barn_is_taken_off_and_never_makes_the_order_dearer()
    {
        WholeOrder all = Of("\"stock\": [{ \"item\": \"carriage bolt\", \"count\": 30 }, { \"item\": \"batten\", \"length\": \"40 ft\", \"count\": 2 }, { \"item\": \"dry concrete\", \"count\": 500 }]");
        OrderLine bolts = all.Order.Lines.Single(line => line.Item == Items.CarriageBolt);
        // 52 and 3 spare, less 30, in boxes of 25.
        Assert.Equal((30m, 25m, 1), (bolts.FromStock, bolts.ToBuy, bolts.Packages));
        Assert.Equal(80 * 0.3048, (double)all.Order.Lines.Single(line => line.Item == Items.Batten).FromStock, 1e-9);
        OrderLine concrete = all.Order.Lines.Single(line => line.Item == Items.DryConcrete);
        Assert.Equal((0, Money.Zero), (concrete.Packages, concrete.Extension!.Value));
        Assert.True(all.Order.Total < Of("").Order.Total);
    }

    [Fact]
    public void Lines_added_by_hand_stand_last_as_they_are()
    {
        WholeOrder all = Of("\"orders\": { \"extras\": [{ \"item\": \"Gravel\", \"quantity\": \"2.5\", \"unit\": \"ton\", \"price\": \"31.00\", \"stage\": \"site\" }, { \"item\": \"Gift\", \"price\": \"1\" }] }");
        OrderLine gravel = all.Order.Lines[^2];
        Assert.Equal(("Gravel", new Money(77.50m), Supplier.AddedByHand), (gravel.Item, gravel.Extension!.Value, gravel.Supplier));
        Assert.Equal(new StageCost(BuildStage.Site, new Money(77.50m)), Assert.Single(gravel.Stages));
        Assert.Equal(new StageCost(null, new Money(1)), all.Order.Stages[^1]);
    }

    [Fact]
    public void A_total_says_how_many_lines_it_is_without()
    {
        OrderList none = Of("\"prices\": { \"currency\": \"EUR\", \"note\": \"invented\" }").Order;
        Assert.Equal(Money.Zero, none.Total);
        Assert.Equal($"0.00 EUR without {none.Lines.Count(line => line.Packages > 0)} lines that have no price", none.TotalText);
        Assert.Contains(none.Diagnostics, diagnostic => diagnostic is { Code: "orders.lines-without-price", Severity: Severity.Warning });
        Assert.DoesNotContain(none.Diagnostics, diagnostic => diagnostic.Code == "orders.prices.example");
    }

    [Fact]
    public void Invented_prices_are_an_assumption() =>
        Assert.Contains(Of("").Order.Diagnostics, diagnostic => diagnostic is { Code: "orders.prices.example", Severity: Severity.Assumption });

    [Theory]
    [InlineData("\"prices\": { \"items\": [{ \"item\": \"hinges\", \"price\": \"1\" }] }", "orders.prices.unknown-item", "prices.items[0].item", "hinge")]
    [InlineData("\"prices\": { \"items\": [{ \"item\": \"cross clamp\", \"size\": \"9 to 9 in\", \"price\": \"1\" }] }", "orders.prices.unknown-size", "prices.items[0].size", "1.660 to 1.315 in")]
    [InlineData("\"prices\": { \"currency\": \"USD\" }", "orders.prices.undated", "prices.note", null)]
    [InlineData("\"stock\": [{ \"item\": \"bord\", \"count\": 1 }]", "orders.stock.unknown-item", "stock[0].item", "board")]
    [InlineData("\"stock\": [{ \"item\": \"tube\", \"length\": \"20 ft\", \"count\": 1 }]", "orders.stock.size-missing", "stock[0].size", null)]
    [InlineData("\"stock\": [{ \"item\": \"tube\", \"size\": \"1.66 x 0.083\", \"count\": 1 }]", "orders.stock.length-missing", "stock[0].length", null)]
    [InlineData("\"stock\": [{ \"item\": \"tube\", \"size\": \"9 x 1\", \"length\": \"20 ft\", \"count\": 1 }]", "orders.stock.unknown-size", "stock[0].size", null)]
    [InlineData("\"orders\": { \"extras\": [{ \"item\": \"x\", \"quantity\": \"0\" }] }", "orders.extras.quantity", "orders.extras[0].quantity", null)]
    public void A_line_that_cannot_be_used_says_so_and_what_would_do(string rest, string code, string path, string? accepted)
    {
        Diagnostic said = Assert.Single(Of(rest).Order.Diagnostics, diagnostic => diagnostic.Code == code);
        Assert.Equal(path, said.Path);
        if (accepted is not null) Assert.Equal(accepted, said.Accepted);
    }

    /// <summary>The reader refuses such lines; a plan made in code may hold them.</summary>
    [Fact]
    public void Lines_made_in_code_without_a_name_or_with_an_unknown_stage_are_named_too()
    {
        var plan = SamplePlans.Simple() with
        {
            Prices = new Prices { Items = [new PriceLine { Price = new Written<Money>("1", new Money(1)) }] },
            Orders = new OrderRules { Extras = [new ExtraLine(), new ExtraLine { Item = "x", Stage = "roof" }, new ExtraLine { Item = "y", Stage = "3" }] },
        };
        OrderList order = WholeOrder.Of(plan).Order;
        Assert.Equal(
            [("orders.prices.item-missing", "prices.items[0].item"), ("orders.extras.item-missing", "orders.extras[0].item"), ("orders.extras.stage", "orders.extras[1].stage"), ("orders.extras.stage", "orders.extras[2].stage")],
            order.Diagnostics.Where(diagnostic => diagnostic.Code.StartsWith("orders.", StringComparison.Ordinal) && diagnostic.Path.EndsWith(']') is false && (diagnostic.Code.EndsWith("missing", StringComparison.Ordinal) || diagnostic.Code.EndsWith("stage", StringComparison.Ordinal)))
                .Select(diagnostic => (diagnostic.Code, diagnostic.Path)));
        Assert.Equal(["x", "y"], order.Lines.Where(line => line.IsExtra).Select(line => line.Item));
    }

    private static WholeOrder Of(string rest) => WholeOrder.Of(SamplePlans.Simple(rest: rest));
}
