using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Days;

/// <summary>What a day must be like to pull the roof film of a tunnel, and for how long.</summary>
/// <param name="Hours">How long the film takes.</param>
/// <param name="Wind">Most mean wind at the bows.</param>
/// <param name="Gust">Highest gust at the bows.</param>
/// <param name="Coldest">Coldest air.</param>
/// <param name="Warmest">Warmest air.</param>
/// <param name="RainChance">Most chance of rain.</param>
public sealed record CoverDayNeeds(CoverHours Hours, Speed Wind, Speed Gust, Temperature Coldest, Temperature Warmest, Ratio RainChance)
{
    // A band narrower than this is of no use to anybody who waits for a day.
    private const double LeastBandK = 5;

    private static readonly Citation FromThePull = new("worked out from how tight the film is pulled", "", Standing.Derived);

    /// <summary>As the plan has it, or as usual; the air by the pull of the film where the plan does not say.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="cover">Its film.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public static CoverDayNeeds Of(Tunnel tunnel, CoverPlan cover, Answers answers)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(answers);
        CoverDay day = tunnel.Plan.CoverDay;
        (Usual<Temperature> coldest, Usual<Temperature> warmest) = Band(cover.Band, tunnel.Units);
        return new(
            CoverHours.Of(tunnel.Plan, cover, answers),
            answers.Take("coverDay.wind", DayDefaults.Wind, day.Wind),
            answers.Take("coverDay.gust", DayDefaults.Gust, day.Gust),
            answers.Take("coverDay.coldest", coldest, day.Coldest),
            answers.Take("coverDay.warmest", warmest, day.Warmest),
            answers.Take("coverDay.rainChance", DayDefaults.RainChance, day.RainChance));
    }

    /// <summary>In whole degrees, the narrower way; by common practice where the pull leaves next to nothing.</summary>
    private static (Usual<Temperature> Coldest, Usual<Temperature> Warmest) Band(PullBand band, UnitSystem units)
    {
        (Temperature from, Temperature to) = units switch
        {
            UnitSystem.UsCustomary => (Temperature.FromFahrenheit(Math.Ceiling(Math.Round(band.Coldest.Fahrenheit, 6))), Temperature.FromFahrenheit(Math.Floor(Math.Round(band.Warmest.Fahrenheit, 6)))),
            UnitSystem.Metric => (Temperature.FromCelsius(Math.Ceiling(Math.Round(band.Coldest.Celsius, 6))), Temperature.FromCelsius(Math.Floor(Math.Round(band.Warmest.Celsius, 6)))),
        };
        return to.Kelvins - from.Kelvins < LeastBandK
            ? (DayDefaults.Coldest, DayDefaults.Warmest)
            : (new(from, "In colder air hands cannot pull the film midway between what it bears in the cold and how far it may hang in the heat.", FromThePull),
               new(to, "In warmer air, in full sun, film would have to be left looser than it can be laid evenly.", FromThePull));
    }
}
