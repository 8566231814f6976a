using System.Buffers.Text;
using System.Globalization;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>Reads EnergyPlus weather files: rows are hours that end at their stamp, in local standard time.</summary>
internal sealed class EpwReader(LineReader lines, WeatherProblems problems)
{
    // Up to the wind: what comes after it is left out by some programs.
    private const int ShortestRow = 22;

    // A longitude of 15° is an hour; clocks differ from that by up to three hours and a half on land, from memory.
    private const double MostClockHours = 3.6;

    private readonly RawWeather _raw = new();
    private readonly List<(int Start, int Length)> _cells = new(64);
    private EpwHeader _header = new();
    private Place? _place;
    private TimeSpan _offset;
    private bool _latin, _located;

    // Cells of the row before: some programs leave out the last ones, and do so in every row.
    private int _usualCells;

    internal WeatherRecord? Read()
    {
        bool inHeader = true, dataPeriods = false;
        while (lines.Next())
        {
            ReadOnlySpan<byte> line = lines.Line;
            if (line.Trim(" \t,"u8).IsEmpty) continue;
            if (inHeader && !(line[0] is >= (byte)'0' and <= (byte)'9'))
            {
                dataPeriods |= Header(line);
                continue;
            }
            inHeader = false;
            if (_raw.Count == RawWeather.MostRows)
            {
                problems.Error("weather.too-large", WeatherProblems.Line(lines.Number), "The file has more hours than a century.", null, "up to 100 years");
                return null;
            }
            Row(line);
        }
        if (!dataPeriods) problems.Warn("weather.epw.header", "file", "The header has no line DATA PERIODS; one row an hour is taken.", null, "the eight header lines of the format");
        if (!_located) problems.Error("weather.place", "line 1", "The header does not say where the place is.", null, "LOCATION, city, region, country, source, station, latitude, longitude, time zone, elevation");
        SpreadRain();
        return problems.HasErrors ? null : new Mending(_raw, problems).Make(hours => new WeatherRecord(hours.Hours, hours.Columns)
        {
            Form = WeatherForm.Epw,
            Name = string.Join(", ", new[] { _header.City, _header.Region, _header.Country }.Where(word => word.Length > 0)),
            Place = _place,
            UtcOffset = _offset,
            Stamp = WeatherStamp.HourEnding,
            WindHeight = Length.FromMetres(10),
            IsTypicalYear = hours.IsTypicalYear,
            Epw = _header,
        }, _place, _offset, rowsLast: true);
    }

    /// <summary>Reads a header line; true when it is the last one.</summary>
    private bool Header(ReadOnlySpan<byte> line)
    {
        string text = LineReader.Text(line, out bool latin);
        if (latin && !_latin) problems.Repaired(WeatherRepairKind.Letters, lines.Number);
        _latin |= latin;
        string[] cells = text.Split(',', StringSplitOptions.TrimEntries);
        string At(int index) => index < cells.Length ? cells[index] : "";
        switch (cells[0].ToUpperInvariant())
        {
            case "LOCATION":
                Location(cells);
                break;
            case "DESIGN CONDITIONS":
                _header = _header with { DesignConditions = [.. cells[1..]] };
                break;
            case "TYPICAL/EXTREME PERIODS":
                _header = _header with { TypicalPeriods = [.. Groups(cells, 2, 4).Select(at => new EpwPeriod(At(at), At(at + 1), At(at + 2), At(at + 3)))] };
                break;
            case "GROUND TEMPERATURES":
                _header = _header with { GroundTemperatures = [.. Groups(cells, 2, 16).Select(at => Ground(cells, at)).OfType<EpwGround>()] };
                break;
            case "HOLIDAYS/DAYLIGHT SAVINGS":
                _header = _header with
                {
                    LeapYear = At(1).Equals("Yes", StringComparison.OrdinalIgnoreCase),
                    SummerTimeFrom = At(2),
                    SummerTimeTo = At(3),
                    Holidays = [.. Groups(cells, 5, 2).Select(at => new EpwPeriod(At(at), "Holiday", At(at + 1), At(at + 1)))],
                };
                break;
            case "COMMENTS 1":
                _header = _header with { Comments1 = After(text) };
                break;
            case "COMMENTS 2":
                _header = _header with { Comments2 = After(text) };
                break;
            case "DATA PERIODS":
                DataPeriods(cells);
                return true;
            default:
                problems.Warn("weather.epw.header", WeatherProblems.Line(lines.Number), "The line is none of the header lines of the format; it is left out.", cells[0], "LOCATION, DESIGN CONDITIONS, …, DATA PERIODS");
                break;
        }
        return false;

        static string After(string text) => text.IndexOf(',', StringComparison.Ordinal) is >= 0 and var comma ? text[(comma + 1)..].Trim() : "";
    }

    /// <summary>Where whole groups of cells begin.</summary>
    private static IEnumerable<int> Groups(string[] cells, int from, int size)
    {
        for (int at = from; at + size <= cells.Length; at += size) yield return at;
    }

    private EpwGround? Ground(string[] cells, int at)
    {
        double?[] numbers = [.. cells[at..(at + 16)].Select(Number)];
        if (numbers[0] is { } depthM && numbers[4..].All(month => month is not null))
            return new EpwGround(Length.FromMetres(depthM), [.. numbers[4..].Select(month => Temperature.FromCelsius(month!.Value))]);
        problems.Warn("weather.epw.header", WeatherProblems.Line(lines.Number), "The temperatures of the ground cannot be read; they are left out.", cells[at], "a depth, three values of the soil, twelve months");
        return null;
    }

    private void Location(string[] cells)
    {
        string path = WeatherProblems.Line(lines.Number);
        _located = true;
        if (cells.Length < 10 || Number(cells[6]) is not { } north || Number(cells[7]) is not { } east || Number(cells[8]) is not { } zone || Number(cells[9]) is not { } heightM)
        {
            problems.Error("weather.place", path, "The place cannot be read.", string.Join(",", cells), "LOCATION, city, region, country, source, station, latitude, longitude, time zone, elevation");
            return;
        }
        _header = _header with { City = cells[1], Region = cells[2], Country = cells[3], Source = cells[4], Station = cells[5] };
        _place = PlaceCheck.Of(north, east, heightM, path, problems);
        if (zone is < -12 or > 14)
        {
            problems.Error("weather.place", path, "There is no such time zone.", cells[8], "-12 to 14 hours from universal time, west negative");
            return;
        }
        _offset = TimeSpan.FromMinutes(Math.Round(zone * 60));
        double apart = Math.Abs((east / 15) - zone);
        if (Math.Min(apart, 24 - apart) > MostClockHours)
            problems.Error("weather.place", path, "Longitude and time zone are on different sides of the world: one of them has the wrong sign.", $"{cells[7]}, {cells[8]}", "west negative for both");
    }

    private void DataPeriods(string[] cells)
    {
        if (Number(cells.Length > 2 ? cells[2] : "") is { } rows and not 1)
            problems.Error("weather.not-hourly", WeatherProblems.Line(lines.Number), "The file does not have one row an hour.", rows.ToString(CultureInfo.InvariantCulture) + " rows an hour", "one row an hour");
        _header = _header with
        {
            RowsAnHour = (int)Math.Clamp(Number(cells.Length > 2 ? cells[2] : "") ?? 1, 0, 1000),
            DataPeriods = [.. Groups(cells, 3, 4).Select(at => new EpwPeriod(cells[at], cells[at + 1], cells[at + 2], cells[at + 3]))],
        };
    }

    private void Row(ReadOnlySpan<byte> line)
    {
        Split(line);
        int count = _cells.Count;
        if (lines.Unfinished && count < _usualCells)
        {
            problems.Repaired(WeatherRepairKind.BrokenEnd, lines.Number, seen: Shown(line));
            return;
        }
        if (count < ShortestRow || !Whole(line, 0, out int year) || !Whole(line, 1, out int month) || !Whole(line, 2, out int day) || !Whole(line, 3, out int hour)
            || year is < 1800 or > 2200 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month) || hour is < 1 or > 24)
        {
            problems.Repaired(WeatherRepairKind.BadRow, lines.Number, seen: Shown(line));
            return;
        }
        _usualCells = count;
        _raw.Add(RawWeather.HourOf(new DateTime(year, month, day)) + hour - 1, lines.Number);
        foreach (EpwField field in EpwField.All)
        {
            if (field.Cell >= count) break;
            ReadOnlySpan<byte> cell = Cell(line, field.Cell);
            if (cell.IsEmpty) continue;
            if (!Utf8Parser.TryParse(cell, out double value, out int used) || used != cell.Length || !double.IsFinite(value))
                problems.Repaired(WeatherRepairKind.Unreadable, lines.Number, field.Element, Shown(cell));
            else if (value < field.Missing)
                _raw.Set(field.Element, value * field.ToKept);
        }
    }

    /// <summary>Where rain was gathered over several hours, it is spread over them.</summary>
    private void SpreadRain()
    {
        if (_raw.Column(WeatherElement.PrecipitationHours) is not { } hours || _raw.Column(WeatherElement.Precipitation) is not { } rain) return;
        for (int row = 0; row < hours.Length; row++)
        {
            if (!(hours[row] > 1 && rain[row] > 0)) continue;
            int span = Math.Min((int)hours[row], row + 1);
            double each = rain[row] / span;
            for (int back = 0; back < span; back++) rain[row - back] = back == 0 || double.IsNaN(rain[row - back]) ? each : rain[row - back] + each;
        }
        _raw.Replace(WeatherElement.Precipitation, rain);
    }

    private void Split(ReadOnlySpan<byte> line)
    {
        _cells.Clear();
        int from = 0;
        while (true)
        {
            int comma = line[from..].IndexOf((byte)',');
            int length = comma < 0 ? line.Length - from : comma, start = from;
            while (length > 0 && line[start] == (byte)' ') (start, length) = (start + 1, length - 1);
            while (length > 0 && line[start + length - 1] == (byte)' ') length--;
            _cells.Add((start, length));
            if (comma < 0) return;
            from += comma + 1;
        }
    }

    private ReadOnlySpan<byte> Cell(ReadOnlySpan<byte> line, int index) => line.Slice(_cells[index].Start, _cells[index].Length);

    private bool Whole(ReadOnlySpan<byte> line, int index, out int value)
    {
        ReadOnlySpan<byte> cell = Cell(line, index);
        return Utf8Parser.TryParse(cell, out value, out int used) && used == cell.Length;
    }

    private static string Shown(ReadOnlySpan<byte> bytes) => LineReader.Text(bytes[..Math.Min(bytes.Length, 100)], out _);

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;
}
