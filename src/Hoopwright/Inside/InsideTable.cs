using System.Globalization;
using System.Text;
using Hoopwright.Weather;

namespace Hoopwright.Inside;

/// <summary>A year inside hour by hour, as a table for spreadsheets.</summary>
public static class InsideTable
{
    /// <summary>Comma-separated values with a line of headings; SI with the unit in the heading.</summary>
    /// <param name="report">The report.</param>
    public static string Of(InsideReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var text = new StringBuilder("time,outsideC,airC,cropAirC,groundC,humidity,open,changesPerHour,lightMolPerM2,heaterW\n", report.Hours.Length * 80);
        foreach (InsideHour hour in report.Hours)
        {
            text.Append(CultureInfo.InvariantCulture, $"{hour.Start:yyyy-MM-dd'T'HH:mmzzz},{Fixed(hour.Outside.Celsius)},{Fixed(hour.Air.Celsius)},{Fixed(hour.Crop.Celsius)},{Fixed(hour.Ground.Celsius)},");
            text.Append(CultureInfo.InvariantCulture, $"{Fixed(hour.Humidity.Value)},{WeatherJson.Camel(hour.Wide.ToString())},{Fixed(hour.ChangesPerHour.Value)},{Fixed(hour.Light.MolesPerSquareMetre, 3)},{Fixed(hour.Heater.Watts, 0)}\n");
        }
        return text.ToString();
    }

    // Zero without a sign, as everywhere.
    private static string Fixed(double value, int decimals = 2) => (Math.Round((decimal)value, decimals) + 0m).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
