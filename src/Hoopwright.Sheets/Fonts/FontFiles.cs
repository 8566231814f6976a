using System.Collections.Concurrent;

namespace Hoopwright.Sheets.Fonts;

/// <summary>The font files carried inside this assembly.</summary>
internal static class FontFiles
{
    private static readonly ConcurrentDictionary<string, byte[]> Read = new();
    private static readonly ConcurrentDictionary<LetterWeight, string> Texts = new();

    /// <summary>TrueType, for measuring and for PDF.</summary>
    internal static byte[] TrueType(LetterWeight weight) => Resource($"HoopwrightLetters-{weight}.ttf");

    /// <summary>The same glyphs packed for the web, for SVG.</summary>
    internal static byte[] Woff2(LetterWeight weight) => Resource($"HoopwrightLetters-{weight}.woff2");

    /// <summary>The same as a page carries them within its text, in base 64.</summary>
    internal static string Woff2Text(LetterWeight weight) => Texts.GetOrAdd(weight, static wanted => Convert.ToBase64String(Woff2(wanted)));

    private static byte[] Resource(string name) => Read.GetOrAdd(name, static wanted =>
    {
        using Stream stream = typeof(FontFiles).Assembly.GetManifestResourceStream(wanted)
            ?? throw new InvalidOperationException($"The font file {wanted} is not inside the assembly.");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    });
}
