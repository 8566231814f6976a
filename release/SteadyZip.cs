using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Hoopwright.Release;

/// <summary>Zip files that are the same bytes for the same contents: names in order, one date, nothing random.</summary>
internal static partial class SteadyZip
{
    private const int Executable = 0b111_101_101, Plain = 0b110_100_100, FileKind = 0x8000;

    /// <summary>Puts a folder into a zip file, under the folder's own name.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="zip">The zip file.</param>
    /// <param name="date">The date of every entry.</param>
    public static void OfFolder(string folder, string zip, DateTimeOffset date)
    {
        string above = Path.GetDirectoryName(Path.GetFullPath(folder)) ?? throw new ArgumentException("It has no folder above it.", nameof(folder));
        Write(zip, date, Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(file => (Path.GetRelativePath(above, file).Replace('\\', '/'), File.ReadAllBytes(file), IsProgram(file))));
    }

    /// <summary>Writes a NuGet package anew without what is random in it: the name of its core properties and the names of its relations.</summary>
    /// <param name="package">The package.</param>
    /// <param name="date">The date of every entry.</param>
    public static void OfPackage(string package, DateTimeOffset date)
    {
        List<(string Name, byte[] Bytes, bool IsProgram)> entries = [];
        using (ZipArchive read = ZipFile.OpenRead(package))
        {
            foreach (ZipArchiveEntry entry in read.Entries)
            {
                using MemoryStream bytes = new();
                using (Stream from = entry.Open()) from.CopyTo(bytes);
                bool isRelations = entry.FullName == "_rels/.rels";
                entries.Add((CoreProperties().Replace(entry.FullName, "${folder}core.psmdcp"), isRelations ? Relations(bytes.ToArray()) : bytes.ToArray(), false));
            }
        }
        Write(package, date, entries);
    }

    private static byte[] Relations(byte[] bytes)
    {
        int number = 0;
        string text = CoreProperties().Replace(Encoding.UTF8.GetString(bytes), "${folder}core.psmdcp");
        return Encoding.UTF8.GetBytes(RelationId().Replace(text, _ => FormattableString.Invariant($"Id=\"R{++number}\"")));
    }

    private static void Write(string zip, DateTimeOffset date, IEnumerable<(string Name, byte[] Bytes, bool IsProgram)> entries)
    {
        (string Name, byte[] Bytes, bool IsProgram)[] ordered = [.. entries.OrderBy(entry => entry.Name, StringComparer.Ordinal)];
        using FileStream file = File.Create(zip);
        using ZipArchive archive = new(file, ZipArchiveMode.Create);
        foreach ((string name, byte[] bytes, bool isProgram) in ordered)
        {
            ZipArchiveEntry entry = archive.CreateEntry(name, CompressionLevel.SmallestSize);
            entry.LastWriteTime = date;
            entry.ExternalAttributes = (FileKind | (isProgram ? Executable : Plain)) << 16;
            using Stream to = entry.Open();
            to.Write(bytes);
        }
    }

    private static bool IsProgram(string file) => Path.GetFileName(file) is "hoopwright" or "Hoopwright.Server";

    [GeneratedRegex("(?<folder>package/services/metadata/core-properties/)[0-9a-f]+\\.psmdcp", RegexOptions.CultureInvariant)]
    private static partial Regex CoreProperties();

    [GeneratedRegex("Id=\"R[0-9A-F]+\"", RegexOptions.CultureInvariant)]
    private static partial Regex RelationId();
}
