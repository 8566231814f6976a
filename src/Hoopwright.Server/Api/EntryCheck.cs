using System.Buffers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Hoopwright.SiteBooks;

namespace Hoopwright.Server.Api;

/// <summary>
/// Looks at an entry before it is kept: shape, size and clock. What was measured is not judged here, and fields of newer versions are kept as they are.
/// </summary>
internal static partial class EntryCheck
{
    /// <summary>A device's clock may run ahead by this much without a word; phones that ask the network for the time are within seconds (common practice, no source).</summary>
    public static readonly TimeSpan ClockTolerance = TimeSpan.FromMinutes(2);

    private const int Depth = 8;

    private static readonly JsonWriterOptions Compact = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The entry as it is kept, or why it is not.</summary>
    public static (IncomingEntry? Kept, EntryReceipt? Refused) Look(JsonElement entry, DateTimeOffset now)
    {
        if (entry.ValueKind != JsonValueKind.Object) return (null, Refuse(null, "An entry is a group of fields in braces."));
        if (Text(entry, "id") is not { } id || !Id().IsMatch(id)) return (null, Refuse(null, "An entry needs an id such as 20260418T101500123Z-kqzvmxwp, of at most 100 letters, digits and marks."));
        if (Text(entry, "kind") is not { } kind || !Kind().IsMatch(kind)) return (null, Refuse(id, "An entry needs a kind, one word."));
        ArrayBufferWriter<byte> body = new();
        try
        {
            using Utf8JsonWriter writer = new(body, Compact);
            if (WriteSorted(writer, entry, 0) is { } wrong) return (null, Refuse(id, wrong));
        }
        catch (InvalidOperationException)
        {
            return (null, Refuse(id, "A text of the entry holds half a character."));
        }
        if (body.WrittenCount > SharingLimits.EntryBytes) return (null, Refuse(id, $"An entry has at most {SharingLimits.EntryBytes >> 10} KiB with its picture. Make the picture smaller."));
        if (kind == "photo" && Text(entry, "value") is { Length: > 0 } value && !PictureCheck.IsAddress(value)) return (null, Refuse(id, "The photo is no picture."));
        // Ids that a person typed say no time; they are kept as they are.
        TimeSpan? ahead = SiteBookIds.TimeOf(id) - now;
        return (new IncomingEntry(id, Encoding.UTF8.GetString(body.WrittenSpan), SHA256.HashData(body.WrittenSpan), ahead > ClockTolerance ? (long)ahead.Value.TotalSeconds : null), null);
    }

    private static EntryReceipt Refuse(string? id, string why) => new(EntryOutcome.Refused, id, Why: why);

    private static string? Text(JsonElement entry, string name) => entry.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String && Whole(value) is { } text ? text : null;

    private static string? Whole(JsonElement value)
    {
        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    // Names in ordinal order, so that the same content is the same text whoever wrote it. Returns what is wrong, if anything.
    private static string? WriteSorted(Utf8JsonWriter writer, JsonElement value, int depth)
    {
        if (depth > Depth) return $"Groups and lists of an entry may stand in each other {Depth} deep.";
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                writer.WriteStartObject();
                foreach (JsonProperty property in value.EnumerateObject().OrderBy(each => each.Name, StringComparer.Ordinal))
                {
                    writer.WritePropertyName(property.Name);
                    if (WriteSorted(writer, property.Value, depth + 1) is { } wrong) return wrong;
                }
                writer.WriteEndObject();
                return null;
            case JsonValueKind.Array:
                writer.WriteStartArray();
                foreach (JsonElement item in value.EnumerateArray())
                {
                    if (WriteSorted(writer, item, depth + 1) is { } wrong) return wrong;
                }
                writer.WriteEndArray();
                return null;
            case JsonValueKind.String:
                string text = value.GetString()!;
                if (text.StartsWith("data:", StringComparison.OrdinalIgnoreCase) && !PictureCheck.IsAddress(text))
                    return $"A picture is a JPEG, PNG or WebP of at most {SharingLimits.PictureCharacters} characters as a data address; this is none.";
                writer.WriteStringValue(text);
                return null;
            default:
                value.WriteTo(writer);
                return null;
        }
    }

    [GeneratedRegex(@"^[\x21-\x7E]{1,100}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Id();

    [GeneratedRegex(@"^[A-Za-z]{1,40}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Kind();
}
