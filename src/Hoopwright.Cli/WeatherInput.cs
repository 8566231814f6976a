using System.CommandLine;
using System.Globalization;
using Hoopwright.Weather;

namespace Hoopwright.Cli;

/// <summary>What the verbs that read weather have in common: the first day, and the clock on the wall.</summary>
internal sealed class WeatherInput
{
    public WeatherInput()
    {
        From.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } text && DayOption.Day(text) is null) result.AddError($"'{text}' is not a day; write it as 2026-04-18.");
        });
        Clock.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } text && Offset(text) is null) result.AddError($"'{text}' is not an offset from universal time; write it as -04:00.");
        });
    }

    public Option<string?> From { get; } = new("--from") { HelpName = "DAY", Description = "The first of the seven days looked at, as 2026-04-18; the first of the file when left out." };

    public Option<string?> Clock { get; } = new("--clock") { HelpName = "HOURS", Description = "By how much the clock on the wall is ahead of universal time, as -04:00, for files that do not say." };

    /// <summary>Reads the file.</summary>
    public WeatherReading Read(ParseResult parsed, string file, Terminal terminal) =>
        Files.Read(file, terminal, stream => WeatherReader.Read(stream, Wall(parsed)));

    /// <summary>The first day asked for.</summary>
    public DateOnly? Day(ParseResult parsed) => parsed.GetValue(From) is { } text ? DayOption.Day(text) : null;

    /// <summary>The clock on the wall; null where it is not given.</summary>
    public TimeSpan? Wall(ParseResult parsed) => parsed.GetValue(Clock) is { } text ? Offset(text) : null;

    private static TimeSpan? Offset(string text) =>
        TimeSpan.TryParseExact(text.TrimStart('+', '-'), @"hh\:mm", CultureInfo.InvariantCulture, out TimeSpan span) && span.TotalHours <= 14 ? (text.StartsWith('-') ? -span : span) : null;
}
