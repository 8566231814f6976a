using System.Globalization;
using CsCheck;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Strength.Loads;

public sealed class SnowCaseTests
{
    private const string Curved = "ASCE/SEI 7-16, 7.4.3 and 7.6.2, curved roofs, from memory, evaluated by an independent program";
    private const string Geometry = "ASCE/SEI 7-16, 7.6.2, on the geometry of a public article (dlubal.com KB 001591), from memory, evaluated by an independent program";
    private const string Semicircle = "\"shape\": \"round\", \"sideHeight\": \"0 ft\", \"peakHeight\": \"10 ft\"";
    private const double Psf = AsceWind.PaPerPsf, FootM = 0.3048;

    private static string Site(string snow, string loads) =>
        $"\"site\": {{ \"groundSnow\": \"{snow}\", \"wind\": \"105 mph\" }}, \"loads\": {{ \"standard\": \"asce7-16\", \"exposure\": \"C\", {loads} }}";

    [Fact]
    public void Snow_on_a_semicircle_is_that_of_the_worked_case()
    {
        Plan plan = SamplePlans.Simple(bow: Semicircle, rest: Site("30 psf", "\"riskCategory\": \"I\", \"slidesFree\": true"));
        Tunnel tunnel = SamplePlans.LayOut(plan);
        TunnelLoads loads = LoadProfiles.Of(plan);
        LoadProfile balanced = loads.Case("snow-balanced").AtSite()!.Surfaces[0].PlanGravity, blown = loads.Case("snow-blown-left").AtSite()!.Surfaces[0].PlanGravity;
        foreach ((double xFt, double psf) in new[] { (0, 20.160), (2.588, 20.160), (5.000, 14.662), (7.071, 9.164), (8.660, 3.665), (9.397, 0) })
        {
            // The printed places are rounded to 0.001 ft, which at 60° is 0.002 psf of slope.
            Published.Check(Curved, $"balanced at {xFt} ft, psf", psf, balanced.AtAcrossPa(tunnel.Bow.FilmLine, (10 + xFt) * FootM) / Psf, 0.015, "places printed to 0.001 ft");
            Published.Check(Curved, $"balanced on the other side at {xFt} ft, psf", psf, balanced.AtAcrossPa(tunnel.Bow.FilmLine, (10 - xFt) * FootM) / Psf, 0.015, "places printed to 0.001 ft");
        }
        Published.Check(Curved, "unbalanced at the crown, psf", 10.080, blown.AtAcrossPa(tunnel.Bow.FilmLine, 10.0001 * FootM) / Psf, 0.002, "last printed digit");
        Published.Check(Curved, "unbalanced at 30°, psf", 29.324, blown.AtAcrossPa(tunnel.Bow.FilmLine, 15 * FootM) / Psf, 0.002, "last printed digit");
        Published.Check(Curved, "unbalanced at 70°, psf", 0, blown.AtAcrossPa(tunnel.Bow.FilmLine, 19.397 * FootM) / Psf, 0.01, "place printed to 0.001 ft");
        Assert.Equal(0, blown.AtAcrossPa(tunnel.Bow.FilmLine, 6 * FootM));
    }

    [Fact]
    public void Snow_on_a_flat_arch_from_the_ground_is_that_of_the_worked_case()
    {
        Plan plan = SamplePlans.Simple(span: "64 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"0 ft\", \"peakHeight\": \"16 ft\"",
            rest: Site("30 psf", "\"riskCategory\": \"II\", \"slidesFree\": true"));
        Tunnel tunnel = SamplePlans.LayOut(plan);
        TunnelLoads loads = LoadProfiles.Of(plan);
        LoadProfile balanced = loads.Case("snow-balanced").AtSite()!.Surfaces[0].PlanGravity, blown = loads.Case("snow-blown-left").AtSite()!.Surfaces[0].PlanGravity;
        Published.Check(Geometry, "pf, psf", 25.2, balanced.AtAcrossPa(tunnel.Bow.FilmLine, 32 * FootM) / Psf, 0.0006, "last printed digit");
        Published.Check(Geometry, "balanced at the eave, psf", 7.729, balanced.Points[^1].Value.Pascals / Psf, 0.0006, "last printed digit");
        Published.Check(Geometry, "unbalanced at the crown, psf", 12.600, blown.At(tunnel.Bow.FilmLine.Length / 2).Pascals / Psf, 0.0006, "last printed digit");
        Published.Check(Geometry, "unbalanced at 30°, psf", 36.655, blown.AtAcrossPa(tunnel.Bow.FilmLine, 52 * FootM) / Psf, 0.0006, "last printed digit");
        Published.Check(Geometry, "unbalanced at the eave, psf", 15.459, blown.Points[^2].Value.Pascals / Psf, 0.0006, "last printed digit");
    }

    [Fact]
    public void Uneven_snow_of_a_semicircle_by_en_is_that_of_the_worked_case()
    {
        const string en = "EN 1991-1-3, 5.3.5, semicircle, from memory, evaluated by an independent program";
        Plan plan = SamplePlans.Simple(bow: Semicircle, rest: "\"site\": { \"groundSnow\": \"0.65 kPa\" }, \"loads\": { \"standard\": \"en1991\" }");
        Tunnel tunnel = SamplePlans.LayOut(plan);
        TunnelLoads loads = LoadProfiles.Of(plan);
        LoadProfile even = loads.Case("snow-balanced").AtSite()!.Surfaces[0].PlanGravity, uneven = loads.Case("snow-blown-left").AtSite()!.Surfaces[0].PlanGravity;
        double snowedM = 1.7320508 * 10 * FootM, fromM = (10 * FootM) - (snowedM / 2);
        Published.Check(en, "even, kPa", 0.52, even.AtAcrossPa(tunnel.Bow.FilmLine, 10 * FootM) / 1000, 0.00006, "last printed digit");
        Published.Check(en, "l_s over R", 1.7321, (even.Points.Last(point => point.Value.Pascals > 0).Distance.Metres - even.Points.First(point => point.Value.Pascals > 0).Distance.Metres) is var arcM
            ? 2 * Math.Sin(arcM / (2 * 10 * FootM)) : 0, 0.00006, "last printed digit");
        Published.Check(en, "half side, kPa", 0.65, uneven.AtAcrossPa(tunnel.Bow.FilmLine, fromM + (snowedM / 4)) / 1000, 0.00006, "last printed digit");
        Published.Check(en, "full side, kPa", 1.30, uneven.AtAcrossPa(tunnel.Bow.FilmLine, fromM + (snowedM * 0.75)) / 1000, 0.00006, "last printed digit");
    }

    [Theory]
    [InlineData(true, 0.4)]
    [InlineData(false, 0.8)]
    public void By_en_a_pitched_roof_that_holds_its_snow_back_carries_as_much_as_a_flat_one(bool slidesFree, double mu)
    {
        const string en = "EN 1991-1-3, 5.3.3(2) and Table 5.2, from memory, worked out by hand";
        // 45°: a shoulder of 2 ft rises 2·sin 45° over 2·(1 − cos 45°), the rest of 10 ft as far as it goes.
        Plan plan = SamplePlans.Simple(bow: "\"shape\": \"peaked\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"14.828427 ft\", \"shoulderRadius\": \"2 ft\"",
            rest: $"\"site\": {{ \"groundSnow\": \"1 kPa\" }}, \"loads\": {{ \"standard\": \"en1991\", \"slidesFree\": {(slidesFree ? "true" : "false")} }}");
        PlanePath film = SamplePlans.LayOut(plan).Bow.FilmLine;
        TunnelLoads loads = LoadProfiles.Of(plan);
        Published.Check(en, "even, kPa", mu, loads.Case("snow-balanced").AtSite()!.Surfaces[0].PlanGravity.AtAcrossPa(film, 5 * FootM) / 1000, 1e-5, "the height of the peak is rounded");
        Published.Check(en, "half, kPa", mu / 2, loads.Case("snow-blown-left").AtSite()!.Surfaces[0].PlanGravity.AtAcrossPa(film, 5 * FootM) / 1000, 1e-5, "the height of the peak is rounded");
        Published.Check(en, "whole, kPa", mu, loads.Case("snow-blown-left").AtSite()!.Surfaces[0].PlanGravity.AtAcrossPa(film, 15 * FootM) / 1000, 1e-5, "the height of the peak is rounded");
    }

    [Fact]
    public void A_steep_peaked_roof_has_no_blown_snow_by_the_standard_and_one_bare_side_by_common_practice()
    {
        TunnelLoads loads = LoadProfiles.Of(SamplePlans.Simple(bow: "\"shape\": \"peaked\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"13 ft\", \"shoulderRadius\": \"2 ft\"", rest: Site("30 psf", "\"riskCategory\": \"I\"")));
        Assert.DoesNotContain(loads.Cases, each => each.Code.StartsWith("snow-blown", StringComparison.Ordinal));
        LoadCase bare = loads.Case("snow-one-side-left");
        Assert.Contains("common practice", bare.Note, StringComparison.Ordinal);
        Assert.Equal(0, bare.Surfaces[0].PlanGravity.At(Length.FromFeet(6)).Pascals);
    }

    [Fact]
    public void Snow_blown_over_a_low_peak_lies_in_the_lee_of_the_ridge()
    {
        Plan plan = SamplePlans.Simple(span: "30 ft", bow: "\"shape\": \"peaked\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"10 ft\", \"shoulderRadius\": \"2 ft\"", rest: Site("30 psf", "\"riskCategory\": \"II\""));
        Tunnel tunnel = SamplePlans.LayOut(plan);
        LoadProfile balanced = LoadProfiles.Of(plan).Case("snow-balanced").AtSite()!.Surfaces[0].PlanGravity, blown = LoadProfiles.Of(plan).Case("snow-blown-left").AtSite()!.Surfaces[0].PlanGravity;
        double before = blown.AtAcrossPa(tunnel.Bow.FilmLine, 12 * FootM), after = blown.AtAcrossPa(tunnel.Bow.FilmLine, 15.5 * FootM), eave = blown.AtAcrossPa(tunnel.Bow.FilmLine, 27 * FootM);
        Assert.Equal(0.3 * balanced.AtAcrossPa(tunnel.Bow.FilmLine, 12 * FootM), before, 1e-6);
        Assert.True(after > balanced.AtAcrossPa(tunnel.Bow.FilmLine, 15.5 * FootM));
        Assert.Equal(balanced.AtAcrossPa(tunnel.Bow.FilmLine, 27 * FootM), eave, 1e-6);
    }

    [Fact]
    public void A_filled_gap_leans_on_the_side_that_faces_the_neighbour_and_a_wider_one_is_filled_less()
    {
        double last = double.PositiveInfinity;
        foreach (string gap in new[] { "3 ft", "6 ft", "12 ft" })
        {
            LoadCase filled = LoadProfiles.Of(SamplePlans.Simple(rest: $"\"site\": {{ \"groundSnow\": \"20 psf\", \"neighbourRight\": \"{gap}\" }}")).Case("snow-gap-right").AtSite()!;
            LoadProfile side = filled.Surfaces[1].Normal;
            Assert.Equal(0, side.At(Length.FromFeet(1)).Pascals);
            double foot = side.Points[^1].Value.Pascals;
            Assert.InRange(foot, 1, last);
            last = foot;
        }
    }

    [Fact]
    public void Snow_is_never_negative_and_the_even_snow_is_no_more_than_flat_snow_on_the_span() => Generate.ValidPlanText.Sample(text =>
    {
        Plan plan = PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(text)).Plan;
        foreach (LoadStandard standard in Enum.GetValues<LoadStandard>())
        {
            Plan given = plan with
            {
                Site = plan.Site with { GroundSnow = new Written<Pressure>("30 psf", Pressure.FromPoundsPerSquareFoot(30)), NeighbourLeft = new Written<Length>("4 ft", Length.FromFeet(4)) },
                Loads = plan.Loads with { Standard = standard },
            };
            Tunnel tunnel = SamplePlans.LayOut(given);
            TunnelLoads loads = LoadPlanner.Plan(tunnel, new Answers(UnitSystem.Metric));
            foreach (LoadCase snow in loads.Cases.Where(each => each.Kind == LoadKind.Snow))
                Assert.All(snow.Surfaces.SelectMany(surface => surface.PlanGravity.Points.Concat(surface.Normal.Points)), point => Assert.True(point.Value.Pascals >= 0, $"{text}\n{snow.Code}"));
            LoadCase even = loads.Case("snow-balanced").AtSite()!;
            double downN = -even.Total(tunnel.Bow.FilmLine).UpN, mostPa = even.Surfaces[0].PlanGravity.Greatest.Pascals;
            Assert.True(downN <= mostPa * tunnel.Span.Metres * (1 + 1e-9), string.Create(CultureInfo.InvariantCulture, $"{text}\n{downN} of {mostPa * tunnel.Span.Metres}"));
            Assert.True(mostPa <= 1.01 * 30 * Psf, text);
        }
    }, iter: 40);
}
