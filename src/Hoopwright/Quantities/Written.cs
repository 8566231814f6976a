namespace Hoopwright.Quantities;

/// <summary>A value together with the words it was given in, so that a plan goes out as it came in.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Text">As typed.</param>
/// <param name="Value">What it means.</param>
public readonly record struct Written<T>(string Text, T Value)
    where T : struct
{
    /// <summary>As typed.</summary>
    public override string ToString() => Text;
}
