namespace Hoopwright.Sharing;

/// <summary>The server works.</summary>
/// <param name="Status">ok.</param>
/// <param name="Storage">What it keeps plans in: SQLite or PostgreSQL.</param>
/// <param name="ServerTime">The server's clock.</param>
public sealed record ServerHealth(string Status, string Storage, DateTimeOffset ServerTime);
