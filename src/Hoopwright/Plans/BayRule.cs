namespace Hoopwright.Plans;

/// <summary>How the length is shared out into bays.</summary>
public enum BayRule
{
    /// <summary>Every bay alike, as near below the spacing as fits.</summary>
    Equal,

    /// <summary>Full bays from the front, and what is left as the last bay.</summary>
    LastShort,
}
