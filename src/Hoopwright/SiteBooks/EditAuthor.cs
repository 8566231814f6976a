namespace Hoopwright.SiteBooks;

/// <summary>Whose edit it is.</summary>
/// <param name="Id">An identity that nobody else has, from <see cref="SiteBookIds"/>.</param>
/// <param name="By">A name as typed; null where none was.</param>
/// <param name="Device">The phone or computer, as named there; null where it has no name.</param>
public sealed record EditAuthor(string Id, string? By, string? Device);
