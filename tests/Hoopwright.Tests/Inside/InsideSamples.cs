using Hoopwright.Inside;
using Hoopwright.Inside.Air;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Testing;
using Hoopwright.Tests.Weather;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Inside;

/// <summary>Tunnels and an invented year for tests of the climate inside.</summary>
internal static class InsideSamples
{
    internal static WeatherRecord Year { get; } = WeatherReader.Read(InventedWeather.Epw()).Record!;

    internal static Tunnel Gothic { get; } = SamplePlans.LayOut(SamplePlans.Example("gothic-26ft"));

    /// <summary>A round tunnel with roll-up sides and doors, and what else is asked as JSON fields.</summary>
    internal static Tunnel Round(string hip = "4 ft", string rest = "") => SamplePlans.LayOut(SamplePlans.Simple(
        rest: $"\"sides\": {{ \"left\": {{ \"kind\": \"rollUp\", \"hipHeight\": \"{hip}\" }} }}{(rest.Length > 0 ? ", " + rest : "")}"));

    internal static InsideStudy Study(Tunnel tunnel, WeatherRecord? record = null, Action<HourlyWeather>? changed = null)
    {
        record ??= Year;
        Place place = record.Place!;
        HourlyWeather weather = HourlyWeather.Of(record, place).Weather!;
        changed?.Invoke(weather);
        return new InsideStudy(InsideSetup.Of(tunnel, new Answers(UnitSystem.Metric)), weather, record, place);
    }
}
