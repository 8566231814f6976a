namespace Hoopwright.Server.Storage;

/// <summary>An entry as it is kept.</summary>
internal sealed record StoredEntry(long Cursor, string Id, string Body, long? AheadSeconds);
