using Hoopwright.Sheets.Fonts;
using PdfSharp.Fonts;

namespace Hoopwright.Sheets.Pdf;

/// <summary>Gives PDFsharp the faces carried in this assembly, and only those, so that no machine's own fonts get in.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    internal const string Family = "Hoopwright Letters";
    private static readonly Lock Gate = new();

    /// <summary>Makes the faces known to PDFsharp, once per process; where the host has its own resolver, beside it.</summary>
    internal static void Register()
    {
        lock (Gate)
        {
            if (GlobalFontSettings.FontResolver is EmbeddedFonts || GlobalFontSettings.FallbackFontResolver is EmbeddedFonts)
                return;
            if (GlobalFontSettings.FontResolver is null)
                GlobalFontSettings.FontResolver = new EmbeddedFonts();
            else
                GlobalFontSettings.FallbackFontResolver = new EmbeddedFonts();
        }
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) =>
        Enum.GetValues<LetterWeight>().Where(weight => faceName == FaceName(weight)).Select(FontFiles.TrueType).FirstOrDefault();

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName == Family ? new FontResolverInfo(FaceName(bold ? LetterWeight.Bold : LetterWeight.Regular)) : null;

    private static string FaceName(LetterWeight weight) => $"{Family} {weight}";
}
