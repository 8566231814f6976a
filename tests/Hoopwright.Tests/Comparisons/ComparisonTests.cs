using System.Text;
using System.Text.Json;
using Hoopwright.Comparisons;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Comparisons;

public sealed class ComparisonTests
{
    private static readonly PlannedTunnel Round = TunnelWorks.Plan(SamplePlans.Example("round-14ft"));
    private static readonly PlannedTunnel Closer = Changed("\"bowSpacing\": \"4 ft\"", "\"bowSpacing\": \"3 ft\"");

    [Fact]
    public void A_plan_held_against_itself_differs_in_nothing()
    {
        var same = Comparison.Of(Round, TunnelWorks.Plan(SamplePlans.Example("round-14ft")));
        Assert.Empty(same.Fields);
        Assert.Empty(same.Orders);
        Assert.Empty(same.Diagnostics);
        Assert.DoesNotContain(ComparisonTexts.Strength(same).Concat(ComparisonTexts.Measures(same)).Concat(ComparisonTexts.Costs(same)), row => row.Differs);
    }

    [Fact]
    public void A_field_is_named_with_both_values_as_typed_and_what_it_changes_is_counted()
    {
        var comparison = Comparison.Of(Round, Closer);
        Assert.Equal([new ComparedField("frame.bowSpacing", "4 ft", "3 ft", null, null)], comparison.Fields);
        // 24 ft in bays of 4 ft and of 3 ft: 7 and 9 bows, a post at each foot.
        Assert.Equal((7, 9), (comparison.FactsBefore!.Bows, comparison.FactsAfter!.Bows));
        Assert.Equal((14, 18), (comparison.FactsBefore.GroundPosts, comparison.FactsAfter.GroundPosts));
        Assert.Contains(ComparisonTexts.Measures(comparison), row => row is { What: "bay", Before: "4' 0\"", After: "3' 0\"" });
    }

    [Fact]
    public void Stages_and_order_lines_add_up_to_the_difference_in_cost()
    {
        var comparison = Comparison.Of(Round, Closer);
        decimal difference = Closer.Orders!.Total.Amount - Round.Orders!.Total.Amount;
        Assert.True(difference > 0);
        Assert.Equal(difference, comparison.Stages.Sum(stage => stage.After.Amount - stage.Before.Amount));
        Assert.Equal(difference, comparison.Orders.Sum(order => (order.After?.Extension?.Amount ?? 0) - (order.Before?.Extension?.Amount ?? 0)));
    }

    [Fact]
    public void The_other_way_round_what_appears_vanishes()
    {
        Comparison there = Comparison.Of(Round, Closer), back = Comparison.Of(Closer, Round);
        Assert.NotEmpty(there.Orders);
        Assert.Equal(
            there.Orders.Select(order => (order.After?.Name, order.Before?.Name)).Order(), back.Orders.Select(order => (order.Before?.Name, order.After?.Name)).Order());
        Assert.Equal(there.Fields.Select(field => (field.Path, field.After, field.Before)), back.Fields.Select(field => (field.Path, field.Before, field.After)));
    }

    [Fact]
    public void Where_a_plan_is_silent_the_value_taken_is_told_and_so_is_one_that_follows_from_another_field()
    {
        var silent = Comparison.Of(Round, Changed("\"bowSpacing\": \"4 ft\",", ""));
        Assert.Equal([new ComparedField("frame.bowSpacing", "4 ft", null, null, "4' 0\"")], silent.Fields);
        Assert.Equal("not given; taken: 4' 0\"", silent.Fields[0].AfterText);
        Assert.Empty(silent.Orders);
        // The plan gives no post; the leg of a wider bow asks for a wider one.
        var wider = Comparison.Of(Round, Changed("\"outside\": \"1.66 in\"", "\"outside\": \"2.375 in\""));
        ComparedField post = Assert.Single(wider.Fields, field => field.Path == "ground.postTube.outside");
        Assert.True(post.IsDefault);
        Assert.NotEqual(post.TakenBefore, post.TakenAfter);
    }

    [Fact]
    public void A_list_of_plain_values_is_one_field_and_groups_of_a_list_are_counted()
    {
        var comparison = Comparison.Of(Round, Changed("\"wall\": \"0.083 in\" }", "\"wall\": \"0.083 in\", \"stockLengths\": [\"20 ft\", \"24 ft\"] }"));
        Assert.Contains(comparison.Fields, field => field is { Path: "frame.bowTube.stockLengths", Before: null, After: "20 ft, 24 ft" });
        Assert.Contains(Comparison.Of(Round, Changed("\"width\": \"3 ft\"", "\"width\": \"3' 6\\\"\"")).Fields, field => field is { Path: "ends.front.doors[0].width", Before: "3 ft", After: "3' 6\"" });
    }

    [Fact]
    public void A_plan_with_errors_has_no_facts_and_its_errors_are_told_first()
    {
        var comparison = Comparison.Of(Round, Changed("\"width\": \"3 ft\"", "\"width\": \"13 ft\""));
        Assert.Null(comparison.FactsAfter);
        Assert.False(comparison.SameCurrency);
        Assert.Equal(Severity.Error, comparison.Diagnostics[0].After!.Severity);
        using JsonDocument json = JsonDocument.Parse(ComparisonJson.Write(comparison));
        Assert.False(json.RootElement.GetProperty("after").GetProperty("workedOut").GetBoolean());
    }

    [Fact]
    public void The_json_has_si_values_and_texts_and_the_limits_of_both()
    {
        using JsonDocument json = JsonDocument.Parse(ComparisonJson.Write(Comparison.Of(Round, Closer)));
        JsonElement before = json.RootElement.GetProperty("before"), after = json.RootElement.GetProperty("after");
        Assert.Equal(1.2192, before.GetProperty("bayM").GetDouble(), 9);
        Assert.Equal("3' 0\"", after.GetProperty("bayText").GetString());
        double Snow(JsonElement plan) => plan.GetProperty("strength").GetProperty("limits").EnumerateArray()
            .First(limit => limit.GetProperty("level").GetString() == "storm" && limit.TryGetProperty("groundSnowPa", out _)).GetProperty("groundSnowPa").GetDouble();
        Assert.True(Snow(after) > Snow(before));
        Assert.Equal(ComparisonJson.Write(Comparison.Of(Round, Closer)), ComparisonJson.Write(Comparison.Of(Round, Closer)));
    }

    private static PlannedTunnel Changed(string from, string to)
    {
        string text = Encoding.UTF8.GetString(SamplePlans.ExampleBytes("round-14ft"));
        Assert.Contains(from, text, StringComparison.Ordinal);
        return TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(text.Replace(from, to, StringComparison.Ordinal))));
    }
}
