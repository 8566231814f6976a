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
    /// <summary>The picture as SVG text, UTF-8 when saved, lines ending in \n.</summary>
    /// <param name="drawing">What to write.</param>
    /// <param name="withFont">False leaves the lettering out, for a page that carries the face itself.</param>
    /// <param name="idPrefix">Goes before every id, so that several drawings can stand in one page.</param>
    public static string Write(Drawing drawing, bool withFont = true, string idPrefix = "")
    {
        StringBuilder svg = new();
        string width = Mm(drawing.WidthMm), height = Mm(drawing.HeightMm);
        svg.Append(CultureInfo.InvariantCulture, $"""
            <?xml version="1.0" encoding="UTF-8"?>
            <svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}" role="img" aria-labelledby="{idPrefix}title {idPrefix}desc">
            <title id="{idPrefix}title">{Escaped(drawing.Title)}</title>
            <desc id="{idPrefix}desc">{Escaped(drawing.Description)}</desc>

            """);
        Style(svg, drawing, withFont);
        svg.Append(CultureInfo.InvariantCulture, $"<rect width=\"{width}\" height=\"{height}\" fill=\"{InkColour.Of(Ink.Paper).Hex}\"/>\n");
        foreach (IGrouping<(bool IsText, string Layer), Mark> layer in drawing.Marks.GroupBy(mark => (mark is TextMark, mark.Layer)))
        {
            string id = idPrefix + (layer.Key.IsText ? "text-" : "lines-") + string.Concat(layer.Key.Layer.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
            svg.Append(CultureInfo.InvariantCulture, $"<g id=\"{id}\" data-layer=\"{Escaped(layer.Key.Layer)}\">\n");
            foreach (Mark mark in layer)
                Write(svg, mark);
            svg.Append("</g>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Style(StringBuilder svg, Drawing drawing, bool withFont)
    {
        svg.Append("<style>\n");
        foreach (LetterWeight weight in drawing.Marks.OfType<TextMark>().Select(text => text.Weight).Distinct().Order().Where(_ => withFont))
        {
            svg.Append("@font-face{font-family:\"Hoopwright Letters\";font-weight:").Append(CssWeight(weight))
                .Append(";src:url(data:font/woff2;base64,").Append(Convert.ToBase64String(FontFiles.Woff2(weight))).Append(") format(\"woff2\")}\n");
        }

        svg.Append("text{font-family:\"Hoopwright Letters\",\"Atkinson Hyperlegible Next\",sans-serif;font-kerning:none;white-space:pre}\n");
        svg.Append(".line{fill:none;stroke-linecap:butt;stroke-linejoin:round}\n");
        foreach (LineRole role in Enum.GetValues<LineRole>())
        {
            LineStyle style = LineStyle.Of(role);
            svg.Append(CultureInfo.InvariantCulture, $".{Name(role)}{{stroke-width:{Mm(style.WeightMm)}");
            if (!style.DashesMm.IsEmpty)
                svg.Append(";stroke-dasharray:").AppendJoin(' ', style.DashesMm.Select(Mm));
            svg.Append("}\n");
        }

        svg.Append("</style>\n");
    }

    private static void Write(StringBuilder svg, Mark mark)
    {
        switch (mark)
        {
            case LineMark line:
                svg.Append(CultureInfo.InvariantCulture, $"<path class=\"line {Name(line.Role)}\" stroke=\"{InkColour.Of(line.Colour).Hex}\" d=\"{Path(line.Path)}\"/>\n");
                break;
            case FillMark fill:
                svg.Append(CultureInfo.InvariantCulture, $"<path fill=\"{InkColour.Of(fill.Colour).Hex}\" d=\"{Path(fill.Path.Close())}\"/>\n");
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

    private static void Text(StringBuilder svg, TextMark text)
    {
        if (text.Text.Length == 0)
            return;
        string x = Mm(text.Anchor.XMm), y = Mm(text.Anchor.YMm);
        if (text.Clears)
        {
            SheetPoint[] corners = text.Box.Grown(0.25).Corners();
            svg.Append(CultureInfo.InvariantCulture, $"<path fill=\"{InkColour.Of(Ink.Paper).Hex}\" d=\"{Path(SheetPath.Around(corners))}\"/>\n");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x}\" y=\"{y}\" font-size=\"{Mm(text.EmMm)}\"");
        if (text.Weight == LetterWeight.Bold)
            svg.Append(" font-weight=\"700\"");
        if (text.Align != TextAlign.Start)
            svg.Append(text.Align == TextAlign.Middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        if (text.Turn.Degrees != 0)
            svg.Append(CultureInfo.InvariantCulture, $" transform=\"rotate({Mm(-text.Turn.Degrees)} {x} {y})\"");
        // The measured width is stated too, so that a viewer that lacks the face still keeps the text in its place.
        svg.Append(CultureInfo.InvariantCulture, $" textLength=\"{Mm(text.WidthMm)}\" lengthAdjust=\"spacingAndGlyphs\" fill=\"{InkColour.Of(text.Colour).Hex}\">{Escaped(text.Text)}</text>\n");
    }

    private static string Path(SheetPath path)
    {
        StringBuilder d = new();
        d.Append(CultureInfo.InvariantCulture, $"M{Mm(path.Start.XMm)} {Mm(path.Start.YMm)}");
        SheetPoint at = path.Start;
        foreach (PathPiece piece in path.Pieces)
        {
            if (piece.Centre is { } centre)
            {
                string radius = Mm(centre.DistanceMm(at));
                int isLarge = Math.Abs(piece.SweepRad) > Math.PI ? 1 : 0, isClockwise = piece.SweepRad < 0 ? 1 : 0;
                d.Append(CultureInfo.InvariantCulture, $"A{radius} {radius} 0 {isLarge} {isClockwise} {Mm(piece.End.XMm)} {Mm(piece.End.YMm)}");
            }
            else
            {
                d.Append(CultureInfo.InvariantCulture, $"L{Mm(piece.End.XMm)} {Mm(piece.End.YMm)}");
            }

            at = piece.End;
        }

        return d.Append(path.Closed ? "Z" : "").ToString();
    }

    private static string Name(LineRole role) => role.ToString().ToLowerInvariant();

    private static int CssWeight(LetterWeight weight) => weight switch
    {
        LetterWeight.Regular => 400,
        LetterWeight.Bold => 700,
    };

    // To a thousandth, without zeros at the end; a last digit's noise beside a half decides nothing. Whole numbers are put into
    // text several times faster than fractions.
    private static string Mm(double value)
    {
        long thousandths = (long)Math.Round(Math.Round(value * 1000, 6), MidpointRounding.AwayFromZero), size = Math.Abs(thousandths), part = size % 1000;
        string whole = (size / 1000).ToString(CultureInfo.InvariantCulture), sign = thousandths < 0 ? "-" : "";
        return part == 0 ? sign + whole : sign + whole + "." + part.ToString("000", CultureInfo.InvariantCulture).TrimEnd('0');
    }

    private static string Escaped(string text) => XmlText.Escaped(text.Replace('\n', ' '));
}
