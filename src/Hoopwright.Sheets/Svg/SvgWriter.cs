using System.Globalization;
using System.Text;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Svg;

/// <summary>
/// Writes a drawing as a picture of its real size, with its layers as groups and its lettering inside, so that it looks
/// and measures the same in every browser. The same drawing gives the same bytes.
/// </summary>
public static class SvgWriter
{
    private static readonly string[] Roles = [.. Enum.GetValues<LineRole>().Select(role => role.ToString().ToLowerInvariant())];
    private static readonly string[] Colours = [.. Enum.GetValues<Ink>().Select(ink => InkColour.Of(ink).Hex)];

    /// <summary>The picture as SVG text, UTF-8 when saved, lines ending in \n.</summary>
    /// <param name="drawing">What to write.</param>
    /// <param name="withFont">False leaves the lettering out, for a page that carries the face itself.</param>
    /// <param name="idPrefix">Goes before every id, so that several drawings can stand in one page.</param>
    public static string Write(Drawing drawing, bool withFont = true, string idPrefix = "") => Encoding.UTF8.GetString(Bytes(drawing, withFont, idPrefix).Span);

    /// <summary>The same as the bytes of a file.</summary>
    internal static TextBytes Bytes(Drawing drawing, bool withFont = true, string idPrefix = "")
    {
        TextBytes svg = new();
        string width = Mm(drawing.WidthMm), height = Mm(drawing.HeightMm);
        svg.Add($"""
            <?xml version="1.0" encoding="UTF-8"?>
            <svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}" role="img" aria-labelledby="{idPrefix}title {idPrefix}desc">
            <title id="{idPrefix}title">{Escaped(drawing.Title)}</title>
            <desc id="{idPrefix}desc">{Escaped(drawing.Description)}</desc>

            """);
        Style(svg, drawing, withFont);
        svg.Add($"<rect width=\"{width}\" height=\"{height}\" fill=\"{Hex(Ink.Paper)}\"/>\n");
        foreach (IGrouping<(bool IsText, string Layer), Mark> layer in drawing.Marks.GroupBy(mark => (mark is TextMark, mark.Layer)))
        {
            string id = idPrefix + (layer.Key.IsText ? "text-" : "lines-") + string.Concat(layer.Key.Layer.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
            svg.Add($"<g id=\"{id}\" data-layer=\"{Escaped(layer.Key.Layer)}\">\n");
            foreach (Mark mark in layer)
                Write(svg, mark);
            svg.Add("</g>\n"u8);
        }

        svg.Add("</svg>\n"u8);
        return svg;
    }

    private static void Style(TextBytes svg, Drawing drawing, bool withFont)
    {
        svg.Add("<style>\n"u8);
        foreach (LetterWeight weight in drawing.Marks.OfType<TextMark>().Select(text => text.Weight).Distinct().Order().Where(_ => withFont))
            svg.Add(string.Create(CultureInfo.InvariantCulture, $"@font-face{{font-family:\"Hoopwright Letters\";font-weight:{CssWeight(weight)};src:url(data:font/woff2;base64,{FontFiles.Woff2Text(weight)}) format(\"woff2\")}}\n"));

        svg.Add("text{font-family:\"Hoopwright Letters\",\"Atkinson Hyperlegible Next\",sans-serif;font-kerning:none;white-space:pre}\n"u8);
        svg.Add(".line{fill:none;stroke-linecap:butt;stroke-linejoin:round}\n"u8);
        foreach (LineRole role in Enum.GetValues<LineRole>())
        {
            LineStyle style = LineStyle.Of(role);
            string dashes = style.DashesMm.IsEmpty ? "" : ";stroke-dasharray:" + string.Join(' ', style.DashesMm.Select(Mm));
            svg.Add($".{Roles[(int)role]}{{stroke-width:{Mm(style.WeightMm)}{dashes}}}\n");
        }

        svg.Add("</style>\n"u8);
    }

    private static void Write(TextBytes svg, Mark mark)
    {
        switch (mark)
        {
            case LineMark line:
                svg.Add("<path class=\"line "u8);
                svg.Add(Roles[(int)line.Role]);
                svg.Add("\" stroke=\""u8);
                svg.Add(Hex(line.Colour));
                Path(svg, line.Path, line.Path.Closed);
                break;
            case FillMark fill:
                Fill(svg, fill.Path, fill.Colour);
                break;
            case HatchMark hatch:
                foreach (Mark part in HatchLines.Of(hatch))
                    Write(svg, part);
                break;
            case TextMark text:
                Text(svg, text);
                break;
        }
    }

    private static void Fill(TextBytes svg, SheetPath path, Ink colour)
    {
        svg.Add("<path fill=\""u8);
        svg.Add(Hex(colour));
        Path(svg, path, isClosed: true);
    }

    private static void Text(TextBytes svg, TextMark text)
    {
        if (text.Text.Length == 0)
            return;
        if (text.Clears)
            Fill(svg, SheetPath.Around(text.Box.Grown(0.25).Corners()), Ink.Paper);
        svg.Add("<text x=\""u8);
        svg.Decimal(text.Anchor.XMm, 3);
        svg.Add("\" y=\""u8);
        svg.Decimal(text.Anchor.YMm, 3);
        svg.Add("\" font-size=\""u8);
        svg.Decimal(text.EmMm, 3);
        if (text.Weight == LetterWeight.Bold)
            svg.Add("\" font-weight=\"700"u8);
        if (text.Align != TextAlign.Start)
            svg.Add(text.Align == TextAlign.Middle ? "\" text-anchor=\"middle"u8 : "\" text-anchor=\"end"u8);
        if (text.Turn.Degrees != 0)
            svg.Add($"\" transform=\"rotate({Mm(-text.Turn.Degrees)} {Mm(text.Anchor.XMm)} {Mm(text.Anchor.YMm)})");
        // The measured width is stated too, so that a viewer that lacks the face still keeps the text in its place.
        svg.Add("\" textLength=\""u8);
        svg.Decimal(text.WidthMm, 3);
        svg.Add("\" lengthAdjust=\"spacingAndGlyphs\" fill=\""u8);
        svg.Add(Hex(text.Colour));
        svg.Add("\">"u8);
        svg.Add(Escaped(text.Text));
        svg.Add("</text>\n"u8);
    }

    private static void Path(TextBytes svg, SheetPath path, bool isClosed)
    {
        svg.Add("\" d=\"M"u8);
        Point(svg, path.Start);
        SheetPoint at = path.Start;
        foreach (PathPiece piece in path.Pieces)
        {
            if (piece.Centre is { } centre)
            {
                double radiusMm = centre.DistanceMm(at);
                svg.Add("A"u8);
                Point(svg, new SheetPoint(radiusMm, radiusMm));
                svg.Add(Math.Abs(piece.SweepRad) > Math.PI ? " 0 1 "u8 : " 0 0 "u8);
                svg.Add(piece.SweepRad < 0 ? "1 "u8 : "0 "u8);
            }
            else
            {
                svg.Add("L"u8);
            }

            Point(svg, piece.End);
            at = piece.End;
        }

        svg.Add(isClosed ? "Z\"/>\n"u8 : "\"/>\n"u8);
    }

    private static void Point(TextBytes svg, SheetPoint point)
    {
        svg.Decimal(point.XMm, 3);
        svg.Add(" "u8);
        svg.Decimal(point.YMm, 3);
    }

    private static string Hex(Ink ink) => Colours[(int)ink];

    private static int CssWeight(LetterWeight weight) => weight switch
    {
        LetterWeight.Regular => 400,
        LetterWeight.Bold => 700,
    };

    private static string Mm(double value)
    {
        TextBytes text = new();
        text.Decimal(value, 3);
        return Encoding.UTF8.GetString(text.Span);
    }

    private static string Escaped(string text) => XmlText.Escaped(text.Replace('\n', ' '));
}
