using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;

namespace Hoopwright.Plans;

/// <summary>Days that are fit for a piece of work.</summary>
internal static class DayFormats
{
    private static readonly QuantityRange<Speed> Wind = PlanQuantities.Speed.Within("1 mph", "40 mph", "0.5 m/s", "17.8 m/s").Like("5 mph", "2.2 m/s");

    private static readonly QuantityRange<Temperature> Air = PlanQuantities.Temperature.Within("0 °F", "120 °F", "-17 °C", "48 °C").Like("60 °F", "15 °C");

    public static PlanFormat<BuildDay> BuildDay { get; } = new(
        Choice<BuildDay, DayOfWeek>("weekday", day => day.Weekday, (day, value) => day with { Weekday = value }),
        Date<BuildDay>("date", day => day.Date, (day, value) => day with { Date = value }),
        Count<BuildDay>("people", 0, 200, day => day.People, (day, value) => day with { People = value }),
        Clock<BuildDay>("begins", day => day.Begins, (day, value) => day with { Begins = value }),
        Count<BuildDay>("hours", 1, 16, day => day.Hours, (day, value) => day with { Hours = value }));

    public static PlanFormat<BuildTool> BuildTool { get; } = new(
        Text<BuildTool>("name", "cordless drill", tool => tool.Name, (tool, value) => tool with { Name = value }, required: true),
        Count<BuildTool>("count", 0, 200, tool => tool.Count, (tool, value) => tool with { Count = value }));

    public static PlanFormat<Build> Build { get; } = new(
        Date<Build>("start", build => build.Start, (build, value) => build with { Start = value }),
        Date<Build>("finishBy", build => build.FinishBy, (build, value) => build with { FinishBy = value }),
        Clock<Build>("begins", build => build.Begins, (build, value) => build with { Begins = value }),
        Count<Build>("hours", 1, 16, build => build.Hours, (build, value) => build with { Hours = value }),
        Groups<Build, BuildDay>("days", BuildDay, build => build.Days, (build, value) => build with { Days = value }),
        Groups<Build, BuildTool>("tools", BuildTool, build => build.Tools, (build, value) => build with { Tools = value }));

    public static PlanFormat<CoverDay> CoverDay { get; } = new(
        Quantity<CoverDay, Speed>("wind", Wind, day => day.Wind, (day, value) => day with { Wind = value }),
        Quantity<CoverDay, Speed>("gust", Wind, day => day.Gust, (day, value) => day with { Gust = value }),
        Quantity<CoverDay, Angle>("windFrom", PlanQuantities.Bearing.Within("0°", "359.999°").Like("W", "W"), day => day.WindFrom, (day, value) => day with { WindFrom = value }),
        Quantity<CoverDay, Temperature>("coldest", Air, day => day.Coldest, (day, value) => day with { Coldest = value }),
        Quantity<CoverDay, Temperature>("warmest", Air, day => day.Warmest, (day, value) => day with { Warmest = value }),
        Quantity<CoverDay, Ratio>("rainChance", PlanQuantities.Percentage.Within("0 %", "100 %").Like("20 %", "20 %"), day => day.RainChance, (day, value) => day with { RainChance = value }),
        Quantity<CoverDay, Ratio>("gustFactor", PlanQuantities.Ratio.Within("1", "3").Like("1.6", "1.6"), day => day.GustFactor, (day, value) => day with { GustFactor = value }),
        Quantity<CoverDay, Ratio>("shelter", PlanQuantities.Ratio.Within("0.2", "1").Like("0.7", "0.7"), day => day.Shelter, (day, value) => day with { Shelter = value }),
        Count<CoverDay>("hours", 1, 24, day => day.Hours, (day, value) => day with { Hours = value }),
        Quantity<CoverDay, Ratio>("reserve", PlanQuantities.Percentage.Within("0 %", "200 %").Like("25 %", "25 %"), day => day.Reserve, (day, value) => day with { Reserve = value }));
}
