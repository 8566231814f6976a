namespace Hoopwright.SiteBooks;

/// <summary>A value that a copy of a plan gives to a field.</summary>
/// <param name="Json">The value as JSON; null where the field was taken out.</param>
/// <param name="By">Who wrote it; null where that is not known.</param>
/// <param name="Device">On what; null where that is not known.</param>
public sealed record SaidValue(string? Json, string? By, string? Device);
