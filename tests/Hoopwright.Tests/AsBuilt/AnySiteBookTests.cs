using CsCheck;
using Hoopwright.AsBuilt;
using Hoopwright.Cutting;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using static Hoopwright.Tests.AsBuilt.SiteBookSamples;

namespace Hoopwright.Tests.AsBuilt;

public sealed class AnySiteBookTests
{
    private static readonly string[] Slips = ["", "0", "-4 in", "abc", "1e9 ft", "26", "999 km", "3 ft 99 in", "0.001 in", "\u2067", "9000 m"];

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void Whatever_stands_in_a_site_book_is_worked_out_or_told(string example)
    {
        Plan plan = SamplePlans.Example(example);
        Tunnel planned = SamplePlans.LayOut(plan);
        Measurable[] all = [.. Measurables.Of(planned, AsBuiltTolerances.Of(plan, planned.Length, new Answers(planned.Units)))];
        // Near, far and absurd readings, twice over where they must count.
        Gen<(string, string)[]> reading = Gen.Select(Gen.Int[0, all.Length - 1], Gen.Int[0, 11], Gen.Double[0.02, 3], Gen.Double[-0.02, 0.02], Gen.Int[0, Slips.Length - 1]).Select((which, kind, times, near, slip) =>
        {
            Measurable of = all[which];
            string value = kind switch
            {
                0 => Slips[slip],
                1 or 2 => Metres(of.Planned.Metres * times),
                _ => Metres(of.Planned.Metres * (1 + near)),
            };
            (string, string) one = (of.Name, value);
            return kind is 1 or 5 ? new[] { one, one } : [one];
        });
        int fitted = 0, tried = 0;
        reading.Array[1, 12].Sample(readings =>
        {
            PlannedTunnel worked = TunnelWorks.Plan(new PlanReading(With(plan, [.. readings.SelectMany(each => each)]), false, []), effort: CutEffort.Least, depth: WorkDepth.Orders);
            Assert.NotNull(worked.Tunnel);
            Assert.NotNull(worked.Orders);
            Assert.NotEmpty(worked.Checks!.All);
            Assert.True(worked.AsBuilt!.DoesNotFit || worked.Tunnel.Members.All(member => double.IsFinite(member.CutLength.Metres) && member.CutLength > Length.Zero));
            Assert.True(worked.Tunnel.Stations.Length == planned.Stations.Length && worked.Tunnel.Front.Posts.Length == planned.Front.Posts.Length && worked.Tunnel.Back.Posts.Length == planned.Back.Posts.Length);
            // Strength takes most of the time; of some books it is worked out too, and all is written down.
            if (tried++ % 6 == 0) Assert.NotEmpty(ResultsJson.Write(TunnelWorks.Plan(new PlanReading(worked.Plan, false, []), effort: CutEffort.Least)));
            if (!worked.AsBuilt.DoesNotFit) fitted++;
            return true;
        }, iter: 60, threads: 1);
        Assert.True(fitted > tried / 4, $"Only {fitted} of {tried} could be laid out as they stand.");
    }

    private static string Metres(double metres) => metres.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " m";
}
