namespace Hoopwright.Diagnostics;

/// <summary>How much a diagnostic matters.</summary>
public enum Severity
{
    /// <summary>The plan cannot be worked out until this is put right.</summary>
    Error,

    /// <summary>The plan can be worked out, but this wants a second look.</summary>
    Warning,

    /// <summary>A value that matters was not given, so the one named here was taken. To be confirmed.</summary>
    Assumption,
}
