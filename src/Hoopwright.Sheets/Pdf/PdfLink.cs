using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Pdf;

/// <summary>An area of a page that leads to another page.</summary>
/// <param name="Area">Where to press.</param>
/// <param name="PageNumber">The page it leads to, from 1.</param>
/// <param name="Says">Where it leads, in words.</param>
public readonly record struct PdfLink(SheetBox Area, int PageNumber, string Says = "");
