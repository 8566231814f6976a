using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Calendar;

/// <summary>How the crew works where the plan does not say.</summary>
internal static class CalendarDefaults
{
    internal static Usual<TimeOnly> Begins { get; } = new(new TimeOnly(8, 0), "Work begins at this time.", Citation.CommonPractice, Matters: true);

    internal static Usual<int> Hours { get; } = new(8, "So many hours are worked in a day, breaks not counted.", Citation.CommonPractice, Matters: true);

    internal static Usual<string> Days { get; } = new("Monday to Saturday", "The crew comes on these days.", Citation.CommonPractice, Matters: true);

    /// <summary>The weekdays of <see cref="Days"/>.</summary>
    internal static bool IsUsual(DayOfWeek day) => day != DayOfWeek.Sunday;

    /// <summary>Chance of rain that counts as dry for steps that must be dry.</summary>
    internal static Usual<Ratio> RainChance => Hoopwright.Days.DayDefaults.RainChance;

    /// <summary>Unit of the calendar: half an hour, as people speak of time on a site.</summary>
    internal const int SlotMinutes = 30;

    /// <summary>Days of the calendar that are looked at before it is said that there is no plan.</summary>
    internal static readonly int[] DaysAhead = [60, 200, 730];

}
