namespace Hoopwright.Sheets.Xlsx;

/// <summary>What the cells of a column hold, and so how they are shown.</summary>
internal enum NumberKind
{
    /// <summary>Words.</summary>
    Words,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A number with up to two decimals.</summary>
    Amount,

    /// <summary>A part of 1, four decimals.</summary>
    Part,

    /// <summary>Inches with the fraction of a tape, to the sixteenth.</summary>
    TapeInches,

    /// <summary>Whole millimetres.</summary>
    Millimetres,

    /// <summary>Money, two decimals.</summary>
    Money,

    /// <summary>Degrees, one decimal.</summary>
    Degrees,
}
