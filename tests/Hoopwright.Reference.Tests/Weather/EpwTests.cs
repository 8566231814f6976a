using System.Globalization;
using System.Text.RegularExpressions;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Reference.Tests.Weather;

/// <summary>Typical years of five airports, against statistics that others made of the same files.</summary>
public sealed partial class EpwTests
{
    private const string Months = "monthly statistics of the TMY3 files by an independent program";
    private const string Years = "annual statistics of the TMY3 files by an independent program";
    private const string Winds = "Weibull fits of the TMY3 files by scipy";
    private const string Published3 = "statistics (.stat) published with the TMY3 files";
    private const string Rounded = "rounded there";

    // 65 °F.
    private const double BaseC = 33 * 5.0 / 9;

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void The_files_are_read_whole_with_nothing_to_repair()
    {
        foreach (string site in Sites())
        {
            WeatherReading reading = WeatherFiles.Read(site);
            Assert.DoesNotContain(reading.Diagnostics, each => each.Severity == Severity.Error);
            Assert.Empty(reading.Repairs);
            WeatherRecord record = reading.Record!;
            Assert.Equal(8760, record.Count);
            Assert.True(record.IsTypicalYear);
            Assert.Equal(8760, record.KnownHours(WeatherElement.AirTemperature));
            Assert.Equal(8760, record.KnownHours(WeatherElement.Wind));
            Assert.Equal(3, record.Epw!.GroundTemperatures.Length);
            Assert.Equal(6, record.Epw.TypicalPeriods.Length);
            Assert.Single(record.Epw.DataPeriods);
        }
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Every_row_of_the_monthly_statistics_is_met()
    {
        foreach (var site in WeatherFiles.Table("epw_monthly.csv").GroupBy(row => row.Text("site")))
        {
            WeatherRecord record = WeatherFiles.Read(site.Key).Record!;
            var climate = new Climate(record);
            var finder = new WindowFinder(record, record.Place!);
            var five = finder.Odds(Limits(5, 50, 75));
            var eight = finder.Odds(Limits(8, 50, 75));
            var ten = finder.Odds(Limits(10, 50, 75));
            var wide = finder.Odds(Limits(8, 40, 80));
            foreach (CsvRows row in site)
            {
                int month = (int)row.Number("month");
                string what = $"{site.Key} {month}: ";
                MonthClimate found = climate.Month(month)!;
                Published.Check(Months, what + "mean, °C", row.Number("mean_db_C"), found.MeanC, 6e-4, Rounded);
                Published.Check(Months, what + "highest, °C", row.Number("max_db_C"), found.HighestC, 0.06, Rounded);
                Published.Check(Months, what + "lowest, °C", row.Number("min_db_C"), found.LowestC, 0.06, Rounded);
                Published.Check(Months, what + "dew point, °C", row.Number("mean_dp_C"), found.MeanDewPointC, 6e-4, Rounded);
                Published.Check(Months, what + "wind, m/s", row.Number("mean_wind_ms"), found.MeanWindMps, 6e-4, Rounded);
                Published.Check(Months, what + "global, Wh/m² d", row.Number("ghi_Wh_m2_day"), found.GlobalWhPerM2Day, 0.06, Rounded);
                Published.Check(Months, what + "beam, Wh/m² d", row.Number("dni_Wh_m2_day"), found.BeamWhPerM2Day, 0.06, Rounded);
                Published.Check(Months, what + "diffuse, Wh/m² d", row.Number("dhi_Wh_m2_day"), found.DiffuseWhPerM2Day, 0.06, Rounded);
                Published.Check(Months, what + "heating by mean, K·d", row.Number("hdd18.3_dailymean"), climate.HeatingByMean(month, BaseC), 0.06, Rounded);
                Published.Check(Months, what + "heating by middle, K·d", row.Number("hdd18.3_minmax"), climate.HeatingByMiddle(month, BaseC), 0.06, Rounded);
                Published.Check(Months, what + "growing by middle, K·d", row.Number("gdd10C_avg"), climate.GrowingByMiddle(month, 10), 0.06, Rounded);
                Published.Check(Months, what + "growing cut, K·d", row.Number("gdd10_30C_cutoff"), climate.GrowingCut(month, 10, 30), 0.06, Rounded);
                Published.Check(Months, what + "growing by hour, K·d", row.Number("gdd10C_hourly"), climate.GrowingByHour(month, 10), 0.06, Rounded);
                Published.Check(Months, what + "days of frost", row.Number("days_min_le_0C"), found.FrostDays, 0, "a count");
                Published.Check(Months, what + "covering days at 5 mph", row.Number("days_window5mph"), five[month - 1].GoodDays, 0, "a count");
                Published.Check(Months, what + "covering days at 8 mph", row.Number("days_window8mph"), eight[month - 1].GoodDays, 0, "a count");
                Published.Check(Months, what + "covering days at 10 mph", row.Number("days_window10mph"), ten[month - 1].GoodDays, 0, "a count");
                Published.Check(Months, what + "covering days at 8 mph, 40 to 80 °F", row.Number("days_window8mph_40_80F"), wide[month - 1].GoodDays, 0, "a count");
            }
        }
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Every_row_of_the_annual_statistics_is_met()
    {
        foreach (CsvRows row in WeatherFiles.Table("epw_annual.csv"))
        {
            string site = row.Text("site");
            WeatherRecord record = WeatherFiles.Read(site).Record!;
            var climate = new Climate(record);
            MonthClimate year = climate.Month(0)!;
            Published.Check(Years, site + " latitude", row.Number("lat"), record.Place!.Latitude.Degrees, 1e-9, "printed in the file");
            Published.Check(Years, site + " longitude", row.Number("lon"), record.Place.Longitude.Degrees, 1e-9, "printed in the file");
            Published.Check(Years, site + " time zone, h", row.Number("tz"), record.UtcOffset.TotalHours, 0, "printed in the file");
            Published.Check(Years, site + " elevation, m", row.Number("elev_m"), record.Place.Elevation.Metres, 0, "printed in the file");
            Published.Check(Years, site + " mean, °C", row.Number("mean_db_C"), year.MeanC, 6e-4, Rounded);
            Published.Check(Years, site + " wind, m/s", row.Number("mean_wind_ms"), year.MeanWindMps, 6e-4, Rounded);
            Published.Check(Years, site + " global, Wh/m² d", row.Number("ghi_Wh_m2_day"), year.GlobalWhPerM2Day, 0.06, Rounded);
            Published.Check(Years, site + " heating by mean", row.Number("hdd18.3_dailymean"), climate.HeatingByMean(0, BaseC), 0.06, Rounded);
            Published.Check(Years, site + " heating by middle", row.Number("hdd18.3_minmax"), climate.HeatingByMiddle(0, BaseC), 0.06, Rounded);
            Published.Check(Years, site + " growing by middle", row.Number("gdd10C_avg"), climate.GrowingByMiddle(0, 10), 0.06, Rounded);
            Published.Check(Years, site + " growing cut", row.Number("gdd10_30C_cutoff"), climate.GrowingCut(0, 10, 30), 0.06, Rounded);
            Published.Check(Years, site + " growing from 40 °F", row.Number("gdd4.4C_avg"), climate.GrowingByMiddle(0, 8 * 5.0 / 9), 0.06, Rounded);
            Published.Check(Years, site + " growing by hour", row.Number("gdd10C_hourly"), climate.GrowingByHour(0, 10), 0.06, Rounded);
            Published.Check(Years, site + " lowest, °C", row.Number("min_db_C"), year.LowestC, 0.06, Rounded);
            (DateOnly? spring, DateOnly? autumn) = climate.Frost();
            Assert.Equal(row.Text("last_spring_0C"), spring!.Value.ToString("M-dd", CultureInfo.InvariantCulture));
            Assert.Equal(row.Text("first_fall_0C"), autumn!.Value.ToString("MM-dd", CultureInfo.InvariantCulture));
        }
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Every_row_of_the_fits_of_wind_is_met()
    {
        foreach (CsvRows row in WeatherFiles.Table("epw_wind_weibull.csv"))
        {
            string site = row.Text("site");
            double[] winds = WeatherFiles.Read(site).Record!.Column(WeatherElement.Wind)!;
            WindDistribution fit = WindDistribution.Of(winds)!;
            Published.Check(Winds, site + " mean", row.Number("mean"), fit.MeanMps, 1e-4, Rounded);
            Published.Check(Winds, site + " deviation", row.Number("std"), fit.DeviationMps, 2e-4, "divided by n or by n - 1");
            Published.Check(Winds, site + " calm", row.Number("frac_calm"), fit.CalmPart, 1e-4, Rounded);
            Published.Check(Winds, site + " k of moments", row.Number("k_moment_justus"), fit.MomentShape, 3e-4, "divided by n or by n - 1");
            Published.Check(Winds, site + " c of moments", row.Number("c_moment"), fit.MomentScaleMps, 3e-4, "divided by n or by n - 1");
            Published.Check(Winds, site + " likely k", row.Number("k_mle_nonzero"), fit.LikelyShape, 2e-4, "found by search there");
            Published.Check(Winds, site + " likely c", row.Number("c_mle_nonzero"), fit.LikelyScaleMps, 2e-4, "found by search there");
            Published.Check(Winds, site + " at most 5 mph", row.Number("frac_le_5mph"), Part(5), 1e-4, Rounded);
            Published.Check(Winds, site + " at most 8 mph", row.Number("frac_le_8mph"), Part(8), 1e-4, Rounded);

            double Part(double mph) => winds.Count(wind => wind <= Speed.FromMilesPerHour(mph).MetresPerSecond) / (double)winds.Length;
        }
    }

    [Theory(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    [InlineData("Buffalo NY")]
    [InlineData("Denver CO")]
    [InlineData("Atlanta GA")]
    public void Degree_days_are_those_of_the_published_statistics(string site)
    {
        string[] lines = WeatherFiles.Statistics(site);
        var climate = new Climate(WeatherFiles.Read(site).Record!);
        Published.Check(Published3, "cooling, base 10", Printed("cooling", "10"), climate.CoolingByMean(0, 10), 0.51, Rounded);
        Published.Check(Published3, "heating, base 10", Printed("heating", "10"), climate.HeatingByMean(0, 10), 0.51, Rounded);
        Published.Check(Published3, "cooling, base 18", Printed("cooling", "18"), climate.CoolingByMean(0, 18), 0.51, Rounded);
        Published.Check(Published3, "heating, base 18", Printed("heating", "18"), climate.HeatingByMean(0, 18), 0.51, Rounded);

        double Printed(string kind, string degrees) => double.Parse(
            lines.Select(line => Regex.Match(line, $@"^\s*-\s*(\d+) annual \(wthr file\) {kind} degree-days \({degrees}.C baseline\)")).First(match => match.Success).Groups[1].Value, CultureInfo.InvariantCulture);
    }

    [Theory(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    [InlineData("Buffalo NY")]
    [InlineData("Denver CO")]
    [InlineData("Atlanta GA")]
    public void The_clear_sky_of_the_handbook_is_that_of_the_published_statistics(string site)
    {
        string[] lines = WeatherFiles.Statistics(site);
        double latitude = WeatherFiles.Read(site).Record!.Place!.Latitude.Degrees;
        double[] beamDepths = Row("taub (beam)"), diffuseDepths = Row("taud (diffuse)"), beams = Row("ib (beam)"), diffuses = Row("id (diffuse)");
        for (int month = 1; month <= 12; month++)
        {
            int day = new DateOnly(2025, month, 21).DayOfYear;
            double declination = 23.45 * Math.Sin(2 * Math.PI * (day + 284) / 365), outside = 1367 * (1 + (0.033 * Math.Cos(2 * Math.PI * (day - 3) / 365)));
            SkyLight light = ClearSky.Handbook(90 - latitude + declination, beamDepths[month - 1], diffuseDepths[month - 1], outside, of2013: false);
            Published.Check(Published3, $"beam at noon, month {month}", beams[month - 1], light.BeamNormalWPerM2, 1, "rounded to 1 W/m²");
            Published.Check(Published3, $"diffuse at noon, month {month}", diffuses[month - 1], light.DiffuseWPerM2, 1, "rounded to 1 W/m²");
        }

        double[] Row(string name) =>
            [.. lines.First(line => line.Trim().StartsWith(name, StringComparison.Ordinal)).Split('\t', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)[1..13].Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void A_file_put_to_the_other_hemisphere_is_refused_by_its_light()
    {
        foreach (string site in Sites())
        {
            Assert.Contains("weather.sun-at-night", Codes(Changed(site, text => LatitudeCell().Replace(text, "$1-$2", 1))));
            Assert.Contains("weather.place", Codes(Changed(site, text => LongitudeCell().Replace(text, "$1$2", 1))));
        }
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void A_file_by_daylight_saving_time_is_refused_by_its_light()
    {
        foreach (string site in Sites())
        {
            // Values of summer days moved an hour later, so that the clock of the rows is an hour ahead.
            string[] lines = Text(site).Split('\n');
            string[] rows = [.. lines.Skip(8).Where(line => line.Length > 0)];
            for (int row = rows.Length - 1; row > 0; row--)
            {
                int month = int.Parse(rows[row].Split(',')[1], CultureInfo.InvariantCulture);
                if (month is < 4 or > 10) continue;
                rows[row] = string.Join(',', [.. rows[row].Split(',').Take(6), .. rows[row - 1].Split(',').Skip(6)]);
            }
            string text = string.Join('\n', [.. lines.Take(8), .. rows]) + "\n";
            Assert.Contains("weather.clock", Codes(WeatherReader.Read(System.Text.Encoding.UTF8.GetBytes(text))));
        }
    }

    private static string[] Codes(WeatherReading reading)
    {
        Assert.Null(reading.Record);
        return [.. reading.Diagnostics.Select(each => each.Code)];
    }

    private static WeatherReading Changed(string site, Func<string, string> change) => WeatherReader.Read(System.Text.Encoding.UTF8.GetBytes(change(Text(site))));

    private static string Text(string site)
    {
        using var reader = new StreamReader(WeatherFiles.OpenYear(site));
        return reader.ReadToEnd();
    }

    private static IEnumerable<string> Sites() => WeatherFiles.Table("epw_annual.csv").Select(row => row.Text("site"));

    private static WindowLimits Limits(double mph, double coldestF, double warmestF) => new()
    {
        Wind = Speed.FromMilesPerHour(mph),
        Coldest = Temperature.FromFahrenheit(coldestF),
        Warmest = Temperature.FromFahrenheit(warmestF),
        Hours = 4,
    };

    [GeneratedRegex(@"^(LOCATION,[^\n]*?,\d{6},)(\d)")]
    private static partial Regex LatitudeCell();

    [GeneratedRegex(@"^(LOCATION,[^\n]*?,\d{6},[\d.]+,)-(\d)")]
    private static partial Regex LongitudeCell();
}
