using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;

namespace Hoopwright.Weather;

/// <summary>Gathers what is wrong with a weather file and what was repaired, so that a thousand like faults are told once.</summary>
internal sealed class WeatherProblems
{
    private const int MostLines = 10;

    private readonly List<Diagnostic> _found = [];
    private readonly SortedDictionary<(WeatherRepairKind Kind, int Element), Tally> _repairs = [];

    internal bool HasErrors { get; private set; }

    internal void Error(string code, string path, string message, string? seen = null, string? accepted = null)
    {
        HasErrors = true;
        _found.Add(new Diagnostic(code, Severity.Error, path, message, seen is null ? null : SeenText.Shorten(seen), accepted));
    }

    internal void Warn(string code, string path, string message, string? seen = null, string? accepted = null) =>
        _found.Add(new Diagnostic(code, Severity.Warning, path, message, seen is null ? null : SeenText.Shorten(seen), accepted));

    internal void Assume(string code, string path, string message, string taken) =>
        _found.Add(new Diagnostic(code, Severity.Assumption, path, message, null, taken));

    internal static string Line(int line) => "line " + line.ToString(CultureInfo.InvariantCulture);

    /// <summary>Counts a repair.</summary>
    /// <param name="kind">What sort.</param>
    /// <param name="line">Where.</param>
    /// <param name="element">Of which value; null for whole rows.</param>
    /// <param name="seen">What stood there.</param>
    /// <param name="count">How many at once.</param>
    internal void Repaired(WeatherRepairKind kind, int line, WeatherElement? element = null, string? seen = null, int count = 1)
    {
        (WeatherRepairKind, int) key = (kind, element is { } of ? (int)of : -1);
        if (!_repairs.TryGetValue(key, out Tally? tally)) _repairs.Add(key, tally = new Tally(seen is null ? null : SeenText.Shorten(seen)));
        tally.Count += count;
        if (tally.Lines.Count < MostLines && (tally.Lines.Count == 0 || tally.Lines[^1] != line)) tally.Lines.Add(line);
    }

    internal int RepairedRows(WeatherRepairKind kind) => _repairs.TryGetValue((kind, -1), out Tally? tally) ? tally.Count : 0;

    internal WeatherReading Reading(WeatherRecord? record)
    {
        ImmutableArray<WeatherRepair> repairs =
            [.. _repairs.Select(each => new WeatherRepair(each.Key.Kind, each.Key.Element < 0 ? null : (WeatherElement)each.Key.Element, each.Value.Count, [.. each.Value.Lines], each.Value.Seen))];
        foreach (WeatherRepair repair in repairs) Tell(repair);
        return new(
            HasErrors ? null : record, repairs,
            [.. _found.OrderBy(each => each.Severity switch { Severity.Error => 0, Severity.Warning => 1, Severity.Assumption => 2 })]);
    }

    private void Tell(WeatherRepair repair)
    {
        string path = repair.Lines.IsEmpty ? "file" : (repair.Lines.Length == 1 ? "line " : "lines ") + string.Join(", ", repair.Lines.Select(line => line.ToString(CultureInfo.InvariantCulture)))
            + (repair.Lines.Length == MostLines ? " …" : "");
        string count = repair.Count.ToString(CultureInfo.InvariantCulture), values = repair.Count == 1 ? "value" : "values", rows = repair.Count == 1 ? "row" : "rows", hours = repair.Count == 1 ? "hour" : "hours";
        string of = repair.Element is { } element ? " of " + ElementFact.Of(element).Name : "";
        switch (repair.Kind)
        {
            case WeatherRepairKind.Unreadable: Warn("weather.repair.unreadable", path, $"{count} {values}{of} cannot be read, and count as not known.", repair.Seen, "a number"); break;
            case WeatherRepairKind.Nonsense: Warn("weather.repair.nonsense", path, $"{count} {values}{of} cannot be true, and count as not known.", repair.Seen); break;
            case WeatherRepairKind.BadRow: Warn("weather.repair.bad-row", path, $"{count} {rows} cannot be read, and are left out.", repair.Seen); break;
            case WeatherRepairKind.BrokenEnd: Warn("weather.repair.broken-end", path, "The file breaks off in its last row, which is left out.", repair.Seen, "the whole file: fetch it again"); break;
            case WeatherRepairKind.Order: Warn("weather.repair.order", path, $"{count} {rows} stood out of order; all rows were sorted by time.", repair.Seen); break;
            case WeatherRepairKind.Twice: Warn("weather.repair.twice", path, $"{count} {hours} stood twice; the first was kept.", repair.Seen); break;
            case WeatherRepairKind.OffTheHour: Warn("weather.repair.off-the-hour", path, $"{count} {rows} were not at a full hour, and count for the nearest.", repair.Seen); break;
            case WeatherRepairKind.SummerTime: Warn("weather.repair.summer-time", path, $"{count} {rows} were by daylight-saving time, and were put back an hour.", repair.Seen); break;
            case WeatherRepairKind.MissingHour: Warn("weather.repair.missing-hour", path, $"{count} {hours} are not in the file.", repair.Seen); break;
            case WeatherRepairKind.Filled: Warn("weather.repair.filled", path, $"{count} {values}{of} not known for at most three hours were filled from the hours around.", repair.Seen); break;
            case WeatherRepairKind.GustBelowMean: Warn("weather.repair.gust", path, $"{count} {values}{of} stood below the mean wind, and were raised to it.", repair.Seen); break;
            case WeatherRepairKind.Letters: Warn("weather.repair.letters", path, "Some letters are not UTF-8; they were read as Latin-1.", repair.Seen, "a file saved as UTF-8"); break;
        }
    }

    private sealed class Tally(string? seen)
    {
        internal int Count { get; set; }

        internal List<int> Lines { get; } = [];

        internal string? Seen { get; } = seen;
    }
}
