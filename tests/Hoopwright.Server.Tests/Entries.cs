using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests;

/// <summary>Invented entries of a site book.</summary>
internal static class Entries
{
    public static string Id(DateTimeOffset at, int number) => at.UtcDateTime.ToString("yyyyMMdd'T'HHmmssfff'Z-'", CultureInfo.InvariantCulture) + string.Create(8, number, (letters, left) =>
    {
        for (int at = letters.Length - 1; at >= 0; at--, left /= 26) letters[at] = (char)('a' + (left % 26));
    });

    public static string Id(int number) => Id(new DateTimeOffset(2026, 4, 18, 10, 0, 0, TimeSpan.Zero), number);

    public static JsonElement Measured(int number, string value = "26' 0-1/2\"") => Of($$"""{ "id": "{{Id(number)}}", "kind": "measurement", "of": "frame.span", "value": {{JsonValue.Create(value).ToJsonString()}}, "by": "Ada" }""");

    public static JsonElement Of(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json, new JsonDocumentOptions { MaxDepth = 1_000 });
        return document.RootElement.Clone();
    }

    public static EntryPush Push(params ImmutableArray<JsonElement> entries) => new(entries);

    public static string IdOf(SharedEntry entry) => entry.Entry.GetProperty("id").GetString()!;
}
