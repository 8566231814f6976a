using System.Collections.Immutable;

namespace Hoopwright.Sharing;

/// <summary>What a device must know to be up to date: the plan, where it changed, and the entries that it has not seen.</summary>
/// <param name="Link">What the link that asked allows.</param>
/// <param name="Epoch">Changes when the server was restored from a backup: forget the cursor, read from 0, and push again what the device has.</param>
/// <param name="Version">Version of the plan; grows by one with each change.</param>
/// <param name="Cursor">Ask from here next time.</param>
/// <param name="Entries">Entries after the cursor that was asked from, in the order in which the server got them.</param>
/// <param name="More">True when there are further entries: ask again at once.</param>
/// <param name="ServerTime">The server's clock, by which a device can see how far its own is off.</param>
/// <param name="Document">The plan as text, without its site book; none where the device has this version already.</param>
public sealed record PlanState(LinkKind Link, string Epoch, long Version, long Cursor, ImmutableArray<SharedEntry> Entries, bool More, DateTimeOffset ServerTime, string? Document = null);
