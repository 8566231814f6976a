using System.Text;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Tests.Weather;
using Hoopwright.Upkeep;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Upkeep;

/// <summary>A forecast against the storm card.</summary>
public sealed class StormWatchTests
{
    private static readonly Lazy<PlannedTunnel> Example = new(() => TunnelWorks.Plan(SamplePlans.Example("gothic-26ft")));

    [Fact]
    public void Snow_piles_up_by_its_water_and_rain_stays_in_it()
    {
        // An inch of snow water, then half an inch of rain; the rain before has run off.
        StormOutlook outlook = Look([(40, 5, 8, 0.3), (34, 5, 8, 0.5), (20, 5, 8, 0.5), (45, 5, 8, 0.5), (60, 5, 8, 0)]);
        Assert.Equal(5.2, outlook.Snow.PoundsPerSquareFoot, 0.05);
        Assert.Equal(2.6, outlook.RainOnSnow.PoundsPerSquareFoot, 0.05);
        Assert.Empty(outlook.Warnings);
        // The same onto what lies already: all three rains count, and it is past where the roof is cleared.
        StormOutlook more = Look([(40, 5, 8, 0.3), (34, 5, 8, 0.5), (20, 5, 8, 0.5), (45, 5, 8, 0.5), (60, 5, 8, 0)], SnowKind.All[0].WeightOf(Length.FromInches(12)));
        Assert.Equal(5.2 * 0.8, more.RainOnSnow.PoundsPerSquareFoot, 0.05);
        StormWarning clear = Assert.Single(more.Warnings);
        Assert.Equal((StormAction.ClearSnow, 1), (clear.Action, clear.First.Hour));
        Assert.Equal(4, clear.Hours);
        Assert.Equal(3, clear.WorstAt.Hour);
    }

    [Fact]
    public void Gusts_are_told_from_the_first_hour_on_with_the_worst_and_how_long()
    {
        StormOutlook outlook = Look([(40, 10, 20, 0), (40, 20, 35, 0), (40, 25, 45, 0), (40, 30, 62, 0), (40, 40, 90, 0), (40, 20, 31, 0)]);
        Assert.Equal([StormAction.Close, StormAction.Tighten, StormAction.StayOut, StormAction.WindLimit], outlook.Warnings.Select(each => each.Action));
        Assert.Equal([5, 3, 2, 1], outlook.Warnings.Select(each => each.Hours));
        Assert.Equal([1, 2, 3, 4], outlook.Warnings.Select(each => each.First.Hour));
        Assert.All(outlook.Warnings, each => Assert.Equal((90.0, 4), (Math.Round(each.Gust!.Value.MilesPerHour, 6), each.WorstAt.Hour)));
        Assert.True(outlook.PastLimit);
        Assert.Equal(90 / Example.Value.Upkeep!.Card!.GustOf(StormAction.WindLimit)!.Value.MilesPerHour, outlook.Warnings[^1].Times.Value, 6);
    }

    [Fact]
    public void Gusts_that_are_not_forecast_are_estimated_and_that_is_said()
    {
        StormOutlook outlook = Look([(40, 20, null, 0), (40, 10, 12, 0)]);
        Assert.Equal(32, outlook.Gust!.Value.MilesPerHour, 6);
        Assert.Contains(outlook.Diagnostics, each => each.Code == "storm.gusts-estimated" && each.Accepted!.StartsWith("1.6", StringComparison.Ordinal));
        Assert.Equal(StormAction.Close, Assert.Single(outlook.Warnings).Action);
    }

    [Fact]
    public void A_forecast_without_rain_says_that_only_lying_snow_counts()
    {
        StormOutlook outlook = Look([(20, 5, 8, null), (20, 5, 8, null)]);
        Assert.Contains(outlook.Diagnostics, each => each.Code == "storm.no-precipitation");
        Assert.Equal(Pressure.Zero, outlook.Snow);
    }

    [Fact]
    public void A_year_that_was_is_no_forecast()
    {
        WeatherRecord year = WeatherReader.Read(InventedWeather.Epw()).Record!;
        (StormOutlook? outlook, var found) = StormWatch.Look(Example.Value.Upkeep!, Example.Value.Plan, year, Pressure.Zero);
        Assert.Null(outlook);
        Assert.Equal("storm.no-forecast", Assert.Single(found).Code);
    }

    [Fact]
    public void Without_a_card_there_is_nothing_to_hold_a_forecast_against()
    {
        PlannedTunnel pipe = TunnelWorks.Plan(SamplePlans.Simple(frame: "\"bowTube\": { \"material\": \"pvc\", \"outside\": \"1.66 in\", \"wall\": \"0.14 in\" }"));
        WeatherRecord forecast = WeatherReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "storm-invented.csv"))).Record!;
        Assert.Equal("storm.no-card", Assert.Single(StormWatch.Look(pipe.Upkeep!, pipe.Plan, forecast, Pressure.Zero).Diagnostics).Code);
    }

    [Fact]
    public void More_snow_and_more_wind_never_warn_later()
    {
        (double, double, double?, double?)[] hours = [.. Enumerable.Range(0, 48).Select(hour => (25.0, 10.0, (double?)(20 + hour), (double?)0.06))];
        StormOutlook one = Look(hours), more = Look([.. hours.Select(hour => (hour.Item1, hour.Item2, hour.Item3 * 1.2, hour.Item4 * 1.2))]);
        foreach (StormWarning warning in one.Warnings)
            Assert.True(more.Warnings.Single(each => each.Action == warning.Action).First <= warning.First, warning.Action.ToString());
        Assert.True(more.Warnings.Length >= one.Warnings.Length && one.Warnings.Length > 0);
    }

    [Fact]
    public void The_invented_storm_of_the_examples_asks_for_clearing_and_for_staying_out()
    {
        WeatherRecord storm = WeatherReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "storm-invented.csv"))).Record!;
        StormOutlook outlook = StormWatch.Look(Example.Value.Upkeep!, Example.Value.Plan, storm, Pressure.Zero).Outlook!;
        Assert.Contains(outlook.Warnings, each => each.Action == StormAction.ClearSnow);
        Assert.Contains(outlook.Warnings, each => each.Action == StormAction.StayOut);
        Assert.False(outlook.PastLimit);
        Assert.Contains("Clear the snow: ", UpkeepSheet.Of(outlook, UnitSystem.UsCustomary), StringComparison.Ordinal);
    }

    private static StormOutlook Look((double AirF, double WindMph, double? GustMph, double? Inches)[] hours, Pressure lying = default)
    {
        var text = new StringBuilder("# latitude: 42.5\n# longitude: -76.5\n# utc offset: -5\ntime,temperature [°F],wind [mph],gust [mph],precipitation [in]\n");
        for (int hour = 0; hour < hours.Length; hour++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"2027-01-{22 + (hour / 24)}T{hour % 24:00}:00,{hours[hour].AirF},{hours[hour].WindMph},{hours[hour].GustMph},{hours[hour].Inches}\n");
        WeatherReading read = WeatherReader.Read(Encoding.UTF8.GetBytes(text.ToString()));
        Assert.True(read.Record is not null, string.Join('\n', read.Diagnostics));
        (StormOutlook? outlook, var found) = StormWatch.Look(Example.Value.Upkeep!, Example.Value.Plan, read.Record, lying);
        return outlook ?? throw new InvalidOperationException(string.Join('\n', found));
    }
}
