namespace Hoopwright.BuildSteps;

/// <summary>A tool to have at hand.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Count">How many.</param>
public sealed record Tool(string Name, int Count);
