using Hoopwright.BuildSteps;
using Hoopwright.Days;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Weather;

namespace Hoopwright.Calendar;

/// <summary>Which hours of a record are fit for a step, at the bows of a tunnel.</summary>
internal sealed class StepHours
{
    // As for covering days: this only keeps a value that stands on a limit within it.
    private const double Slack = 1e-9;

    private readonly WeatherRecord _record;
    private readonly double _here, _gustHere, _gustFactor, _chance;
    private readonly Dictionary<StepWeather, bool[]> _fit = [];

    internal StepHours(Tunnel tunnel, WeatherRecord record, Answers answers)
    {
        Plan plan = tunnel.Plan;
        _record = record;
        SiteWind wind = SiteWind.Of(plan, answers, tunnel.Bow.PeakHeight, record.WindHeight);
        (_here, _gustHere) = (wind.Mean.Value, wind.Gust.Value);
        _gustFactor = answers.Take("coverDay.gustFactor", DayDefaults.GustFactor, plan.CoverDay.GustFactor).Value;
        _chance = answers.Take("coverDay.rainChance", DayDefaults.RainChance, plan.CoverDay.RainChance).Value;
    }

    /// <summary>True where the record says anything of rain.</summary>
    internal bool KnowsRain => _record.Column(WeatherElement.Precipitation) is not null || _record.Column(WeatherElement.PrecipitationChance) is not null;

    /// <summary>For each row of the record whether a step can be worked at in it; what is not known is not fit.</summary>
    internal bool[] Of(StepWeather weather)
    {
        if (_fit.TryGetValue(weather, out bool[]? fit)) return fit;
        double[]? wind = _record.Column(WeatherElement.Wind), gust = _record.Column(WeatherElement.Gust), air = _record.Column(WeatherElement.AirTemperature);
        double[]? rain = _record.Column(WeatherElement.Precipitation), chance = _record.Column(WeatherElement.PrecipitationChance);
        fit = new bool[_record.Count];
        for (int row = 0; row < fit.Length; row++)
        {
            double mean = At(wind, row) * _here, highest = At(gust, row) * _gustHere;
            if (double.IsNaN(highest)) highest = At(wind, row) * _gustFactor * _gustHere;
            fit[row] = (weather.Wind is not { } most || mean <= most.MetresPerSecond + Slack)
                && (weather.Gust is not { } top || highest <= top.MetresPerSecond + Slack)
                && (weather.Coldest is not { } cold || At(air, row) >= cold.Celsius - Slack)
                && (weather.Warmest is not { } warm || At(air, row) <= warm.Celsius + Slack)
                && (!weather.Dry || !KnowsRain || IsDry(At(rain, row), At(chance, row)));
        }
        return _fit[weather] = fit;
    }

    private bool IsDry(double rain, double chance) => (!double.IsNaN(rain) || !double.IsNaN(chance)) && !(rain > 0) && !(chance > _chance + Slack);

    private static double At(double[]? column, int row) => column is null ? double.NaN : column[row];
}
