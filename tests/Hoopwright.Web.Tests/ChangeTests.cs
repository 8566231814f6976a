using System.Text.Json.Nodes;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

/// <summary>A change does to the plan on the page what the shelf does to the plan as it is stored (wwwroot/js/shelf.js).</summary>
public sealed class ChangeTests
{
    [Theory]
    [InlineData("""{"frame":{"span":"26 ft"}}""", "frame.span", "\"30 ft\"", """{"frame":{"span":"30 ft"}}""")]
    [InlineData("""{}""", "ends.front.doors[0].width", "\"4 ft\"", """{"ends":{"front":{"doors":[{"width":"4 ft"}]}}}""")]
    [InlineData("""{"stock":[{"item":"board"}]}""", "stock[1]", "{}", """{"stock":[{"item":"board"},{}]}""")]
    [InlineData("""{"stock":[{"item":"a"},{"item":"b"}]}""", "stock[0]", null, """{"stock":[{"item":"b"}]}""")]
    [InlineData("""{"a":1,"ends":{"front":{"postSize":"4x6"}}}""", "ends.front.postSize", null, """{"a":1}""")]
    [InlineData("""{"stock":[{"item":"a"}]}""", "stock[0].item", null, """{"stock":[{}]}""")]
    [InlineData("""{"stock":[{"item":"a"}]}""", "stock[0]", null, """{}""")]
    [InlineData("""{"a":1}""", "site.soil", null, """{"a":1}""")]
    public void It_is_made_with_groups_on_the_way_and_without_empty_ones(string before, string path, string? value, string after)
    {
        JsonNode plan = JsonNode.Parse(before)!;
        new Change(path, value).MakeIn(plan);
        Assert.Equal(after, plan.ToJsonString());
    }
}
