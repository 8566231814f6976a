using Hoopwright.Sharing;

namespace Hoopwright.Server.Api;

/// <summary>Tells whether a text is a small picture as a data address: by what it says it is, and by its first bytes.</summary>
internal static class PictureCheck
{
    // First bytes: JPEG by ISO/IEC 10918-1 (start of image, marker), PNG by its specification (section 5.2), WebP by RFC 9649 (RIFF header).
    private static readonly (string Start, byte[] Bytes, int At)[] Kinds =
    [
        ("data:image/jpeg;base64,", [0xFF, 0xD8, 0xFF], 0),
        ("data:image/png;base64,", [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A], 0),
        ("data:image/webp;base64,", "WEBP"u8.ToArray(), 8),
    ];

    public static bool IsAddress(string text)
    {
        if (text.Length > SharingLimits.PictureCharacters) return false;
        foreach ((string start, byte[] first, int at) in Kinds)
        {
            if (!text.StartsWith(start, StringComparison.Ordinal)) continue;
            byte[] bytes = new byte[text.Length];
            return Convert.TryFromBase64Chars(text.AsSpan(start.Length), bytes, out int length) && bytes.AsSpan(0, length) is var picture && picture.Length > at + first.Length && picture[at..].StartsWith(first);
        }
        return false;
    }
}
