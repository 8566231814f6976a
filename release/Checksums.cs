using System.Security.Cryptography;

namespace Hoopwright.Release;

/// <summary>SHA256SUMS of a folder, as sha256sum writes and checks it.</summary>
internal static class Checksums
{
    private const string Name = "SHA256SUMS";

    /// <summary>Writes the sums of every file of a folder into it.</summary>
    /// <param name="folder">The folder.</param>
    public static void Write(string folder)
    {
        string file = Path.Combine(folder, Name);
        File.Delete(file);
        File.WriteAllText(file, string.Concat(Directory.GetFiles(folder).Order(StringComparer.Ordinal).Select(Line)));
    }

    private static string Line(string path)
    {
        using FileStream file = File.OpenRead(path);
        return $"{Convert.ToHexStringLower(SHA256.HashData(file))}  {Path.GetFileName(path)}\n";
    }
}
