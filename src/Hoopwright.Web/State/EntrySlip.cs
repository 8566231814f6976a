using System.Buffers.Text;
using System.IO.Compression;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>A few entries of a site book, small enough for a code that another phone reads with its camera.</summary>
/// <param name="Plan">What the plan is called.</param>
/// <param name="Entries">The entries as they stand in the plan.</param>
public sealed record EntrySlip(string Plan, JsonArray Entries)
{
    // What a phone reads off another one in the open, and what no slip of that size unpacks to.
    private const int LongestAddress = 900, MostBytes = 64 * 1024;

    private static readonly JsonSerializerOptions Compact = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The slip as letters that an address may hold: JSON, deflated (RFC 1951), in base 64 for addresses (RFC 4648).</summary>
    public string Pack()
    {
        using MemoryStream packed = new();
        using (DeflateStream deflate = new(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            deflate.Write(Encoding.UTF8.GetBytes(new JsonArray(Plan, Entries.DeepClone()).ToJsonString(Compact)));
        }
        return Base64Url.EncodeToString(packed.GetBuffer().AsSpan(0, (int)packed.Length));
    }

    /// <summary>Reads a slip; null when the letters are none, or hold anything but entries.</summary>
    /// <param name="letters">What <see cref="Pack"/> made.</param>
    public static EntrySlip? Unpack(string letters)
    {
        try
        {
            using MemoryStream packed = new(Base64Url.DecodeFromChars(letters));
            using DeflateStream inflate = new(packed, CompressionMode.Decompress);
            byte[] room = new byte[MostBytes + 1];
            int length = inflate.ReadAtLeast(room, room.Length, throwOnEndOfStream: false);
            if (length > MostBytes || JsonNode.Parse(room.AsSpan(0, length)) is not JsonArray { Count: 2 } pair || pair[0] is not JsonValue name || pair[1] is not JsonArray entries) return null;
            bool areEntries = entries.Count > 0 && entries.All(each => each is JsonObject entry && entry["id"] is JsonValue id && id.TryGetValue<string>(out _));
            return areEntries && name.TryGetValue(out string? plan) ? new(plan, (JsonArray)entries.DeepClone()) : null;
        }
        catch (Exception fault) when (fault is FormatException or InvalidDataException or JsonException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Slips with the entries of a plan, the latest first, each with as many as it takes; pictures are left out, they are too large.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="address">Where a slip is taken in, up to its letters.</param>
    /// <param name="most">How many slips at most.</param>
    public static IEnumerable<(string Address, int Entries)> Of(JsonNode plan, string address, int most)
    {
        JsonNode[] left = [.. ((PlanPath.At(plan, "siteBook") as JsonArray) ?? []).OfType<JsonObject>().Where(entry => PlanPath.TextAt(entry, "kind") != "photo" && PlanPath.TextAt(entry, "id").Length > 0)
            .OrderByDescending(entry => PlanPath.TextAt(entry, "id"), StringComparer.Ordinal)];
        string name = PlanPath.TextAt(plan, "name");
        while (left.Length > 0 && most-- > 0)
        {
            int fits = 0;
            string made = "";
            for (int count = 1; count <= left.Length; count++)
            {
                string tried = address + new EntrySlip(name, new([.. left[..count].Select(entry => entry.DeepClone())])).Pack();
                if (tried.Length > LongestAddress) break;
                (fits, made) = (count, tried);
            }
            // One that is too long by itself goes by file or by the server.
            if (fits > 0) yield return (made, fits);
            left = left[Math.Max(1, fits)..];
        }
    }
}
