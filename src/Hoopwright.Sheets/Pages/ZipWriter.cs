using System.Collections.Immutable;
using System.IO.Compression;

namespace Hoopwright.Sheets.Pages;

/// <summary>Packs files into a zip. The same files give the same bytes: names sorted, one fixed time on all.</summary>
public static class ZipWriter
{
    // The earliest time a zip can carry; a real one would differ between two runs.
    private static readonly DateTimeOffset FixedTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The zip's bytes.</summary>
    public static byte[] Write(ImmutableArray<PacketFile> files)
    {
        using MemoryStream stream = new();
        using (ZipArchive zip = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (PacketFile file in files.OrderBy(file => file.Name, StringComparer.Ordinal))
            {
                ZipArchiveEntry entry = zip.CreateEntry(file.Name, CompressionLevel.Optimal);
                entry.LastWriteTime = FixedTime;
                using Stream into = entry.Open();
                into.Write(file.Bytes.AsSpan());
            }
        }
        return stream.ToArray();
    }
}
