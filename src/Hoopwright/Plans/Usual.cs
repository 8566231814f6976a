using Hoopwright.Sources;

namespace Hoopwright.Plans;

/// <summary>What is taken when the plan does not say.</summary>
/// <typeparam name="T">The kind of value.</typeparam>
/// <param name="Value">The value taken.</param>
/// <param name="Says">What taking it means, one sentence in the grower's words.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Matters">True when the grower should confirm it: then it is listed as an assumption.</param>
public sealed record Usual<T>(T Value, string Says, Citation Source, bool Matters = false)
    where T : notnull
{
    /// <summary>Which way a length goes to a metric mark in a metric plan.</summary>
    internal MetricWay Metric { get; init; }
}
