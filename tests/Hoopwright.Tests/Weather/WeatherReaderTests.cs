using System.Globalization;
using System.Text;
using CsCheck;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Weather;

/// <summary>Weather files as they come: whole, broken, in the wrong order, by the wrong clock, or something else altogether.</summary>
public sealed class WeatherReaderTests
{
    private static readonly List<string> Year = InventedWeather.Rows();

    [Fact]
    public void South_of_the_equator_the_last_frost_of_spring_comes_in_the_second_half_of_the_year()
    {
        Assert.Equal((new DateOnly(2026, 6, 9), new DateOnly(2026, 7, 2)), Frost(InventedWeather.Valley, InventedWeather.Header));
        Place south = InventedWeather.Valley with { Latitude = -InventedWeather.Valley.Latitude };
        string[] header = [.. InventedWeather.Header.Select(line => line.Replace("42.50", "-42.50", StringComparison.Ordinal))];
        Assert.Equal((new DateOnly(2026, 8, 30), new DateOnly(2026, 5, 20)), Frost(south, header));

        static (DateOnly?, DateOnly?) Frost(Place place, string[] header)
        {
            IEnumerable<string> rows = InventedWeather.Rows(place: place).Select(row => row.Split(',')).Select(cells =>
            {
                cells[6] = (cells[1], cells[2]) is ("8", "30") or ("7", "2") or ("5", "20") or ("6", "9") ? "-2.0" : "12.0";
                return string.Join(',', cells);
            });
            return new Climate(WeatherReader.Read(InventedWeather.Epw(rows, header)).Record!).Frost();
        }
    }

    [Fact]
    public void A_whole_file_is_read_with_every_header_and_value()
    {
        WeatherReading reading = WeatherReader.Read(InventedWeather.Epw());
        Assert.Empty(reading.Repairs);
        WeatherRecord record = reading.Record!;
        Assert.Equal(8760, record.Count);
        Assert.Equal("Alder Bend, NY, USA", record.Name);
        EpwHeader header = record.Epw!;
        Assert.Equal("999999", header.Station);
        Assert.Equal("invented, with a comma", header.Comments1);
        Assert.Equal(12, Assert.Single(header.GroundTemperatures).Months[11].Celsius, 9);
        Assert.Equal("7/ 1", Assert.Single(header.TypicalPeriods).From);
        Assert.Equal("Sunday", Assert.Single(header.DataPeriods).Kind);
        // The row stamped 24 is the last hour of its day; the sun of the row stamped 13 is that of half past twelve.
        Assert.Equal(new DateTime(2026, 1, 1, 23, 0, 0), record[23].Start.DateTime);
        Assert.Equal(new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.FromHours(-5)), record[0].Start);
        Assert.Null(record.Column(WeatherElement.Ceiling));
        Assert.Equal(20_000, record.Column(WeatherElement.Visibility)![0]);
        Assert.Equal(0.001, record.Column(WeatherElement.Precipitation)![14 * 24]);
        Assert.Equal(0.6, record[5].Humidity!.Value.Value, 12);
        Assert.Null(record[5].Gust);
    }

    [Fact]
    public void A_leap_year_has_its_29_February()
    {
        WeatherReading reading = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows(2028)));
        Assert.Empty(reading.Repairs);
        Assert.Equal(8784, reading.Record!.Count);
        // And a year that is none has not.
        WeatherReading wrong = Read([.. Year.Take(1416), "2026,2,29,1,0,flags,5,5,60,98000,0,1367,300,0,0,0,0,0,0,0,180,3.0,5,5", .. Year.Skip(1416)]);
        Assert.Equal([1425], Single(wrong, WeatherRepairKind.BadRow).Lines);
    }

    [Fact]
    public void Missing_codes_are_not_known_and_short_gaps_are_filled_with_caution()
    {
        List<string> rows = [.. Year];
        rows[100] = Cell(rows[100], 6, "99.9");
        rows[101] = Cell(Cell(rows[101], 6, "99.9"), 21, "999");
        rows[99] = Cell(rows[99], 21, "4.0");
        WeatherReading reading = Read(rows);
        Assert.Equal([109, 110], Single(reading, WeatherRepairKind.Filled, WeatherElement.AirTemperature).Lines);
        double[] air = reading.Record!.Column(WeatherElement.AirTemperature)!, wind = reading.Record.Column(WeatherElement.Wind)!;
        Assert.Equal((air[99] + air[102]) / 2, (air[100] + air[101]) / 2, 1e-9);
        Assert.Equal(Math.Max(wind[100], wind[102]), wind[101]);
    }

    [Fact]
    public void A_gap_of_a_day_stays_a_gap()
    {
        WeatherReading reading = Read([.. Year.Take(1000), .. Year.Skip(1024)]);
        WeatherRepair gap = Single(reading, WeatherRepairKind.MissingHour);
        Assert.Equal(24, gap.Count);
        Assert.Equal([1009], gap.Lines);
        Assert.Equal(8736, reading.Record!.Count);
    }

    [Fact]
    public void A_missing_hour_is_put_in_and_a_double_one_taken_out()
    {
        WeatherReading missing = Read([.. Year.Take(1000), .. Year.Skip(1001)]);
        Assert.Equal(1, Single(missing, WeatherRepairKind.MissingHour).Count);
        Assert.Equal(8760, missing.Record!.Count);
        WeatherReading twice = Read([.. Year.Take(1000), Year[999], .. Year.Skip(1000)]);
        Assert.Equal([1009], Single(twice, WeatherRepairKind.Twice).Lines);
        Assert.Equal(8760, twice.Record!.Count);
    }

    [Fact]
    public void Shuffled_rows_are_sorted_and_give_the_same_weather()
    {
        List<string> shuffled = [.. Year.Select((row, index) => (row, key: (index * 7919L) % 8761)).OrderBy(each => each.key).Select(each => each.row)];
        WeatherReading reading = Read(shuffled);
        Assert.True(Single(reading, WeatherRepairKind.Order).Count > 1000);
        Assert.Equal(WeatherReader.Read(InventedWeather.Epw()).Record!.Column(WeatherElement.AirTemperature), reading.Record!.Column(WeatherElement.AirTemperature));
    }

    [Theory]
    [InlineData("468.659")]
    [InlineData("-5")]
    public void Nonsense_is_taken_out_with_its_line(string wind)
    {
        List<string> rows = [.. Year];
        rows[500] = Cell(rows[500], 21, wind);
        WeatherRepair repair = Single(Read(rows), WeatherRepairKind.Nonsense, WeatherElement.Wind);
        Assert.Equal([509], repair.Lines);
        Assert.Equal(wind + " m/s", repair.Seen);
    }

    [Fact]
    public void A_jump_that_goes_back_in_an_hour_is_nonsense()
    {
        List<string> rows = [.. Year];
        rows[500] = Cell(rows[500], 6, "45.0");
        Assert.Equal([509], Single(Read(rows), WeatherRepairKind.Nonsense, WeatherElement.AirTemperature).Lines);
    }

    [Fact]
    public void A_word_where_a_number_belongs_is_told_with_its_line()
    {
        List<string> rows = [.. Year];
        rows[10] = Cell(rows[10], 6, "warm");
        WeatherRepair repair = Single(Read(rows), WeatherRepairKind.Unreadable, WeatherElement.AirTemperature);
        Assert.Equal([19], repair.Lines);
        Assert.Equal("warm", repair.Seen);
    }

    [Fact]
    public void A_file_that_breaks_off_keeps_its_whole_rows()
    {
        byte[] whole = InventedWeather.Epw();
        WeatherReading reading = WeatherReader.Read(whole.AsMemory(0, whole.Length / 2));
        Single(reading, WeatherRepairKind.BrokenEnd);
        Assert.InRange(reading.Record!.Count, 4000, 4700);
    }

    [Fact]
    public void Clocks_put_forward_and_back_are_put_back_to_standard_time()
    {
        // 8 March 02:00 to 1 November 02:00 by the clock: one hour missing, one twice, rows between stamped an hour late.
        int from = ((DateTime.Parse("2026-03-08", CultureInfo.InvariantCulture).DayOfYear - 1) * 24) + 2, to = ((DateTime.Parse("2026-11-01", CultureInfo.InvariantCulture).DayOfYear - 1) * 24) + 1;
        List<string> rows = [.. Year];
        for (int row = from; row < to; row++)
        {
            string[] late = Year[row + 1].Split(',')[..6];
            rows[row] = string.Join(',', [.. late, .. Year[row].Split(',')[6..]]);
        }
        WeatherReading reading = Read(rows);
        WeatherRepair repair = Single(reading, WeatherRepairKind.SummerTime);
        Assert.Equal(to - from, repair.Count);
        Assert.Equal(WeatherReader.Read(InventedWeather.Epw()).Record!.Column(WeatherElement.GlobalRadiation), reading.Record!.Column(WeatherElement.GlobalRadiation));
        Assert.DoesNotContain(reading.Repairs, each => each.Kind is WeatherRepairKind.Twice or WeatherRepairKind.MissingHour);
    }

    [Fact]
    public void Summer_rows_an_hour_late_with_no_trace_at_the_ends_are_refused_by_their_light()
    {
        List<string> rows = [.. Year];
        for (int row = 2160; row < 6500; row++) rows[row] = string.Join(',', [.. Year[row].Split(',')[..6], .. Year[row - 1].Split(',')[6..]]);
        Assert.Contains("months", Refused(Read(rows), "weather.clock").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_wrong_hemisphere_time_zone_and_place_are_refused()
    {
        Refused(ReadHeader("42.50,-76.50,-5.0", "-42.50,-76.50,-5.0"), "weather.sun-at-night");
        Refused(ReadHeader("42.50,-76.50,-5.0", "42.50,76.50,-5.0"), "weather.place");
        Refused(ReadHeader("42.50,-76.50,-5.0", "42.50,-76.50,-8.0"), "weather.clock");
        Refused(ReadHeader("42.50,-76.50,-5.0", "142.50,-76.50,-5.0"), "weather.place");
        Refused(ReadHeader("42.50,-76.50,-5.0", "north,-76.50,-5.0"), "weather.place");
        Refused(ReadHeader("DATA PERIODS,1,1", "DATA PERIODS,1,4"), "weather.not-hourly");
    }

    [Theory]
    [InlineData(-45)]
    [InlineData(0)]
    [InlineData(71)]
    public void The_light_of_far_south_of_the_equator_and_of_the_polar_night_is_believed(double north)
    {
        var place = new Place(Angle.FromDegrees(north), Angle.FromDegrees(-76.5), Length.FromMetres(250));
        string latitude = north.ToString("0.00", CultureInfo.InvariantCulture);
        WeatherReading reading = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows(place: place), InventedWeather.Header.Select(line => line.Replace("42.50,", latitude + ",", StringComparison.Ordinal))));
        Assert.Empty(reading.Repairs);
        Assert.Equal(north, reading.Record!.Place!.Latitude.Degrees, 9);
    }

    [Fact]
    public void A_file_without_the_last_cells_and_without_an_end_of_line_is_whole()
    {
        byte[] file = InventedWeather.Epw(Year.Take(48).Select(row => string.Join(',', row.Split(',')[..32])));
        WeatherReading reading = WeatherReader.Read(file.AsMemory(0, file.Length - 1));
        Assert.Empty(reading.Repairs);
        Assert.Equal(48, reading.Record!.Count);
    }

    [Fact]
    public void Files_of_nothing_and_of_other_things_are_refused()
    {
        Refused(WeatherReader.Read(ReadOnlyMemory<byte>.Empty), "weather.empty");
        Refused(WeatherReader.Read(" \r\n\r\n"u8.ToArray()), "weather.empty");
        Refused(WeatherReader.Read(Encoding.Unicode.GetBytes("LOCATION,x")), "weather.not-text");
        Refused(WeatherReader.Read(new byte[] { 0x1f, 0x8b, 8, 0, 0, 0, 0 }), "weather.not-text");
        Refused(WeatherReader.Read("a letter to the editor\nabout rain\n"u8.ToArray()), "weather.unknown-form");
        Refused(WeatherReader.Read(Encoding.UTF8.GetBytes("LOCATION,Alder Bend" + new string('x', 70_000))), "weather.line-too-long");
        Refused(WeatherReader.Read(InventedWeather.Epw([])), "weather.no-rows");
        Refused(Read([.. Year.Take(800).Select((row, index) => index % 5 == 0 ? "1,2,3" : row)]), "weather.too-many-bad-rows");
    }

    [Fact]
    public void Letters_that_are_not_utf_8_are_read_as_latin_1()
    {
        byte[] file = Encoding.Latin1.GetBytes(Encoding.UTF8.GetString(InventedWeather.Epw()).Replace("Alder Bend", "Vallée", StringComparison.Ordinal));
        WeatherReading reading = WeatherReader.Read(file);
        Assert.Equal([1], Single(reading, WeatherRepairKind.Letters).Lines);
        Assert.StartsWith("Vallée", reading.Record!.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_a_gigabyte_is_read_in_little_memory()
    {
        // A line that never ends is refused after one buffer, rows without end stop at a century, a forecast at 32 MB.
        using var line = new Endless("LOCATION,x"u8.ToArray(), "yyyyyyyyyyyyyyy,"u8.ToArray(), 1L << 30);
        Refused(WeatherReader.Read(line), "weather.line-too-long");
        Assert.True(line.Taken < 1 << 20);
        using var table = new Endless("time,temperature [°C],wind [m/s]\n"u8.ToArray(), "nonsense,1,2\n"u8.ToArray(), 1L << 26);
        Refused(WeatherReader.Read(table), "weather.no-rows");
        using var rows = new Endless("time,temperature [°C],wind [m/s]\n"u8.ToArray(), "2026-01-01T00:00,1,2\n"u8.ToArray(), 1L << 30);
        Refused(WeatherReader.Read(rows), "weather.too-large");
        using var json = new Endless("{"u8.ToArray(), "          "u8.ToArray(), 1L << 30);
        Refused(WeatherReader.Read(json), "weather.too-large");
    }

    [Fact]
    public void Whatever_the_bytes_nothing_is_thrown() =>
        Gen.Select(Gen.Int[0, 60_000], Gen.Byte, Gen.Int[0, 3]).List[1, 12].Sample(changes =>
        {
            byte[] file = [.. InventedWeather.Epw(Year.Take(400))];
            foreach ((int at, byte value, int kind) in changes)
            {
                int index = at % file.Length;
                file = kind switch
                {
                    0 => [.. file[..index], .. file[(index + 1)..]],
                    1 => [.. file[..index], value, .. file[index..]],
                    2 => file[..Math.Max(1, index)],
                    _ => [.. file[..index], value, .. file[(index + 1)..]],
                };
            }
            WeatherReading reading = WeatherReader.Read(file);
            Assert.True(reading.Record is not null || reading.Diagnostics.Any(each => each.Severity == Severity.Error));
        }, iter: 150);

    private static WeatherReading Read(IEnumerable<string> rows) => WeatherReader.Read(InventedWeather.Epw(rows));

    private static WeatherReading ReadHeader(string was, string now) => WeatherReader.Read(InventedWeather.Epw(header: InventedWeather.Header.Select(line => line.Replace(was, now, StringComparison.Ordinal))));

    private static WeatherRepair Single(WeatherReading reading, WeatherRepairKind kind, WeatherElement? element = null)
    {
        Assert.NotNull(reading.Record);
        return Assert.Single(reading.Repairs, each => each.Kind == kind && (element is null || each.Element == element));
    }

    private static Diagnostic Refused(WeatherReading reading, string code)
    {
        Assert.Null(reading.Record);
        return Assert.Single(reading.Diagnostics, each => each.Code == code);
    }

    private static string Cell(string row, int index, string value)
    {
        string[] cells = row.Split(',');
        cells[index] = value;
        return string.Join(',', cells);
    }

    /// <summary>A head, and then the same bytes over and over.</summary>
    private sealed class Endless(byte[] head, byte[] body, long length) : Stream
    {
        internal long Taken { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => length;

        public override long Position { get => Taken; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            int step = (int)Math.Min(count, length - Taken);
            for (int at = 0; at < step; at++, Taken++) buffer[offset + at] = Taken < head.Length ? head[Taken] : body[(Taken - head.Length) % body.Length];
            return step;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
