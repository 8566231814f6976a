using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>Plan files on their way in and out.</summary>
public static class PlanText
{
    private static readonly JsonDocumentOptions OnlyOnce = new() { AllowDuplicateProperties = false };

    /// <summary>An identity for a plan that is new on the shelf.</summary>
    public static string NewId() => Guid.NewGuid().ToString("n")[..12];

    /// <summary>
    /// The text of a plan file as the browser reads it: spaces stand for comments and for commas before an end, so that every
    /// place in it is as in the file. Null when it is no group of fields at all.
    /// </summary>
    /// <param name="text">The file.</param>
    public static string? Plain(string text)
    {
        text = text.TrimStart('\ufeff');
        return (IsGroup(text) ?? IsGroup(text = Blanked(text))) is true ? text : null;
    }

    // Null when it is no JSON.
    private static bool? IsGroup(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return document.RootElement.ValueKind == JsonValueKind.Object;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>
    /// A plan's text as a tree to look values up in. Where a field stands twice both values are there as a list, which is no
    /// value of any field, so that the choice stays with the reader; of groups that stand twice so do the fields in both.
    /// </summary>
    /// <param name="document">The text.</param>
    public static JsonNode Tree(string document) => TryTree(document, out JsonNode tree, out _) ? tree : new JsonObject();

    /// <summary>The same, with the fields that stand twice; false when the text is no group of fields.</summary>
    /// <param name="document">The text.</param>
    /// <param name="tree">The tree.</param>
    /// <param name="doubled">Each such field with all its values: what a browser, which keeps the last, must be told.</param>
    internal static bool TryTree(string document, out JsonNode tree, out ImmutableArray<Change> doubled)
    {
        doubled = [];
        if (Single(document) is { } single)
        {
            tree = single;
            return single is JsonObject;
        }
        tree = new JsonObject();
        try
        {
            List<Change> found = [];
            using JsonDocument parsed = JsonDocument.Parse(document);
            if (Tree(parsed.RootElement, "", found) is not JsonObject group) return false;
            tree = group;
            doubled = [.. found.GroupBy(change => change.Path).Select(same => same.Last())];
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    // Nothing stands twice in nearly every text; a tree of it is made as it is looked at, which a long site book never is whole.
    private static JsonNode? Single(string document)
    {
        try
        {
            return JsonNode.Parse(document, documentOptions: OnlyOnce);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static JsonNode? Tree(JsonElement element, string path, List<Change> doubled)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                JsonObject group = [];
                HashSet<string> lists = [];
                foreach (JsonProperty field in element.EnumerateObject())
                    Put(group, lists, field.Name, Tree(field.Value, Under(path, field.Name), doubled), path, doubled);
                return group;
            case JsonValueKind.Array:
                return new JsonArray([.. element.EnumerateArray().Select((item, index) => Tree(item, $"{path}[{index}]", doubled))]);
            default:
                return element.ValueKind == JsonValueKind.Null ? null : JsonValue.Create(element.Clone());
        }
    }

    private static void Put(JsonObject group, HashSet<string> lists, string name, JsonNode? value, string path, List<Change> doubled)
    {
        if (!group.TryGetPropertyValue(name, out JsonNode? before))
        {
            group[name] = value;
            return;
        }
        if (before is JsonObject one && value is JsonObject other)
        {
            HashSet<string> within = [];
            foreach ((string field, JsonNode? each) in other) Put(one, within, field, each?.DeepClone(), Under(path, name), doubled);
            // Fields of the first alone would be lost with it.
            foreach ((string field, JsonNode? each) in one) doubled.Add(new Change(Under(Under(path, name), field), each?.ToJsonString()));
            return;
        }
        if (lists.Add(name)) group[name] = before = new JsonArray(before?.DeepClone());
        ((JsonArray)before!).Add(value);
        doubled.Add(new Change(Under(path, name), before.ToJsonString()));
    }

    private static string Under(string path, string name) => path.Length == 0 ? name : path + "." + name;

    // Line ends stay within comments, so that lines are counted alike.
    private static string Blanked(string text)
    {
        char[] plain = text.ToCharArray();
        int comma = -1;
        for (int at = 0; at < plain.Length; at++)
        {
            switch (plain[at])
            {
                case '"':
                    comma = -1;
                    for (at++; at < plain.Length && plain[at] != '"'; at++) if (plain[at] == '\\') at++;
                    break;
                case '/' when at + 1 < plain.Length && plain[at + 1] is '/' or '*':
                    bool isLine = plain[at + 1] == '/';
                    int end = isLine ? text.AsSpan(at).IndexOfAny('\n', '\r') : text.IndexOf("*/", at + 2, StringComparison.Ordinal) - at + 2;
                    // A comment that is never closed stays, and is told as what it is.
                    if (!isLine && end <= 1) return text;
                    end = end < 0 ? plain.Length : at + end;
                    for (; at < end; at++) if (plain[at] is not ('\n' or '\r')) plain[at] = ' ';
                    at--;
                    break;
                case ',':
                    comma = at;
                    break;
                case '}' or ']':
                    if (comma >= 0) plain[comma] = ' ';
                    comma = -1;
                    break;
                case char other when !char.IsWhiteSpace(other):
                    comma = -1;
                    break;
            }
        }
        return new string(plain);
    }

    /// <summary>A file's name from a plan's name.</summary>
    /// <param name="name">What the plan is called; may be empty.</param>
    /// <param name="ending">Without the dot.</param>
    public static string FileName(string name, string ending)
    {
        StringBuilder safe = new();
        foreach (char letter in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter)) safe.Append(letter);
            else if (safe.Length > 0 && safe[^1] != '-') safe.Append('-');
        }
        string trimmed = safe.ToString().Trim('-');
        return (trimmed.Length == 0 ? "tunnel" : trimmed) + "." + ending;
    }
}
