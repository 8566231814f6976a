using System.Text;

namespace Hoopwright.Sheets.Tables;

/// <summary>File names that every disk takes.</summary>
internal static class FileNames
{
    /// <summary>A title as a file name: small letters, digits, dots and single hyphens; a capital within a word begins a new one.</summary>
    public static string Of(string title)
    {
        var name = new StringBuilder();
        foreach (char each in title)
        {
            if (char.IsAsciiLetterUpper(each) && name.Length > 0 && name[^1] != '-') name.Append('-');
            if (char.IsAsciiLetterOrDigit(each) || each == '.') name.Append(char.ToLowerInvariant(each));
            else if (name.Length > 0 && name[^1] != '-') name.Append('-');
        }
        return name.ToString().Trim('-', '.');
    }
}
