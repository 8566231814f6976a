using Hoopwright.Plans;
using Hoopwright.Sheets.Models;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Models;

public sealed class TunnelModelTests
{
    [Theory]
    [InlineData("film", "Film")]
    [InlineData("sheet", "Sheet")]
    public void A_leaf_is_covered_in_space_as_the_plan_says(string cover, string material)
    {
        Plan plan = SamplePlans.Simple(rest: $"\"ends\": {{ \"front\": {{ \"doors\": [ {{ \"kind\": \"side\", \"width\": \"4 ft\", \"height\": \"7 ft\", \"leafCover\": \"{cover}\" }} ] }} }}");
        Part leaf = All(TunnelModel.Of(SamplePlans.LayOut(plan))).Single(part => part.Name == "front-door-1-leaf-1");
        Assert.Equal(material, leaf.Parts.Single(part => part.Name.EndsWith("-cover", StringComparison.Ordinal)).Material.ToString());
        Assert.Contains(leaf.Parts, part => part.Name.Contains("-stile-", StringComparison.Ordinal));
    }

    private static IEnumerable<Part> All(IEnumerable<Part> parts) => parts.SelectMany(part => All(part.Parts).Prepend(part));
}
