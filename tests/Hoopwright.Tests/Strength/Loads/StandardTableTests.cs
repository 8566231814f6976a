using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Loads;

/// <summary>Tables of the standards cell by cell and lists of combinations line by line, written down apart from the code.</summary>
public sealed class StandardTableTests
{
    private const string Figure = "ASCE/SEI 7-16, Fig. 27.3-1, from memory", Printed = "last printed digit";

    // Slope; for h/L of 0.25, 0.5 and 1.0 the two values of the windward slope.
    [Theory]
    [InlineData(10, -0.7, -0.18, -0.9, -0.18, -1.3, -0.18)]
    [InlineData(15, -0.5, 0.0, -0.7, -0.18, -1.0, -0.18)]
    [InlineData(20, -0.3, 0.2, -0.4, 0.0, -0.7, -0.18)]
    [InlineData(25, -0.2, 0.3, -0.3, 0.2, -0.5, 0.0)]
    [InlineData(30, -0.2, 0.3, -0.2, 0.2, -0.3, 0.2)]
    [InlineData(35, 0.0, 0.4, -0.2, 0.3, -0.2, 0.2)]
    [InlineData(45, 0.4, 0.4, 0.0, 0.4, 0.0, 0.3)]
    [InlineData(60, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6)]
    [InlineData(80, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8)]
    public void The_windward_slope_of_a_gable(double slopeDeg, params double[] cells)
    {
        double[] depths = [0.25, 0.5, 1];
        for (int each = 0; each < depths.Length; each++)
        {
            (double suction, double pressure) = AsceWindShapes.GableWindward(slopeDeg, depths[each]);
            Published.Check(Figure, $"suction at h/L {depths[each]}", cells[2 * each], suction, 1e-9, Printed);
            Published.Check(Figure, $"pressure at h/L {depths[each]}", cells[(2 * each) + 1], pressure, 1e-9, Printed);
        }
    }

    [Theory]
    [InlineData(10, -0.3, -0.5, -0.7)]
    [InlineData(15, -0.5, -0.5, -0.6)]
    [InlineData(20, -0.6, -0.6, -0.6)]
    [InlineData(40, -0.6, -0.6, -0.6)]
    public void The_leeward_slope_of_a_gable(double slopeDeg, double quarter, double half, double one)
    {
        Published.Check(Figure, "h/L 0.25", quarter, AsceWindShapes.GableLeewardSlope(slopeDeg, 0.25), 1e-9, Printed);
        Published.Check(Figure, "h/L 0.5", half, AsceWindShapes.GableLeewardSlope(slopeDeg, 0.5), 1e-9, Printed);
        Published.Check(Figure, "h/L 1", one, AsceWindShapes.GableLeewardSlope(slopeDeg, 1), 1e-9, Printed);
    }

    // How far from the windward edge, in mean heights; h/L of 0.5 and less, and of 1 and more.
    [Theory]
    [InlineData(0.25, -0.9, -1.3)]
    [InlineData(0.75, -0.9, -0.7)]
    [InlineData(1.5, -0.5, -0.7)]
    [InlineData(3, -0.3, -0.7)]
    public void The_roof_under_wind_along_it(double heights, double low, double tall)
    {
        Published.Check(Figure, "h/L 0.2", low, AsceWindShapes.RoofAlong(0.2, heights), 1e-9, Printed);
        Published.Check(Figure, "h/L 2", tall, AsceWindShapes.RoofAlong(2, heights), 1e-9, Printed);
        Published.Check(Figure, "h/L 0.75, between the rows", (low + tall) / 2, AsceWindShapes.RoofAlong(0.75, heights), 1e-9, Printed);
    }

    [Fact]
    public void Walls()
    {
        Published.Check(Figure, "windward wall", 0.8, AsceWindShapes.WindwardWall, 0, "exact");
        Published.Check(Figure, "side wall", -0.7, AsceWindShapes.SideWall, 0, "exact");
        Published.Check("ASCE/SEI 7-16, 26.11, from memory", "gust effect of a stiff building", 0.85, AsceWind.Gust, 0, "exact");
    }

    [Theory]
    [InlineData(LoadStandard.Asce7Of2016, ThermalClass.AboveFreezing, 1.1)]
    [InlineData(LoadStandard.Asce7Of2016, ThermalClass.Heated, 1.0)]
    [InlineData(LoadStandard.Asce7Of2016, ThermalClass.Unheated, 1.2)]
    [InlineData(LoadStandard.Asce7Of2016, ThermalClass.HeatedGreenhouse, 0.85)]
    [InlineData(LoadStandard.Asce7Of2022, ThermalClass.HeatedGreenhouse, 0.85)]
    public void Thermal_factors_of_a_roof(LoadStandard standard, ThermalClass thermal, double expected) =>
        Published.Check("ASCE/SEI 7, Table 7.3-2, from memory", "Ct", expected, AsceSnow.Ct(standard, thermal), 0, "exact");

    [Theory]
    [InlineData(RiskCategory.I, 0.8)]
    [InlineData(RiskCategory.II, 1.0)]
    [InlineData(RiskCategory.III, 1.1)]
    [InlineData(RiskCategory.IV, 1.2)]
    public void Importance_of_snow(RiskCategory risk, double expected)
    {
        Published.Check("ASCE/SEI 7-16, Table 1.5-2, from memory", "Is", expected, AsceSnow.Is(LoadStandard.Asce7Of2016, risk), 0, "exact");
        Published.Check("ASCE/SEI 7-22, 7.3, from memory", "its maps hold the importance", 1, AsceSnow.Is(LoadStandard.Asce7Of2022, risk), 0, "exact");
    }

    [Fact]
    public void Drifts_and_snow_that_slides()
    {
        // The numbers were worked out apart from this program, with a general-purpose calculator; the formulas are from memory.
        const string Drift = "ASCE/SEI 7-16, Fig. 7.6-1, from memory";
        Published.Check(Drift, "hd at 30 psf and 100 ft, ft", 3.5194, AsceSnow.DriftM(100 * 0.3048, 30 * AsceWind.PaPerPsf, 1) / 0.3048, 5e-5, "last digit");
        Published.Check(Drift, "hd at 50 psf, 12 ft counted as 20 ft, ft", 1.7485, AsceSnow.DriftM(12 * 0.3048, 50 * AsceWind.PaPerPsf, 1) / 0.3048, 5e-5, "last digit");
        Published.Check("ASCE/SEI 7-16, 7.9, from memory", "0.4·pf·W at 20 psf from 15 ft, lb/ft", 120, AsceSnow.SlidingNPerM(20 * AsceWind.PaPerPsf, 15 * 0.3048) / (AsceWind.PaPerPsf * 0.3048), 1e-9, "exact");
    }

    [Theory]
    [InlineData("asce7-16", "asd-1=D + crop; asd-2=D + crop + L; asd-3=D + crop + S; asd-5=D + crop + 0.6 W; asd-6=D + crop + 0.75 S + 0.45 W; asd-7=0.6 D + 0.6 W; asd-t=D + crop + T; asd-st=D + crop + 0.75 S + 0.75 T; "
        + "asd-b5=D + 0.6 W; asd-b7=0.6 D + 0.6 W; lrfd-1=1.4 D + 1.4 crop; lrfd-2=1.2 D + 1.2 crop + 1.6 L; lrfd-3=1.2 D + 1.2 crop + 1.6 S; lrfd-3w=1.2 D + 1.2 crop + 1.6 S + 0.5 W; lrfd-4=1.2 D + 1.2 crop + 0.5 S + W; "
        + "lrfd-5=0.9 D + W; lrfd-t=1.2 D + 1.2 crop + 1.2 T; lrfd-st=1.2 D + 1.2 crop + 0.5 S + T; lrfd-b4=1.2 D + W; lrfd-b5=0.9 D + W")]
    [InlineData("asce7-22", "asd-1=D + crop; asd-2=D + crop + L; asd-3=D + crop + 0.7 S; asd-5=D + crop + 0.6 W; asd-6=D + crop + 0.525 S + 0.45 W; asd-7=0.6 D + 0.6 W; asd-t=D + crop + T; asd-st=D + crop + 0.525 S + 0.75 T; "
        + "asd-b5=D + 0.6 W; asd-b7=0.6 D + 0.6 W; lrfd-1=1.4 D + 1.4 crop; lrfd-2=1.2 D + 1.2 crop + 1.6 L; lrfd-3=1.2 D + 1.2 crop + S; lrfd-3w=1.2 D + 1.2 crop + S + 0.5 W; lrfd-4=1.2 D + 1.2 crop + 0.3 S + W; "
        + "lrfd-5=0.9 D + W; lrfd-t=1.2 D + 1.2 crop + 1.2 T; lrfd-st=1.2 D + 1.2 crop + 0.3 S + T; lrfd-b4=1.2 D + W; lrfd-b5=0.9 D + W")]
    [InlineData("en1991", "en-g=1.215 D + 1.215 crop; en-s=1.215 D + 1.215 crop + 1.35 S; en-sw=1.215 D + 1.215 crop + 1.35 S + 0.81 W; en-ws=1.215 D + 1.215 crop + 0.675 S + 1.35 W; en-w=1.215 D + 1.215 crop + 1.35 W; "
        + "en-w-lift=D + 1.35 W; en-p=1.215 D + 1.215 crop + 1.35 L; en-t=1.215 D + 1.215 crop + 1.35 T; en-ts=1.215 D + 1.215 crop + 1.35 S + 0.81 T; en-b=1.215 D + 1.35 W; en-b-lift=D + 1.35 W")]
    public void Every_combination_is_a_line_of_the_list_and_every_line_is_there(string standard, string list)
    {
        // ASCE/SEI 7-16 and 7-22, 2.3 and 2.4; EN 1990, 6.10 with factors 1.35 and 1.5, K_FI 0.9 of the lowest class, ψ0 of 0.5 for snow and 0.6 for wind and warmth: from memory.
        Dictionary<string, string> expected = list.Split("; ").Select(line => line.Split('=')).ToDictionary(line => line[0], line => line[1]);
        TunnelLoads loads = Loaded(standard, ", \"neighbourLeft\": \"6 ft\"");
        HashSet<string> met = [];
        foreach (LoadCombination combination in loads.Combinations)
        {
            string rule = expected.Keys.Where(key => combination.Code == key || combination.Code.StartsWith(key + "-", StringComparison.Ordinal)).MaxBy(key => key.Length)!;
            Assert.Equal(expected[rule], combination.Words.Split(": ")[0]);
            Assert.Equal(!rule.StartsWith("asd", StringComparison.Ordinal), combination.IsStrengthLevel);
            met.Add(rule);
        }
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), met.Order(StringComparer.Ordinal));
    }

    // EN 1990, table A1.1: ψ0 of snow is 0.5 up to 1000 m over the sea and 0.7 higher up, from memory; 0.9·1.5 times it.
    [Theory]
    [InlineData("1000 m", 0.675)]
    [InlineData("1001 m", 0.945)]
    public void Higher_up_more_of_the_snow_stays_where_wind_leads(string elevation, double times)
    {
        TunnelLoads loads = Loaded("en1991", $", \"elevation\": \"{elevation}\"");
        HashSet<string> snows = [.. loads.Cases.Where(each => each.Kind == LoadKind.Snow).Select(each => each.Code)];
        LoadCombination[] led = [.. loads.Combinations.Where(each => each.Code.StartsWith("en-ws-", StringComparison.Ordinal))];
        Assert.NotEmpty(led);
        Assert.All(led, each => Assert.Equal(times, each.Terms.Single(term => snows.Contains(term.CaseCode)).Factor.Value, 1e-12));
    }

    [Theory]
    [InlineData("asce7-16")]
    [InlineData("asce7-22")]
    public void Snow_that_fills_a_gap_and_the_least_wind_of_the_code_stand_for_themselves(string standard)
    {
        TunnelLoads loads = Loaded(standard, ", \"neighbourLeft\": \"6 ft\"");
        LoadKind[] Kinds(LoadCombination of) => [.. of.Terms.Select(term => loads.Cases.First(each => each.Code == term.CaseCode).Kind)];
        LoadCombination[] gaps = [.. loads.Combinations.Where(each => each.Terms.Any(term => term.CaseCode.StartsWith("snow-gap", StringComparison.Ordinal)))];
        Assert.NotEmpty(gaps);
        Assert.All(gaps, each => Assert.DoesNotContain(LoadKind.Wind, Kinds(each)));
        HashSet<string> least = [.. loads.Cases.Where(each => each.Kind == LoadKind.Wind && each.Scale == LoadScale.Fixed).Select(each => each.Code)];
        LoadCombination[] leasts = [.. loads.Combinations.Where(each => each.Terms.Any(term => least.Contains(term.CaseCode)))];
        Assert.NotEmpty(leasts);
        Assert.All(leasts, each => Assert.DoesNotContain(LoadKind.Snow, Kinds(each)));
        // All other snow and wind meet.
        Assert.Contains(loads.Combinations, each => Kinds(each).Contains(LoadKind.Snow) && Kinds(each).Contains(LoadKind.Wind));
    }

    [Fact]
    public void A_person_hangs_in_the_middle_of_a_bay()
    {
        Plan plan = SamplePlans.Simple(frame: "\"purlins\": { \"count\": 3 }", rest: "\"loads\": { \"person\": \"250 lb\" }");
        Tunnel tunnel = SamplePlans.LayOut(plan);
        int bay = tunnel.Bays / 2;
        foreach (LoadCase person in LoadProfiles.Of(plan).Cases.Where(each => each.Kind == LoadKind.Person))
            Assert.Equal((tunnel.Stations[bay].Along.Metres + tunnel.Stations[bay + 1].Along.Metres) / 2, Assert.Single(person.Points).At.Y.Metres, 1e-9);
    }

    [Fact]
    public void An_end_wall_that_stands_alone_has_the_wind_on_one_face_and_its_suction_on_the_other()
    {
        Plan plan = SamplePlans.Simple(rest: "\"site\": { \"wind\": \"105 mph\" }, \"loads\": { \"standard\": \"asce7-16\", \"exposure\": \"C\", \"buildingWind\": \"0.5\" }");
        Tunnel tunnel = SamplePlans.LayOut(plan);
        double q = AsceWind.VelocityPressurePa(AsceWind.Kz(LoadStandard.Asce7Of2016, Exposure.C, 0), 1, 0.85, 1, 0.5 * 105 * 0.44704);
        double expected = q * 0.85 * (0.8 - AsceWindShapes.LeewardWall(tunnel.Length / tunnel.Span));
        LoadCase alone = LoadProfiles.Of(plan).Case("building-ends-front").AtSite()!;
        Assert.Equal(expected, alone.Ends.Single(end => end.IsFront).Inwards.Pascals, 1e-6);
        Assert.Equal(-expected, alone.Ends.Single(end => !end.IsFront).Inwards.Pascals, 1e-6);
    }

    private static TunnelLoads Loaded(string standard, string site) => LoadProfiles.Of(SamplePlans.Simple(frame: "\"purlins\": { \"count\": 1 }",
        rest: $"\"site\": {{ \"wind\": \"105 mph\", \"groundSnow\": \"30 psf\"{site} }}, \"loads\": {{ \"standard\": \"{standard}\", \"cropLoad\": \"4 psf\" }}"));
}
