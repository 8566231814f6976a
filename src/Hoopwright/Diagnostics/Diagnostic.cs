namespace Hoopwright.Diagnostics;

/// <summary>Something to tell the person whose plan it is: where, what, what was seen, what would do.</summary>
/// <param name="Code">A stable kebab-case name, dotted by area.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Path">Where in the plan, as dotted names and [index].</param>
/// <param name="Message">One sentence in the grower's words.</param>
/// <param name="Seen">The value as typed, where there is one.</param>
/// <param name="Accepted">What would be accepted, as a tape reads it, where that can be said.</param>
public sealed record Diagnostic(
    string Code, Severity Severity, string Path, string Message, string? Seen = null, string? Accepted = null);
