using System.Globalization;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Sun;

/// <summary>Where the sun stands, against the worked example of the algorithm's report and tables made by others.</summary>
public sealed class SunTests
{
    private const string Report = "NREL/TP-560-34302 (rev. 2008), table A5.1, as quoted by the tests of pvlib-python";
    private const string Positions = "361 sun positions by pvlib-python, a general-purpose solar library, met by the npm package astronomy-engine within 0.0005°";
    private const string Rises = "60 days of sunrise, noon and sunset by pvlib-python, met by the npm package astronomy-engine within 2.4 s";
    private const string Naval = "U.S. Naval Observatory tables, as quoted by the tests of pvlib-python";
    private const string TenHours = "first and last day shorter than ten hours, by pvlib-python";

    private const double DeltaT = 67;

    private static readonly DateTimeOffset Worked = new(2003, 10, 17, 12, 30, 30, TimeSpan.FromHours(-7));

    private static readonly GeocentricSun WorkedSun = GeocentricSun.At(SunAlmanac.JulianDay(Worked), DeltaT);

    public static TheoryData<string, double, double, double> WorkedExample { get; } = new()
    {
        { "Julian day", 2452930.312847, SunAlmanac.JulianDay(Worked), 1e-6 },
        { "L, deg", 24.0182616917, WorkedSun.HelioLongitudeDeg, 1e-9 },
        { "B, deg", -0.0001011219, WorkedSun.HelioLatitudeDeg, 1e-10 },
        { "R, AU", 0.9965422974, WorkedSun.RadiusAu, 1e-10 },
        { "nutation in longitude, deg", -0.00399840, WorkedSun.NutationLongitudeDeg, 1e-8 },
        { "nutation in obliquity, deg", 0.00166657, WorkedSun.NutationObliquityDeg, 1e-8 },
        { "mean obliquity, arc seconds", 84379.672625, WorkedSun.MeanObliquityArcSeconds, 1e-6 },
        { "true obliquity, deg", 23.440465, WorkedSun.ObliquityDeg, 1e-6 },
        { "apparent longitude, deg", 204.0085519281, WorkedSun.ApparentLongitudeDeg, 1e-9 },
        { "mean sidereal time, deg", 318.515579, GeocentricSun.MeanSiderealDeg(SunAlmanac.JulianDay(Worked)), 1e-6 },
        { "apparent sidereal time, deg", 318.511910, GeocentricSun.MeanSiderealDeg(SunAlmanac.JulianDay(Worked)) + WorkedSun.EquinoxesDeg, 1e-6 },
        { "right ascension, deg", 202.227408, WorkedSun.RightAscensionDeg, 1e-6 },
        { "declination, deg", -9.31434, WorkedSun.DeclinationDeg, 5e-6 },
        { "equation of time, min", 14.64, WorkedSun.EquationOfTimeMinutes, 0.005 },
    };

    [Theory]
    [MemberData(nameof(WorkedExample))]
    public void The_worked_example_is_met_step_by_step(string what, double printed, double computed, double tolerance) =>
        Published.Check(Report, what, printed, computed, tolerance, "one unit of the last printed digit");

    [Fact]
    public void The_worked_example_is_met_as_seen_from_its_place()
    {
        Place place = At(39.742476, -105.1786, 1830.14);
        TopocentricSun sun = SunAlmanac.Topocentric(place, SunAlmanac.JulianDay(Worked), WorkedSun);
        SunPosition seen = SunAlmanac.Seen(sun, 82_000, 11);
        const string Why = "the last printed digit";
        Published.Check(Report, "topocentric right ascension, deg", 202.22704, sun.RightAscensionDeg, 5e-6, Why);
        Published.Check(Report, "topocentric declination, deg", -9.316179, sun.DeclinationDeg, 1e-6, Why);
        Published.Check(Report, "topocentric hour angle, deg", 11.10627, sun.HourAngleDeg, 2e-5, Why);
        Published.Check(Report, "elevation without refraction, deg", 39.872046, seen.TrueElevation.Degrees, 1e-6, Why);
        Published.Check(Report, "elevation, deg", 39.888378, seen.Elevation.Degrees, 1e-6, Why);
        Published.Check(Report, "azimuth, deg", 194.340241, seen.Azimuth.Degrees, 1e-6, Why);
        Published.Check(Report, "incidence, deg", 25.18700, seen.IncidenceOn(Angle.FromDegrees(30), Angle.FromDegrees(180 - 10)).Degrees, 1e-5, Why);
        Published.Check(Report, "the public way in, with another ΔT, deg", 39.888378, SunAlmanac.At(place, Worked, Pressure.FromPascals(82_000), Temperature.FromCelsius(11)).Elevation.Degrees, 3e-5, "ΔT is 69 s there, 67 s in the report");
    }

    [Theory]
    [InlineData("2000-01-01T12:00:00Z", 2451545.0)]
    [InlineData("1999-01-01T00:00:00Z", 2451179.5)]
    [InlineData("1987-01-27T00:00:00Z", 2446822.5)]
    [InlineData("1988-06-19T12:00:00Z", 2447332.0)]
    [InlineData("1900-01-01T00:00:00Z", 2415020.5)]
    public void A_date_is_its_julian_day(string instant, double day) =>
        Published.Check(Report, "Julian day of " + instant, day, SunAlmanac.JulianDay(DateTimeOffset.Parse(instant, CultureInfo.InvariantCulture)), 0, "exact");

    [Fact]
    public void Every_row_of_the_table_of_positions_is_met()
    {
        var rows = CsvRows.Of(Table("sun_positions_spa.csv"));
        Assert.Equal(361, rows.Count);
        foreach (CsvRows row in rows)
        {
            var instant = new DateTimeOffset(DateTime.ParseExact(row.Text("local_standard_time"), "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), TimeSpan.FromHours(row.Number("utc_offset_h")));
            SunPosition sun = SunAlmanac.At(PlaceOf(row, row.Number("elev_m")), instant);
            string what = $"{row.Text("site")}, {row.Text("local_standard_time")}: ";
            const string Why = "printed to 0.0001°, and the algorithm is good to 0.0003°";
            Published.Check(Positions, what + "true elevation, deg", row.Number("true_elevation_deg"), sun.TrueElevation.Degrees, 1e-4, Why);
            Published.Check(Positions, what + "elevation, deg", row.Number("apparent_elevation_deg"), sun.Elevation.Degrees, 3e-4, Why);
            Published.Check(Positions, what + "azimuth, deg", row.Number("azimuth_deg_from_north"), sun.Azimuth.Degrees, 1e-4, Why);
            Published.Check(Positions, what + "equation of time, min", row.Number("equation_of_time_min"), SunAlmanac.EquationOfTime(instant).TotalMinutes, 1e-4, Why);
        }
    }

    [Fact]
    public void Every_row_of_the_table_of_days_is_met()
    {
        var rows = CsvRows.Of(Table("sun_rise_set_spa.csv"));
        Assert.Equal(60, rows.Count);
        foreach (CsvRows row in rows)
        {
            SunDay day = SunAlmanac.Day(PlaceOf(row, 0), DateOnly.ParseExact(row.Text("date"), "yyyy-MM-dd", CultureInfo.InvariantCulture), TimeSpan.FromHours(row.Number("utc_offset_h")));
            Check(Rises, row.Text("site") + " " + row.Text("date"), row.Text("sunrise_lst"), row.Text("transit_lst"), row.Text("sunset_lst"), day, 1.5);
            Published.Check(Rises, "length of the day, h", row.Number("day_length_h"), day.DayLength.TotalHours, 4e-4, "printed to 0.0001 h, and to the second at both ends");
        }
    }

    // The tables give minutes; those in brackets of the library's tests are to the second.
    [Theory]
    [InlineData(39.0, -105.0, -7, "2015-01-02", "07:19", "16:49")]
    [InlineData(39.0, -105.0, -7, "2015-04-02", "05:43", "18:24")]
    [InlineData(39.0, -105.0, -7, "2015-08-02", "05:01", "19:10")]
    [InlineData(39.0, -105.0, -7, "2015-12-02", "07:01", "16:38")]
    [InlineData(39.917, 116.383, 8, "2015-01-02", "07:36", "17:00")]
    [InlineData(39.917, 116.383, 8, "2015-04-02", "05:58", "18:39")]
    [InlineData(39.917, 116.383, 8, "2015-08-02", "05:13", "19:28")]
    [InlineData(39.917, 116.383, 8, "2015-12-02", "07:17", "16:50")]
    public void Sunrise_and_sunset_of_the_naval_observatory_are_met(double north, double east, int offset, string date, string rise, string set)
    {
        SunDay day = SunAlmanac.Day(At(north, east, 0), DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture), TimeSpan.FromHours(offset));
        Check(Naval, date, rise, null, set, day, 31);
    }

    [Theory]
    [InlineData(-35, "1996-07-05", "07:08:15", "12:04:36", "17:01:04")]
    [InlineData(-35, "2004-12-04", "04:38:57", "11:50:22", "19:02:02")]
    [InlineData(35, "1994-01-02", "07:08:12", null, "16:59:55")]
    public void Rise_and_set_south_and_north_of_the_equator_are_met(double north, string date, string rise, string? noon, string set) =>
        Check(Report, date, rise, noon, set, SunAlmanac.Day(At(north, 0, 0), DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture), TimeSpan.Zero), 2.5);

    [Fact]
    public void Days_shorter_than_ten_hours_begin_and_end_as_in_the_table()
    {
        var sites = CsvRows.Of(Table("sun_rise_set_spa.csv")).GroupBy(row => row.Text("site")).ToDictionary(site => site.Key, site => site.First());
        int seen = 0;
        foreach (CsvRows row in CsvRows.Of(Table("ten_hour_period_2025_26.csv")).Where(row => sites.ContainsKey(row.Text("site"))))
        {
            Place place = PlaceOf(sites[row.Text("site")], 0);
            var offset = TimeSpan.FromHours(sites[row.Text("site")].Number("utc_offset_h"));
            DateOnly first = Day("first_day_under_10h"), last = Day("last_day_under_10h");
            Published.Check(TenHours, row.Text("site") + " first", 1, Hours(first) < 10 && Hours(first.AddDays(-1)) >= 10 ? 1 : 0, 0, "a date");
            Published.Check(TenHours, row.Text("site") + " last", 1, Hours(last) < 10 && Hours(last.AddDays(1)) >= 10 ? 1 : 0, 0, "a date");
            Published.Check(TenHours, row.Text("site") + " shortest day, h", row.Number("shortest_day_h"), Hours(Day("shortest_date")), 4e-4, "printed to 0.0001 h, and to the second at both ends");
            seen++;

            DateOnly Day(string column) => DateOnly.ParseExact(row.Text(column), "yyyy-MM-dd", CultureInfo.InvariantCulture);
            double Hours(DateOnly day) => SunAlmanac.Day(place, day, offset).DayLength.TotalHours;
        }
        Assert.Equal(5, seen);
    }

    [Fact]
    public void The_polar_day_has_no_night_and_the_polar_night_no_day()
    {
        Assert.Equal(TimeSpan.FromDays(1), SunAlmanac.Day(At(75, 20, 0), new DateOnly(2026, 6, 21), TimeSpan.FromHours(1)).DayLength);
        SunDay night = SunAlmanac.Day(At(75, 20, 0), new DateOnly(2026, 12, 21), TimeSpan.FromHours(1));
        Assert.Equal(TimeSpan.Zero, night.DayLength);
        Assert.Null(night.Rise);
    }

    [Fact]
    public void The_day_curve_is_the_full_algorithm_to_a_hundred_thousandth_of_a_degree()
    {
        Place place = At(46.83, -92.22, 433);
        for (int day = 0; day < 365; day += 13)
        {
            var date = new DateOnly(2026, 1, 1).AddDays(day);
            var track = new SunTrack(place, date, TimeSpan.FromHours(-6));
            for (int hour = 0; hour <= 24; hour += 3)
            {
                double julian = SunAlmanac.JulianDay(new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.FromHours(-6)).AddHours(hour));
                TopocentricSun full = SunAlmanac.Topocentric(place, julian, GeocentricSun.At(julian, SunAlmanac.DeltaTSeconds)), quick = track.At((hour - 12) / 24.0);
                Assert.Equal(full.ElevationDeg, quick.ElevationDeg, 1e-5);
                Assert.Equal(full.HourAngleDeg, quick.HourAngleDeg, 1e-5);
            }
        }
    }

    [Fact]
    public void Noon_at_the_equator_leaves_the_declination_to_the_zenith()
    {
        DateTimeOffset noon = SunAlmanac.Day(At(0, 0, 0), new DateOnly(2026, 6, 21), TimeSpan.Zero).Noon;
        double declination = GeocentricSun.At(SunAlmanac.JulianDay(noon), DeltaT).DeclinationDeg;
        Assert.Equal(90 - declination, SunAlmanac.At(At(0, 0, 0), noon).TrueElevation.Degrees, 0.001);
    }

    private static void Check(string source, string what, string rise, string? noon, string set, SunDay day, double seconds)
    {
        const string Why = "rounded there";
        Published.Check(source, what + " rise, s", Seconds(rise), day.Rise!.Value.TimeOfDay.TotalSeconds, seconds, Why);
        Published.Check(source, what + " set, s", Seconds(set), day.Set!.Value.TimeOfDay.TotalSeconds, seconds, Why);
        if (noon is not null) Published.Check(source, what + " noon, s", Seconds(noon), day.Noon.TimeOfDay.TotalSeconds, seconds, Why);

        static double Seconds(string clock) => TimeSpan.Parse(clock, CultureInfo.InvariantCulture).TotalSeconds;
    }

    private static Place PlaceOf(CsvRows row, double elevationM) => At(row.Number("lat_deg"), row.Number("lon_deg"), elevationM);

    private static Place At(double north, double east, double elevationM) => new(Angle.FromDegrees(north), Angle.FromDegrees(east), Length.FromMetres(elevationM));

    private static string Table(string name) => Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Tests", "Sun", "Data", name);
}
