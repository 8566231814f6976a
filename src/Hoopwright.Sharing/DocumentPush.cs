namespace Hoopwright.Sharing;

/// <summary>A changed plan.</summary>
/// <param name="Document">The plan as text, without its site book.</param>
/// <param name="By">Who changed it, as typed; stands in the audit.</param>
public sealed record DocumentPush(string Document, string? By = null);
