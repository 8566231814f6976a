namespace Hoopwright.Sheets.Pages;

/// <summary>A paper size that printers carry.</summary>
/// <param name="Name">As people call it.</param>
/// <param name="ShortMm">Its shorter side, mm.</param>
/// <param name="LongMm">Its longer side, mm.</param>
public sealed record Paper(string Name, double ShortMm, double LongMm)
{
    /// <summary>Margin around a drawing, mm.</summary>
    public const double DrawingMarginMm = 9;

    /// <summary>Room for the running footer under a drawing, mm.</summary>
    public const double FooterMm = 14;

    /// <summary>US Letter, 8-1/2 by 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static Paper Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>A4 (ISO 216).</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>Tabloid, 11 by 17 in (ANSI/ASME Y14.1, size B), for drawings.</summary>
    public static Paper Tabloid { get; } = new("Tabloid", 279.4, 431.8);

    /// <summary>A3 (ISO 216), for drawings.</summary>
    public static Paper A3 { get; } = new("A3", 297, 420);

    /// <summary>Half of Letter, 5-1/2 by 8-1/2 in, for cards.</summary>
    public static Paper HalfLetter { get; } = new("half Letter", 139.7, 215.9);

    /// <summary>A5 (ISO 216), for cards.</summary>
    public static Paper A5 { get; } = new("A5", 148, 210);

    /// <summary>The paper of cards: half of this one.</summary>
    public Paper Half => this == A4 || this == A3 ? A5 : HalfLetter;

    // Narrower paper than any printer's full sheet is a card.
    internal bool IsCard => ShortMm < 160;

    internal double MarginMm => IsCard ? 11 : 18;

    /// <summary>Width and height of a drawing that fills a page of this paper, mm.</summary>
    /// <param name="landscape">True when the longer side lies across.</param>
    public (double WidthMm, double HeightMm) DrawingSize(bool landscape) => landscape
        ? (LongMm - (2 * DrawingMarginMm), ShortMm - DrawingMarginMm - FooterMm)
        : (ShortMm - (2 * DrawingMarginMm), LongMm - DrawingMarginMm - FooterMm);
}
