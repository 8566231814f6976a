using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Layout;

public sealed class GroundPostTests
{
    [Theory]
    [InlineData("0.083 in", "an inside width over 1.9 in, or an outside width under 1.734 in")]
    [InlineData("0.95 in", "an inside width over 1.9 in")]
    [InlineData("1 in", "an inside width over 1.9 in")]
    public void A_post_that_the_leg_does_not_fit_is_told_widths_that_there_can_be(string wall, string accepted)
    {
        Plan plan = SamplePlans.Simple(frame: $"\"bowTube\": {{ \"outside\": \"1.9 in\", \"wall\": \"{wall}\" }}", rest: "\"ground\": { \"postTube\": { \"outside\": \"1.9 in\", \"wall\": \"0.095 in\" } }");
        Diagnostic found = Assert.Single(TunnelPlanner.LayOut(plan, new Answers(UnitSystem.UsCustomary)).Diagnostics, each => each.Code == "ground.post.tube-fit");
        Assert.Equal(("1.9 in", accepted), (found.Seen, found.Accepted));
    }

    [Theory]
    [InlineData("wrong")]
    [InlineData("wrong-shape")]
    public void Nothing_that_would_do_is_less_than_nothing(string example) =>
        Assert.DoesNotContain(TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example))).Diagnostics, found =>
            System.Text.RegularExpressions.Regex.IsMatch(found.Accepted ?? "", @"(^|\s)-\d"));
}
