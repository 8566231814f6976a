namespace Hoopwright.Quantities;

/// <summary>The outcome of reading a quantity from words: a value, or what is wrong and what would do.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="IsRead">True when <paramref name="Value"/> holds.</param>
/// <param name="Value">What was read; the default when nothing was.</param>
/// <param name="Problem">What is wrong, one sentence; null when read.</param>
/// <param name="Accepted">What would be accepted, with an example; null when read.</param>
public readonly record struct Reading<T>(bool IsRead, T Value, string? Problem, string? Accepted)
    where T : struct;

/// <summary>Makes outcomes of reading.</summary>
public static class Reading
{
    /// <summary>A value was read.</summary>
    public static Reading<T> Of<T>(T value)
        where T : struct => new(true, value, null, null);

    /// <summary>Nothing was read.</summary>
    public static Reading<T> Fault<T>(string problem, string accepted)
        where T : struct => new(false, default, problem, accepted);
}
