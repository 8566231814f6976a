using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Packets;

/// <summary>What the order weighs.</summary>
public sealed class HaulTests
{
    /// <summary>
    /// The bows are 38 lengths of 24 ft of 2.375 x 0.095 in tube; steel tube weighs 10.69·(D - t)·t pounds a foot with D and t in
    /// inches, ASTM A53 (rounded there: 10.69).
    /// </summary>
    [Fact]
    public void Steel_weighs_by_the_rule_of_pipe_makers()
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes("gothic-26ft")));
        double pounds = planned.Orders!.Lines.Where(line => line.Item == "tube" && line.Packages > 0).Sum(line =>
        {
            string[] size = line.Size.Split(' ');
            double outside = double.Parse(size[0], System.Globalization.CultureInfo.InvariantCulture), wall = double.Parse(size[2], System.Globalization.CultureInfo.InvariantCulture);
            return 10.69 * (outside - wall) * wall * line.Packages * line.Length!.Value.Feet;
        });
        Haul haul = Haul.Of(planned)!;
        Assert.Equal(pounds, haul.Steel.Pounds, pounds * 0.002);
        // 215 bags of 80 lb.
        Assert.Equal(planned.Orders.Lines.Single(line => line.Item == "dry concrete").Packages * 80.0, haul.DryConcrete.Pounds, 6);
        Assert.Equal((haul.Steel + haul.Lumber + haul.DryConcrete + haul.Film).Kilograms, haul.All.Kilograms, 9);
    }

    /// <summary>A 6 mil sheet of 48 x 100 ft weighs 138 lb: density 0.92 (trade arithmetic).</summary>
    [Fact]
    public void Film_weighs_as_its_density_says()
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes("gothic-26ft")));
        double perSquareFoot = 138.0 / 4800;
        Assert.Equal(planned.Film!.BoughtArea.SquareFeet * perSquareFoot, Haul.Of(planned)!.Film.Pounds, 0.3);
    }
}
