namespace Hoopwright.Cutting;

/// <summary>What a row of a linear programme asks of its sum.</summary>
internal enum RowSense
{
    /// <summary>Not less than the right side.</summary>
    AtLeast,

    /// <summary>Not more than the right side.</summary>
    AtMost,

    /// <summary>Equal to the right side.</summary>
    Exactly,
}
