using System.Globalization;
using System.Text;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Tests.Weather;

/// <summary>Invented weather files whose light follows the sun of their place.</summary>
internal static class InventedWeather
{
    internal static readonly Place Valley = new(Angle.FromDegrees(42.5), Angle.FromDegrees(-76.5), Length.FromMetres(250));

    internal static readonly string[] Header =
    [
        "LOCATION,Alder Bend,NY,USA,invented,999999,42.50,-76.50,-5.0,250.0",
        "DESIGN CONDITIONS,0",
        "TYPICAL/EXTREME PERIODS,1,Summer - Invented Week,Typical,7/ 1,7/ 7",
        "GROUND TEMPERATURES,1,.5,,,,1,2,3,4,5,6,7,8,9,10,11,12",
        "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
        "COMMENTS 1,invented, with a comma",
        "COMMENTS 2,second",
        "DATA PERIODS,1,1,Data,Sunday,1/ 1,12/31",
    ];

    /// <summary>The rows of a whole year: a mild, steady place with 3 m/s of wind by day and 1 m/s by night.</summary>
    internal static List<string> Rows(int year = 2026, Place? place = null)
    {
        var rows = new List<string>(8784);
        var offset = TimeSpan.FromHours(-5);
        for (var date = new DateOnly(year, 1, 1); date.Year == year; date = date.AddDays(1))
        {
            var track = new SunTrack(place ?? Valley, date, offset);
            for (int hour = 1; hour <= 24; hour++)
            {
                double light = Math.Max(0, Math.Sin(GeocentricSun.Rad(track.At((hour - 0.5 - 12) / 24).ElevationDeg)));
                double air = 12 - (10 * Math.Cos(2 * Math.PI * date.DayOfYear / 365)) + (4 * light);
                rows.Add(string.Create(CultureInfo.InvariantCulture,
                    $"{date.Year},{date.Month},{date.Day},{hour},0,flags,{air:0.0},5.0,60,98000,{1367 * light:0},1367,300,{800 * light:0},0,0,999999,999999,999999,9999,180,{(light > 0 ? 3.0 : 1.0):0.0},5,5,20.0,77777,9,999999999,10,0.1000,0,88,0.200,{(date.Day == 15 ? 1.0 : 0.0):0.0},1.0"));
            }
        }
        return rows;
    }

    internal static byte[] Epw(IEnumerable<string>? rows = null, IEnumerable<string>? header = null) =>
        Encoding.UTF8.GetBytes(string.Join('\n', [.. header ?? Header, .. rows ?? Rows()]) + "\n");
}
