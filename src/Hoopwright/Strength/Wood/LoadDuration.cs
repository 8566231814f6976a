namespace Hoopwright.Strength.Wood;

/// <summary>The shortest load of a combination: wood carries more for a short time.</summary>
internal enum LoadDuration
{
    /// <summary>Dead load, and crops that hang all season.</summary>
    Permanent,

    /// <summary>Ten years: floor load.</summary>
    TenYears,

    /// <summary>Two months: snow.</summary>
    TwoMonths,

    /// <summary>Seven days: people on a roof.</summary>
    SevenDays,

    /// <summary>Ten minutes: wind.</summary>
    TenMinutes,

    /// <summary>A blow. Not for treated wood and not for connections.</summary>
    Impact,
}
