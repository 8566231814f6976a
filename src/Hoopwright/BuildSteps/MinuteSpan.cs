namespace Hoopwright.BuildSteps;

/// <summary>Person-minutes between two bounds.</summary>
/// <param name="LeastMinutes">At the least.</param>
/// <param name="MostMinutes">At the most.</param>
public readonly record struct MinuteSpan(double LeastMinutes, double MostMinutes);
