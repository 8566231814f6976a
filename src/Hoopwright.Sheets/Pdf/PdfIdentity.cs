using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Hoopwright.Sheets.Pdf;

/// <summary>
/// PDFsharp names a file, its metadata and its font subsets at random. This puts names in their place that follow from the
/// content, each as long as the one it replaces so that no offset in the file moves.
/// </summary>
internal static partial class PdfIdentity
{
    /// <summary>The same file with names that follow from its content.</summary>
    internal static byte[] Settle(byte[] pdf)
    {
        // Latin-1 keeps each byte as one character, so places in the text are places in the file.
        string text = Encoding.Latin1.GetString(pdf);
        Dictionary<string, string> tags = [];
        foreach (Match match in FontTag().Matches(text))
        {
            if (!tags.ContainsKey(match.Value))
                tags[match.Value] = "AAAAA" + (char)('A' + tags.Count);
        }

        text = FontTag().Replace(text, match => tags[match.Value]);
        text = Identity().Replace(text, match => Zeroed(match.Value));
        text = MadeBy().Replace(text, "\n");
        string digest = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        string asUuid = $"{digest[..8]}-{digest[8..12]}-{digest[12..16]}-{digest[16..20]}-{digest[20..32]}".ToLowerInvariant();
        text = Identity().Replace(text, match => match.Length == 32 ? digest[..32] : asUuid);
        return Encoding.Latin1.GetBytes(text);
    }

    private static string Zeroed(string name) => string.Concat(name.Select(character => character == '-' ? '-' : '0'));

    [GeneratedRegex(@"[A-Z]{6}(?=\+Hoopwright#20Letters)", RegexOptions.CultureInvariant)]
    private static partial Regex FontTag();

    [GeneratedRegex(@"(?<=(Document|Instance)ID>uuid:)[0-9a-f-]{36}|(?<=/ID ?\[ ?(<[0-9A-F]{32}>)? ?<)[0-9A-F]{32}(?=>)", RegexOptions.CultureInvariant)]
    private static partial Regex Identity();

    /// <summary>A remark behind the last offset that names the machine's runtime.</summary>
    [GeneratedRegex(@"(?<=>>)% Created with PDFsharp[^\r\n]*\r?\n", RegexOptions.CultureInvariant)]
    private static partial Regex MadeBy();
}
