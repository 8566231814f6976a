using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Layout;

/// <summary>Where purlins cross the bows, against the angles of a circle (closed form).</summary>
public sealed class PurlinCrossingTests
{
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    public void On_a_half_circle_they_stand_at_even_angles(int count)
    {
        Tunnel tunnel = SamplePlans.LayOut(SamplePlans.Simple(span: "20 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"0 ft\", \"peakHeight\": \"10 ft\"", frame: $"\"purlins\": {{ \"count\": {count} }}"));
        ImmutableArray<PurlinCrossing> crossings = PurlinCrossing.Of(tunnel);
        Assert.Equal(count, crossings.Length);
        int perSide = (count - 1) / 2;
        double radius = 10 * 0.3048, quarter = Math.PI / 2;
        Assert.Equal(0, crossings[0].FromRidge.Metres, 9);
        Assert.Equal(radius * quarter, crossings[0].FromFoot.Metres, 6);
        for (int step = 1; step <= perSide; step++)
        {
            double angle = quarter * step / (perSide + 1);
            foreach (PurlinCrossing crossing in crossings.Where(each => each.MemberId.EndsWith(FormattableString.Invariant($"-{step}"), StringComparison.Ordinal)))
            {
                Assert.Equal(radius * angle, crossing.FromRidge.Metres, 5);
                Assert.Equal(radius * (quarter - angle), crossing.FromFoot.Metres, 5);
            }
        }
    }

    [Fact]
    public void From_the_ridge_and_from_the_foot_make_half_the_bow()
    {
        foreach (string example in SamplePlans.GoodExamples)
        {
            Tunnel tunnel = SamplePlans.LayOut(SamplePlans.Example(example));
            Assert.All(PurlinCrossing.Of(tunnel), crossing => Assert.Equal((tunnel.Bow.FilmLine.Length / 2).Metres, (crossing.FromRidge + crossing.FromFoot).Metres, 9));
        }
    }
}
