using System.Collections.Immutable;
using System.Text.Json;

namespace Hoopwright.Sharing;

/// <summary>Entries for the site book. Sending them twice adds them once.</summary>
/// <param name="Entries">The entries, as in the plan's `siteBook`.</param>
public sealed record EntryPush(ImmutableArray<JsonElement> Entries);
