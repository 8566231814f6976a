using Hoopwright.Diagnostics;

namespace Hoopwright.Upkeep;

/// <summary>A day of the season calendar.</summary>
/// <param name="Id">Its stable name.</param>
/// <param name="Title">What it is for.</param>
/// <param name="Day">Its first day.</param>
/// <param name="Last">Its last day, or of what comes every week the last day of the season.</param>
/// <param name="Repeat">How often it comes back.</param>
/// <param name="RoundId">The round that is made on it; null for none.</param>
public sealed record UpkeepDate(string Id, Phrase Title, DateOnly Day, DateOnly Last, UpkeepRepeat Repeat, string? RoundId);
