using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;

namespace Hoopwright.Upkeep;

/// <summary>The season calendar of the upkeep: rounds through the year, and the next cover. Its days are common practice, no source: move them to your place.</summary>
public static class UpkeepCalendar
{
    /// <summary>The days from a day on, earliest first.</summary>
    /// <param name="report">The upkeep.</param>
    /// <param name="plan">The plan: south of the equator the year is turned round.</param>
    /// <param name="from">The first day.</param>
    public static ImmutableArray<UpkeepDate> From(UpkeepReport report, Plan plan, DateOnly from)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(plan);
        bool south = plan.Site.Latitude is { Value.Degrees: < 0 };
        DateOnly begins = Next(4, 1), ends = Next(10, 31);
        // Within the season it goes on from today.
        bool inSeason = ends < begins;
        DateOnly first = inSeason ? from : begins;
        List<UpkeepDate> days =
        [
            new("weekly", Phrase.Of("Look through the tunnel"), first, inSeason ? ends : Following(begins, ends), UpkeepRepeat.Weekly, "weekly"),
            Yearly("winter", "Before winter: joints, posts, wire, room for snow", Next(10, 15), "winter"),
            Yearly("spring", "After winter: bows, posts, film", Next(3, 15), "after"),
        ];
        if (report.Film is { RecoverFrom: { } recoverFrom, RecoverBy: { } by } && by >= from)
        {
            DateOnly order = recoverFrom.AddMonths(-1);
            if (order >= from) days.Add(new("order-film", Phrase.Of("Order the next film"), order, order, UpkeepRepeat.Once, null));
            days.Add(new("recover", Phrase.Of("Put on new film by {0}", by.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)), recoverFrom > from ? recoverFrom : from, by, UpkeepRepeat.Once, "cover"));
        }
        return [.. days.OrderBy(day => day.Day).ThenBy(day => day.Id, StringComparer.Ordinal)];

        DateOnly Next(int month, int day)
        {
            var found = new DateOnly(from.Year, south ? ((month + 5) % 12) + 1 : month, Math.Min(day, 30));
            return found >= from ? found : found.AddYears(1);
        }

        UpkeepDate Yearly(string id, string title, DateOnly day, string round) => new(id, Phrase.Of(title), day, day, UpkeepRepeat.Yearly, round);
    }

    private static DateOnly Following(DateOnly begins, DateOnly ends) => ends >= begins ? ends : ends.AddYears(1);
}
