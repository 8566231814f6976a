using Hoopwright.Diagnostics;
using Hoopwright.Inside;
using Hoopwright.Inside.Air;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Tests.Weather;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Inside;

/// <summary>A year inside from plan and weather.</summary>
public sealed class InsidePlannerTests
{
    [Fact]
    public void A_year_has_light_air_and_every_way_of_keeping()
    {
        InsideReport report = InsidePlanner.Plan(InsideSamples.Gothic, InsideSamples.Year).Report!;
        Assert.Equal(12, report.Light.Length);
        Assert.All(report.Light, month => Assert.InRange(month.Floor.MolesPerSquareMetre / month.Outside.MolesPerSquareMetre, 0.6, 0.89));
        Assert.True(report.Light[5].Outside > report.Light[11].Outside);
        Assert.Equal(Enum.GetValues<InsideWay>(), report.Ways.Select(way => way.Way));
        Assert.Equal(Enum.GetValues<OpenWide>(), report.Air.Select(air => air.Wide));
        Assert.True(report.Ways[1].Highest > report.Ways[4].Highest && report.Ways[4].Highest >= report.Ways[0].Highest);
        Assert.True(report.Band.HighestTo >= report.Band.HighestFrom && report.Band.LowestTo >= report.Band.LowestFrom && report.Band.NightLiftTo >= report.Band.NightLiftFrom);
        Assert.True(report.BalanceLeft.Value < 1e-6);
        Assert.Equal(8760, report.Hours.Length);
        Assert.Equal(365, report.Days.Length);
        Assert.Equal(26, report.Facets.Length);
        Assert.Equal(12, report.Headings.Length);
        // A month is the mean of its days, at each place across.
        Assert.Equal(report.Light[3].Across[2].MolesPerSquareMetre, report.Days.Where(day => day.Date.Month == 4).Average(day => day.Light[2].MolesPerSquareMetre), 1e-4);
        Assert.Equal(report.Days.Length, report.Season.ShortDays + report.Days.Count(day => Hoopwright.Sun.SunAlmanac.Day(report.Place, day.Date, TimeSpan.FromHours(-5)).DayLength >= TimeSpan.FromHours(10)));
        Assert.Equal(report.Hours.Max(hour => hour.Air), report.Ways[4].Highest);
        // Opened only where it was too warm shut.
        Assert.All(report.Hours.Where(hour => hour.Wide != OpenWide.Shut), hour => Assert.True(hour.Light.MolesPerSquareMetre > 0 || hour.Outside.Celsius > 15));
    }

    [Fact]
    public void A_heater_of_the_plan_gives_over_the_hours_what_it_gives_in_the_mean()
    {
        InsideReport report = InsidePlanner.Plan(InsideSamples.Round(rest: "\"inside\": { \"heatTo\": \"60 °F\" }"), InsideSamples.Year).Report!;
        Assert.True(report.HeaterMean > Power.Zero && report.Heater.Whole > report.Hours.Max(hour => hour.Heater));
        Assert.Equal(report.HeaterMean.Watts, report.Hours.Average(hour => hour.Heater.Watts), 1e-3 * report.HeaterMean.Watts);
        Assert.Contains("MWh", InsideSheet.Of(report, UnitSystem.Metric), StringComparison.Ordinal);
        Assert.True(report.Hours.Min(hour => hour.Air) >= Temperature.FromFahrenheit(59.9));
    }

    [Fact]
    public void In_winter_a_tunnel_that_lies_east_and_west_is_lighter_and_trees_in_the_south_take_light()
    {
        InsideReport report = InsidePlanner.Plan(InsideSamples.Gothic, InsideSamples.Year).Report!;
        HeadingStudy best = report.Headings.MaxBy(heading => heading.WinterLight)!;
        Assert.Equal(90, best.FrontFaces.Degrees, 15.5);
        Assert.All(report.Light, month => Assert.Equal(0, month.LostToShade.Value, 1e-9));
        Plan shaded = InsideSamples.Gothic.Plan with
        {
            Site = InsideSamples.Gothic.Plan.Site with
            {
                Obstacles = [new Obstacle { From = Angles(120), To = Angles(240), Distance = Lengths(15), Height = Lengths(12), Lets = new Written<Ratio>("30 %", Ratio.FromPercent(30)) }],
            },
        };
        InsideReport dark = InsidePlanner.Plan(InsideSamples.Gothic with { Plan = shaded }, InsideSamples.Year).Report!;
        Assert.True(dark.Light[11].LostToShade.Value > 0.25 && dark.Light[11].LostToShade > dark.Light[5].LostToShade);
    }

    [Fact]
    public void The_same_plan_and_weather_give_the_same_bytes()
    {
        byte[] one = Bytes(), other = Bytes();
        Assert.Equal(one, other);

        static byte[] Bytes()
        {
            using var stream = new MemoryStream();
            using (var json = new System.Text.Json.Utf8JsonWriter(stream)) InsideJson.Write(json, InsidePlanner.Plan(InsideSamples.Gothic, InsideSamples.Year).Report!);
            return stream.ToArray();
        }
    }

    [Fact]
    public void A_place_south_of_the_equator_counts_its_frosts_and_its_winter_there()
    {
        var south = new Hoopwright.Sun.Place(Angle.FromDegrees(-35), Angle.FromDegrees(-76.5), Length.FromMetres(250));
        string[] header = [.. InventedWeather.Header];
        header[0] = header[0].Replace("42.50", "-35.00", StringComparison.Ordinal);
        WeatherReading reading = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows(2026, south), header));
        InsideReport report = InsidePlanner.Plan(InsideSamples.Gothic, reading.Record!).Report!;
        Assert.True(report.Light[5].Outside < report.Light[11].Outside);
        Assert.True(report.Facets[0].Winter < report.Facets[0].Year);
    }

    [Theory]
    [InlineData("inside.temperatures", "\"inside\": { \"coldest\": \"90 °F\", \"warmest\": \"60 °F\" }")]
    [InlineData("inside.heat", "\"inside\": { \"heatTo\": \"80 °F\", \"ventAt\": \"75 °F\" }")]
    [InlineData("inside.obstacle", "\"site\": { \"obstacles\": [{ \"from\": \"E\", \"to\": \"S\", \"distance\": \"4 ft\", \"height\": \"30 ft\" }] }")]
    public void What_cannot_be_is_refused(string code, string fields)
    {
        InsideOutcome outcome = InsidePlanner.Plan(InsideSamples.Round(rest: fields), InsideSamples.Year);
        Assert.Null(outcome.Report);
        Assert.Contains(outcome.Diagnostics, each => each.Code == code && each.Severity == Severity.Error);
    }

    [Fact]
    public void Weather_that_is_too_short_or_has_no_light_is_refused_with_what_it_lacks()
    {
        WeatherRecord days = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows().Take(30 * 24))).Record!;
        Assert.Contains(InsidePlanner.Plan(InsideSamples.Gothic, days).Diagnostics, each => each.Code == "inside.short");
        WeatherRecord dark = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows().Select(row => Without(row, 13, 14, 15)))).Record!;
        InsideOutcome outcome = InsidePlanner.Plan(InsideSamples.Gothic, dark);
        Assert.Null(outcome.Report);
        Assert.Contains(outcome.Diagnostics, each => each.Code == "inside.no-element");
    }

    [Fact]
    public void What_the_weather_lacks_is_worked_out_and_told()
    {
        WeatherRecord poor = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows().Select((row, hour) => hour % 100 < 6 ? Without(row, 6, 12, 14, 15) : Without(row, 12, 14, 15)))).Record!;
        InsideOutcome outcome = InsidePlanner.Plan(InsideSamples.Round(rest: "\"inside\": { \"doorsOpen\": false }"), poor);
        Assert.NotNull(outcome.Report);
        foreach (string code in new[] { "inside.sky", "inside.split-light", "inside.filled" }) Assert.Contains(outcome.Diagnostics, each => each.Code == code);
    }

    [Fact]
    public void Of_a_longer_record_the_first_year_is_taken_and_a_shut_tunnel_is_warned_of()
    {
        WeatherRecord two = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows(2025).Concat(InventedWeather.Rows()))).Record!;
        InsideOutcome outcome = InsidePlanner.Plan(SamplePlans.LayOut(SamplePlans.Simple(rest: "\"sides\": { \"left\": { \"kind\": \"fixed\" } }")), two);
        Assert.Equal(8760, outcome.Report!.Hours.Length);
        Assert.Contains(outcome.Diagnostics, each => each.Code == "inside.first-year");
        Assert.Contains(outcome.Diagnostics, each => each.Code == "inside.nothing-opens");
    }

    /// <summary>A row with values that the form marks as missing, by column from 0.</summary>
    private static string Without(string row, params int[] columns)
    {
        string[] cells = row.Split(',');
        foreach (int column in columns) cells[column] = column == 6 ? "99.9" : "9999";
        return string.Join(',', cells);
    }

    private static Written<Angle> Angles(double degrees) => new($"{degrees}°", Angle.FromDegrees(degrees));

    private static Written<Length> Lengths(double metres) => new($"{metres} m", Length.FromMetres(metres));
}
