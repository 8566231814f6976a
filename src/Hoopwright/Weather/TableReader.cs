using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>Reads plain tables: notes that begin with #, one line of headings with units in brackets, one row an hour.</summary>
internal sealed class TableReader(LineReader lines, TimeSpan? clock, WeatherProblems problems)
{
    private static readonly ImmutableArray<(string Name, WeatherElement Element)> Names =
    [
        ("temperature", WeatherElement.AirTemperature), ("dew point", WeatherElement.DewPoint), ("humidity", WeatherElement.Humidity), ("pressure", WeatherElement.Pressure),
        ("wind", WeatherElement.Wind), ("gust", WeatherElement.Gust), ("wind direction", WeatherElement.WindDirection), ("precipitation", WeatherElement.Precipitation),
        ("chance of precipitation", WeatherElement.PrecipitationChance), ("sky cover", WeatherElement.SkyCover), ("snow depth", WeatherElement.SnowDepth),
        ("global radiation", WeatherElement.GlobalRadiation), ("beam radiation", WeatherElement.BeamRadiation), ("diffuse radiation", WeatherElement.DiffuseRadiation),
        ("sky infrared", WeatherElement.SkyInfrared),
    ];

    private static readonly ImmutableArray<string> Notes = ["name", "latitude", "longitude", "elevation", "utc offset", "wind height", "time"];

    private static readonly ImmutableArray<string> Unknown = ["", "NA", "N/A", "NaN", "null", "-", "M"];

    private readonly RawWeather _raw = new();
    private readonly List<Column?> _columns = [];
    private readonly Dictionary<string, (string Text, int Line)> _notes = new(StringComparer.OrdinalIgnoreCase);
    private int _time = -1;
    private TimeSpan? _offset = clock;
    private bool _offsetsInRows, _latin;

    internal WeatherRecord? Read()
    {
        while (lines.Next())
        {
            string line = LineReader.Text(lines.Line, out bool latin).Trim();
            if (latin && !_latin) problems.Repaired(WeatherRepairKind.Letters, lines.Number);
            _latin |= latin;
            if (line.Trim(',').Length == 0) continue;
            if (line[0] == '#') Note(line);
            else if (_columns.Count == 0)
            {
                if (!Headings(line)) return null;
            }
            else if (_raw.Count == RawWeather.MostRows)
            {
                problems.Error("weather.too-large", WeatherProblems.Line(lines.Number), "The file has more hours than a century.", null, "up to 100 years");
                return null;
            }
            else
            {
                Row(line);
            }
        }
        return Finish();
    }

    private WeatherRecord? Finish()
    {
        if (_columns.Count == 0)
        {
            problems.Error("weather.unknown-form", "file", "The file is neither an EnergyPlus weather file, nor a forecast, nor a table.", null, "a line of headings such as: time,temperature [°F],wind [mph],gust [mph]");
            return null;
        }
        Place? place = PlaceOfNotes();
        WeatherStamp stamp = StampOfNotes();
        Length height = _notes.TryGetValue("wind height", out var written) ? Read(written, QuantityText.ReadLength(written.Text)) : Length.FromMetres(10);
        if (problems.HasErrors) return null;
        if (_offset is null && place is not null)
        {
            _offset = TimeSpan.FromHours(Math.Round(place.Longitude.Degrees / 15));
            problems.Assume("weather.clock-by-longitude", "file", "The table does not say by which clock its times are, so the standard time of its longitude is taken.", OffsetText(_offset.Value));
        }
        TimeSpan offset = _offset ?? TimeSpan.Zero;
        return new Mending(_raw, problems).Make(mended => new WeatherRecord(mended.Hours, mended.Columns)
        {
            Form = WeatherForm.Table,
            Name = _notes.TryGetValue("name", out var name) ? name.Text : "",
            Place = place,
            UtcOffset = offset,
            Stamp = stamp,
            WindHeight = height,
            IsTypicalYear = mended.IsTypicalYear,
        }, place, offset, stamp != WeatherStamp.Reading);
    }

    internal static string OffsetText(TimeSpan offset) => string.Create(CultureInfo.InvariantCulture, $"UTC{(offset < TimeSpan.Zero ? "-" : "+")}{Math.Abs(offset.Hours):00}:{Math.Abs(offset.Minutes):00}");

    private void Note(string line)
    {
        string text = line.TrimStart('#', ' ');
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        // A line without a known name is a remark.
        if (colon < 0 || !Notes.Contains(text[..colon].Trim(), StringComparer.OrdinalIgnoreCase)) return;
        _notes[text[..colon].Trim()] = (text[(colon + 1)..].Trim(' ', ',', '"'), lines.Number);
        if (!text.StartsWith("utc offset", StringComparison.OrdinalIgnoreCase)) return;
        (string offset, int number) = _notes["utc offset"];
        if (ReadOffset(offset) is { } read) _offset = read;
        else problems.Error("weather.note", WeatherProblems.Line(number), "The offset from universal time cannot be read.", offset, "-5 or -05:00, west negative");
    }

    private static TimeSpan? ReadOffset(string text)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double hours) && hours is >= -12 and <= 14) return TimeSpan.FromMinutes(Math.Round(hours * 60));
        return TimeSpan.TryParseExact(text.TrimStart('+', '-'), @"hh\:mm", CultureInfo.InvariantCulture, out TimeSpan span) && span.TotalHours <= 14 ? (text.StartsWith('-') ? -span : span) : null;
    }

    private T Read<T>((string Text, int Line) note, Reading<T> reading)
        where T : struct
    {
        if (reading.IsRead) return reading.Value;
        problems.Error("weather.note", WeatherProblems.Line(note.Line), reading.Problem!, note.Text, reading.Accepted);
        return default;
    }

    private Place? PlaceOfNotes()
    {
        bool north = _notes.TryGetValue("latitude", out var latitude), east = _notes.TryGetValue("longitude", out var longitude);
        if (!north && !east) return null;
        if (!north || !east || !Degrees(latitude.Text, out double northDeg) || !Degrees(longitude.Text, out double eastDeg))
        {
            problems.Error("weather.place", WeatherProblems.Line(Math.Max(latitude.Line, longitude.Line)), "The place cannot be read.", $"{latitude.Text}, {longitude.Text}", "# latitude: 42.9 and # longitude: -78.7, degrees, west negative");
            return null;
        }
        Length height = _notes.TryGetValue("elevation", out var elevation) ? Read(elevation, QuantityText.ReadLength(elevation.Text)) : Length.Zero;
        return PlaceCheck.Of(northDeg, eastDeg, height.Metres, WeatherProblems.Line(latitude.Line), problems);

        static bool Degrees(string? text, out double value) => double.TryParse(text?.TrimEnd('°', ' '), NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    private WeatherStamp StampOfNotes()
    {
        if (!_notes.TryGetValue("time", out var note)) return WeatherStamp.HourBeginning;
        switch (note.Text.ToUpperInvariant())
        {
            case "START OF HOUR": return WeatherStamp.HourBeginning;
            case "END OF HOUR": return WeatherStamp.HourEnding;
            case "READING": return WeatherStamp.Reading;
            default:
                problems.Error("weather.note", WeatherProblems.Line(note.Line), "What the time of a row says cannot be read.", note.Text, "start of hour, end of hour, or reading");
                return WeatherStamp.HourBeginning;
        }
    }

    private bool Headings(string line)
    {
        string path = WeatherProblems.Line(lines.Number);
        string[] heads = [.. line.Split(',').Select(cell => cell.Trim(' ', '"'))];
        _time = Array.FindIndex(heads, head => head.Equals("time", StringComparison.OrdinalIgnoreCase));
        if (_time < 0)
        {
            problems.Error("weather.unknown-form", path, "The file is neither an EnergyPlus weather file, nor a forecast, nor a table with a column of times.", line, "a line of headings such as: time,temperature [°F],wind [mph],gust [mph]");
            return false;
        }
        for (int index = 0; index < heads.Length; index++) _columns.Add(index == _time ? null : Heading(heads[index], path));
        foreach (var twice in _columns.OfType<Column>().GroupBy(column => column.Element).Where(group => group.Count() > 1))
            problems.Error("weather.table.column", path, "A value stands in two columns.", ElementFact.Of(twice.Key).Name, "each once");
        if (!_columns.Exists(column => column?.Element == WeatherElement.Wind))
            problems.Error("weather.table.column-missing", path, "The table has no column of wind.", line, "wind [mph]");
        if (!_columns.Exists(column => column?.Element == WeatherElement.AirTemperature))
            problems.Error("weather.table.column-missing", path, "The table has no column of temperature.", line, "temperature [°F]");
        return !problems.HasErrors;
    }

    private Column? Heading(string head, string path)
    {
        int bracket = head.IndexOf('[', StringComparison.Ordinal);
        string name = (bracket < 0 ? head : head[..bracket]).Trim(), unit = bracket < 0 ? "" : head[(bracket + 1)..].Trim(' ', ']');
        ImmutableArray<string> names = [.. Names.Select(known => known.Name)];
        int at = names.IndexOf(name, 0, names.Length, StringComparer.OrdinalIgnoreCase);
        if (at < 0)
        {
            problems.Warn("weather.table.column", path, "This column is not known, and is left out.", name, NearestWord.Accepted(name, names));
            return null;
        }
        WeatherElement element = Names[at].Element;
        WeatherUnits.Kind kind = WeatherUnits.KindOf(element)!.Value;
        if (WeatherUnits.Find(kind, unit) is { } found) return new Column(element, found.Times, found.Plus);
        problems.Error("weather.unit", path, unit.Length == 0 ? "A heading has no unit." : "This is no unit of what the column holds.", head, WeatherUnits.Accepted(kind, unit));
        return null;
    }

    private void Row(string line)
    {
        string[] cells = line.Split(',');
        if (cells.Length <= _time || !Time(cells[_time].Trim(' ', '"'), out DateTime time))
        {
            problems.Repaired(lines.Unfinished ? WeatherRepairKind.BrokenEnd : WeatherRepairKind.BadRow, lines.Number, seen: line);
            return;
        }
        if (cells.Length < _columns.Count && lines.Unfinished)
        {
            problems.Repaired(WeatherRepairKind.BrokenEnd, lines.Number, seen: line);
            return;
        }
        long off = time.Ticks % TimeSpan.TicksPerHour;
        if (off != 0) problems.Repaired(WeatherRepairKind.OffTheHour, lines.Number, seen: cells[_time].Trim());
        int hour = RawWeather.HourOf(time) + (off * 2 >= TimeSpan.TicksPerHour ? 1 : 0);
        bool ends = _notes.TryGetValue("time", out var note) && note.Text.Equals("end of hour", StringComparison.OrdinalIgnoreCase);
        _raw.Add(ends ? hour - 1 : hour, lines.Number);
        for (int index = 0; index < Math.Min(cells.Length, _columns.Count); index++)
        {
            string cell = cells[index].Trim(' ', '"');
            if (_columns[index] is not { } column || Unknown.Contains(cell, StringComparer.OrdinalIgnoreCase)) continue;
            if (double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)) _raw.Set(column.Element, (value * column.Times) + column.Plus);
            else problems.Repaired(WeatherRepairKind.Unreadable, lines.Number, column.Element, cell);
        }
    }

    private bool Time(string text, out DateTime time)
    {
        time = default;
        int zone = text.LastIndexOfAny(['Z', '+', '-']);
        bool zoned = zone > 10;
        if (!DateTime.TryParseExact(zoned ? text[..zone] : text, ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out time))
            return false;
        if (time.Year is < 1800 or > 2200) return false;
        if (!zoned) return true;
        TimeSpan? offset = text[zone] == 'Z' ? TimeSpan.Zero : ReadOffset(text[zone..]);
        if (offset is not { } ahead) return false;
        // Times with an offset are brought to one clock: that of the notes, or of the first row.
        if (!_offsetsInRows && _offset is null) _offset = ahead;
        _offsetsInRows = true;
        time += _offset!.Value - ahead;
        return true;
    }

    private sealed record Column(WeatherElement Element, double Times, double Plus);
}
