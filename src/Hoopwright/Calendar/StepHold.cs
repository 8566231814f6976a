namespace Hoopwright.Calendar;

/// <summary>Why a step does not start earlier.</summary>
public enum StepHold
{
    /// <summary>It is the first day.</summary>
    Beginning,

    /// <summary>A step must be done before it.</summary>
    Step,

    /// <summary>Something must set or dry after a step.</summary>
    Wait,

    /// <summary>The people are at another step.</summary>
    People,

    /// <summary>The weather is not fit earlier.</summary>
    Weather,

    /// <summary>Too little is left of the days before, or too few come on them.</summary>
    Day,
}
