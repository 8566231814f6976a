using System.Text.Json;
using CsCheck;
using Hoopwright.Inside;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Packets;

/// <summary>What the results tell of covering days and of the climate inside without any weather.</summary>
public sealed class ClimateResultsTests
{
    private static readonly string[] Sections = ["site", "frame", "ground", "ends", "cover", "strength", "takeoff", "orders", "cuts", "steps", "days", "inside", "assumptions", "diagnostics"];

    private static PlannedTunnel Sited(string latitude = "42.4°", string rest = "") => TunnelWorks.Plan(SamplePlans.Simple(
        rest: $$""" "site": { "latitude": "{{latitude}}", "longitude": "-76.5°", "elevation": "900 ft", "frontFaces": "S"{{rest}} }, "sides": { "left": { "kind": "rollUp", "hipHeight": "4 ft" } } """));

    [Fact]
    public void The_results_have_every_section_that_is_worked_out()
    {
        using JsonDocument results = JsonDocument.Parse(ResultsJson.Write(Sited()));
        Assert.All(Sections, section => Assert.True(results.RootElement.TryGetProperty(section, out _), section));
        using JsonDocument brief = JsonDocument.Parse(ResultsJson.Write(Sited(), brief: true));
        Assert.All(new[] { "days", "inside" }, section => Assert.False(brief.RootElement.TryGetProperty(section, out _), section));
    }

    [Fact]
    public void What_takes_long_waits_until_someone_asks_for_it()
    {
        PlannedTunnel planned = Sited();
        ResultsJson.Write(planned, brief: true);
        Assert.False(planned.LazyInside!.IsValueCreated);
        Assert.False(planned.LazyCoverDay!.IsValueCreated);
        ResultsJson.Write(planned);
        Assert.True(planned.LazyInside.IsValueCreated);
    }

    [Fact]
    public void Every_number_of_a_tunnel_whose_place_is_known_can_be_asked_why()
    {
        using var explainer = Explainer.Of(Sited());
        string[] paths = [.. explainer.NumberPaths().Where(path => path.StartsWith("inside.", StringComparison.Ordinal) || path.StartsWith("days.", StringComparison.Ordinal))];
        Assert.True(paths.Length > 60);
        Assert.All(paths, path => Assert.True(explainer.Explain(path) is { Value.Length: > 0, Text.Length: > 0 }, path));
        Explanation light = explainer.Explain("inside.light[5].floorMolPerM2")!;
        Assert.Contains(light.Inputs, input => input.Path == "inside.light[5].outside");
        Assert.Contains(light.Rules, rule => rule.Path == "inside.dirt" && !rule.Given);
        Assert.Contains(light.Rules, rule => rule.Path == "site.latitude" || rule.Path == "site.frontFaces");
    }

    [Fact]
    public void Without_a_place_nothing_is_told_of_the_sun_and_the_results_say_what_they_lack()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple());
        Assert.Empty(planned.Inside!.Light);
        Assert.Null(planned.Inside.FanByBalance);
        Assert.All(planned.Inside.Air, air => Assert.Null(air.RiseInSun));
        using JsonDocument results = JsonDocument.Parse(ResultsJson.Write(planned));
        Assert.Contains("site.latitude", results.RootElement.GetProperty("inside").GetProperty("lacks").GetString(), StringComparison.Ordinal);
        Assert.True(planned.Inside.Heater.Whole.Watts > 0);
    }

    /// <summary>Light through a clear day, by hand: H0·kt with kt from nearly 0.6 in low winter sun to 0.8 (from memory), H0 of level ground outside the air by the formula of any handbook of the sun.</summary>
    [Theory]
    [InlineData(6, 41.9)]
    [InlineData(12, 12.1)]
    [InlineData(3, 26.0)]
    public void A_cloudless_day_has_most_of_the_light_outside_the_air(int month, double outsideAirMJPerM2)
    {
        ClearMonth day = Sited().Inside!.Light[month - 1];
        double mj = day.Outside.MolesPerSquareMetre / InsideStudy.MolPerWh * 3600 / 1e6;
        Assert.InRange(mj / outsideAirMJPerM2, 0.57, 0.8);
        Assert.InRange(day.Floor.MolesPerSquareMetre / day.Outside.MolesPerSquareMetre, 0.6, 0.85);
        Assert.Equal(0, day.LostToShade.Value, 1e-9);
    }

    [Fact]
    public void North_and_south_of_the_equator_have_each_others_seasons_and_trees_take_light()
    {
        InsideOutlook north = Sited("42.4°").Inside!, south = Sited("-42.4°").Inside!;
        Assert.True(north.Light[5].DayLength > TimeSpan.FromHours(15) && south.Light[5].DayLength < TimeSpan.FromHours(9.5));
        Assert.True(north.Light[5].Floor > north.Light[11].Floor && south.Light[11].Floor > south.Light[5].Floor);
        InsideOutlook shaded = Sited(rest: """, "obstacles": [{ "from": "150°", "to": "210°", "distance": "60 ft", "height": "40 ft" }] """).Inside!;
        Assert.True(shaded.Light[11].LostToShade.Value > 0.05);
        Assert.True(shaded.Light[11].Floor < north.Light[11].Floor);
    }

    [Fact]
    public void More_opening_never_lets_it_get_warmer_and_the_rise_balances_the_sun() =>
        Gen.Select(Gen.Double[25, 60], Gen.Double[2, 6]).Sample((latitude, hipFt) =>
        {
            PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(rest: FormattableString.Invariant(
                $$""" "site": { "latitude": "{{latitude:0.0}}°", "longitude": "0°" }, "sides": { "left": { "kind": "rollUp", "hipHeight": "{{Math.Min(3.9, hipFt):0.0}} ft" } } """)));
            InsideOutlook inside = planned.Inside!;
            double[] rises = [.. inside.Air.Select(air => air.RiseInSun!.Value.Kelvins)];
            Assert.Equal(rises.OrderDescending(), rises);
            Assert.True(rises[0] > rises[2] + 1);
            Assert.Equal([.. inside.Air.Select(air => air.ByWarmth.CubicMetresPerSecond).Order()], [.. inside.Air.Select(air => air.ByWarmth.CubicMetresPerSecond)]);
        }, iter: 10);

    [Fact]
    public void The_heater_is_the_one_of_the_year_inside_and_the_day_the_one_of_the_steps()
    {
        PlannedTunnel planned = Sited();
        Assert.Equal(InsideSetup.Of(planned.Tunnel!, new Answers(planned.Units)).HeaterSize, planned.Inside!.Heater);
        // U·A·ΔT + 0.335·V·n·ΔT by hand: one film 6.8, from 32 °F down to the coldest air of the plan, -20 °F, once an hour.
        double warmer = 52 / 1.8, byHand = ((6.8 * planned.Inside.Cover.SquareMetres) + (0.335 * planned.Inside.Volume.CubicMetres)) * warmer;
        Assert.Equal(byHand, planned.Inside.Heater.Whole.Watts, 1e-6 * byHand);
        Assert.Equal(planned.Fastening!.Day, planned.CoverDay!.Needs);
        Assert.True(planned.CoverDay.MastWind > planned.CoverDay.Needs.Wind);
    }
}
