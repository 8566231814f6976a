using System.Text.RegularExpressions;

namespace Hoopwright.Sheets.Packets;

/// <summary>Which kind of file of a packet a name is, for those who find an earlier packet in a folder.</summary>
public static partial class PacketNames
{
    /// <summary>The kind of a file of a packet.</summary>
    /// <param name="path">Its path in the folder, with forward slashes.</param>
    /// <returns>The kind; null for what no packet writes, and for the list of files, which is always written anew.</returns>
    public static PacketForm? FormOf(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path switch
        {
            "results.json" or "plan.json" => PacketForm.Json,
            "upkeep.ics" => PacketForm.Ics,
            "model/tunnel.glb" => PacketForm.Gltf,
            "model/site.geojson" => PacketForm.GeoJson,
            "tables/00-tables.xlsx" => PacketForm.Xlsx,
            _ when Pages().IsMatch(path) => PacketForm.Pdf,
            _ when Drawn().Match(path) is { Success: true } drawn => drawn.Groups["ending"].Value == "svg" ? PacketForm.Svg : PacketForm.Dxf,
            _ when Rows().IsMatch(path) => PacketForm.Csv,
            _ => null,
        };
    }

    [GeneratedRegex(@"\A(packet|crew-[a-z]{2}|cards(-[a-z]{2})?|upkeep(-[a-z]{2})?)\.pdf\z", RegexOptions.CultureInvariant)]
    private static partial Regex Pages();

    [GeneratedRegex(@"\Adrawings/[^/]+\.(?<ending>svg|dxf)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Drawn();

    [GeneratedRegex(@"\Atables/[^/]+\.csv\z", RegexOptions.CultureInvariant)]
    private static partial Regex Rows();
}
