using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.SiteBooks;

namespace Hoopwright.AsBuilt;

/// <summary>
/// Reads the measurements of the site book. The latest reading that counts is used. One that is further from the plan than a
/// foot and a twentieth of it counts only when another reading of the same thing agrees with it.
/// </summary>
internal sealed class MeasurementReader(Plan plan, Tunnel planned, AsBuiltTolerances near)
{
    // Common practice, no source: a lost digit, or feet typed for inches, is further off than this; what was built is not.
    private const double PlausiblePart = 1.0 / 20;
    private static readonly Length PlausibleOff = Length.FromFeet(1);
    private static readonly Length AgreesWithin = Length.FromInches(0.5);

    // Twice the shortest life of a film: between two covers a book may well lie for years.
    private const int LongGapDays = 3000;

    private readonly List<(int At, Diagnostic Found)> found = [];

    /// <summary>True when the site book says anything of measurements.</summary>
    public static bool HasMeasurements(Plan plan) => plan.SiteBook.Any(entry => entry.Kind == SiteBookKind.Measurement);

    public SiteMeasurements Read()
    {
        ImmutableArray<Measurable> all = Measurables.Of(planned, near);
        Dictionary<string, Measurable> byName = all.ToDictionary(each => each.Name, StringComparer.Ordinal);
        var readings = new Dictionary<string, List<MeasuredReading>>(StringComparer.Ordinal);
        foreach (StandingEntry standing in StandingEntries.Of(plan).Where(each => each.Entry.Kind == SiteBookKind.Measurement))
        {
            if (NameOf(standing, all, byName) is not { } name) continue;
            if (!readings.TryGetValue(name, out List<MeasuredReading>? of)) readings[name] = of = [];
            of.Add(Reading(standing));
        }
        FromTheFuture();
        ImmutableArray<Measurement> measured = [.. all.Where(each => readings.ContainsKey(each.Name)).Select(each => Stand(each, readings[each.Name]))];
        return new SiteMeasurements
        {
            Planned = planned,
            Tolerances = near,
            Measurable = all,
            Measured = measured,
            Diagnostics = [.. found.OrderBy(each => each.At).Select(each => each.Found)],
        };
    }

    private string? NameOf(StandingEntry standing, ImmutableArray<Measurable> all, Dictionary<string, Measurable> byName)
    {
        string? name = standing.Entry.Of;
        if (name is null)
        {
            Warn("site-book.measurement.no-name", standing.At, "of", "The measurement does not say what was measured.", null, $"a name such as {all[0].Name}");
            return null;
        }
        if (byName.ContainsKey(name)) return name;
        Warn("site-book.measurement.unknown-name", standing.At, "of", "There is nothing of this name to measure on this tunnel.", name,
            NearestWord.Of(name, [.. all.Select(each => each.Name)]) ?? $"a name such as {MeasureNames.BowLength(1)} or {MeasureNames.Square("left")}");
        return null;
    }

    private MeasuredReading Reading(StandingEntry standing)
    {
        Length? value = null;
        ReadingStanding counts = ReadingStanding.Earlier;
        if (standing.IsTakenBack)
        {
            counts = ReadingStanding.TakenBack;
        }
        else
        {
            Reading<Length> read = QuantityText.ReadLength(standing.Entry.Value);
            if (read.IsRead && read.Value > Length.Zero)
            {
                value = read.Value;
            }
            else
            {
                counts = ReadingStanding.Unreadable;
                Warn("site-book.measurement.unreadable", PlaceOf(standing), "value", read.IsRead ? "What was measured is more than nothing." : read.Problem!,
                    standing.Entry.Value, read.Accepted ?? "a length over 0 in");
            }
        }
        return new MeasuredReading(standing.Entry.Id, PlaceOf(standing), standing.Entry.Value, value, (standing.Corrections.LastOrDefault() ?? standing.Entry).By ?? standing.Entry.By, standing.Corrections, counts);
    }

    /// <summary>The place of the entry that gave the value: the last correction, or the entry itself.</summary>
    private int PlaceOf(StandingEntry standing) =>
        standing.Corrections.LastOrDefault(each => each.Value is not null) is { } last ? plan.SiteBook.IndexOf(last) : standing.At;

    private Measurement Stand(Measurable of, List<MeasuredReading> readings)
    {
        Length far = Length.Max(PlausibleOff, of.Planned * PlausiblePart), agrees = Length.Max(AgreesWithin, of.Tolerance);
        for (int index = 0; index < readings.Count; index++)
        {
            if (readings[index] is not { Value: { } value, Standing: ReadingStanding.Earlier } reading || (value - of.Planned).Abs() <= far) continue;
            if (readings.Where((other, at) => at != index && other.Value is { } second && (second - value).Abs() <= agrees).Any()) continue;
            readings[index] = reading with { Standing = ReadingStanding.Waiting };
            Warn("site-book.measurement.implausible", reading.At, "value",
                $"The {of.What} is so far from the plan that a slip is likelier; it is not used until a second measurement agrees with it.", reading.Text,
                $"about {TapeText.Of(of.Planned, planned.Units)}, or the same again under {of.Name}");
        }
        int last = readings.FindLastIndex(reading => reading.Standing == ReadingStanding.Earlier);
        if (last >= 0) readings[last] = readings[last] with { Standing = ReadingStanding.Used };
        var measurement = new Measurement(of, [.. readings]);
        Length most = Length.Max(of.Tolerance, near.Tape * 2);
        if (measurement.Spread.Metres > most.Metres + 1e-9)
        {
            Warn("site-book.measurement.spread", readings[last].At, "value", $"The readings of the {of.What} differ among themselves; the latest is used. Measure once more, unless it was moved in between.",
                $"{TapeText.Of(measurement.Spread, planned.Units)} between them", $"within {TapeText.Of(most, planned.Units)}");
        }
        return measurement;
    }

    /// <summary>An entry years later than all before it is later than the day on which the others were written, or a clock was wrong.</summary>
    private void FromTheFuture()
    {
        (DateTimeOffset Time, int At)[] times = [.. plan.SiteBook
            .Select((entry, at) => (Time: entry.Id is null ? null : SiteBookIds.TimeOf(entry.Id), At: at))
            .Where(each => each.Time is not null).Select(each => (each.Time!.Value, each.At)).OrderBy(each => each.Item1)];
        for (int index = 1; index < times.Length; index++)
        {
            if ((times[index].Time - times[index - 1].Time).TotalDays <= LongGapDays) continue;
            SiteBookEntry entry = plan.SiteBook[times[index].At];
            if (entry.Kind is not (SiteBookKind.Measurement or SiteBookKind.Correction)) continue;
            Warn("site-book.from-the-future", times[index].At, "id", "The entry is years later than every one before it: the clock of its device may be wrong. It is used as the latest.",
                entry.Id, "the day it was measured; if the clock was wrong, take it back with a correction and measure again");
        }
    }

    private void Warn(string code, int at, string field, string message, string? seen, string accepted) =>
        found.Add((at, new Diagnostic(code, Severity.Warning, FormattableString.Invariant($"siteBook[{at}].{field}"), message, seen, accepted)));
}
