using System.Collections.Immutable;

namespace Hoopwright.Sharing;

/// <summary>What was changed on a shared plan.</summary>
/// <param name="Rows">The changes after the number asked from, oldest first.</param>
/// <param name="More">True when there are further ones: ask again from the last number.</param>
public sealed record AuditPage(ImmutableArray<AuditRow> Rows, bool More);
