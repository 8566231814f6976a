using System.Globalization;
using Hoopwright.Sun;

namespace Hoopwright.Weather;

/// <summary>
/// Holds the light in a file against the sun of its place: a wrong hemisphere, a wrong time zone or clocks put forward show as light in the
/// night or a sun that is late.
/// </summary>
internal sealed class SunCheck(MendedWeather weather, Place? place, TimeSpan offset, bool rowsLast, WeatherProblems problems)
{
    // Every third day is looked at; a month has ten of them.
    private const int DayStep = 3;
    private const int MostShift = 2;
    private const int LeastRows = 240;

    // Part of the light that may fall while the sun is down: twilight and the edges of the hours come to less than half of it.
    private const double MostNightLight = 0.02;
    private const double NightElevationDeg = -3;

    // How much better another hour must fit before it is believed: clouds alone move the fit less.
    private const double MuchBetter = 0.75;

    internal void Look()
    {
        double[]? light = weather.Columns[(int)WeatherElement.OutsideHorizontal] ?? weather.Columns[(int)WeatherElement.GlobalRadiation];
        if (place is null || light is null || weather.Hours.Length < LeastRows) return;
        var months = new Month[12];
        double all = 0, night = 0;
        SunTrack? track = null;
        int today = -1;
        for (int row = 0; row < light.Length; row++)
        {
            int day = weather.Hours[row] / 24;
            if (day % DayStep != 0 || double.IsNaN(light[row])) continue;
            var date = DateOnly.FromDayNumber(day);
            if (day != today) (track, today) = (new SunTrack(place, date, offset), day);
            double noonDays = ((weather.Hours[row] % 24) + (rowsLast ? 0.5 : 0) - 12) / 24;
            ref Month month = ref months[date.Month - 1];
            for (int shift = -MostShift; shift <= MostShift; shift++)
            {
                double elevation = track!.At(noonDays + (shift / 24.0)).ElevationDeg;
                month.Add(shift + MostShift, light[row], Math.Max(0, Math.Sin(GeocentricSun.Rad(elevation))));
                if (shift == 0) (all, night) = (all + light[row], night + (elevation < NightElevationDeg ? light[row] : 0));
            }
        }
        Judge(months, all, night);
    }

    private void Judge(Month[] months, double all, double night)
    {
        int[] late = [.. Enumerable.Range(0, 12).Select(month => months[month].Late(MostShift, MuchBetter))];
        int[] shifted = [.. Enumerable.Range(0, 12).Where(month => late[month] != 0)];
        // Months alike side by side; one alone may be clouds.
        if (shifted.Length >= 2 && shifted.Select(month => late[month]).Distinct().Count() == 1)
        {
            string names = string.Join(", ", shifted.Select(month => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month + 1)));
            int hours = late[shifted[0]];
            problems.Error(
                "weather.clock", "file",
                shifted.Length >= 10
                    ? "The light in this file does not fit the sun of its place: the clock is wrong, or the time zone."
                    : "In some months the light in this file does not fit the sun of its place, in others it does: those rows are by daylight-saving time.",
                string.Create(CultureInfo.InvariantCulture, $"the sun {(hours > 0 ? "early" : "late")} by {Math.Abs(hours)} h in {names}"), "local standard time all year");
            return;
        }
        if (all > 0 && night / all > MostNightLight)
        {
            problems.Error(
                "weather.sun-at-night", "file", "Much of the light in this file falls while the sun is down at its place: the hemisphere, the longitude or the time zone is wrong.",
                (night / all).ToString("P0", CultureInfo.InvariantCulture) + " of the light", "latitude south and longitude west negative");
        }
    }

    /// <summary>How well the light of a month goes with the sun, at each shift of the clock.</summary>
    private struct Month
    {
        private double[]? _lightSun, _sunSun;
        private double _lightLight;

        internal void Add(int shift, double light, double sun)
        {
            _lightSun ??= new double[(2 * MostShift) + 1];
            _sunSun ??= new double[(2 * MostShift) + 1];
            _lightSun[shift] += light * sun;
            _sunSun[shift] += sun * sun;
            if (shift == 0) _lightLight += light * light;
        }

        /// <summary>By how many hours another clock fits much better; 0 when this one does, or nothing can be said.</summary>
        internal readonly int Late(int middle, double muchBetter)
        {
            if (_lightSun is null || _sunSun is null || _lightLight == 0) return 0;
            int best = middle;
            for (int shift = 0; shift < _lightSun.Length; shift++)
            {
                if (Rest(shift) < Rest(best)) best = shift;
            }
            return Rest(best) < muchBetter * Rest(middle) ? best - middle : 0;
        }

        // What a line through nothing leaves of the light.
        private readonly double Rest(int shift) => _lightLight - (_sunSun![shift] > 0 ? _lightSun![shift] * _lightSun[shift] / _sunSun[shift] : 0);
    }
}
