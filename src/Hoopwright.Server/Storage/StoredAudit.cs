using Hoopwright.Sharing;

namespace Hoopwright.Server.Storage;

/// <summary>A row of the audit as it is kept. The time is milliseconds since 1970 UTC.</summary>
internal sealed record StoredAudit(long Number, long At, string LinkId, LinkKind Kind, string? Label, string? ByName, string What, string Detail);
