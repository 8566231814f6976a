namespace Hoopwright.Web.State;

/// <summary>A value that results rest on.</summary>
/// <param name="Path">Where it can be given in the plan.</param>
/// <param name="Value">The value as people read it.</param>
/// <param name="Says">What it means.</param>
/// <param name="Given">True when the plan gives it.</param>
/// <param name="IsAssumption">True when it is to be confirmed.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Rule(string Path, string Value, string Says, bool Given, bool IsAssumption, string Source);
