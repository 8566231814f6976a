namespace Hoopwright.Sheets.Pdf;

/// <summary>Where a part of the document begins or ends. Parts nest, and may go on over the next page.</summary>
/// <param name="Mark">The number of the mark of its page, from 0, before which it stands.</param>
/// <param name="Opens">What begins there; null where the part opened last ends.</param>
/// <param name="Says">What a drawing shows, in words; null for other parts.</param>
/// <param name="Link">Which of the page's links leads on from here; for <see cref="PdfRole.Link"/> alone.</param>
public readonly record struct PdfTag(int Mark, PdfRole? Opens, string? Says = null, int Link = 0);
