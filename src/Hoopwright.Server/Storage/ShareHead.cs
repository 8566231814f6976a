namespace Hoopwright.Server.Storage;

/// <summary>How far a plan and its site book are.</summary>
/// <param name="Epoch">Changes when the server was restored from a backup.</param>
/// <param name="Version">Version of the plan.</param>
/// <param name="Cursor">Cursor of the newest entry; 0 when there is none.</param>
internal sealed record ShareHead(string Epoch, long Version, long Cursor);
