using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Plans;
using Hoopwright.SiteBooks;

namespace Hoopwright.BuildSteps;

/// <summary>What the site book says of steps: entries in the order of their identities, which sort by time; the later holds.</summary>
public static class StepMarks
{
    /// <summary>How a day is written.</summary>
    public const string DayForm = "yyyy-MM-dd";

    /// <summary>The marks of a plan, by what they are about.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableDictionary<string, StepMark> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Dictionary<string, StepMark> marks = [];
        foreach (StandingEntry standing in StandingEntries.Of(plan))
        {
            if (standing.IsTakenBack || standing.Entry is not { Of: { } of } entry) continue;
            StepMark mark = marks.GetValueOrDefault(of, StepMark.None);
            marks[of] = entry.Kind switch
            {
                SiteBookKind.Done => mark with { IsDone = true, Day = DayOf(entry) },
                SiteBookKind.Signed => mark with { Signed = entry },
                SiteBookKind.Undone => mark with { IsDone = false, Day = null, Signed = null },
                SiteBookKind.Note or SiteBookKind.Photo => mark with { Notes = mark.Notes.Add(entry) },
                SiteBookKind.Measurement or SiteBookKind.Decision or SiteBookKind.Cut or SiteBookKind.Correction or null => mark,
            };
        }
        return marks.ToImmutableDictionary(StringComparer.Ordinal);
    }

    /// <summary>The day that an entry gives; null when it gives none.</summary>
    /// <param name="entry">The entry.</param>
    public static DateOnly? DayOf(SiteBookEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return DateOnly.TryParseExact(entry.Value?.Trim(), DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;
    }
}
