using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;

namespace Hoopwright.Cli;

/// <summary>
/// Files of an earlier packet in the folder that a new one goes to. Those of a kind that is written now are taken away, so that no sheet of another tunnel
/// stays among the new ones; those of other kinds stay, and it is said that they do.
/// </summary>
internal static class EarlierPacket
{
    private const int MostNamed = 6;

    /// <summary>The files, by their paths in the folder; none where no packet was written to it.</summary>
    public static ImmutableArray<string> In(string folder)
    {
        if (!IsPacket(folder)) return [];
        return [.. Files.Below(folder, ["", "drawings", "tables", "model"]).Where(path => PacketNames.FormOf(path) is not null)];
    }

    /// <summary>Takes away what the new packet has written otherwise.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="choice">What goes into the new packet, and what was there before.</param>
    /// <param name="files">The files of the new packet.</param>
    /// <returns>How many were taken away.</returns>
    public static int Clear(string folder, PacketChoice choice, ImmutableArray<PacketFile> files)
    {
        HashSet<string> kept = [.. files.Select(file => file.Name), .. choice.Staying];
        string[] old = [.. choice.Earlier.Where(path => !kept.Contains(path))];
        foreach (string path in old) Files.Delete(Path.Combine(folder, path));
        return old.Length;
    }

    /// <summary>What is said of files that stay; null where none does.</summary>
    public static Diagnostic? Told(string folder, PacketChoice choice)
    {
        if (choice.Staying is not { Length: > 0 } staying) return null;
        string more = staying.Length > MostNamed ? string.Create(CultureInfo.InvariantCulture, $" and {staying.Length - MostNamed} more") : "";
        return new Diagnostic("packet.earlier-files", Severity.Warning, folder,
            "Files of an earlier packet stay in the folder. They are not made anew and may tell of another plan.",
            string.Join(", ", staying.Take(MostNamed)) + more, "the whole packet, without --only, or a folder of its own");
    }

    private static bool IsPacket(string folder) =>
        (File.Exists(Path.Combine(folder, "results.json")) && File.Exists(Path.Combine(folder, "packet.pdf")))
        || (File.Exists(Path.Combine(folder, PacketIndex.Name)) && Files.ReadText(Path.Combine(folder, PacketIndex.Name)).Contains(PacketIndex.Mark, StringComparison.Ordinal));
}
