using System.Text.Json.Nodes;
using Bunit;
using Hoopwright.Web.Fields;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Hoopwright.Web.Tests;

public sealed class FieldRowTests : BunitContext
{
    private static readonly FieldSheet Sheet = FieldSheet.Read();

    public FieldRowTests() => Services.AddSingleton<Wording>();

    private static Field Span => Sheet["frame"].Fields.First(each => each.Name == "span");

    [Fact]
    public void What_is_typed_goes_to_the_plan_as_it_is_typed()
    {
        FieldHost host = new(new JsonObject());
        IRenderedComponent<FieldRow> row = Row(host);
        row.Find("input").Input("26 ft");
        Assert.Equal("26 ft", PlanPath.TextAt(host.Root, "frame.span"));
    }

    [Fact]
    public void A_field_that_is_emptied_is_left_out_of_the_plan()
    {
        FieldHost host = new(JsonNode.Parse("""{"frame":{"span":"26 ft"}}""")!);
        Row(host).Find("input").Input("");
        Assert.Null(PlanPath.At(host.Root, "frame.span"));
    }

    [Fact]
    public void What_someone_is_typing_is_not_taken_from_under_their_fingers()
    {
        FieldHost host = new(JsonNode.Parse("""{"frame":{"span":"26 ft"}}""")!);
        IRenderedComponent<FieldRow> row = Row(host);
        row.Find("input").Input("2");
        host.Root = JsonNode.Parse("""{"frame":{"span":"30 ft"}}""")!;
        row.Render(parameters => parameters.Add(each => each.Path, "frame.span"));
        Assert.Equal("2", row.Find("input").GetAttribute("value"));
        row.Find("input").Blur();
        row.Render(parameters => parameters.Add(each => each.Path, "frame.span"));
        Assert.Equal("30 ft", row.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void The_unit_is_switched_by_a_touch()
    {
        FieldHost host = new(JsonNode.Parse("""{"frame":{"span":"26 ft"}}""")!);
        IRenderedComponent<FieldRow> row = Row(host);
        Assert.Equal("7.9248 m", row.Find("button.units").TextContent);
        row.Find("button.units").Click();
        Assert.Equal("7.9248 m", PlanPath.TextAt(host.Root, "frame.span"));
    }

    [Fact]
    public void What_is_wrong_stands_beside_the_field_and_is_told_to_those_who_hear_the_page()
    {
        FieldHost host = new(JsonNode.Parse("""{"frame":{"span":"26"}}""")!) { Findings = [new Finding("error", "plan.unit-missing", "frame.span", "The number has no unit.", "26", "\"26 ft\"")] };
        IRenderedComponent<FieldRow> row = Row(host);
        Assert.Equal("true", row.Find("input").GetAttribute("aria-invalid"));
        Assert.Contains("The number has no unit.", row.Find(".error").TextContent, StringComparison.Ordinal);
        Assert.Equal(row.Find(".about").Id, row.Find("input").GetAttribute("aria-describedby"));
    }

    [Fact]
    public void A_value_taken_where_the_plan_is_silent_shows_in_the_empty_field_with_its_source()
    {
        FieldHost host = new(new JsonObject()) { Rule = new Rule("frame.span", "26' 0\"", "how wide", false, true, "common practice, no source") };
        IRenderedComponent<FieldRow> row = Row(host);
        Assert.Equal("26' 0\"", row.Find("input").GetAttribute("placeholder"));
        Assert.Contains("common practice, no source", row.Find(".from").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ends.front.doors[].swing", "out", "outwards")]
    [InlineData("ends.front.withoutGirts", "no", "no")]
    [InlineData("frame.bays", "equal", "all equal")]
    public void A_choice_taken_where_the_plan_is_silent_is_called_as_in_the_list(string pattern, string value, string called)
    {
        string path = pattern.Replace("[]", "[0]", StringComparison.Ordinal);
        FieldHost host = new(new JsonObject()) { Rule = new Rule(path, value, "", false, true, "common practice, no source") };
        Field field = Sheet.Fields.SelectMany(All).Single(each => each.Path == pattern);
        IRenderedComponent<FieldRow> row = Render<FieldRow>(parameters => parameters.Add(each => each.Field, field).Add(each => each.Path, path).Add(each => each.Sheet, host));
        Assert.Equal(called, row.Find("option[value='']").TextContent);
        Assert.StartsWith("● " + called + " —", row.Find(".from").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 2, 2, "")]
    [InlineData(1, 3, 1, "3 to look at again here")]
    public void Of_many_things_at_one_place_errors_stay_in_sight_and_the_others_are_folded(int errors, int warnings, int inSight, string summary)
    {
        Finding[] found = [.. Enumerable.Range(0, errors + warnings).Select(at => new Finding(at < errors ? "error" : "warning", "any", "ends.front", $"Number {at}.", null, null))];
        IRenderedComponent<FoundHere> here = Render<FoundHere>(parameters => parameters.Add(each => each.Findings, found));
        Assert.Equal(errors + warnings, here.FindAll("p").Count);
        Assert.Equal(inSight, here.FindAll("p").Count(said => said.Closest("details") is null));
        Assert.Equal(summary, here.FindAll("summary").Select(each => each.TextContent).SingleOrDefault(""));
        Assert.All(here.FindAll("details"), each => Assert.False(each.HasAttribute("open")));
    }

    private static IEnumerable<Field> All(Field field) => [field, .. field.Fields.SelectMany(All)];

    private IRenderedComponent<FieldRow> Row(FieldHost host) => Render<FieldRow>(parameters => parameters
        .Add(row => row.Field, Span).Add(row => row.Path, "frame.span").Add(row => row.Sheet, host));
}
