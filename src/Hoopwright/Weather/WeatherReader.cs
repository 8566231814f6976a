using System.Text;

namespace Hoopwright.Weather;

/// <summary>
/// Reads weather and forecast files. Whatever the bytes are, the answer is a record or the reasons why there is none, never an
/// exception of the reader's own; the stream may throw its own.
/// </summary>
public static class WeatherReader
{
    // A forecast of a week has some 300 KB.
    private const int LargestForecast = 32 * 1024 * 1024;

    /// <summary>Reads a file that is in memory.</summary>
    /// <param name="file">Its bytes.</param>
    /// <param name="clock">By how much the clock on the wall is ahead of universal time, for files that do not say; null to judge by the longitude.</param>
    public static WeatherReading Read(ReadOnlyMemory<byte> file, TimeSpan? clock = null)
    {
        using var stream = new MemoryStream(file.ToArray(), writable: false);
        return Read(stream, clock);
    }

    /// <summary>Reads a file from a stream, without holding it all in memory.</summary>
    /// <param name="stream">The file, from its beginning.</param>
    /// <param name="clock">By how much the clock on the wall is ahead of universal time, for files that do not say; null to judge by the longitude.</param>
    public static WeatherReading Read(Stream stream, TimeSpan? clock = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        var problems = new WeatherProblems();
        var head = new byte[4096];
        int length = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        ReadOnlySpan<byte> seen = head.AsSpan(0, length).TrimStart(" \t\r\n"u8);
        if (seen.StartsWith("\uFEFF"u8)) seen = seen[3..].TrimStart(" \t\r\n"u8);
        if (seen.IsEmpty)
        {
            problems.Error("weather.empty", "file", "The file holds nothing.", null, "an EnergyPlus weather file, a forecast, or a table");
            return problems.Reading(null);
        }
        if (head.AsSpan(0, length).Contains((byte)0))
        {
            problems.Error("weather.not-text", "file", "The file is no text in UTF-8: it may be packed, or saved as UTF-16.", null, "the unpacked file, saved as UTF-8");
            return problems.Reading(null);
        }
        using var whole = new HeadStream(head.AsMemory(0, length), stream);
        if (seen[0] == (byte)'{') return Forecast(whole, clock, problems);
        var lines = new LineReader(whole);
        WeatherRecord? record = seen.Length >= 8 && Encoding.ASCII.GetString(seen[..8]).Equals("LOCATION", StringComparison.OrdinalIgnoreCase)
            ? new EpwReader(lines, problems).Read()
            : new TableReader(lines, clock, problems).Read();
        if (lines.TooLong) problems.Error("weather.line-too-long", WeatherProblems.Line(lines.Number + 1), "The line is longer than any row of weather.", null, "a file with one hour a line");
        return problems.Reading(record);
    }

    private static WeatherReading Forecast(HeadStream stream, TimeSpan? clock, WeatherProblems problems)
    {
        using var memory = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (int read; (read = stream.Read(buffer, 0, buffer.Length)) > 0;)
        {
            memory.Write(buffer, 0, read);
            if (memory.Length <= LargestForecast) continue;
            problems.Error("weather.too-large", "file", "The file is larger than any forecast.", null, "up to 32 MB");
            return problems.Reading(null);
        }
        return problems.Reading(new ForecastReader(clock, problems).Read(memory.GetBuffer().AsMemory(0, (int)memory.Length)));
    }
}
