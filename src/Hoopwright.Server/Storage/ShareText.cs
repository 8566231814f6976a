namespace Hoopwright.Server.Storage;

/// <summary>The text of a plan and its version.</summary>
internal sealed record ShareText(long Version, string Document);
