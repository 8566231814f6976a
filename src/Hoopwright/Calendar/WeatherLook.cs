namespace Hoopwright.Calendar;

/// <summary>What was looked at of the weather that a step needs.</summary>
public enum WeatherLook
{
    /// <summary>It needs none.</summary>
    NotNeeded,

    /// <summary>All its hours are fit by the forecast.</summary>
    Fit,

    /// <summary>A part of its hours is fit by the forecast, the others lie past its end.</summary>
    PartlyFit,

    /// <summary>Not looked at: there is no forecast of its hours.</summary>
    NotLookedAt,
}
