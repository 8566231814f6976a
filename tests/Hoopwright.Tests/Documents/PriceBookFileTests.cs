using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Documents;

public sealed class PriceBookFileTests
{
    private static readonly (Prices Prices, ImmutableArray<Diagnostic> Diagnostics) Book =
        PlanReader.ReadPrices(SamplePlans.ExampleBytes("prices-invented"));

    [Fact]
    public void The_example_price_book_reads_and_says_that_its_prices_are_invented()
    {
        Assert.Empty(Book.Diagnostics);
        Assert.Contains("Invented", Book.Prices.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_line_of_it_names_an_item_of_the_takeoff_and_no_line_stands_twice()
    {
        Assert.All(Book.Prices.Items, line => Assert.NotNull(ItemFacts.Find(line.Item!)));
        Assert.Equal(Book.Prices.Items.Length, Book.Prices.Items.Select(line => (line.Item, line.Size, line.Length?.Value)).Distinct().Count());
    }

    [Fact]
    public void With_it_every_line_of_the_gothic_example_has_a_price_that_is_not_built_in()
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes("gothic-26ft")), Book.Prices);
        Assert.NotEmpty(planned.Orders!.Lines);
        Assert.Empty(planned.Orders.Lines.Where(line => line.Origin != PriceOrigin.Plan).Select(line => line.Name));
        Assert.DoesNotContain(planned.Diagnostics, found => found.Code.StartsWith("orders.prices", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void Sizes_in_it_that_a_tunnel_does_not_take_are_nothing_odd(string name) => Assert.DoesNotContain(
        TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(name)), Book.Prices).Diagnostics, found => found.Code == "orders.prices.unknown-size");

    [Fact]
    public void An_item_in_it_that_no_tunnel_takes_is_told_at_its_place_in_the_file()
    {
        Prices book = PlanReader.ReadPrices("{ \"items\": [ { \"item\": \"latch\", \"price\": \"7\" }, { \"item\": \"lag scrow\", \"size\": \"9\", \"price\": \"1\" } ] }"u8.ToArray()).Prices;
        Plan plan = SamplePlans.Simple(rest: "\"prices\": { \"items\": [ { \"item\": \"board\", \"size\": \"7x7\", \"length\": \"8 ft\", \"price\": \"1\" } ] }");
        Diagnostic[] found = [.. TunnelWorks.Plan(new PlanReading(plan, false, []), book).Diagnostics.Where(each => each.Code.StartsWith("orders.prices.unknown", StringComparison.Ordinal))];
        Assert.Equal([("orders.prices.unknown-size", "prices.items[0].size"), ("orders.prices.unknown-item", "prices file: items[1].item")], found.Select(each => (each.Code, each.Path)));
        Assert.Equal("lag screw", found[1].Accepted);
    }

    [Fact]
    public void A_price_book_of_its_own_reads_back_as_it_was_written()
    {
        byte[] written = PlanWriter.Write(Book.Prices);
        (Prices again, ImmutableArray<Diagnostic> diagnostics) = PlanReader.ReadPrices(written);
        Assert.Empty(diagnostics);
        Assert.Equal(written, PlanWriter.Write(again));
    }

    [Fact]
    public void A_faulty_price_book_is_told_what_is_wrong_and_never_throws()
    {
        Assert.Equal(PlanCodes.Empty, Assert.Single(PlanReader.ReadPrices(Array.Empty<byte>()).Diagnostics).Code);
        Assert.Equal(PlanCodes.WrongKind, Assert.Single(PlanReader.ReadPrices("[]"u8.ToArray()).Diagnostics).Code);
        Assert.Equal(PlanCodes.UnknownField, Assert.Single(PlanReader.ReadPrices("{ \"hoopwright\": \"1.0\" }"u8.ToArray()).Diagnostics).Code);
    }
}
