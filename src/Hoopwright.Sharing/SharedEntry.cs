using System.Text.Json;

namespace Hoopwright.Sharing;

/// <summary>One entry of the site book as the server keeps it.</summary>
/// <param name="Cursor">Its place in the order in which the server got the entries of this plan.</param>
/// <param name="Entry">The entry, as in the plan's `siteBook`.</param>
/// <param name="AheadSeconds">By how many seconds its id is ahead of the server's clock when it came; none when it was not.</param>
public sealed record SharedEntry(long Cursor, JsonElement Entry, long? AheadSeconds = null);
