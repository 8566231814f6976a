using System.Collections.Immutable;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Pdf;

/// <summary>One page of a PDF file.</summary>
/// <param name="Page">What is on it; the page takes its size.</param>
/// <param name="Bookmark">Its name in the viewer's list of bookmarks; null for none.</param>
/// <param name="Links">Areas that lead to other pages.</param>
public sealed record PdfSheet(Drawing Page, string? Bookmark = null, ImmutableArray<PdfLink> Links = default)
{
    /// <summary>True when its bookmark stands under that of the chapter before it.</summary>
    public bool IsInChapter { get; init; }

    /// <summary>Places on it that have bookmarks of their own.</summary>
    public ImmutableArray<PdfBookmark> Places { get; init; } = [];

    /// <summary>What viewers call the page where it is not its number, such as "Sheet 3"; null for its number.</summary>
    public string? Label { get; init; }

    /// <summary>What is what on it, in order of the marks; with none, the page is one drawing.</summary>
    public ImmutableArray<PdfTag> Tags { get; init; } = [];
}
