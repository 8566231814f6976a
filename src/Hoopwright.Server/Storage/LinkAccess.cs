using Hoopwright.Sharing;

namespace Hoopwright.Server.Storage;

/// <summary>A link that works: which plan it opens and what it allows.</summary>
internal sealed record LinkAccess(string ShareId, string LinkId, LinkKind Kind);
