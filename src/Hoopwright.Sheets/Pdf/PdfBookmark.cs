namespace Hoopwright.Sheets.Pdf;

/// <summary>A place on a page in the viewer's list of bookmarks, under the page's own.</summary>
/// <param name="Title">What it says.</param>
/// <param name="TopMm">How far down the page it leads, mm.</param>
public readonly record struct PdfBookmark(string Title, double TopMm);
