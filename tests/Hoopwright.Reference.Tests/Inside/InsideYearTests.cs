using Hoopwright.Inside;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Layout;
using Hoopwright.Reference.Tests.Weather;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Reference.Tests.Inside;

/// <summary>A year inside with the typical years of five airports, against what was measured in tunnels and worked out of the files by others.</summary>
public sealed class InsideYearTests
{
    private const string Column = "infrared from the sky as it stands in the TMY3 weather files";
    private const string Years = "annual statistics of the TMY3 files by an independent program";
    private const string Nights = "nights in an unheated film tunnel: Savage, Agrochemophysica 12 (1980) 5, mean minimum 1.3 K over outside; extension rules about 3 °F under one film, 7 °F under two";
    private const string Noon = "a shut tunnel near 90 °F at freezing outside and 120 °F possible at 80 °F outside: High tunnel heat management, University of Maryland Extension";
    private const string Short = "first and last day shorter than ten hours, by pvlib-python";
    private const string Two = "\"cover\": { \"layers\": 2 }";
    private const string Loss = "heat loss of single glazing 5.7 to 6.8 and of double 3.4 to 4.0 W/m²K: extension.org energy module, glazing materials";

    private static readonly string[] Sites = ["Duluth MN", "Buffalo NY", "Baltimore MD", "Atlanta GA", "Denver CO"];

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Infrared_worked_out_is_the_column_of_the_files()
    {
        foreach (string site in new[] { "Buffalo NY", "Denver CO" })
        {
            WeatherRecord record = WeatherFiles.Read(site).Record!;
            double[] column = record.Column(WeatherElement.SkyInfrared)!, air = record.Column(WeatherElement.AirTemperature)!, dew = record.Column(WeatherElement.DewPoint)!, cover = record.Column(WeatherElement.OpaqueSkyCover)!;
            for (int hour = 0; hour < record.Count; hour++)
                Published.Check(Column, $"{site}, hour {hour}, W/m²", column[hour], SkyInfrared.WPerM2(air[hour] + 273.15, dew[hour] + 273.15, cover[hour]), 0.51, "rounded to whole W/m² there");
        }
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Outside_the_year_counts_as_others_counted_it()
    {
        foreach (CsvRows row in WeatherFiles.Table("epw_annual.csv"))
        {
            string site = row.Text("site");
            if (!Sites.Contains(site)) continue;
            InsideStats outside = Report(site, "").Ways[0];
            Published.Check(Years, site + ", growing degree days over 10 °C, K·d", row.Number("gdd10C_avg"), outside.Growth.KelvinDays, 0.1, "rounded there");
            Published.Check(Years, site + ", coldest, °C", row.Number("min_db_C"), outside.Lowest.Celsius, 0.06, "rounded there");
            Assert.Equal(row.Text("last_spring_0C").TrimStart('0'), outside.LastFrost!.Value.ToString("M-dd", System.Globalization.CultureInfo.InvariantCulture));
            Assert.Equal(row.Text("first_fall_0C").TrimStart('0'), outside.FirstFrost!.Value.ToString("M-dd", System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    [Theory]
    [InlineData("Duluth MN", "11-02", "02-08", 99)]
    [InlineData("Buffalo NY", "11-08", "02-01", 86)]
    [InlineData("Baltimore MD", "11-16", "01-24", 70)]
    [InlineData("Atlanta GA", "12-08", "01-03", 27)]
    [InlineData("Denver CO", "11-15", "01-26", 73)]
    public void Days_are_shorter_than_ten_hours_when_the_table_says(string site, string from, string to, int days)
    {
        InsideSeason season;
        try
        {
            season = Report(site, "").Season;
        }
        catch (DirectoryNotFoundException missing)
        {
            Assert.Skip(missing.Message);
            return;
        }
        // Months of a typical year are of several years, whose days of one date differ by some minutes.
        Published.Check(Short, site + ", days", days, season.ShortDays, 1, "a typical year has months of several years");
        Near(from, season.ShortFrom!.Value);
        Near(to, season.ShortTo!.Value);
        Assert.InRange(season.HardyDays, 150, 365 - days);

        static void Near(string wanted, DateOnly found)
        {
            var date = DateOnly.ParseExact($"{found.Year}-{wanted}", "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
            Assert.InRange(found.DayNumber - date.DayNumber, -1, 1);
        }
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Nights_in_a_shut_tunnel_are_as_much_warmer_as_was_measured()
    {
        foreach (string site in Sites)
        {
            InsideReport report = Report(site, "");
            InsideStats shut = report.Ways.Single(way => way.Way == InsideWay.Shut);
            Published.Check(Nights, site + ", mean gain of nights, one film, K", 1.5, shut.NightLift.Kelvins, 1.5, "1 to 2 K stated as the usual, -2 to +4 K as the band");
            // Under a clear sky in a calm the air inside gets colder than outside, as was measured before the film got wet.
            Assert.InRange(shut.LeastNightLift.Kelvins, -3, 0);
            Assert.True(report.BalanceLeft.Value < 1e-6);
            InsideStats two = Report(site, Two).Ways.Single(way => way.Way == InsideWay.Shut);
            Published.Check(Nights, site + ", mean gain of nights, two films, K", 7 / 1.8, two.NightLift.Kelvins, 2, "a rule of thumb, about 7 °F");
        }
    }

    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void In_bright_sun_a_shut_tunnel_gets_as_hot_as_is_reported()
    {
        foreach (string site in new[] { "Duluth MN", "Buffalo NY", "Denver CO" })
        {
            // The hours of a tunnel that is never opened: it would be at 140 °F.
            double one = Hottest(site, "", 0), two = Hottest(site, Two + ", ", 0);
            Published.Check(Noon, site + ", two films, freezing outside, °F", 90, two, 10, "no conditions are given with the report");
            Assert.InRange(one, 60, two - 10);
            Published.Check(Noon, site + ", one film, 80 °F outside, °F", 120, Hottest(site, "", 26.7), 12, "no conditions are given with the report");
        }

        static double Hottest(string site, string fields, double outsideC) => Report(site, fields + "\"inside\": { \"ventAt\": \"140 °F\" }").Hours
            .Where(hour => Math.Abs(hour.Outside.Celsius - outsideC) <= 1).Max(hour => hour.Air.Fahrenheit);
    }

    [Theory]
    [InlineData(1, 6.25, 0.9)]
    [InlineData(2, 3.7, 0.6)]
    public void A_heated_tunnel_loses_as_much_as_the_handbook_says(int layers, double loss, double within)
    {
        // Steady at night: 18 °C inside, 0 °C outside, 3.4 m/s of wind (7.5 mph, usual for such figures), a half-clouded sky, ground as warm as the air.
        const double cover = 1.64;
        var balance = new HeatBalance(new HeatHouse { CoverOverFloor = cover, HeightM = 3.05, FloorM2 = 267, Layers = layers, Film = FilmWarmthRays.Plain, CropCover = 0, LeakPerHour = 1e-9, Damp = false });
        balance.Start(285);
        balance.Solve(new HeatHour
        {
            OutsideK = 273.15,
            WindMps = 3.4,
            SkyWPerM2 = WarmthExchange.StefanBoltzmann * Math.Pow(273.15 - 13.3, 4),
            SoilConductance = 1e6,
            SoilK = 291.15,
            AirBeforeK = double.NaN,
            HeatToK = 291.15,
        });
        double lost = (balance.HeaterWPerM2 - balance.IntoGroundWPerM2) / cover / 18;
        Published.Check(Loss, $"{layers} films, W/m²K", loss, lost, within, "the band of the source, a little wider: glass holds more warmth back than film");
    }

    private static InsideReport Report(string site, string fields)
    {
        Tunnel tunnel = SamplePlans.LayOut(SamplePlans.Simple(span: "26 ft", length: "72 ft", rest: "\"sides\": { \"left\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }" + (fields.Length > 0 ? ", " + fields : "")));
        return InsidePlanner.Plan(tunnel, WeatherFiles.Read(site).Record!).Report!;
    }
}
