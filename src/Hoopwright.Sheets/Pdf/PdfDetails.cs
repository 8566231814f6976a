namespace Hoopwright.Sheets.Pdf;

/// <summary>What a PDF file says about itself.</summary>
/// <param name="Title">Its title, shown by viewers in place of the file name.</param>
/// <param name="Subject">One sentence on what it is.</param>
/// <param name="Created">The moment it is said to be made. It comes from outside, so that the same plan gives the same bytes.</param>
/// <param name="Language">The language of its text, such as "en".</param>
public sealed record PdfDetails(string Title, string Subject, DateTimeOffset Created, string Language = "en");
