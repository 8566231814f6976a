using Hoopwright.Sharing;

namespace Hoopwright.Server.Storage;

/// <summary>A link as it is kept, without the hash of its token. Times are milliseconds since 1970 UTC.</summary>
internal sealed record StoredLink(string Id, LinkKind Kind, string? Label, long MadeAt, long? RevokedAt);
