using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>A rule of the takeoff as it was answered.</summary>
/// <param name="Value">How many, or how far apart.</param>
/// <param name="Says">The rule in words.</param>
/// <param name="Source">Where the usual value comes from.</param>
/// <param name="Path">Where in the plan it can be given.</param>
internal sealed record RuleAsked<T>(T Value, string Says, Citation Source, string Path)
    where T : struct;
