namespace Hoopwright.BeforeCuts;

/// <summary>Whether to cut.</summary>
public enum CutVerdict
{
    /// <summary>Everything it depends on was measured, and what the plan says is long enough for it.</summary>
    Go,

    /// <summary>Something it depends on was not measured, or a reading is in doubt.</summary>
    MeasureFirst,

    /// <summary>What the plan says is too short for what was measured, or does not go together with it.</summary>
    Stop,
}
