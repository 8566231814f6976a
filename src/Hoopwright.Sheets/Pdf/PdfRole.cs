namespace Hoopwright.Sheets.Pdf;

/// <summary>What a part of a document is to those who hear it read instead of seeing it (structure types of ISO 32000-1, 14.8.4).</summary>
public enum PdfRole
{
    /// <summary>A chapter with all that stands in it.</summary>
    Section,

    /// <summary>The title of the document or of a chapter.</summary>
    Heading1,

    /// <summary>A heading within a chapter.</summary>
    Heading2,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>A list of points.</summary>
    List,

    /// <summary>A point of a list.</summary>
    ListItem,

    /// <summary>What a point says.</summary>
    ListBody,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A row of a table.</summary>
    TableRow,

    /// <summary>The heading of a column.</summary>
    TableHeading,

    /// <summary>A cell.</summary>
    TableCell,

    /// <summary>The table of contents.</summary>
    Contents,

    /// <summary>A line of the contents.</summary>
    ContentsItem,

    /// <summary>Text that leads to another page.</summary>
    Link,

    /// <summary>A drawing, told in words.</summary>
    Figure,

    /// <summary>What is said elsewhere or only adorns: footers, rules, headings repeated on the next page. It is not read out.</summary>
    Artifact,
}
