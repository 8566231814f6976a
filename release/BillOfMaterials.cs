using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Release;

/// <summary>A bill of materials (CycloneDX) that is dated with the sources and not with the clock.</summary>
internal static class BillOfMaterials
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>Dates it.</summary>
    /// <param name="file">The bill.</param>
    /// <param name="date">The date.</param>
    public static void Date(string file, DateTimeOffset date)
    {
        JsonNode bill = JsonNode.Parse(File.ReadAllText(file)) ?? throw new InvalidDataException($"{file} is no bill of materials.");
        bill["metadata"]!["timestamp"] = date.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        bill.AsObject().Remove("serialNumber");
        File.WriteAllText(file, bill.ToJsonString(Indented) + "\n");
    }
}
