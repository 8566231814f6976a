using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Pdf;

/// <summary>One page of a PDF file.</summary>
/// <param name="Page">What is on it; the page takes its size.</param>
/// <param name="Bookmark">Its name in the viewer's list of bookmarks; null for none.</param>
/// <param name="Links">Areas that lead to other pages.</param>
public sealed record PdfSheet(Drawing Page, string? Bookmark = null, ImmutableArray<PdfLink> Links = default);
