using CsCheck;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Hoopwright.Sheets.Tests.Lettering;

public sealed class TypefaceTests
{
    private const string Needed =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .,;:!?'\"()[]/+-=%&#*@_½¼¾⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉⁄′″°×±≥≤≈≠√π→←↑↓–—−…·•☐‘’“”\u200A\u202F\u2009\u00A0áéíóúüñÁÉÍÓÚÜÑ¿¡";

    [Fact]
    public void Both_weights_have_every_character_that_drawings_and_documents_use()
    {
        foreach (LetterWeight weight in Enum.GetValues<LetterWeight>())
            Assert.Equal("", string.Concat(Needed.Where(character => !Typeface.Of(weight).Has(character.ToString()))));
    }

    [Fact]
    public void Figures_all_have_one_width_in_both_weights()
    {
        foreach (LetterWeight weight in Enum.GetValues<LetterWeight>())
            Assert.Single("0123456789".Select(figure => Typeface.Of(weight).WidthMm(figure.ToString(), 1)).Distinct());
    }

    /// <summary>The widths are read from the file by another reader (PdfPig) out of a page that was written.</summary>
    [Fact]
    public void Measured_widths_are_those_that_another_reader_finds_in_the_pdf() =>
        Gen.Char[Needed].Array[1, 30].Select(letters => "x" + new string(letters).Replace(' ', '-') + "x").Sample(text =>
        {
            DrawingBuilder sheet = new("Trial", "", 400, 40);
            sheet.On("any").Text(new SheetPoint(10, 20), text, capitalMm: 3);
            double measuredMm = Typeface.Of(LetterWeight.Regular).WidthMm(text, Typeface.EmForCapitalsMm(3));
            if (measuredMm > 380) return;
            using PdfDocument pdf = PdfDocument.Open(PdfWriter.Write([new PdfSheet(sheet.Build())], new PdfDetails("Trial", "", default)));
            IReadOnlyList<Letter> letters = pdf.GetPage(1).Letters;
            double readMm = (letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X) * 25.4 / 72;
            // The type size stands in the file to three decimals of a millimetre.
            Assert.Equal(readMm, measuredMm, 0.02);
        }, iter: 60, threads: 1);

    [Theory]
    [InlineData("6-11/16\"", "6\u200A¹¹⁄₁₆\"")]
    [InlineData("5' 6-1/2\"", "5' 6\u200A¹⁄₂\"")]
    [InlineData("5' 0 3/4\"", "5' 0\u200A³⁄₄\"")]
    [InlineData("1/8\" = 1'-0\"", "¹⁄₈\" = 1'-0\"")]
    [InlineData("63/64", "⁶³⁄₆₄")]
    [InlineData("3/32", "³⁄₃₂")]
    [InlineData("2026/3/4", "2026/3/4")]
    [InlineData("9/8\"", "9/8\"")]
    [InlineData("1/3", "1/3")]
    [InlineData("page 1/20", "page 1/20")]
    [InlineData("1:125", "1:125")]
    public void Tape_fractions_are_set_small_and_nothing_else_is(string text, string set) => Assert.Equal(set, TapeFractions.Set(text));
}
