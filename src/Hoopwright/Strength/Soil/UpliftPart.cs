namespace Hoopwright.Strength.Soil;

/// <summary>One thing that holds a post down.</summary>
/// <param name="Name">What it is.</param>
/// <param name="UltimateN">Between what and what it gives way.</param>
internal readonly record struct UpliftPart(string Name, Bounds UltimateN);
