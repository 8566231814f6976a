using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Packets;

/// <summary>The list of all files of a packet as one page that opens from the folder without a network: no script, nothing fetched.</summary>
public static class PacketIndex
{
    /// <summary>The name of the page.</summary>
    public const string Name = "index.html";

    /// <summary>What the page says of itself, by which one knows the folder of a packet.</summary>
    public const string Mark = "<meta name=\"generator\" content=\"Hoopwright packet\">";

    private const int LongestName = 200;

    private static readonly ImmutableArray<(string Folder, string Title)> Folders =
        [("", "To print, and the whole"), ("drawings/", "Drawings"), ("tables/", "Tables"), ("model/", "Model and map")];

    /// <summary>The page.</summary>
    /// <param name="tunnel">The name of the tunnel.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="files">All other files.</param>
    /// <param name="staying">Files of an earlier packet that stay in the folder, by their paths.</param>
    internal static PacketFile Write(string tunnel, DateOnly date, ImmutableArray<PacketFile> files, ImmutableArray<string> staying)
    {
        StringBuilder html = new();
        string name = Shortened(tunnel), day = date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        html.Append(CultureInfo.InvariantCulture, $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            {Mark}
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{name}: packet</title>
            <style>
            {Style()}
            </style>
            </head>
            <body>
            <main>
            <h1><bdi>{name}</bdi></h1>
            <p>Made {day}. All files of this packet; each opens from this folder, without a network.</p>
            <p class="caution">Before anyone digs, cuts, climbs or pulls film, read the cautions in the packet. Local code and a licensed engineer decide.</p>

            """);
        foreach ((string folder, string title) in Folders)
        {
            // Drawings of one name in several forms share a line.
            IGrouping<string, PacketFile>[] lines = [.. files.Where(file => file.Name[..(file.Name.LastIndexOf('/') + 1)] == folder).GroupBy(file => folder == "drawings/" ? Path.ChangeExtension(file.Name, null) : file.Name, StringComparer.Ordinal)];
            if (lines.Length == 0) continue;
            html.Append(CultureInfo.InvariantCulture, $"<h2>{title}</h2>\n<ul>\n");
            foreach (IGrouping<string, PacketFile> line in lines)
            {
                string links = string.Join(" ", line.Select(file => $"<a href=\"{XmlText.Escaped(file.Name)}\">{XmlText.Escaped(folder == "drawings/" ? Ending(file) : file.Name[folder.Length..])}</a>"));
                html.Append(CultureInfo.InvariantCulture, $"<li><span><bdi>{XmlText.Escaped(line.First().Says)}</bdi></span> <span class=\"files\">{links}</span></li>\n");
            }
            html.Append("</ul>\n");
        }
        if (!staying.IsEmpty)
        {
            html.Append("<h2>From an earlier packet</h2>\n<p class=\"caution\">These files were in the folder before and were not made anew. They may tell of another plan: do not build by them before you know.</p>\n<ul>\n");
            foreach (string path in staying) html.Append(CultureInfo.InvariantCulture, $"<li><a href=\"{Link(path)}\">{XmlText.Escaped(path)}</a></li>\n");
            html.Append("</ul>\n");
        }
        html.Append("</main>\n</body>\n</html>\n");
        return new PacketFile(Name, [.. Encoding.UTF8.GetBytes(html.ToString())]) { Says = "This list" };
    }

    // A file of before may have any name.
    private static string Link(string path) => XmlText.Escaped(string.Join('/', path.Split('/').Select(Uri.EscapeDataString)));

    private static string Ending(PacketFile file) => Path.GetExtension(file.Name)[1..].ToUpperInvariant();

    private static string Shortened(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        if (line.Length > LongestName) line = string.Concat(line.AsSpan(0, char.IsHighSurrogate(line[LongestName - 1]) ? LongestName - 1 : LongestName), "…");
        return XmlText.Escaped(line);
    }

    private static string Style()
    {
        string ink = InkColour.Of(Ink.Black).Hex, film = InkColour.Of(Ink.Film).Hex, zinc = InkColour.Of(Ink.Zinc).Hex, brick = InkColour.Of(Ink.Brick).Hex, tint = InkColour.Of(Ink.ZincTint).Hex;
        return $$"""
            :root { color-scheme: light dark; --ink: {{ink}}; --paper: #fbfaf6; --line: {{tint}}; --link: {{film}}; --quiet: {{zinc}}; }
            @media (prefers-color-scheme: dark) { :root { --ink: #fbfaf6; --paper: {{ink}}; --line: #3a4442; --link: #9cc7dd; --quiet: #a9b3b1; } }
            body { margin: 0; background: var(--paper); color: var(--ink); font: 18px/1.45 "Atkinson Hyperlegible Next", system-ui, sans-serif; }
            main { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1rem 4rem; }
            h1 { font-size: 1.6rem; line-height: 1.2; overflow-wrap: anywhere; } h2 { font-size: 1.15rem; margin: 2rem 0 .4rem; border-bottom: 2px solid var(--quiet); }
            ul { list-style: none; margin: 0; padding: 0; } li { display: flex; flex-wrap: wrap; justify-content: space-between; gap: .2rem 1rem; padding: .5rem 0; border-bottom: 1px solid var(--line); overflow-wrap: anywhere; }
            .files { display: flex; flex-wrap: wrap; gap: .2rem 1rem; } a { color: var(--link); } .caution { border-left: 6px solid {{brick}}; padding: .2rem 0 .2rem .8rem; }
            @media print { body { font-size: 11pt; } }
            """;
    }
}
