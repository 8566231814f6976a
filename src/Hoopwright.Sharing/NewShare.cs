namespace Hoopwright.Sharing;

/// <summary>Asks the server to keep a plan.</summary>
/// <param name="Document">The plan as text, without its site book; its entries are pushed afterwards. It is kept without comments, as merging writes it.</param>
/// <param name="By">Who shares it, as typed; stands in the audit.</param>
public sealed record NewShare(string Document, string? By = null);
