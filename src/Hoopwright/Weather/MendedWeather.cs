namespace Hoopwright.Weather;

/// <summary>Rows in order of time, each hour once.</summary>
/// <param name="Hours">Hours since the beginning of the calendar.</param>
/// <param name="Columns">Values by element.</param>
/// <param name="IsTypicalYear">True when the months come from different years.</param>
internal sealed record MendedWeather(int[] Hours, double[]?[] Columns, bool IsTypicalYear);
