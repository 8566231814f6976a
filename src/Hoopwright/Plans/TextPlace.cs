namespace Hoopwright.Plans;

/// <summary>A place in a text file, as an editor counts it.</summary>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The character in the line, from 1.</param>
public readonly record struct TextPlace(int Line, int Column)
{
    /// <summary>In words.</summary>
    public override string ToString() => FormattableString.Invariant($"line {Line}, column {Column}");
}
