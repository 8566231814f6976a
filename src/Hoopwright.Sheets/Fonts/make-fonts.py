#!/usr/bin/env python3
"""Makes the lettering of drawings and documents from Atkinson Hyperlegible Next (SIL Open Font License 1.1).

Run by hand when the source face changes; the results are kept beside this file. Needs fontTools and brotli.
    npm install @expo-google-fonts/atkinson-hyperlegible-next
    python3 make-fonts.py node_modules/@expo-google-fonts/atkinson-hyperlegible-next
What is changed, and why:
  - figures are tabular, so that columns of numbers line up in every program, and kerning is dropped, so that a
    text is exactly as wide as the sum of its advances, which is what the placing of texts measures;
  - raised and lowered small figures and a fraction slash, so that any tape fraction is one piece of plain text;
  - the marks the source lacks: prime, double prime, arrows, ballot box, eighths, narrow spaces;
  - a family name of its own, since it is no longer the source face.
"""
import sys
from fontTools.misc.transform import Transform
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.pens.transformPen import TransformPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

CAP, DIGITS, SMALL = 668, ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"], 0.58
FAMILY = "Hoopwright Letters"


def build(folder, name, source, heavier, stroke):
    def open_face(weight):
        return TTFont(f"{folder}/{weight}/AtkinsonHyperlegibleNext_{weight}.ttf", recalcTimestamp=False)

    font, bold = open_face(source), open_face(heavier)
    cmap, widths, glyphs, shapes = font.getBestCmap(), font["hmtx"].metrics, font["glyf"], font.getGlyphSet()
    heavy = bold.getGlyphSet()

    def add(code, glyph, advance, draw):
        pen = TTGlyphPen(None)
        draw(pen)
        glyphs[glyph] = pen.glyph()
        glyphs[glyph].recalcBounds(glyphs)
        widths[glyph] = (advance, getattr(glyphs[glyph], "xMin", 0) if glyphs[glyph].numberOfContours else 0)
        for table in font["cmap"].tables:
            table.cmap[code] = glyph

    def put(pen, glyph_set, glyph, transform):
        outline = DecomposingRecordingPen(glyph_set)
        glyph_set[glyph].draw(outline)
        outline.replay(TransformPen(pen, transform))

    def ring(pen, *contours):
        for contour in contours:
            pen.moveTo(contour[0])
            for point in contour[1:]:
                pen.lineTo(point)
            pen.closePath()

    small = round(632 * SMALL)
    slash, overhang = 180, 203

    def raised(digit, x=0):
        return lambda pen: put(pen, heavy, DIGITS[digit] + ".tf", Transform(SMALL, 0, 0, SMALL, x, CAP * (1 - SMALL)))

    def lowered(digit, x=0):
        return lambda pen: put(pen, heavy, DIGITS[digit] + ".tf", Transform(SMALL, 0, 0, SMALL, x, 0))

    def bar(x=0):
        return lambda pen: put(pen, shapes, "fraction", Transform(1, 0, 0, 1, x - overhang, 0))

    drawn_bar = TTGlyphPen(None)
    bar()(drawn_bar)
    for value, code in enumerate([0x2070, 0xB9, 0xB2, 0xB3, 0x2074, 0x2075, 0x2076, 0x2077, 0x2078, 0x2079]):
        add(code, f"raised.{value}", small, raised(value))
        add(0x2080 + value, f"lowered.{value}", small, lowered(value))
    for code, top, bottom in [(0xBC, 1, 4), (0xBD, 1, 2), (0xBE, 3, 4), (0x215B, 1, 8), (0x215C, 3, 8), (0x215D, 5, 8), (0x215E, 7, 8)]:
        def whole(pen, top=top, bottom=bottom):
            raised(top)(pen)
            bar(small)(pen)
            lowered(bottom, small + slash)(pen)
        add(code, f"fraction.{top}.{bottom}", 2 * small + slash, whole)
    glyphs["fraction.slash"] = drawn_bar.glyph()
    glyphs["fraction.slash"].recalcBounds(glyphs)
    widths["fraction.slash"] = (slash, glyphs["fraction.slash"].xMin)
    for table in font["cmap"].tables:
        table.cmap[0x2044] = "fraction.slash"
        for value, digit in enumerate(DIGITS):
            table.cmap[0x30 + value] = digit + ".tf"
        table.cmap.setdefault(0xB5, table.cmap.get(0x3BC, "u"))

    lean = Transform(1, 0, 0.28, 1, -0.28 * 447, 0)
    add(0x2032, "prime", widths["quotesingle"][0] + 70, lambda pen: put(pen, shapes, "quotesingle", lean))
    add(0x2033, "doubleprime", widths["quotedbl"][0] + 70, lambda pen: put(pen, shapes, "quotedbl", lean))
    for code, glyph, advance in [(0x200A, "hairspace", 70), (0x202F, "narrowspace", 140)]:
        add(code, glyph, advance, lambda pen: None)

    middle, half = 248, stroke / 2
    arrow = [(60, middle - half), (560, middle - half), (560, middle - 150), (780, middle), (560, middle + 150),
             (560, middle + half), (60, middle + half)]
    flip = lambda points: points[::-1]
    add(0x2192, "arrowright", 840, lambda pen: ring(pen, flip(arrow)))
    add(0x2190, "arrowleft", 840, lambda pen: ring(pen, [(840 - x, y) for x, y in arrow]))
    up = [(x - 60, y) for x, y in [(60 + 250 + (y - middle), (x - 60) * 668 / 720) for x, y in arrow]]
    add(0x2191, "arrowup", 500, lambda pen: ring(pen, up))
    add(0x2193, "arrowdown", 500, lambda pen: ring(pen, flip([(x, 668 - y) for x, y in up])))
    outer = [(60, 0), (60, 668), (728, 668), (728, 0)]
    inner = [(60 + stroke, stroke), (728 - stroke, stroke), (728 - stroke, 668 - stroke), (60 + stroke, 668 - stroke)]
    add(0x2610, "ballotbox", 788, lambda pen: ring(pen, outer, inner))

    for tag in ["GSUB", "GPOS", "GDEF", "STAT"]:
        if tag in font:
            del font[tag]
    names = {1: FAMILY, 2: name, 3: f"{FAMILY} {name} 1.0", 4: f"{FAMILY} {name}", 6: f"HoopwrightLetters-{name}", 16: FAMILY, 17: name,
             10: "Made from Atkinson Hyperlegible Next; see make-fonts.py for what was changed."}
    for key, text in names.items():
        font["name"].setName(text, key, 3, 1, 0x409)
    font["name"].names = [n for n in font["name"].names if n.nameID in (0, 1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 13, 14, 16, 17)]
    font["maxp"].numGlyphs = len(font.getGlyphOrder())
    font.save(f"HoopwrightLetters-{name}.ttf")
    font.flavor = "woff2"
    font.save(f"HoopwrightLetters-{name}.woff2")


build(sys.argv[1], "Regular", "400Regular", "600SemiBold", 62)
build(sys.argv[1], "Bold", "700Bold", "800ExtraBold", 84)
