using System.Text;
using System.Text.Json;
using Hoopwright.Plans;
using Hoopwright.Testing;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

public sealed class PlanTextTests
{
    [Theory]
    [InlineData("wrong")]
    [InlineData("wrong-shape")]
    [InlineData("gothic-26ft")]
    public void What_is_said_of_a_file_with_comments_is_said_of_its_plain_text_at_the_same_places(string example)
    {
        byte[] file = SamplePlans.ExampleBytes(example);
        string plain = PlanText.Plain(Encoding.UTF8.GetString(file))!;
        using JsonDocument strict = JsonDocument.Parse(plain);
        PlanReading before = PlanReader.Read(file), after = PlanReader.Read(Encoding.UTF8.GetBytes(plain));
        Assert.Equal(before.Diagnostics, after.Diagnostics);
        Assert.Equal(before.Diagnostics.Select(each => before.PlaceOf(each.Path)), after.Diagnostics.Select(each => after.PlaceOf(each.Path)));
    }

    [Theory]
    [InlineData("{ /* one\n two */ \"a\": 1, // three\n }", "{       \n        \"a\": 1          \n }")]
    [InlineData("{\"a\": [1, 2,\t], }", "{\"a\": [1, 2 \t]  }")]
    [InlineData("{\"a\": \"// no comment, }\"}", "{\"a\": \"// no comment, }\"}")]
    [InlineData("{\"inches\": \"6-1/2\\\"\" /* the end */}", "{\"inches\": \"6-1/2\\\"\"              }")]
    public void Spaces_stand_for_comments_and_for_commas_before_an_end(string file, string plain) => Assert.Equal(plain, PlanText.Plain(file));

    [Theory]
    [InlineData("milk, screws")]
    [InlineData("[1]")]
    [InlineData("{ /* never closed }")]
    [InlineData("{\"a\": \"never closed}")]
    [InlineData("")]
    public void What_is_no_group_of_fields_is_no_plan(string file) => Assert.Null(PlanText.Plain(file));
}
