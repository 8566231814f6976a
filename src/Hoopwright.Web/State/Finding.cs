namespace Hoopwright.Web.State;

/// <summary>Something found in a plan, as the results say it.</summary>
/// <param name="Severity">error, warning or assumption.</param>
/// <param name="Code">What kind of finding, such as plan.unit-missing.</param>
/// <param name="Path">Where in the plan.</param>
/// <param name="Message">What, in words.</param>
/// <param name="Seen">What was seen; null when there was nothing.</param>
/// <param name="Accepted">What would do, or what was taken.</param>
/// <param name="IsBehind">True for what was found before the last change, while it is not known yet whether it still holds.</param>
public sealed record Finding(string Severity, string Code, string Path, string Message, string? Seen, string? Accepted, bool IsBehind = false);
