using System.CommandLine;
using System.Globalization;

namespace Hoopwright.Cli;

/// <summary>The day on the sheets. The same plan and day give the same bytes.</summary>
internal sealed class DayOption
{
    public DayOption() => Option.Validators.Add(result =>
    {
        if (result.GetValueOrDefault<string?>() is { } text && Day(text) is null) result.AddError($"'{text}' is not a day; write it as 2026-03-01.");
    });

    public Option<string?> Option { get; } = new("--date") { HelpName = "DAY", Description = "The day on the sheets, as 2026-03-01; today when left out. The same plan and day give the same bytes." };

    /// <summary>The day given, or today.</summary>
    public DateOnly Of(ParseResult parsed) => Day(parsed.GetValue(Option) ?? "") ?? DateOnly.FromDateTime(DateTime.Now);

    /// <summary>A day as it is written; null when it is none.</summary>
    internal static DateOnly? Day(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;
}
